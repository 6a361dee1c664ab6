/**
 * Coefficients of one step, taken at its middle as foreseen from the slopes in which the last step ended: conduction,
 * heat capacity, and the juice that the step sets free. One sweep, one look-up per cell.
 *
 * Juice is known before the heat is stepped: half of it leaves at the temperature in which the step begins, half at that
 * in which it ends, so that enthalpy closes to rounding with the capacity of the middle.
 */
import { expm1 } from '../numeric/elementary.ts';
import type { PieceBody } from './body.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';
import { COLUMN, COLUMNS, logistic, TABLE_LAST_ROW, TABLE_LOWEST_C, TABLE_STEP_K } from './tables.ts';

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const WATER_CONDUCTANCE = COLUMN.waterConductance;
const WATER_VOLUME = COLUMN.waterVolume;
const SOLIDS_CONDUCTANCE = COLUMN.solidsConductance;
const SOLIDS_VOLUME = COLUMN.solidsVolume;
const RELEASE_RATE = COLUMN.releaseRate;
const PER_ROW = COLUMNS;
const LAST_ROW = TABLE_LAST_ROW;
const LOWEST_C = TABLE_LOWEST_C;
const PER_ROW_K = 1 / TABLE_STEP_K;
const WATER_CAPACITY = SPECIFIC_HEAT_WATER;
const holdingShare = logistic;

/** Half thickness over conductivity: across the fibres and between muscles a little slower than the parallel law. */
const HALF_OVER_CONDUCTION_SHARE = 0.5 / 0.95;
/** The middle of a step is foreseen no further than this from its begin [K]. */
const MOST_FORESEEN_K = 6;
/** The front cell is foreseen no drier than this. */
const MOST_DRIED_SHARE = 0.97;

export class StepCoefficients {
  /** [J/(m²·K)], length cells */
  readonly capacity: Float64Array;
  /** Conductance to the next inner cell [W/(m²·K)], length cells; [0] is that of no cell. */
  readonly link: Float64Array;
  /** Juice that each cell gives in this step [kg/m²], length cells. */
  readonly released: Float64Array;
  /** From the front to the middle of its cell [W/(m²·K)]. */
  toFront = 0;
  /** From the middle of the piece to that of the innermost cell [m²·K/W]. */
  middleResistance = 0;
  barkM = 0;
  /** All of `released` [kg/m²]. */
  juiceKgM2 = 0;
  /** Water that the front is foreseen to take in the first half of the step [kg/m²]. */
  frontWaterKgM2 = 0;
  /** Rate of release over that at 80 °C in the middle of the wet cells. */
  middleReleaseRate = 0;

  constructor(cells: number) {
    this.capacity = new Float64Array(cells);
    this.link = new Float64Array(cells);
    this.released = new Float64Array(cells);
  }

  /** Fills the coefficients and takes the juice out of the cells. */
  prepare(body: PieceBody, state: Float64Array, stepS: number): void {
    const { piece, table, solidsCapacity } = body;
    const { capacity, link, released } = this;
    const T = body.temperatureAt;
    const M = body.moistureAt;
    const X = body.extraAt;
    const slope = body.slopeAt;
    const protein = body.proteinKgM2;
    const thickness = body.thicknessM;
    const face = body.unit.face;
    const halfStepS = 0.5 * stepS;
    const k = state[AT.wetCell]! | 0;
    const wetShare = 1 - state[AT.driedShare]!;
    const span = (body.rawMoisture - piece.finalHoldingDryBasis) / (1 - body.holdingStart);
    const unheld = body.rawMoisture + span * body.holdingStart;
    const perWidth = 1 / piece.releaseWidthK;
    const rate80Step = piece.releaseRate80PerS * stepS;
    const middle = k >> 1;
    const midDried = this.#foreseeFront(body, state, halfStepS, k);
    let juice = 0;
    let inner = 0;
    for (let i = 0; i <= k; i++) {
      const moisture = state[M + i]!;
      let ahead = halfStepS * state[slope + i]!;
      ahead = ahead > MOST_FORESEEN_K ? MOST_FORESEEN_K : Math.max(ahead, -MOST_FORESEEN_K);
      const midC = state[T + i]! + ahead;
      let place = (midC - LOWEST_C) * PER_ROW_K;
      place = place > 0 ? Math.min(place, LAST_ROW) : 0;
      const row = place | 0;
      const share = place - row;
      const low = row * PER_ROW;
      const high = low + PER_ROW;

      const rate =
        table[low + RELEASE_RATE]! + share * (table[high + RELEASE_RATE]! - table[low + RELEASE_RATE]!);
      if (i === middle) this.middleReleaseRate = rate;
      const excess = moisture - unheld + span * holdingShare((midC - piece.releaseMidC) * perWidth);
      let less = 0;
      if (excess > 0) {
        const x = rate80Step * rate;
        // 1 − e^−x, its series where x is small (relative error below 10⁻⁸).
        less =
          excess *
          (x < 0.1
            ? x * (1 - (x / 2) * (1 - (x / 3) * (1 - (x / 4) * (1 - (x / 5) * (1 - x / 6)))))
            : -expm1(-x));
        state[M + i] = moisture - less;
      }
      const given = protein[i]! * (i === k ? wetShare : 1) * less;
      released[i] = given;
      juice += given;

      const midMoisture = moisture - 0.5 * less;
      const volume =
        midMoisture *
          (table[low + WATER_VOLUME]! + share * (table[high + WATER_VOLUME]! - table[low + WATER_VOLUME]!)) +
        table[low + SOLIDS_VOLUME]! +
        share * (table[high + SOLIDS_VOLUME]! - table[low + SOLIDS_VOLUME]!);
      const conductance =
        midMoisture *
          (table[low + WATER_CONDUCTANCE]! +
            share * (table[high + WATER_CONDUCTANCE]! - table[low + WATER_CONDUCTANCE]!)) +
        table[low + SOLIDS_CONDUCTANCE]! +
        share * (table[high + SOLIDS_CONDUCTANCE]! - table[low + SOLIDS_CONDUCTANCE]!);
      let outer = (HALF_OVER_CONDUCTION_SHARE * thickness[i]! * volume) / conductance;
      let water = protein[i]! * midMoisture;
      if (i === k) {
        outer *= 1 - midDried;
        water =
          protein[i]! * (wetShare * midMoisture + (1 - wetShare) * piece.barkMoistureDryBasis) -
          this.frontWaterKgM2;
      }
      capacity[i] = protein[i]! * solidsCapacity + WATER_CAPACITY * water + state[X + i]!;
      if (i > 0) link[i] = face[i]! / (inner + outer);
      else this.middleResistance = outer;
      inner = outer;
    }
    this.juiceKgM2 = juice;
    this.toFront = (face[k + 1]! - midDried * (face[k + 1]! - face[k]!)) / inner;
  }

  /** @returns dried share of the front cell in the middle of the step */
  #foreseeFront(body: PieceBody, state: Float64Array, halfStepS: number, k: number): number {
    const dried = state[AT.driedShare]!;
    const perShare = body.proteinKgM2[k]! * (state[body.moistureAt + k]! - body.piece.barkMoistureDryBasis);
    const most = Math.max(dried, MOST_DRIED_SHARE);
    let mid = dried + (halfStepS * state[AT.throughFront]!) / perShare;
    if (!(mid < most)) mid = most;
    this.frontWaterKgM2 = (mid - dried) * perShare;
    this.barkM = body.barkM(state, mid);
    return mid;
  }
}
