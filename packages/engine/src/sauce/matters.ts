/** Does it matter? What each line's change would do, in steps that people notice. */
import { type Batch, type BatchLine, batchMassG, batchOf } from './batch.ts';
import { stepsApart, TASTES, type Taste, tastesOf } from './jnd.ts';

export type LineChange = 'left-out' | 'half' | 'half-more' | 'double';
const FACTORS: Readonly<Record<LineChange, number>> = {
  'left-out': 0,
  half: 0.5,
  'half-more': 1.5,
  double: 2,
};

export interface LineEffect {
  readonly index: number;
  /** Steps of each taste for each change; the finished mass stays, more or less water boils off. */
  readonly steps: Readonly<Record<LineChange, Readonly<Record<Taste, number>>>>;
  /** Whether halving or adding half is noticed in any of the five. */
  readonly matters: boolean;
  /** Spices, aromatics and smoke: what they do to the nose is not computed, so it is never called unimportant. */
  readonly isAroma: boolean;
}

const AROMA = new Set(['spice', 'vegetable', 'fruit']);
const AROMATIC = new Set([
  'smoke_condensate',
  'vanilla_extract',
  'worcestershire_type',
  'fish_sauce',
  'bourbon_45',
  'whiskey_43',
  'stout',
]);

const stepsBetween = (from: Record<Taste, number>, to: Record<Taste, number>): Record<Taste, number> =>
  Object.fromEntries(TASTES.map((taste) => [taste, stepsApart(taste, from[taste], to[taste])])) as Record<
    Taste,
    number
  >;

const noticed = (steps: Record<Taste, number>): boolean =>
  TASTES.some((taste) => Math.abs(steps[taste]) >= 1);

/** @param finishedG  mass after the simmer; missing: nothing is simmered */
export function lineEffects(lines: readonly BatchLine[], finishedG?: number): readonly LineEffect[] {
  const now = tastesOf(batchOf(lines), finishedG);
  return lines.map((line, index) => {
    const changed = (factor: number): Batch =>
      batchOf(lines.map((other, i) => (i === index ? { ...other, massG: other.massG * factor } : other)));
    const steps = Object.fromEntries(
      (Object.entries(FACTORS) as [LineChange, number][]).map(([change, factor]) => {
        const batch = changed(factor);
        return [change, stepsBetween(now, tastesOf(batch, finishedG ?? batchMassG(batch)))];
      }),
    ) as Record<LineChange, Record<Taste, number>>;
    const { ingredient } = line;
    return {
      index,
      steps,
      matters: noticed(steps.half) || noticed(steps['half-more']),
      isAroma: AROMA.has(ingredient.category) || AROMATIC.has(ingredient.id),
    };
  });
}
