/** Burning: at the bottom of the pan, and on the meat. */
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp } from '../numeric/elementary.ts';

const SUGAR_ACTIVATION = 120_000;
const REFERENCE_K = 403.15;

/** Minutes at 130 °C that one minute at this dry surface counts (judgement: 120 kJ/mol). */
const scorchRate = (surfaceC: number): number =>
  exp((SUGAR_ACTIVATION / GAS_CONSTANT_JMOLK) * (1 / REFERENCE_K - 1 / (surfaceC + 273.15)));

const STEPS_PER_PIECE = 64;

/** Equivalent time at 130 °C [s] along straight pieces between points (Simpson's rule in each). */
export function scorchDoseS(timesS: readonly number[], temperaturesC: readonly number[]): number {
  let doseS = 0;
  for (let i = 1; i < timesS.length; i++) {
    const from = temperaturesC[i - 1]!;
    const to = temperaturesC[i]!;
    const h = (timesS[i]! - timesS[i - 1]!) / STEPS_PER_PIECE;
    for (let k = 0; k <= STEPS_PER_PIECE; k++) {
      const weight = k === 0 || k === STEPS_PER_PIECE ? 1 : k % 2 === 1 ? 4 : 2;
      doseS += ((weight * h) / 3) * scorchRate(from + ((to - from) * k) / STEPS_PER_PIECE);
    }
  }
  return doseS;
}

export type ScorchVerdict = 'pass' | 'caution' | 'stop';
const CAUTION_S = 60 * 60;
const STOP_S = 180 * 60;
/** Over 60 equivalent minutes a caution, over 180 a stop (judgement). */
export const scorchVerdict = (doseS: number): ScorchVerdict =>
  doseS > STOP_S ? 'stop' : doseS > CAUTION_S ? 'caution' : 'pass';

const SAUCE_DIFFUSIVITY = 1.4e-7;
const SAUCE_CONDUCTIVITY = 0.5;

/** Stagnant film that has grown on the bottom since the last stir [m]: 1.13 √(αt). */
export const bottomFilmM = (stirIntervalS: number, diffusivity = SAUCE_DIFFUSIVITY): number =>
  1.13 * Math.sqrt(diffusivity * stirIntervalS);

/** Bottom of the pan over the bulk just before the next stir [K]. */
export function panBottomExcessK(given: {
  readonly netPowerW: number;
  readonly diameterM: number;
  readonly stirIntervalS: number;
  readonly conductivity?: number;
  readonly diffusivity?: number;
}): number {
  const flux = given.netPowerW / ((Math.PI * given.diameterM * given.diameterM) / 4);
  return (
    (flux * bottomFilmM(given.stirIntervalS, given.diffusivity)) / (given.conductivity ?? SAUCE_CONDUCTIVITY)
  );
}

/** Bottom temperatures where sugar begins to colour and to burn (flag, forbid). */
const BOTTOM_CAUTION_C = 130;
export const BOTTOM_STOP_C = 150;
/** A thin sauce stirs itself below this yield stress: twice the heat is borne (judgement). */
const SELF_STIRRING_PA = 3;
const SELF_STIRRING_FACTOR = 2;

/** Most net power [W] that keeps the bottom below the flag. */
export function gentlePowerW(given: {
  readonly boilingC: number;
  readonly diameterM: number;
  readonly stirIntervalS: number;
  readonly yieldStressPa: number;
}): number {
  const perWatt = panBottomExcessK({ netPowerW: 1, ...given });
  const helped = given.yieldStressPa < SELF_STIRRING_PA ? SELF_STIRRING_FACTOR : 1;
  return (helped * (BOTTOM_CAUTION_C - given.boilingC)) / perWatt;
}
