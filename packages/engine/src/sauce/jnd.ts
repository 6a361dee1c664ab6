/**
 * Just-noticeable differences, as shares of what is there (Weber fractions, from memory, rounded): two sauces nearer
 * than this few people tell apart.
 */
import { titratableEq } from './acidity.ts';
import { type Batch, batchMassG, saltG } from './batch.ts';
import { sweetnessG } from './taste.ts';

export const TASTES = ['sweet', 'sour', 'salt', 'heat', 'thick'] as const;
export type Taste = (typeof TASTES)[number];

/** Noticeable step of a yield stress. It goes with the pulp to 2.6, so this is 9 % of pulp. */
export const STRESS_WEBER = 0.25;
export const WEBER: Readonly<Record<Taste, number>> = {
  sweet: 0.1,
  sour: 0.15,
  salt: 0.12,
  heat: 0.35,
  thick: 0.09,
};
/** Below these [per 100 g] a taste is hardly there, and the step does not shrink further. */
const FLOOR: Readonly<Record<Taste, number>> = { sweet: 2, sour: 0.001, salt: 0.3, heat: 100, thick: 0.15 };

/**
 * The five that linear changes of lines move, per 100 g finished: sucrose equivalent [g], titratable acid [eq],
 * salt [g], Scoville units, pulp index [1].
 */
export function tastesOf(b: Batch, finishedG = batchMassG(b)): Record<Taste, number> {
  return {
    sweet: (100 * sweetnessG(b)) / finishedG,
    sour: (100 * titratableEq(b)) / finishedG,
    salt: (100 * saltG(b)) / finishedG,
    heat: b.scovilleG / finishedG,
    thick: b.pulpG / finishedG,
  };
}

/** One just-noticeable step at this level, in the unit of `tastesOf`. */
export const jndAt = (taste: Taste, level: number): number =>
  WEBER[taste] * Math.max(Math.abs(level), FLOOR[taste]);

/** Steps from one to the other, signed. */
export const stepsApart = (taste: Taste, from: number, to: number): number =>
  (to - from) / jndAt(taste, from);
