/** How far a formula is boiled down: by its own figure, or by the thickness wanted from the fridge. */
import type { Formula, Said } from '@pitwright/model';
import { exp } from '../numeric/elementary.ts';
import type { Batch } from './batch.ts';
import { FRIDGE_C } from './look.ts';
import { waterForThickness } from './target.ts';

/** Yield stress of a brush-on glaze from the fridge [Pa]: 5 Pa when brushed on at 60 °C, class 2. */
const GLAZE_YIELD_PA = 14;
/** Spread of the foreseen yield stress, log: before and after a plate test. */
export const THICKNESS_SD = 0.4;
export const PLATED_SD = 0.15;

export interface Goal {
  readonly waterOffG: number;
  readonly waterOffAt: (deviate: number) => number;
  readonly notices: readonly Said[];
}

export interface GoalOptions {
  readonly thicknessFactor?: number;
  readonly yieldWantedPa?: number;
}

/** How much water is to go, by the formula's own figure or by thickness, and how that figure moves with its doubt. */
export function goalOf(
  formula: Formula,
  raw: Batch,
  late: Batch,
  options: GoalOptions,
): Goal | readonly Said[] {
  const told = formula.simmer?.evaporated;
  if (told !== undefined) {
    const offG = told.si * 1000;
    if (!(offG >= 0 && offG < raw.waterG))
      return [
        {
          id: 'sauce.boils-dry',
          params: { evaporated: told, water: { kind: 'mass', si: raw.waterG / 1000 } },
        },
      ];
    return { waterOffG: offG, waterOffAt: () => offG, notices: [] };
  }
  const factor = options.thicknessFactor ?? 1;
  const sd = options.thicknessFactor === undefined ? THICKNESS_SD : PLATED_SD;
  const wanted = { yieldStressPa: options.yieldWantedPa ?? GLAZE_YIELD_PA, temperatureC: FRIDGE_C };
  const offAt = (deviate: number): number | undefined => {
    const answer = waterForThickness(raw, { ...wanted, factor: factor * exp(sd * deviate) }, late);
    return answer.reached ? answer.waterOffG : undefined;
  };
  const middle = waterForThickness(raw, { ...wanted, factor }, late);
  if (!middle.reached)
    return { waterOffG: 0, waterOffAt: () => 0, notices: [{ id: 'sauce.never-thickens' }] };
  const anchors = [-2, -1, 0, 1, 2].map((z) => offAt(z) ?? 0.98 * raw.waterG);
  const waterOffAt = (deviate: number): number => {
    const place = Math.min(3.999, Math.max(0, deviate + 2));
    const i = Math.floor(place);
    return anchors[i]! + (anchors[i + 1]! - anchors[i]!) * (place - i);
  };
  return {
    waterOffG: middle.waterOffG,
    waterOffAt,
    notices: middle.isCandy ? [{ id: 'sauce.would-be-candy', level: 'caution' }] : [],
  };
}
