/** Thickness as a cook sees it: six classes, in the pot, from the fridge, brushed on. */
import type { Batch } from './batch.ts';
import { batchRheology, type Rheology } from './rheology.ts';
import { batchDensity } from './solution.ts';
import { bostwickTravelM, plateDiameterM, spoonFilmM } from './spread.ts';

/** 0 runs (mop), 1 pours, 2 coats a spoon, 3 holds a line, 4 spreads, 5 stands. */
export const THICKNESS_WORDS = ['runs', 'pours', 'coats', 'holds-a-line', 'spreads', 'stands'] as const;
export type ThicknessClass = 0 | 1 | 2 | 3 | 4 | 5;

/** Upper yield stress of classes 0 to 4 [Pa]. */
export const CLASS_EDGES_PA = [1, 4, 12, 45, 120] as const;
/** Upper vertical film of classes 0 and 1 [m]. */
const FILM_EDGES_M = [0.1e-3, 0.35e-3] as const;

export const yieldClass = (yieldStressPa: number): ThicknessClass => {
  const found = CLASS_EDGES_PA.findIndex((edge) => yieldStressPa < edge);
  return (found === -1 ? 5 : found) as ThicknessClass;
};

/** The class that a cook would call it: by what holds still, or by a film too slow to run off, which coats at most. */
export function thicknessClass(r: Rheology, densityKgM3: number): ThicknessClass {
  const film = spoonFilmM(r, densityKgM3);
  const byFilm = film < FILM_EDGES_M[0] ? 0 : film < FILM_EDGES_M[1] ? 1 : 2;
  return Math.max(yieldClass(r.yieldStressPa), byFilm) as ThicknessClass;
}

export interface Look {
  readonly temperatureC: number;
  readonly thickness: ThicknessClass;
  readonly yieldStressPa: number;
  readonly filmM: number;
  readonly bostwickM: number;
  /** Puddle of a tablespoon (15 mL) on a flat plate; missing where there is no yield stress to stop it. */
  readonly plateM?: number;
}

export const PLATE_VOLUME_M3 = 15e-6;
const LEAST_YIELD_PA = 0.05;

export function lookAt(batch: Batch, temperatureC: number, factor = 1): Look {
  const r = batchRheology(batch, temperatureC, factor);
  const density = batchDensity(batch);
  return {
    temperatureC,
    thickness: thicknessClass(r, density),
    yieldStressPa: r.yieldStressPa,
    filmM: spoonFilmM(r, density),
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

/** "Stop when it looks like this in the pot; from the fridge like that; brushed on at 60 °C like this." */
export const looks = (batch: Batch, factor = 1): Looks => ({
  pot: lookAt(batch, POT_C, factor),
  fridge: lookAt(batch, FRIDGE_C, factor),
  brushed: lookAt(batch, BRUSHED_C, factor),
});
