/** What the ledgers of a piece cannot account for: held to be rounding. */
import type { PieceBody } from './body.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';

/** Of the raw water [1]: cells + film + front + pool + evaporated + dripped − added against the start. */
export function waterClosure(body: PieceBody, state: Float64Array): number {
  let cells = 0;
  let raw = 0;
  for (let i = 0; i < body.cells; i++) {
    cells += body.proteinKgM2[i]! * body.cellMoisture(state, i);
    raw += body.proteinKgM2[i]! * body.rawMoisture;
  }
  const start = raw + body.piece.filmStartKgM2;
  const now =
    cells +
    state[AT.film]! +
    state[AT.front]! +
    state[AT.pool]! +
    state[AT.evaporated]! +
    state[AT.dripped]! -
    state[AT.added]!;
  return (now - start) / start;
}

/** Enthalpy of a half and of the layer on it, above a temperature [J/m²]. */
export function heldHeatJM2(body: PieceBody, state: Float64Array, aboveC: number): number {
  let held = 0;
  for (let i = 0; i <= state[AT.wetCell]!; i++)
    held +=
      (body.proteinKgM2[i]! * (body.solidsCapacity + SPECIFIC_HEAT_WATER * body.cellMoisture(state, i)) +
        state[body.extraAt + i]!) *
      (state[body.temperatureAt + i]! - aboveC);
  return held;
}

/** Of the heat that went in [1]. */
export function energyClosure(body: PieceBody, state: Float64Array): number {
  const now = heldHeatJM2(body, state, 0);
  let start = 0;
  for (let i = 0; i < body.cells; i++) {
    const protein = body.proteinKgM2[i]!;
    start += protein * (body.solidsCapacity + SPECIFIC_HEAT_WATER * body.rawMoisture) * body.piece.startC;
  }
  start += body.layerJM2K * body.piece.startC;
  const ledger = state[AT.heatIn]! - state[AT.waterEnthalpyOut]!;
  const scale = Math.abs(state[AT.heatIn]!) + Math.abs(start) + 1;
  return (now - start - ledger) / scale;
}
