/** A formula of the cook file as lines by mass, with everything that stands in its way said at once. */
import {
  chosenVariant,
  type Formula,
  type FormulaLine,
  lostChanges,
  madeFormula,
  type Said,
} from '@pitwright/model';
import { type Ingredient, ingredientById, searchIngredients } from '../food/data/ingredients.ts';
import type { BatchLine } from './batch.ts';
import { ingredientFromLabel, type Labels } from './label.ts';

export interface ResolvedLine extends BatchLine {
  readonly line: FormulaLine;
  /** Measured by spoon or cup: 8 % doubt against half a percent on a scale. */
  readonly byVolume: boolean;
  readonly isLate: boolean;
}

export type Resolved =
  | { readonly ok: true; readonly lines: readonly ResolvedLine[] }
  | { readonly ok: false; readonly problems: readonly Said[] };

/** One of a person's own by its label, which stands before the catalogue's; undefined where its label does not work out. */
export function findIngredient(id: string, labels: Labels = []): Ingredient | undefined {
  const label = labels.find((one) => one.ingredient === id);
  if (!label) return ingredientById(id);
  const own = ingredientFromLabel(label);
  return own.ok ? own.ingredient : undefined;
}

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

/** Grams of every line, as the formula is made; volumes by the ingredient's density. */
export function formulaLines(formula: Formula, labels: Labels = []): Resolved {
  const lines: ResolvedLine[] = [];
  const problems: Said[] = lostChanges(formula).map((change) => ({
    id: 'sauce.variant-lost-line',
    params: {
      variant: chosenVariant(formula)!.name,
      name: findIngredient(change.line!, labels)?.name ?? change.line!,
    },
  }));
  const made = madeFormula(formula);
  for (const line of made.lines) {
    const label = labels.find((one) => one.ingredient === line.ingredient);
    const read = label && ingredientFromLabel(label);
    if (read && !read.ok) {
      problems.push(...read.problems);
      continue;
    }
    const ingredient = read?.ingredient ?? ingredientById(line.ingredient);
    const problem = problemOf(line, ingredient);
    if (problem !== undefined || ingredient === undefined) {
      problems.push(problem!);
      continue;
    }
    const byVolume = line.amount.kind === 'volume';
    const massG = byVolume ? line.amount.si * 1e6 * ingredient.densityGPerMl : line.amount.si * 1000;
    const isLate = line.late === true && made.simmer !== undefined;
    lines.push({ line, ingredient, massG, byVolume, isLate });
  }
  if (made.lines.length === 0) problems.push({ id: 'sauce.no-lines', params: { name: formula.name } });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, lines };
}

const SPOON_SD = 0.08;
const SCALE_SD = 0.005;
const SCALE_SD_G = 1;

/** One standard deviation of a line's mass [g]: 8 % by spoon, 1 g or half a percent by scale. */
export const lineSdG = (line: ResolvedLine): number =>
  line.byVolume ? SPOON_SD * line.massG : Math.max(SCALE_SD * line.massG, Math.min(SCALE_SD_G, line.massG));
