/** The drying front: water that left through the bark is taken from the outermost wet cell, and the front moves inward. */
import type { PieceBody } from './body.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';

/** A step that asks for more of the front cell's water than this dries it out. */
const DRY_OUT_SHARE = 0.97;

/**
 * After a step: the state holds the temperatures of its end.
 *
 * @param throughFrontKgM2 that left in this step
 * @param earlyKgM2 what of it left at the temperature of the begin
 * @param begunC temperature of the front cell at the begin
 */
export function moveFront(
  body: PieceBody,
  state: Float64Array,
  throughFrontKgM2: number,
  earlyKgM2: number,
  begunC: number,
): void {
  if (throughFrontKgM2 === 0 && earlyKgM2 === 0) return;
  const k = state[AT.wetCell]! | 0;
  const f = state[AT.driedShare]!;
  const protein = body.proteinKgM2[k]!;
  const dryMoisture = body.piece.barkMoistureDryBasis;
  const moisture = state[body.moistureAt + k]!;
  const needed = throughFrontKgM2 - state[AT.front]!;
  const there = protein * (1 - f) * (moisture - dryMoisture);
  const temperatureC = state[body.temperatureAt + k]!;
  if (needed <= DRY_OUT_SHARE * there) {
    state[AT.front] = 0;
    state[AT.driedShare] = f + needed / (protein * (moisture - dryMoisture));
    bookEnthalpy(state, needed, earlyKgM2, begunC, temperatureC);
    return;
  }
  state[AT.front] = there - needed;
  bookEnthalpy(state, there, earlyKgM2, begunC, temperatureC);
  const { solidsCapacity, temperatureAt, extraAt } = body;
  const dried = protein * (solidsCapacity + SPECIFIC_HEAT_WATER * dryMoisture) + state[extraAt + k]!;
  const inner = k - 1;
  const innerCapacity =
    body.proteinKgM2[inner]! * (solidsCapacity + SPECIFIC_HEAT_WATER * state[body.moistureAt + inner]!) +
    state[extraAt + inner]!;
  const innerC = state[temperatureAt + inner]!;
  state[temperatureAt + inner] = (innerCapacity * innerC + dried * temperatureC) / (innerCapacity + dried);
  state[extraAt + inner] = state[extraAt + inner]! + dried;
  state[extraAt + k] = 0;
  state[AT.wetCell] = inner;
  state[AT.driedShare] = 0;
}

function bookEnthalpy(
  state: Float64Array,
  leftKgM2: number,
  earlyKgM2: number,
  begunC: number,
  endedC: number,
): void {
  state[AT.waterEnthalpyOut] =
    state[AT.waterEnthalpyOut]! +
    SPECIFIC_HEAT_WATER * (earlyKgM2 * begunC + (leftKgM2 - earlyKgM2) * endedC);
}
