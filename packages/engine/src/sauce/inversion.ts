/** Sucrose split by acid in the simmer. */
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp } from '../numeric/elementary.ts';
import type { Batch } from './batch.ts';
import { tenToThe } from './chargeBalance.ts';

const RATE_25C = 1.2e-4;
const ACTIVATION = 108_000;

/** First-order rate [1/s], ±50 %. @source activation energy from a polarimetric measurement (2015, abstract); rate from memory */
export const inversionRate = (ph: number, temperatureC: number): number =>
  RATE_25C *
  exp((ACTIVATION / GAS_CONSTANT_JMOLK) * (1 / 298.15 - 1 / (temperatureC + 273.15))) *
  tenToThe(-ph);

/** Share of the sucrose that is glucose and fructose after this time [1]. */
export const invertedShare = (ph: number, temperatureC: number, timeS: number): number =>
  1 - exp(-inversionRate(ph, temperatureC) * timeS);

const WATER_TAKEN_UP = 18.0153 / 342.297;

/** The batch with `share` of its sucrose inverted; one water goes into each, the mass stays. */
export function invert(b: Batch, share: number): Batch {
  const splitG = b.sucroseG * share;
  const hexoseG = (splitG * (1 + WATER_TAKEN_UP)) / 2;
  return {
    ...b,
    sucroseG: b.sucroseG - splitG,
    glucoseG: b.glucoseG + hexoseG,
    fructoseG: b.fructoseG + hexoseG,
    waterG: b.waterG - splitG * WATER_TAKEN_UP,
  };
}
