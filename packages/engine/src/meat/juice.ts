/** Juice set free as the meat warms, the softening dose, and rendered fat. */
import { expm1 } from '../numeric/elementary.ts';
import type { PieceBody } from './body.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';
import { COLUMN, COLUMNS, logistic, TABLE_LAST_ROW, TABLE_LOWEST_C, TABLE_STEP_K } from './tables.ts';

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const RELEASE_RATE = COLUMN.releaseRate;
const DOSE_RATE = COLUMN.doseRate;
const PER_ROW = COLUMNS;
const LAST_ROW = TABLE_LAST_ROW;
const LOWEST_C = TABLE_LOWEST_C;
const ROW_K = TABLE_STEP_K;
const holdingShare = logistic;

/** Rendering of fat at 80 °C [1/s], with the juice's temperature dependence. @source from memory, weak */
const RENDERING_80_PER_S = 1 / (3 * 3600);

/**
 * Steps juice, dose and fat at the temperatures of the state.
 *
 * @param doseRate at the begin of the step [h/s]; length at least `lastDosed` + 1
 * @param lastDosed outermost cell whose dose is kept
 * @returns juice that left the cells [kg/m²]
 */
export function releaseJuice(
  body: PieceBody,
  state: Float64Array,
  stepS: number,
  doseRate: Float64Array,
  lastDosed: number,
): number {
  const { piece, table } = body;
  const k = state[AT.wetCell]! | 0;
  const wetShare = 1 - state[AT.driedShare]!;
  const held0 = body.holdingStart;
  const span = (body.rawMoisture - piece.finalHoldingDryBasis) / (1 - held0);
  const perWidth = 1 / piece.releaseWidthK;
  const rate80Step = piece.releaseRate80PerS * stepS;
  let juice = 0;
  let enthalpy = 0;
  const middle = k >> 1;
  for (let i = 0; i <= k; i++) {
    const temperatureC = state[body.temperatureAt + i]!;
    let place = (temperatureC - LOWEST_C) / ROW_K;
    place = place > 0 ? Math.min(place, LAST_ROW) : 0;
    const row = place | 0;
    const share = place - row;
    const low = row * PER_ROW;
    const rate =
      table[low + RELEASE_RATE]! +
      share * (table[low + PER_ROW + RELEASE_RATE]! - table[low + RELEASE_RATE]!);
    if (i <= lastDosed) {
      const rateNow =
        table[low + DOSE_RATE]! + share * (table[low + PER_ROW + DOSE_RATE]! - table[low + DOSE_RATE]!);
      state[body.doseAt + i] = state[body.doseAt + i]! + 0.5 * stepS * (doseRate[i]! + rateNow);
    }
    if (i === middle)
      state[AT.solidFatShare] = state[AT.solidFatShare]! / (1 + RENDERING_80_PER_S * stepS * rate);
    const equilibrium =
      body.rawMoisture - span * (holdingShare((temperatureC - piece.releaseMidC) * perWidth) - held0);
    const moisture = state[body.moistureAt + i]!;
    const excess = moisture - equilibrium;
    if (!(excess > 0)) continue;
    const x = rate80Step * rate;
    // 1 − e^−x, its series where x is small (relative error below 10⁻⁸).
    const released =
      excess *
      (x < 0.1
        ? x * (1 - (x / 2) * (1 - (x / 3) * (1 - (x / 4) * (1 - (x / 5) * (1 - x / 6)))))
        : -expm1(-x));
    state[body.moistureAt + i] = moisture - released;
    const mass = body.proteinKgM2[i]! * (i === k ? wetShare : 1) * released;
    juice += mass;
    enthalpy += mass * temperatureC;
  }
  state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + SPECIFIC_HEAT_WATER * enthalpy;
  return juice;
}

/** Where the juice goes: into the wrap, or to the surface and off it. */
export function bookJuice(body: PieceBody, state: Float64Array, juiceKgM2: number, isCovered: boolean): void {
  if (isCovered) {
    state[AT.pool] = state[AT.pool]! + juiceKgM2;
    return;
  }
  const { juiceToSurfaceShare, filmCapKgM2 } = body.piece;
  const film = state[AT.film]! + juiceToSurfaceShare * juiceKgM2;
  const over = film > filmCapKgM2 ? film - filmCapKgM2 : 0;
  state[AT.film] = film - over;
  state[AT.dripped] = state[AT.dripped]! + (1 - juiceToSurfaceShare) * juiceKgM2 + over;
}
