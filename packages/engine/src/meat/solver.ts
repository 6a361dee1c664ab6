/**
 * One piece, stepped: implicit heat on a grid fixed to the dry solids, juice set free as the meat warms, a film and a
 * drying front at the surface. A piece with like faces is one half, from its thermal centre to its face; one with unlike
 * faces is two, coupled through its middle. Per m² of raw outer face: of two halves the mean.
 */
import { saturationTemperatureC } from '../air/saturation.ts';
import { PieceBody } from './body.ts';
import { energyClosure, heldHeatJM2, waterClosure } from './closure.ts';
import { HalfPiece, STAGE_SHARE } from './halfPiece.ts';
import { type HeatFlows, heatOf, meanHeat } from './heatFlows.ts';
import { solveBoth } from './middle.ts';
import type { Cover, Face, MeatParameters, Surroundings } from './parameters.ts';
import { AT } from './state.ts';
import { type SofteningRate, ThermalTables } from './tables.ts';

/** A face that is open all round; its share is the piece's. */
const openFace = (evaporatingShare: number): Face => ({
  evaporatingShare,
  layerM2KW: 0,
  layerJM2K: 0,
  convectionShare: 1,
});

export class PieceSolver {
  /** From the middle to a face. */
  readonly cells: number;
  /** Of the open half, then of the other one: scalars at `AT`, then the cells' figures; see PieceBody. */
  readonly state: Float64Array;
  readonly temperatureAt: number;
  readonly doseAt: number;

  /** Kept for every cell when true, for the innermost alone when false. */
  doseEverywhere = false;
  /** 1: implicit Euler, first order; to be held against codings of that order. */
  stages: 1 | 2 = 2;

  readonly #upper: HalfPiece;
  readonly #lowerHalf: HalfPiece;
  /** Missing while both faces are alike. */
  #lower: HalfPiece | undefined;
  #boilingC = 100;
  #boilingAtPa = 0;

  constructor(cells: number, softeningRate: SofteningRate) {
    this.cells = cells;
    const tables = new ThermalTables(softeningRate);
    const upper = new PieceBody(cells, tables);
    const { stateLength } = upper;
    this.state = new Float64Array(2 * stateLength);
    this.#upper = new HalfPiece(upper, this.state.subarray(0, stateLength));
    this.#lowerHalf = new HalfPiece(new PieceBody(cells, tables), this.state.subarray(stateLength));
    this.temperatureAt = upper.temperatureAt;
    this.doseAt = upper.doseAt;
  }

  /** Puts a raw piece on the solver. */
  begin(piece: MeatParameters): void {
    this.#upper.begin(piece, openFace(piece.evaporatingShare));
    this.#lower = piece.otherFace && this.#lowerHalf;
    if (piece.otherFace) this.#lowerHalf.begin(piece, piece.otherFace);
    this.faceFire(0, 0);
  }

  /**
   * How much warmer the walls are that each face sees, coals among them [K]; 0 as a piece is put on. Of a piece whose
   * faces are alike the first alone counts, for all of it.
   */
  faceFire(openRiseK: number, otherRiseK: number): void {
    this.#upper.wallRiseK = openRiseK;
    this.#lowerHalf.wallRiseK = otherRiseK;
  }

  /** What of `state` is in use. */
  get stateLength(): number {
    return (this.#lower ? 2 : 1) * this.#upper.body.stateLength;
  }

  /** Raw mass per m² of outer face [kg/m²]. */
  get rawMassKgM2(): number {
    return this.#upper.body.rawMassKgM2;
  }
  /** In the middle between the faces. */
  get coreC(): number {
    return this.#mean(this.temperatureAt);
  }
  /** Equivalent hours at 95 °C gathered there. */
  get coreDoseH(): number {
    return this.#mean(this.doseAt);
  }
  /** Outer side of the bark on the open face. */
  get surfaceC(): number {
    return this.state[AT.surfaceC]!;
  }
  /** Outer side of the bark on the other face; of the open one where they are alike. */
  get otherSurfaceC(): number {
    return (this.#lower ?? this.#upper).state[AT.surfaceC]!;
  }
  /** Heat in the last step, mean of the faces. */
  lastHeat(): HeatFlows {
    const upper = heatOf(this.#upper.flows);
    return this.#lower ? meanHeat(upper, heatOf(this.#lower.flows)) : upper;
  }
  /** Enthalpy above that of the same meat at its temperature when it went on, mean of the faces [J/m²]. */
  get heldHeatJM2(): number {
    const held = this.#halves().map(({ body, state }) => heldHeatJM2(body, state, body.piece.startC));
    return held.reduce((sum, one) => sum + one, 0) / held.length;
  }
  /** Gone into the air since the start, mean of the faces [kg/m²]. */
  get evaporatedKgM2(): number {
    return this.#mean(AT.evaporated);
  }
  /** Run off or lying in the wrap, less what was poured and sprayed on, mean of the faces [kg/m²]. */
  get drippedKgM2(): number {
    return this.#mean(AT.dripped) + this.#mean(AT.pool) - this.#mean(AT.added);
  }
  /** Browning of the open face so far, equivalent hours of a dry surface at 110 °C [h]. */
  get browningH(): number {
    return this.state[AT.browningH]!;
  }
  /** The same on the other face. */
  get otherBrowningH(): number {
    return (this.#lower ?? this.#upper).state[AT.browningH]!;
  }
  get solidFatShare(): number {
    return this.#mean(AT.solidFatShare);
  }
  /** Water left between raw (1) and fully cooked (0) in the middle, the eater's juiciness axis. */
  get juiciness(): number {
    const { piece, moistureAt, rawMoisture } = this.#upper.body;
    const left = this.#mean(moistureAt) - piece.finalHoldingDryBasis;
    return left / (rawMoisture - piece.finalHoldingDryBasis);
  }
  /** Dried raw thickness of the open face, before shrinkage [m]. */
  get driedDepthM(): number {
    return this.#upper.body.driedDepthM(this.#upper.state);
  }
  /** The same of the other face. */
  get otherDriedDepthM(): number {
    const half = this.#lower ?? this.#upper;
    return half.body.driedDepthM(half.state);
  }
  /** Thickness of the bark on the open face, dried glaze included [m]. */
  get barkM(): number {
    return this.#upper.body.barkM(this.#upper.state);
  }
  /** The same on the other face. */
  get otherBarkM(): number {
    const half = this.#lower ?? this.#upper;
    return half.body.barkM(half.state);
  }
  /** Distance of each cell's middle from the centre over the half thickness; length `cells`. */
  cellDepths(): Float64Array {
    const { radius } = this.#upper.body.unit;
    return Float64Array.from({ length: this.cells }, (_, i) => 0.5 * (radius[i]! + radius[i + 1]!));
  }

  /** Temperature of a cell of the open half [°C]; inside the dry bark straight between its outer side and the front. */
  cellC(cell: number): number {
    return cellTemperatureC(this.#upper, cell);
  }
  /** The same in the half of the other face. */
  otherCellC(cell: number): number {
    return cellTemperatureC(this.#lower ?? this.#upper, cell);
  }

  /** Equivalent hours at 95 °C gathered in a cell of the open half, and of the other one; see `doseEverywhere`. */
  cellDoseH(cell: number): number {
    return this.state[this.doseAt + cell]!;
  }
  otherCellDoseH(cell: number): number {
    return (this.#lower ?? this.#upper).state[this.doseAt + cell]!;
  }

  /** Wets both faces. @param kgM2 per m² of raw outer face */
  spritz(kgM2: number): void {
    for (const { state } of this.#halves()) {
      state[AT.film] = state[AT.film]! + kgM2;
      state[AT.added] = state[AT.added]! + kgM2;
    }
  }
  /** Pours liquid into the foil. */
  pour(kgM2: number): void {
    for (const { state } of this.#halves()) {
      state[AT.pool] = state[AT.pool]! + kgM2;
      state[AT.added] = state[AT.added]! + kgM2;
    }
  }
  /** Lays a film of glaze on both faces: its water wets the surface, its solids thicken the bark (1200 kg/m³). */
  glaze(waterKgM2: number, solidsKgM2: number): void {
    this.spritz(waterKgM2);
    for (const { state } of this.#halves()) state[AT.glazeM] = state[AT.glazeM]! + solidsKgM2 / 1200;
  }
  /** Opens the wrap: the pool wets the surface as far as it holds, the rest runs off. */
  openWrap(): void {
    for (const { state, body } of this.#halves()) {
      const pool = state[AT.pool]!;
      const room = body.piece.filmCapKgM2 - state[AT.film]!;
      const kept = room > 0 ? Math.min(pool, room) : 0;
      state[AT.film] = state[AT.film]! + kept;
      state[AT.dripped] = state[AT.dripped]! + pool - kept;
      state[AT.pool] = 0;
    }
  }

  /** Water that the ledgers cannot account for, of the raw water, in the worse half [1]. */
  waterClosure(): number {
    return worst(this.#halves().map(({ body, state }) => waterClosure(body, state)));
  }
  /** Enthalpy that the ledgers cannot account for, of the heat that went in, in the worse half [1]. */
  energyClosure(): number {
    return worst(this.#halves().map(({ body, state }) => energyClosure(body, state)));
  }

  /**
   * Goes on by `stepS` seconds.
   *
   * @param around at the end of the step
   * @param earlier STAGE_SHARE into the step; the same where the air stands still
   */
  step(stepS: number, around: Surroundings, cover: Cover, earlier = around): void {
    if (around.pressurePa !== this.#boilingAtPa) {
      this.#boilingAtPa = around.pressurePa;
      this.#boilingC = saturationTemperatureC(around.pressurePa);
    }
    const upper = this.#upper;
    const lower = this.#lower;
    upper.prepare(stepS, around, cover, this.#boilingC);
    lower?.prepare(stepS, around, cover, this.#boilingC);
    let isTwoStaged = this.stages === 2;
    if (isTwoStaged) {
      upper.startFirst(STAGE_SHARE);
      lower?.startFirst(STAGE_SHARE);
      this.#solveStage(earlier, STAGE_SHARE, 1 - STAGE_SHARE, true);
      const canGoOn = upper.canGoOn();
      isTwoStaged = lower ? lower.canGoOn() && canGoOn : canGoOn;
    }
    if (isTwoStaged) {
      upper.startSecond();
      lower?.startSecond();
      this.#solveStage(around, STAGE_SHARE, STAGE_SHARE, false);
    } else {
      upper.startFirst(1);
      lower?.startFirst(1);
      this.#solveStage(around, 1, 1, true);
    }
    upper.finish(isTwoStaged, this.doseEverywhere ? upper.state[AT.wetCell]! | 0 : 0);
    lower?.finish(isTwoStaged, this.doseEverywhere ? lower.state[AT.wetCell]! | 0 : 0);
  }

  /** @param share of the step over which the stage is implicit @param weight of the stage in the step */
  #solveStage(around: Surroundings, share: number, weight: number, isFirst: boolean): void {
    const upper = this.#upper;
    const lower = this.#lower;
    if (lower) {
      solveBoth(upper, lower, around.gasC, around.wallC, share, isFirst);
      lower.settleStage(weight, isFirst);
    } else upper.solveSurface(around.gasC, around.wallC, share, 0);
    upper.settleStage(weight, isFirst);
  }

  /** How many figures `keep` writes. */
  get keptLength(): number {
    return this.state.length + 2;
  }
  /** Writes what the next step depends on. @returns the place behind it */
  keep(row: Float64Array, at: number): number {
    row.set(this.state, at);
    const end = at + this.state.length;
    row[end] = this.#upper.stage.intoMeatWm2;
    row[end + 1] = this.#lowerHalf.stage.intoMeatWm2;
    return end + 2;
  }
  /** Takes what `keep` wrote of the same piece, after `begin`. @returns the place behind it */
  takeUp(row: Float64Array, at: number): number {
    const end = at + this.state.length;
    this.state.set(row.subarray(at, end));
    this.#upper.stage.intoMeatWm2 = row[end]!;
    this.#lowerHalf.stage.intoMeatWm2 = row[end + 1]!;
    return end + 2;
  }

  #mean(place: number): number {
    const value = this.#upper.state[place]!;
    return this.#lower ? 0.5 * (value + this.#lower.state[place]!) : value;
  }

  #halves(): HalfPiece[] {
    return this.#lower ? [this.#upper, this.#lower] : [this.#upper];
  }
}

const worst = (closures: readonly number[]): number =>
  closures.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most));

function cellTemperatureC({ state, body }: HalfPiece, cell: number): number {
  if (cell <= state[AT.wetCell]!) return state[body.temperatureAt + cell]!;
  const { radius } = body.unit;
  const front = 1 - body.driedDepthM(state) / body.piece.halfThicknessM;
  const share = (0.5 * (radius[cell]! + radius[cell + 1]!) - front) / (1 - front);
  return state[AT.frontC]! + share * (state[AT.surfaceC]! - state[AT.frontC]!);
}
