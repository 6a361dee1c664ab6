/** Is it enough: what was made against what racks, guests and jars want; and how to scale it so that it is. */
import type { Formula, FormulaLine, Quantity } from '@pitwright/model';
import type { ResolvedLine } from './formulaLines.ts';
import type { SauceOutcome } from './outcome.ts';

/** One thing that is brushed. */
export interface Glazed {
  /** Of all alike ones together [m²]. */
  readonly surfaceM2: number;
  readonly coats: number;
}

export interface Needs {
  readonly glazed: readonly Glazed[];
  readonly guests: number;
  /** [g] a person at the table; 30 g is a serving. */
  readonly tableG?: number;
}

export interface Enough {
  readonly madeG: number;
  readonly glazeG: number;
  readonly tableG: number;
  /** Left over for jars [g]; negative: short. */
  readonly leftG: number;
  readonly isEnough: boolean;
  /** Multiply the recipe by this to have just enough. */
  readonly factor: number;
  /** Days it keeps in the fridge, from the day it is made. */
  readonly useWithinDays: number;
}

/** A serving at the table (judgement). */
export const SERVING_G = 30;
/** Wet coat that stays on the meat, brushed thin (0.3–0.6 mm, judgement), and what the brush and bowl keep. */
const COAT_M = 0.4e-3;
const BRUSH_LOSS = 1.15;
const POT_LOSS_G = 20;

/** Glaze for these coats [g]. */
export const glazeG = (glazed: readonly Glazed[], densityKgM3: number): number =>
  glazed.reduce((sum, one) => sum + one.surfaceM2 * one.coats * COAT_M * densityKgM3 * 1000 * BRUSH_LOSS, 0);

export function enough(outcome: SauceOutcome, needs: Needs): Enough {
  const glaze = glazeG(needs.glazed, outcome.after.densityKgM3);
  const table = needs.guests * (needs.tableG ?? SERVING_G);
  const madeG = Math.max(0, outcome.finishedMassG - POT_LOSS_G);
  const wanted = glaze + table;
  return {
    madeG,
    glazeG: glaze,
    tableG: table,
    leftG: madeG - wanted,
    isEnough: madeG >= wanted,
    factor: (wanted + POT_LOSS_G) / outcome.finishedMassG,
    useWithinDays: outcome.keeping.daysHigh,
  };
}

/** Both faces and the edges of a slab-like piece [m²]: 2 m/(ρ t), a rack of 1.1 kg and 25 mm has 0.08 m². */
export const slabSurfaceM2 = (massKg: number, thicknessM: number): number => {
  const MEAT_KG_M3 = 1050;
  return (2 * massKg) / (MEAT_KG_M3 * thicknessM);
};

const times = <K extends 'mass' | 'volume'>(q: Quantity<K>, factor: number): Quantity<K> => ({
  ...q,
  si: q.si * factor,
});

/** Every amount times `factor`, by mass, of the variants too; the simmer's water with it, its pan and power as they are. */
export function scaleFormula(formula: Formula, factor: number): Formula {
  if (!(factor > 0 && Number.isFinite(factor))) throw new RangeError(`factor must be above 0, got ${factor}`);
  const { simmer, variants } = formula;
  const scaledAmount = (amount: FormulaLine['amount']): FormulaLine['amount'] =>
    amount.kind === 'mass' ? times(amount, factor) : times(amount, factor);
  const scaledWater = <T extends { readonly evaporated?: Quantity<'mass'> }>(of: T): T => ({
    ...of,
    ...(of.evaporated && { evaporated: times(of.evaporated, factor) }),
  });
  return {
    ...formula,
    lines: formula.lines.map((line) => ({
      ...line,
      amount: scaledAmount(line.amount),
    })),
    ...(simmer && { simmer: scaledWater(simmer) }),
    ...(variants && {
      variants: variants.map((variant) => ({
        ...scaledWater(variant),
        changes: variant.changes.map((change) =>
          change.amount ? { ...change, amount: scaledAmount(change.amount) } : change,
        ),
      })),
    }),
  };
}

/** A mass that a kitchen scale can show: 0.1 g under 10, whole grams to 100, fives to 1000, tens above. */
export function kitchenG(massG: number): number {
  if (massG < 10) return Math.round(massG * 10) / 10;
  const step = massG < 100 ? 1 : massG < 1000 ? 5 : 10;
  return Math.round(massG / step) * step;
}

export interface Price {
  readonly packG: number;
  readonly price: number;
}

/** Cost of a formula by the packs bought; ids without a price are listed, not counted as free. */
export function costOf(
  lines: readonly ResolvedLine[],
  prices: Readonly<Record<string, Price>>,
): { readonly cost: number; readonly unpriced: readonly string[] } {
  let cost = 0;
  const unpriced: string[] = [];
  for (const { ingredient, massG } of lines) {
    const price = prices[ingredient.id];
    if (price === undefined || !(price.packG > 0)) unpriced.push(ingredient.id);
    else cost += (massG * price.price) / price.packG;
  }
  return { cost, unpriced };
}
