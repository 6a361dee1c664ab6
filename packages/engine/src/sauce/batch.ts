/**
 * What is in the pot, in grams by component: the state that every step of a sauce works on. Mixing adds, scaling
 * multiplies, a simmer takes water, ethanol and acetic acid; the rest is conserved to the last digit.
 */
import { ACIDS, type AcidId, type Ingredient } from '../food/data/ingredients.ts';
import { ACID_CONSTANTS } from './data/acids.ts';
import { pulpPotency, THICKENER_YIELD_PA } from './data/pulp.ts';
import { SCOVILLE } from './data/pungency.ts';
import { ingredientStrongIonsEq } from './strongIons.ts';

/** NaCl per sodium, by mass. */
export const SALT_PER_SODIUM = 2.5421;

export interface BatchLine {
  readonly ingredient: Ingredient;
  /** [g], zero or more. */
  readonly massG: number;
  /** Stirred in after the simmer. */
  readonly isLate?: boolean;
}

/** Grams by component; acids are counted in `acidsG` alone, wherever the table has them. */
export interface Batch {
  readonly waterG: number;
  readonly sucroseG: number;
  readonly glucoseG: number;
  readonly fructoseG: number;
  /** Sugars beyond the three; treated as maltose. */
  readonly otherSugarG: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly fibreG: number;
  readonly ashG: number;
  readonly ethanolG: number;
  readonly acidsG: Readonly<Record<AcidId, number>>;
  /** Starch, tannin and whatever the table's sum leaves over (may be slightly negative in a table that sums high). */
  readonly restG: number;
  /** Part of the acetic acid that came with vinegar, no part of the total solids. */
  readonly vinegarAceticG: number;
  /** Part of the ash. */
  readonly sodiumG: number;
  /** Strong cations less strong anions [eq]. */
  readonly strongIonsEq: number;
  /** Pulp potency times mass: P is this over the mass. */
  readonly pulpG: number;
  /** Cold yield stress from starch and gums, times mass [Pa·g]. */
  readonly thickenerPaG: number;
  /** Scoville units times mass. */
  readonly scovilleG: number;
  /** Food energy by the table [kcal]. */
  readonly energyKcal: number;
}

type Scalar = Exclude<keyof Batch, 'acidsG'>;
/** Scalars that add up, with the acids, to the mass. */
const MASSES = [
  'waterG',
  'sucroseG',
  'glucoseG',
  'fructoseG',
  'otherSugarG',
  'proteinG',
  'fatG',
  'fibreG',
  'ashG',
  'ethanolG',
  'restG',
] as const satisfies readonly Scalar[];
const SCALARS: readonly Scalar[] = [
  ...MASSES,
  'vinegarAceticG',
  'sodiumG',
  'strongIonsEq',
  'pulpG',
  'thickenerPaG',
  'scovilleG',
  'energyKcal',
];

function combine(a: Batch, b: Batch, f: (x: number, y: number) => number): Batch {
  const acidsG = Object.fromEntries(ACIDS.map((acid) => [acid, f(a.acidsG[acid], b.acidsG[acid])]));
  return {
    ...Object.fromEntries(SCALARS.map((key) => [key, f(a[key], b[key])])),
    acidsG,
  } as unknown as Batch;
}

export const EMPTY_BATCH: Batch = {
  ...(Object.fromEntries(SCALARS.map((key) => [key, 0])) as Record<Scalar, number>),
  acidsG: Object.fromEntries(ACIDS.map((acid) => [acid, 0])) as Record<AcidId, number>,
};

/** Both in one pot. */
export const addBatches = (a: Batch, b: Batch): Batch => combine(a, b, (x, y) => x + y);
/** `factor` times as much, by mass alone. */
export const scaleBatch = (a: Batch, factor: number): Batch => combine(a, a, (x) => x * factor);

/** Acetic acid stands beside the carbohydrate in these rows, inside it in all others (USDA takes it by difference). */
const acidIsOutside = (i: Ingredient): boolean => i.category === 'vinegar' || i.id === 'smoke_condensate';

/** One gram of an ingredient. What its row does not know (sugars, split) is left in the rest, not called zero sugar. */
export function batchPerGram(ingredient: Ingredient): Batch {
  const c = ingredient.per100g;
  // Where the split (an older table) sums above the total, the total holds: cola, 10.58 against 9.94.
  const split = (c.sucroseG ?? 0) + (c.glucoseG ?? 0) + (c.fructoseG ?? 0);
  const fit = c.sugarsG !== undefined && split > c.sugarsG ? c.sugarsG / split : 1;
  const sucroseG = (c.sucroseG ?? 0) * fit;
  const glucoseG = (c.glucoseG ?? 0) * fit;
  const fructoseG = (c.fructoseG ?? 0) * fit;
  const otherSugarG = Math.max(0, (c.sugarsG ?? 0) - sucroseG - glucoseG - fructoseG);
  const acidsG = { ...EMPTY_BATCH.acidsG, ...c.acidsG };
  const known =
    c.waterG +
    sucroseG +
    glucoseG +
    fructoseG +
    otherSugarG +
    c.proteinG +
    c.fatG +
    c.fibreG +
    c.ashG +
    c.alcoholG +
    ACIDS.reduce((sum, acid) => sum + acidsG[acid], 0);
  const per100g: Batch = {
    waterG: c.waterG,
    sucroseG,
    glucoseG,
    fructoseG,
    otherSugarG,
    proteinG: c.proteinG,
    fatG: c.fatG,
    fibreG: c.fibreG,
    ashG: c.ashG,
    ethanolG: c.alcoholG,
    acidsG,
    restG: 100 - known,
    vinegarAceticG: acidIsOutside(ingredient) ? acidsG.acetic : 0,
    sodiumG: c.sodiumMg / 1000,
    strongIonsEq: ingredientStrongIonsEq(ingredient),
    pulpG: 100 * pulpPotency(ingredient),
    thickenerPaG: 100 * 100 * (THICKENER_YIELD_PA[ingredient.id] ?? 0),
    scovilleG: 100 * (SCOVILLE[ingredient.id] ?? 0),
    energyKcal: c.energyKcal,
  };
  return scaleBatch(per100g, 0.01);
}

/** @throws RangeError on a negative or unknown mass */
export function batchOf(lines: readonly BatchLine[]): Batch {
  let batch = EMPTY_BATCH;
  for (const { ingredient, massG } of lines) {
    if (!(massG >= 0 && Number.isFinite(massG)))
      throw new RangeError(`${ingredient.id}: massG must be zero or more, got ${massG}`);
    batch = addBatches(batch, scaleBatch(batchPerGram(ingredient), massG));
  }
  return batch;
}

/** What is in the pot from the start, and what is stirred in after the simmer. */
export const potAndLate = (lines: readonly BatchLine[]): { readonly pot: Batch; readonly late: Batch } => ({
  pot: batchOf(lines.filter((line) => !line.isLate)),
  late: batchOf(lines.filter((line) => line.isLate)),
});

export const batchMassG = (b: Batch): number =>
  MASSES.reduce((sum, key) => sum + b[key], 0) + ACIDS.reduce((sum, acid) => sum + b.acidsG[acid], 0);

export const sugarsG = (b: Batch): number => b.sucroseG + b.glucoseG + b.fructoseG + b.otherSugarG;
export const acidsTotalG = (b: Batch): number => ACIDS.reduce((sum, acid) => sum + b.acidsG[acid], 0);
export const saltG = (b: Batch): number => SALT_PER_SODIUM * b.sodiumG;

/** Moles of each acid per kg of water. */
export function acidMolalities(b: Batch): Record<AcidId, number> {
  const waterKg = b.waterG / 1000;
  return Object.fromEntries(
    ACIDS.map((acid) => [acid, b.acidsG[acid] / ACID_CONSTANTS[acid].molarMassG / waterKg]),
  ) as Record<AcidId, number>;
}
