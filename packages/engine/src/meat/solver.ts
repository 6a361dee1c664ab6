/**
 * One piece, stepped: implicit heat on a grid fixed to the dry solids, juice set free as the meat warms, a film and a
 * drying front at the surface.
 *
 * Order in a step: coefficients; inward elimination; Newton on the surface, exact to rounding in energy because the whole
 * interior is already eliminated; temperatures; film and front; juice; dose. Water that leaves a cell takes its enthalpy
 * at that cell's temperature along.
 */
import { saturationTemperatureC } from '../air/saturation.ts';
import { energyClosure, waterClosure } from './closure.ts';
import { HalfPiece, STAGE_SHARE } from './halfPiece.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import { AT } from './state.ts';
import type { SofteningRate } from './tables.ts';

export class PieceSolver {
  readonly cells: number;
  /** Scalars at `AT`, then temperatures [°C], water [kg/kg protein], heat capacity of dried cells moved inward [J/m²K], doses [h]; each length `cells`. */
  readonly state: Float64Array;
  readonly temperatureAt: number;
  readonly doseAt: number;

  /** Kept for every cell when true, for the innermost alone when false. */
  doseEverywhere = false;
  /** 1: implicit Euler, first order; to be held against codings of that order. */
  stages: 1 | 2 = 2;

  readonly #half: HalfPiece;
  #boilingC = 100;
  #boilingAtPa = 0;

  constructor(cells: number, softeningRate: SofteningRate) {
    this.cells = cells;
    this.#half = HalfPiece.onGrid(cells, softeningRate);
    this.state = this.#half.state;
    this.temperatureAt = this.#half.body.temperatureAt;
    this.doseAt = this.#half.body.doseAt;
  }

  /** Puts a raw piece on the solver. */
  begin(piece: MeatParameters): void {
    this.#half.begin(piece);
  }

  /** Raw mass per m² of outer face [kg/m²]. */
  get rawMassKgM2(): number {
    return this.#half.body.rawMassKgM2;
  }
  get coreC(): number {
    return this.state[this.temperatureAt]!;
  }
  /** Equivalent hours at 95 °C gathered at the thermal centre. */
  get coreDoseH(): number {
    return this.state[this.doseAt]!;
  }
  get surfaceC(): number {
    return this.state[AT.surfaceC]!;
  }
  /** Heat from the air and heat spent evaporating in the last step [W/m²]. */
  get lastFromAirWm2(): number {
    return this.#half.flows.fromAirWm2;
  }
  get lastEvaporatingWm2(): number {
    return this.#half.flows.evaporatingWm2;
  }
  /** Gone into the air since the start [kg/m²]. */
  get evaporatedKgM2(): number {
    return this.state[AT.evaporated]!;
  }
  /** Run off or lying in the wrap, less what was poured and sprayed on [kg/m²]. */
  get drippedKgM2(): number {
    const state = this.state;
    return state[AT.dripped]! + state[AT.pool]! - state[AT.added]!;
  }
  /** Browning so far, equivalent hours of a dry surface at 110 °C [h]. */
  get browningH(): number {
    return this.state[AT.browningH]!;
  }
  get solidFatShare(): number {
    return this.state[AT.solidFatShare]!;
  }
  /** Water left between raw (1) and fully cooked (0) at the centre, the eater's juiciness axis. */
  get juiciness(): number {
    const { piece, moistureAt, rawMoisture } = this.#half.body;
    const left = this.state[moistureAt]! - piece.finalHoldingDryBasis;
    return left / (rawMoisture - piece.finalHoldingDryBasis);
  }
  /** Dried raw thickness, before shrinkage [m]. */
  get driedDepthM(): number {
    return this.#half.body.driedDepthM(this.state);
  }
  /** Thickness of the bark, dried glaze included [m]. */
  get barkM(): number {
    return this.#half.body.barkM(this.state);
  }
  /** Distance of each cell's middle from the centre over the half thickness; length `cells`. */
  cellDepths(): Float64Array {
    const { radius } = this.#half.body.unit;
    return Float64Array.from({ length: this.cells }, (_, i) => 0.5 * (radius[i]! + radius[i + 1]!));
  }

  /** Temperature of a cell [°C]; inside the dry bark straight between its outer side and the front. */
  cellC(cell: number): number {
    const { state } = this;
    if (cell <= state[AT.wetCell]!) return state[this.temperatureAt + cell]!;
    const { radius } = this.#half.body.unit;
    const front = 1 - this.driedDepthM / this.#half.body.piece.halfThicknessM;
    const share = (0.5 * (radius[cell]! + radius[cell + 1]!) - front) / (1 - front);
    return state[AT.frontC]! + share * (state[AT.surfaceC]! - state[AT.frontC]!);
  }

  /** Wets the surface. @param kgM2 per m² of raw outer face */
  spritz(kgM2: number): void {
    this.state[AT.film] = this.state[AT.film]! + kgM2;
    this.state[AT.added] = this.state[AT.added]! + kgM2;
  }
  /** Pours liquid into the foil. */
  pour(kgM2: number): void {
    this.state[AT.pool] = this.state[AT.pool]! + kgM2;
    this.state[AT.added] = this.state[AT.added]! + kgM2;
  }
  /** Lays a film of glaze on: its water wets the surface, its solids thicken the bark (1200 kg/m³). */
  glaze(waterKgM2: number, solidsKgM2: number): void {
    this.spritz(waterKgM2);
    this.state[AT.glazeM] = this.state[AT.glazeM]! + solidsKgM2 / 1200;
  }
  /** Opens the wrap: the pool wets the surface as far as it holds, the rest runs off. */
  openWrap(): void {
    const state = this.state;
    const pool = state[AT.pool]!;
    const room = this.#half.body.piece.filmCapKgM2 - state[AT.film]!;
    const kept = room > 0 ? Math.min(pool, room) : 0;
    state[AT.film] = state[AT.film]! + kept;
    state[AT.dripped] = state[AT.dripped]! + pool - kept;
    state[AT.pool] = 0;
  }

  /** Water that the ledgers cannot account for, of the raw water [1]. */
  waterClosure(): number {
    return waterClosure(this.#half.body, this.state);
  }
  /** Enthalpy that the ledgers cannot account for, of the heat that went in [1]. */
  energyClosure(): number {
    return energyClosure(this.#half.body, this.state);
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
    const half = this.#half;
    const lastDosed = this.doseEverywhere ? this.state[AT.wetCell]! | 0 : 0;
    half.prepare(stepS, around, cover, this.#boilingC);
    let isTwoStaged = this.stages === 2;
    if (isTwoStaged) {
      half.startFirst(STAGE_SHARE);
      half.solveStage(earlier.gasC, earlier.wallC, STAGE_SHARE, 1 - STAGE_SHARE, true);
      isTwoStaged = half.startSecond();
    }
    if (isTwoStaged) half.solveStage(around.gasC, around.wallC, STAGE_SHARE, STAGE_SHARE, false);
    else {
      half.startFirst(1);
      half.solveStage(around.gasC, around.wallC, 1, 1, true);
    }
    half.finish(isTwoStaged, lastDosed);
  }
}
