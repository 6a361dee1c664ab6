/** The piece on the grid: what stays as it is while the state is stepped. */
import { type UnitGrid, unitGrid } from './grid.ts';
import { solidsCapacityJkgK } from './heatContent.ts';
import type { MeatParameters } from './parameters.ts';
import { AT, FIGURES_PER_CELL } from './state.ts';
import { logistic, type ThermalTables } from './tables.ts';

export class PieceBody {
  readonly cells: number;
  /** Where the cells' figures begin in the state; each length `cells`. */
  readonly temperatureAt: number;
  readonly slopeAt: number;
  readonly moistureAt: number;
  readonly extraAt: number;
  readonly doseAt: number;
  readonly stateLength: number;

  piece!: MeatParameters;
  unit!: UnitGrid;
  /** Rows of tables.ts for this composition. */
  table!: Float64Array;
  /** [m], length cells */
  readonly thicknessM: Float64Array;
  /** [kg/m²], length cells */
  readonly proteinKgM2: Float64Array;
  /** Per kg protein [J/(kg·K)]. */
  solidsCapacity = 0;
  /** M_0 [kg/kg protein] */
  rawMoisture = 0;
  /** S(T_0): what of the held water counts as given up at the start [1]. */
  holdingStart = 0;
  /** Raw mass per m² of outer face. */
  rawMassKgM2 = 0;
  /** Heat capacity of the layer on the face [J/(m²·K)]. */
  layerJM2K = 0;

  readonly #tables: ThermalTables;
  #dimensionality = NaN;

  constructor(cells: number, tables: ThermalTables) {
    this.cells = cells;
    this.#tables = tables;
    this.temperatureAt = AT.cells;
    this.moistureAt = AT.cells + cells;
    this.extraAt = AT.cells + 2 * cells;
    this.doseAt = AT.cells + 3 * cells;
    this.slopeAt = AT.cells + 4 * cells;
    this.stateLength = AT.cells + FIGURES_PER_CELL * cells;
    this.thicknessM = new Float64Array(cells);
    this.proteinKgM2 = new Float64Array(cells);
  }

  /** Lays a raw piece on the grid and fills its state. @param layerJM2K heat capacity of a layer on its face */
  begin(piece: MeatParameters, layerJM2K: number, state: Float64Array): void {
    this.piece = piece;
    this.layerJM2K = layerJM2K;
    if (this.#dimensionality !== piece.dimensionality) {
      this.unit = unitGrid(this.cells, piece.dimensionality);
      this.#dimensionality = piece.dimensionality;
    }
    this.table = this.#tables.of(piece.composition);
    const { water, protein, fat, ash } = piece.composition;
    const length = piece.halfThicknessM;
    for (let i = 0; i < this.cells; i++) {
      this.thicknessM[i] = (this.unit.radius[i + 1]! - this.unit.radius[i]!) * length;
      this.proteinKgM2[i] = this.unit.volume[i]! * length * piece.densityKgM3 * protein;
    }
    this.rawMassKgM2 = (piece.densityKgM3 * length) / piece.dimensionality;
    this.solidsCapacity = solidsCapacityJkgK(protein, fat + ash);
    this.rawMoisture = water / protein;
    this.holdingStart = logistic((piece.startC - piece.releaseMidC) / piece.releaseWidthK);
    state.fill(0);
    state[AT.film] = piece.filmStartKgM2;
    state[AT.wetCell] = this.cells - 1;
    state[AT.surfaceC] = piece.startC;
    state[AT.frontC] = piece.startC;
    state[AT.solidFatShare] = 1;
    state.fill(piece.startC, this.temperatureAt, this.temperatureAt + this.cells);
    state[this.extraAt + this.cells - 1] = layerJM2K;
    state.fill(this.rawMoisture, this.moistureAt, this.moistureAt + this.cells);
  }

  /** Dried raw thickness, before shrinkage [m]. @param driedShare of the front cell */
  driedDepthM(state: Float64Array, driedShare = state[AT.driedShare]!): number {
    const k = state[AT.wetCell]!;
    const f = driedShare;
    const radius = this.unit.radius;
    return (1 - radius[k + 1]! + f * (radius[k + 1]! - radius[k]!)) * this.piece.halfThicknessM;
  }

  /** Thickness of the bark, dried glaze included [m]. */
  barkM(state: Float64Array, driedShare = state[AT.driedShare]!): number {
    return this.piece.barkShrinkage * this.driedDepthM(state, driedShare) + state[AT.glazeM]!;
  }

  /** Water of a cell, its dried share included [kg/kg protein]. */
  cellMoisture(state: Float64Array, i: number): number {
    const k = state[AT.wetCell]!;
    if (i > k) return this.piece.barkMoistureDryBasis;
    const f = i === k ? state[AT.driedShare]! : 0;
    return (1 - f) * state[this.moistureAt + i]! + f * this.piece.barkMoistureDryBasis;
  }
}
