/**
 * The softening dose: hours at 95 °C that do the same as the piece's own history.
 * Slow breakdown of the cross-linked collagen network, after its helix has come apart.
 */

import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp, log } from '../numeric/elementary.ts';
import { overCurveS } from './rate.ts';

const REFERENCE_K = 368.15;

export interface SofteningLaw {
  /** [J/mol] 78 ± 8 kJ/mol */
  readonly activationEnergyJmol: number;
  /** Temperature at which half of the collagen has come apart [°C]. */
  readonly unfoldingMidC: number;
  /** [K] */
  readonly unfoldingWidthK: number;
}

/** @source fitted between holding practice at 60 °C and braising at 95 °C (from memory); shrinkage of collagen 53–65 °C: Encyclopedia of Meat Sciences, pp. 404–409 */
const SOFTENING_LAW: SofteningLaw = {
  activationEnergyJmol: 78e3,
  unfoldingMidC: 53,
  unfoldingWidthK: 1.2,
};

/** Share of the collagen that has come apart [1], a logistic in temperature. */
const unfoldedShare = (temperatureC: number, law: SofteningLaw = SOFTENING_LAW): number =>
  1 / (1 + exp(-(temperatureC - law.unfoldingMidC) / law.unfoldingWidthK));

/**
 * Rate of softening against that at 95 °C [1].
 *
 * @param temperatureC [°C], meant for 50 to 105; below 55 °C enzymes add what the law leaves out
 */
export function relativeSofteningRate(temperatureC: number, law: SofteningLaw = SOFTENING_LAW): number {
  const temperatureK = temperatureC + 273.15;
  return (
    unfoldedShare(temperatureC, law) *
    exp((-law.activationEnergyJmol / GAS_CONSTANT_JMOLK) * (1 / temperatureK - 1 / REFERENCE_K))
  );
}

/** Softened share X = 1 − exp(−k95·H95) [1]. @param k95PerH [1/h] @param doseH equivalent hours at 95 °C */
export const softenedShare = (k95PerH: number, doseH: number): number => 1 - exp(-k95PerH * doseH);

/** The dose that softens to this share [h]. @param softened below 1 */
export const doseForSoftened = (k95PerH: number, softened: number): number => -log(1 - softened) / k95PerH;

/**
 * Dose over a curve straight between its points [h].
 *
 * @param timesS length n, increasing
 * @param temperaturesC length n
 */
export const doseOverCurveH = (
  timesS: readonly number[],
  temperaturesC: readonly number[],
  law: SofteningLaw = SOFTENING_LAW,
): number => overCurveS(timesS, temperaturesC, (c) => relativeSofteningRate(c, law)) / 3600;
