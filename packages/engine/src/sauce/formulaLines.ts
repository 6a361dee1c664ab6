/** A formula of the cook file as lines by mass, with everything that stands in its way said at once. */
import type { Formula, FormulaLine, Said } from '@pitwright/model';
import { type Ingredient, ingredientById, searchIngredients } from '../food/data/ingredients.ts';
import type { BatchLine } from './batch.ts';

export interface ResolvedLine extends BatchLine {
  readonly line: FormulaLine;
  /** Measured by spoon or cup: 8 % doubt against half a percent on a scale. */
  readonly byVolume: boolean;
}

export type Resolved =
  | { readonly ok: true; readonly lines: readonly ResolvedLine[] }
  | { readonly ok: false; readonly problems: readonly Said[] };

/** The person's own ingredients stand before the catalogue's. */
export type OwnIngredients = readonly Ingredient[];

export const findIngredient = (id: string, own: OwnIngredients = []): Ingredient | undefined =>
  own.find((ingredient) => ingredient.id === id) ?? ingredientById(id);

/** Curing salts are never scaled by a calculation of ours: too much poisons, too little does not protect. */
const CURES = new Set(['cure_6_25']);

function problemOf(line: FormulaLine, ingredient: Ingredient | undefined): Said | undefined {
  const name = line.ingredient;
  if (CURES.has(name))
    return { id: 'sauce.no-cures', level: 'stop', source: '21 CFR 172.170', params: { name } };
  if (ingredient === undefined) {
    const near = searchIngredients(name.replaceAll('_', ' '), 1)[0];
    return near === undefined
      ? { id: 'sauce.unknown-ingredient', params: { name } }
      : { id: 'sauce.unknown-ingredient-near', params: { name, near: near.name } };
  }
  const { si } = line.amount;
  if (!Number.isFinite(si)) return { id: 'sauce.amount-not-a-number', params: { name: ingredient.name } };
  if (si < 0) return { id: 'sauce.negative-amount', params: { name: ingredient.name, amount: line.amount } };
  if (line.amount.kind === 'volume' && !(ingredient.densityGPerMl > 0))
    return { id: 'sauce.density-missing', params: { name: ingredient.name, amount: line.amount } };
  return undefined;
}

/** Grams of every line; volumes by the ingredient's density. */
export function formulaLines(formula: Formula, own: OwnIngredients = []): Resolved {
  const lines: ResolvedLine[] = [];
  const problems: Said[] = [];
  for (const line of formula.lines) {
    const ingredient = findIngredient(line.ingredient, own);
    const problem = problemOf(line, ingredient);
    if (problem !== undefined || ingredient === undefined) {
      problems.push(problem!);
      continue;
    }
    const byVolume = line.amount.kind === 'volume';
    const massG = byVolume ? line.amount.si * 1e6 * ingredient.densityGPerMl : line.amount.si * 1000;
    lines.push({ line, ingredient, massG, byVolume });
  }
  if (formula.lines.length === 0) problems.push({ id: 'sauce.no-lines', params: { name: formula.name } });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, lines };
}

const SPOON_SD = 0.08;
const SCALE_SD = 0.005;
const SCALE_SD_G = 1;

/** One standard deviation of a line's mass [g]: 8 % by spoon, 1 g or half a percent by scale. */
export const lineSdG = (line: ResolvedLine): number =>
  line.byVolume ? SPOON_SD * line.massG : Math.max(SCALE_SD * line.massG, Math.min(SCALE_SD_G, line.massG));
