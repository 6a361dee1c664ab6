/** Another liquid base: what sugar, vinegar and salt bring the taste back, as three linear unknowns. */
import { ingredientById } from '../food/data/ingredients.ts';
import { titratableEq } from './acidity.ts';
import { type Batch, batchPerGram, saltG } from './batch.ts';
import { sweetnessG } from './taste.ts';

/** Grams to add; negative: take out of the recipe. */
export interface SwapChange {
  readonly sugarG: number;
  readonly vinegarG: number;
  readonly saltG: number;
}

/** Sweetness [g], acidity [eq] and salt [g]: at one finished mass, equal totals are equal concentrations. */
const totals = (b: Batch): [number, number, number] => [sweetnessG(b), titratableEq(b), saltG(b)];

const determinant = (a: readonly number[], b: readonly number[], c: readonly number[]): number =>
  a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) -
  b[0]! * (a[1]! * c[2]! - a[2]! * c[1]!) +
  c[0]! * (a[1]! * b[2]! - a[2]! * b[1]!);

/**
 * Packed brown sugar, cider vinegar of 5 % and table salt that give `swapped` the totals of `reference`, both boiled
 * down to the same mass afterwards.
 */
export function baseSwap(reference: Batch, swapped: Batch): SwapChange {
  const wanted = totals(reference);
  const have = totals(swapped);
  const missing = wanted.map((w, i) => w - have[i]!);
  const [sugar, vinegar, salt] = ['sugar_brown_packed', 'vinegar_cider_5', 'salt_table'].map((id) =>
    totals(batchPerGram(ingredientById(id)!)),
  );
  const d = determinant(sugar!, vinegar!, salt!);
  return {
    sugarG: determinant(missing, vinegar!, salt!) / d,
    vinegarG: determinant(sugar!, missing, salt!) / d,
    saltG: determinant(sugar!, vinegar!, missing) / d,
  };
}
