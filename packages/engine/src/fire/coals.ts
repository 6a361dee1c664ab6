/**
 * Radiant heat of a bed of coals on the side of a piece that sees it: view factor, what glows, what stands between, and
 * the wall temperature that stands for it in the surface of the meat.
 *
 * A piece and the bed are discs on one axis. Nothing is reflected between them, and the walls fill the rest of the view.
 * The plume of hot gas over the coals is not in here: the air at the meat is what is told of it.
 */

import type { Coals, FireShield } from '@pitwright/model';
import { discViewFactor } from '../heat/radiation.ts';
import { STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from '../numeric/constants.ts';
import { rootBetween } from '../numeric/roots.ts';

/**
 * What the meat sees of charcoal as a bed [°C], with the doubt from fire to fire.
 *
 * @source a bed of about 900 K in open fires, found again with a radiant flux meter (Bussmann, Woodstoves, Eindhoven
 *   1988, as quoted in a chapter on pans over open fires); 700 °C taken for black briquettes in a textbook problem; dull
 *   red at 500–600 °C, bright red at 700–800 °C. Which of it a cook calls grey or red: judgement
 */
export const BED_C: Readonly<Record<Coals | 'untold', { readonly mean: number; readonly sd: number }>> = {
  grey: { mean: 620, sd: 60 },
  red: { mean: 760, sd: 60 },
  untold: { mean: 650, sd: 90 },
};
/** Of glowing charcoal, ash on it or not. @source 0.8–0.95, from memory */
const BED_EMISSIVITY = 0.9;
/** Oxidised steel, ceramic. @source 0.8–0.95, from memory */
const PLATE_EMISSIVITY = 0.9;
/** Still air on either side of a plate [W/(m²·K)]. @source 5–10, as for hot plates in fire.md */
const PLATE_CONVECTION_WM2K = 7;
/** Water in a pan over the fire, near what its evaporation leaves it. @source its wet-surface balance, 76–79 °C */
const PAN_WATER_C = 78;
const WATER_EMISSIVITY = 0.95;
/** A shield is taken to stand half way between coals and meat, as wide as the bed. */
const SHIELD_AT = 0.5;
/** The surface at which the linear law of the meat's surface has the exact flux: where it browns [K]. */
const REFERENCE_K = 373.15;
/** Temperatures are solved to this [K]. */
const CLOSE_K = 1e-6;

/** What one side of a piece sees. Lengths in m, temperatures in °C. */
export interface CoalsSeen {
  /** Of the disc that has the piece's area. */
  readonly pieceRadiusM: number;
  readonly bedRadiusM: number;
  readonly distanceM: number;
  readonly bedC: number;
  readonly between?: FireShield;
}

const fourth = (temperatureC: number): number => {
  const square = (temperatureC + ZERO_CELSIUS_K) * (temperatureC + ZERO_CELSIUS_K);
  return square * square;
};

/** Emissive power over that of the walls it hides, on a square metre of the side [W/m²]; below 0 it is colder. */
export function coalsFluxWm2(seen: CoalsSeen, wallC: number, gasC: number): number {
  const { pieceRadiusM, bedRadiusM, distanceM, bedC, between } = seen;
  const shieldM = SHIELD_AT * distanceM;
  const [farM, emissivity, sourceC] =
    between === 'pan'
      ? [distanceM - shieldM, WATER_EMISSIVITY, PAN_WATER_C]
      : between === 'plate'
        ? [distanceM - shieldM, PLATE_EMISSIVITY, plateC(bedRadiusM, shieldM, bedC, wallC, gasC)]
        : [distanceM, BED_EMISSIVITY, bedC];
  const view = discViewFactor(pieceRadiusM, bedRadiusM, farM);
  return view * emissivity * STEFAN_BOLTZMANN * (fourth(sourceC) - fourth(wallC));
}

/** Steady temperature of a plate over the coals: what it takes from them it gives to walls and air on both sides. */
function plateC(radiusM: number, overBedM: number, bedC: number, wallC: number, gasC: number): number {
  const view = discViewFactor(radiusM, radiusM, overBedM) * BED_EMISSIVITY;
  const taken = view * (fourth(bedC) - fourth(wallC));
  const kept = (temperatureC: number): number =>
    PLATE_EMISSIVITY * STEFAN_BOLTZMANN * (taken - 2 * (fourth(temperatureC) - fourth(wallC))) -
    2 * PLATE_CONVECTION_WM2K * (temperatureC - gasC);
  return rootBetween(kept, Math.min(wallC, gasC), Math.max(bedC, gasC) + 1, CLOSE_K);
}

/**
 * How much warmer the walls would have to be for the surface of the meat to take that flux [K]. Its law is linear,
 * 4 εσ T_m³ (T_wall − T_s); at a surface of 100 °C the rise gives the exact flux, 60 K off it within 6 %.
 *
 * @param fluxWm2 of `coalsFluxWm2`, before the emissivity of the meat
 */
export function wallRiseK(fluxWm2: number, wallC: number): number {
  if (fluxWm2 === 0) return 0;
  const law = (temperatureK: number): number => {
    const sum = temperatureK + REFERENCE_K;
    return 0.5 * sum * sum * sum * (temperatureK - REFERENCE_K);
  };
  const wallK = wallC + ZERO_CELSIUS_K;
  const wanted = law(wallK) + fluxWm2 / STEFAN_BOLTZMANN;
  return rootBetween((riseK) => wanted - law(wallK + riseK), LEAST_WALL_K - wallK, MOST_RISE_K, CLOSE_K);
}
/** Colder than any pan of water makes it; the law still climbs there. */
const LEAST_WALL_K = 200;
const MOST_RISE_K = 1500;
