/** How far to boil down: a mass, or a thickness from the fridge. */
import { addBatches, type Batch, batchMassG, EMPTY_BATCH } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { lookAt } from './look.ts';
import { batchRheology } from './rheology.ts';
import { totalSolidsG } from './solution.ts';

/** Solids above which a sauce is candy-like and a thickener the better way [1]. */
const CANDY_SOLIDS = 0.7;

/** Water to drive off [g] until `enough` holds, bisecting; undefined where 98 % of the water is not enough. */
export function waterUntil(batch: Batch, enough: (b: Batch) => boolean): number | undefined {
  if (enough(batch)) return 0;
  let low = 0;
  let high = 0.98 * batch.waterG;
  if (!enough(evaporate(batch, high))) return undefined;
  for (let i = 0; i < 60 && high - low > 1e-6 * batch.waterG; i++) {
    const middle = (low + high) / 2;
    if (enough(evaporate(batch, middle))) high = middle;
    else low = middle;
  }
  return high;
}

/** Water to drive off [g] for this finished mass [g]; undefined where it is more than the batch or less than can be left. */
export function waterForMass(batch: Batch, finishedG: number): number | undefined {
  if (finishedG > batchMassG(batch) + 1e-9) return undefined;
  return waterUntil(batch, (b) => batchMassG(b) <= finishedG + 1e-9);
}

export interface ThicknessTarget {
  /** τ0 wanted [Pa] at this temperature. */
  readonly yieldStressPa: number;
  readonly temperatureC: number;
  readonly factor?: number;
}

export type ThicknessAnswer =
  | { readonly reached: true; readonly waterOffG: number; readonly isCandy: boolean }
  /** No pulp to thicken with: a thickener is the way. */
  | { readonly reached: false; readonly waterOffG: undefined };

/**
 * Water to drive off [g] until the yield stress is there, and whether that would be candy.
 *
 * @param late  what is stirred in afterwards, and thins it
 */
export function waterForThickness(
  batch: Batch,
  wanted: ThicknessTarget,
  late: Batch = EMPTY_BATCH,
): ThicknessAnswer {
  const factor = wanted.factor ?? 1;
  const waterOffG = waterUntil(
    batch,
    (b) =>
      batchRheology(addBatches(b, late), wanted.temperatureC, factor).yieldStressPa >= wanted.yieldStressPa,
  );
  if (waterOffG === undefined) return { reached: false, waterOffG };
  const done = addBatches(evaporate(batch, waterOffG), late);
  return { reached: true, waterOffG, isCandy: totalSolidsG(done) / batchMassG(done) > CANDY_SOLIDS };
}

/** So far inside a class nobody takes it for the one above. @source judgement */
const INSIDE = 0.25;
/** Water beyond this many times the sauce is soup. */
const MOST_LOOSENING = 2;

/**
 * Water to stir into a finished sauce [g] until it looks one class thinner at this temperature, well inside that class.
 *
 * @param factor  of the thickness, as a spoonful on a plate has told it
 * @returns undefined where it already runs, or where twice its mass of water would not do
 */
export function waterToLoosenG(finished: Batch, temperatureC: number, factor = 1): number | undefined {
  const level = (waterG: number): number =>
    lookAt({ ...finished, waterG: finished.waterG + waterG }, temperatureC, factor).level;
  const wanted = Math.floor(level(0)) - INSIDE;
  let low = 0;
  let high = MOST_LOOSENING * batchMassG(finished);
  if (!(wanted > 0 && level(high) <= wanted)) return undefined;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (level(middle) > wanted) low = middle;
    else high = middle;
  }
  return high;
}
