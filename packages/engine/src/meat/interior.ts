/**
 * Heat between the cells of a piece, implicit: coefficients and elimination from the centre to the front in one sweep,
 * so that the surface sees the whole interior as q = G_e (T_f − T_e); then the temperatures, back to the centre.
 */
import type { PieceBody } from './body.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';
import { COLUMN, COLUMNS, TABLE_LAST_ROW, TABLE_LOWEST_C, TABLE_STEP_K } from './tables.ts';

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const WATER_CONDUCTANCE = COLUMN.waterConductance;
const WATER_VOLUME = COLUMN.waterVolume;
const SOLIDS_CONDUCTANCE = COLUMN.solidsConductance;
const SOLIDS_VOLUME = COLUMN.solidsVolume;
const DOSE_RATE = COLUMN.doseRate;
const PER_ROW = COLUMNS;
const LAST_ROW = TABLE_LAST_ROW;
const LOWEST_C = TABLE_LOWEST_C;
const ROW_K = TABLE_STEP_K;
const WATER_CAPACITY = SPECIFIC_HEAT_WATER;

/** Conduction across the fibres and between muscles is a little slower than the parallel law. */
const CONDUCTION_SHARE = 0.95;

export class Interior {
  /** G_e [W/(m²·K)] */
  effectiveWm2K = 0;
  /** T_e [°C] */
  seenC = 0;
  /** Dose rates at the begin of the step [h/s]; length cells, filled as far as asked. */
  readonly doseRate: Float64Array;
  readonly #conductivity: Float64Array;
  readonly #pivot: Float64Array;
  readonly #right: Float64Array;
  readonly #link: Float64Array;

  constructor(cells: number) {
    this.doseRate = new Float64Array(cells);
    this.#conductivity = new Float64Array(cells);
    this.#pivot = new Float64Array(cells);
    this.#right = new Float64Array(cells);
    this.#link = new Float64Array(cells + 1);
  }

  /** @param lastDosed outermost cell whose dose is kept */
  eliminate(body: PieceBody, state: Float64Array, stepS: number, lastDosed: number): void {
    const { piece, table, solidsCapacity } = body;
    const T = body.temperatureAt;
    const M = body.moistureAt;
    const X = body.extraAt;
    const k = state[AT.wetCell]! | 0;
    const f = state[AT.driedShare]!;
    const wet = 1 - f;
    const dryMoisture = piece.barkMoistureDryBasis;
    const perStep = 1 / stepS;
    const thickness = body.thicknessM;
    const protein = body.proteinKgM2;
    const conductivity = this.#conductivity;
    const pivot = this.#pivot;
    const right = this.#right;
    const link = this.#link;
    const doseRate = this.doseRate;
    const face = body.unit.face;
    for (let i = 0; i <= k; i++) {
      const temperatureC = state[T + i]!;
      let place = (temperatureC - LOWEST_C) / ROW_K;
      place = place > 0 ? Math.min(place, LAST_ROW) : 0;
      const row = place | 0;
      const share = place - row;
      const low = row * PER_ROW;
      const high = low + PER_ROW;
      const waterConductance =
        table[low + WATER_CONDUCTANCE]! +
        share * (table[high + WATER_CONDUCTANCE]! - table[low + WATER_CONDUCTANCE]!);
      const waterVolume =
        table[low + WATER_VOLUME]! + share * (table[high + WATER_VOLUME]! - table[low + WATER_VOLUME]!);
      const solidsConductance =
        table[low + SOLIDS_CONDUCTANCE]! +
        share * (table[high + SOLIDS_CONDUCTANCE]! - table[low + SOLIDS_CONDUCTANCE]!);
      const solidsVolume =
        table[low + SOLIDS_VOLUME]! + share * (table[high + SOLIDS_VOLUME]! - table[low + SOLIDS_VOLUME]!);
      if (i <= lastDosed)
        doseRate[i] = table[low + DOSE_RATE]! + share * (table[high + DOSE_RATE]! - table[low + DOSE_RATE]!);
      const moisture = state[M + i]!;
      conductivity[i] =
        (CONDUCTION_SHARE * (moisture * waterConductance + solidsConductance)) /
        (moisture * waterVolume + solidsVolume);
      const held = i === k ? wet * moisture + f * dryMoisture : moisture;
      const storage = (protein[i]! * (solidsCapacity + WATER_CAPACITY * held) + state[X + i]!) * perStep;
      let diagonal = storage;
      let rest = storage * temperatureC;
      if (i > 0) {
        const half = i === k ? wet * thickness[i]! : thickness[i]!;
        const g = (2 * face[i]!) / (thickness[i - 1]! / conductivity[i - 1]! + half / conductivity[i]!);
        link[i] = g;
        // The row above gets its outer link now that it is known.
        const above = pivot[i - 1]! + g;
        pivot[i - 1] = above;
        const w = g / above;
        diagonal += g - w * g;
        rest += w * right[i - 1]!;
      }
      pivot[i] = diagonal;
      right[i] = rest;
    }
    const frontFace = face[k + 1]! - f * (face[k + 1]! - face[k]!);
    const toFront = (2 * frontFace * conductivity[k]!) / (wet * thickness[k]!);
    this.effectiveWm2K = toFront / (1 + toFront / pivot[k]!);
    this.seenC = right[k]! / pivot[k]!;
  }

  /** Temperatures at the end of the step. @param intoMeatWm2 through the front */
  backSubstitute(body: PieceBody, state: Float64Array, intoMeatWm2: number): void {
    const T = body.temperatureAt;
    const k = state[AT.wetCell]! | 0;
    const pivot = this.#pivot;
    const right = this.#right;
    const link = this.#link;
    state[T + k] = (right[k]! + intoMeatWm2) / pivot[k]!;
    for (let i = k - 1; i >= 0; i--)
      state[T + i] = (right[i]! + link[i + 1]! * state[T + i + 1]!) / pivot[i]!;
  }
}
