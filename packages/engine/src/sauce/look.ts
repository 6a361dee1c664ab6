/** Thickness as a cook sees it: six classes, in the pot, from the fridge, brushed on. */
import { log } from '../numeric/elementary.ts';
import type { Batch } from './batch.ts';
import { batchRheology, type Rheology } from './rheology.ts';
import { batchDensity } from './solution.ts';
import { bostwickTravelM, drainedFilmPa, plateDiameterM } from './spread.ts';

/** 0 runs (mop), 1 pours, 2 coats a spoon, 3 holds a line, 4 spreads, 5 stands. */
export const THICKNESS_WORDS = ['runs', 'pours', 'coats', 'holds-a-line', 'spreads', 'stands'] as const;
export type ThicknessClass = 0 | 1 | 2 | 3 | 4 | 5;

/** Stress that a sauce carries at the ends of the classes [Pa]: runs from 0.1 on, stands to 360 and more. */
const EDGES_PA = [0.1, 1, 4, 12, 45, 120, 360] as const;
/** Class 3 holds a line: of what has only not run off yet, no thickness does (the upper end of class 2) [Pa]. */
const HELD_LINE_PA = 12;
const SPOON_M = 0.05;
/** Between lifting a spoon and looking at it. */
const LOOKED_AT_S = 10;
const TOP_LEVEL = 5.99;

/**
 * Stress that a sauce on a lifted spoon carries [Pa]: what its yield stress holds for good, and what the film that has
 * not run off after 10 s weighs, each by itself and added as squares. The second saturates below what holds a line,
 * because only a yield stress holds one: honey coats a spoon, however thick.
 */
export function carriedPa(r: Rheology, densityKgM3: number): number {
  const film = drainedFilmPa(r, SPOON_M, LOOKED_AT_S, densityKgM3);
  const viscous = (HELD_LINE_PA * film) / (HELD_LINE_PA + film);
  return Math.sqrt(r.yieldStressPa * r.yieldStressPa + viscous * viscous);
}

/** Where a stress stands among the six looks, with its place inside by its logarithm: 2.5 is the middle of what coats. */
export function lookLevel(stressPa: number): number {
  const above = EDGES_PA.findIndex((edge) => stressPa < edge);
  if (above === 0) return 0;
  if (above === -1) return TOP_LEVEL;
  const [low, high] = [EDGES_PA[above - 1]!, EDGES_PA[above]!];
  return Math.min(TOP_LEVEL, above - 1 + log(stressPa / low) / log(high / low));
}

export interface Look {
  readonly temperatureC: number;
  readonly thickness: ThicknessClass;
  /** The same with its place inside the class, 0 to 6. */
  readonly level: number;
  readonly yieldStressPa: number;
  readonly bostwickM: number;
  /** Puddle of a tablespoon (15 mL) on a flat plate; missing where there is no yield stress to stop it. */
  readonly plateM?: number;
}

export const PLATE_VOLUME_M3 = 15e-6;
const LEAST_YIELD_PA = 0.05;

export function lookAt(batch: Batch, temperatureC: number, factor = 1): Look {
  const r = batchRheology(batch, temperatureC, factor);
  const density = batchDensity(batch);
  const level = lookLevel(carriedPa(r, density));
  return {
    temperatureC,
    thickness: Math.floor(level) as ThicknessClass,
    level,
    yieldStressPa: r.yieldStressPa,
    bostwickM: bostwickTravelM(r, density),
    ...(r.yieldStressPa > LEAST_YIELD_PA && {
      plateM: plateDiameterM(PLATE_VOLUME_M3, density, r.yieldStressPa),
    }),
  };
}

export const POT_C = 95;
export const FRIDGE_C = 5;
export const BRUSHED_C = 60;

export interface Looks {
  readonly pot: Look;
  readonly fridge: Look;
  readonly brushed: Look;
}

/**
 * "Stop when it looks like this in the pot; from the fridge it will look like that; brushed on at 60 °C like this."
 *
 * @param taken  as it comes off the heat
 * @param finished  the same with what is stirred in afterwards
 */
export const looks = (taken: Batch, finished: Batch, factor = 1): Looks => ({
  pot: lookAt(taken, POT_C, factor),
  fridge: lookAt(finished, FRIDGE_C, factor),
  brushed: lookAt(finished, BRUSHED_C, factor),
});
