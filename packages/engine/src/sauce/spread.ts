/** What a cook sees of thickness: how far it runs, what stays on a spoon, how wide a puddle stands. */
import { GRAVITY_MS2 } from '../numeric/constants.ts';
import { exp, log, pow } from '../numeric/elementary.ts';
import { type Rheology, shearStress } from './rheology.ts';

/** Gate of the Bostwick consistometer: 5 cm long, 3.8 cm deep. */
const GATE_LENGTH_M = 0.05;
const GATE_AREA_M2 = 0.05 * 0.038;

/**
 * Travel from the gate of a Bostwick consistometer where the yield stress ends it [m].
 * @source balance of a plane slump; walls shorten it by 10–20 % (judgement)
 */
export const yieldTravelM = (yieldStressPa: number, densityKgM3: number): number =>
  Math.max(
    0,
    pow((9 * GATE_AREA_M2 * GATE_AREA_M2 * densityKgM3 * GRAVITY_MS2) / (8 * yieldStressPa), 1 / 3) -
      GATE_LENGTH_M,
  );

/** Travel where viscosity holds it back [m]. @source Huppert, plane gravity current */
export const viscousTravelM = (viscosityPas: number, densityKgM3: number, timeS: number): number => {
  const nu = viscosityPas / densityKgM3;
  const spread =
    1.411 * pow((GRAVITY_MS2 * GATE_AREA_M2 * GATE_AREA_M2 * GATE_AREA_M2) / (3 * nu), 0.2) * pow(timeS, 0.2);
  return Math.max(0, spread - GATE_LENGTH_M);
};

/** Film that yield stress holds on a vertical face [m]. */
export const yieldFilmM = (yieldStressPa: number, densityKgM3: number): number =>
  yieldStressPa / (densityKgM3 * GRAVITY_MS2);

/** Film left on a vertical face by a Newtonian fluid [m]. @source Jeffreys drainage */
export const drainedFilmM = (
  viscosityPas: number,
  lengthM: number,
  timeS: number,
  densityKgM3: number,
): number => Math.sqrt((viscosityPas * lengthM) / (densityKgM3 * GRAVITY_MS2 * timeS));

/**
 * Weight over face of the film that a power-law fluid leaves on a vertical face [Pa], ρ g h with
 * h = ((L/t)ⁿ K/(ρ g))^(1/(n+1)): Jeffreys' drainage at n = 1. Of K and n alone, without the yield stress.
 */
export function drainedFilmPa(r: Rheology, lengthM: number, timeS: number, densityKgM3: number): number {
  const weight = densityKgM3 * GRAVITY_MS2;
  return weight * pow((pow(lengthM / timeS, r.index) * r.consistency) / weight, 1 / (r.index + 1));
}

/**
 * Yield stress from a puddle that has come to rest on a flat plate [Pa].
 * An error of 3 % in the diameter is 15 % in the yield stress.
 *
 * @source Roussel & Coussot, J. Rheol. (2005), spreading regime: τ0 = 225 ρ g V² / (128 π² R⁵)
 */
export function plateYieldStressPa(volumeM3: number, densityKgM3: number, diameterM: number): number {
  const r = diameterM / 2;
  return (
    (225 * densityKgM3 * GRAVITY_MS2 * volumeM3 * volumeM3) / (128 * Math.PI * Math.PI * r * r * r * r * r)
  );
}

/** Diameter [m] of the puddle; inverse of the above. */
export function plateDiameterM(volumeM3: number, densityKgM3: number, yieldStressPa: number): number {
  const r5 =
    (225 * densityKgM3 * GRAVITY_MS2 * volumeM3 * volumeM3) / (128 * Math.PI * Math.PI * yieldStressPa);
  return 2 * exp(log(r5) / 5);
}

/** Bostwick travel in 30 s at 20 °C [m]: the smaller of the two limits, the viscous one at its mean shear rate. */
export function bostwickTravelM(r: Rheology, densityKgM3: number): number {
  const shearRate = 1;
  return Math.min(
    yieldTravelM(Math.max(r.yieldStressPa, 1e-3), densityKgM3),
    viscousTravelM(shearStress(r, shearRate) / shearRate, densityKgM3, 30),
  );
}
