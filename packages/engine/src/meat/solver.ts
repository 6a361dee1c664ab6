/**
 * One piece, stepped: implicit heat on a grid fixed to the dry solids, juice set free as the meat warms, a film and a
 * drying front at the surface. All state lies in one Float64Array, so that a checkpoint is a copy of it.
 *
 * Order in a step: coefficients; inward elimination; Newton on the surface, exact to rounding in energy because the whole
 * interior is already eliminated; temperatures; film and front; juice; dose. Water that leaves a cell takes its enthalpy
 * at that cell's temperature along.
 */
import { saturationTemperatureC } from '../air/saturation.ts';
import { expm1 } from '../numeric/elementary.ts';
import { browningRate } from './colour.ts';
import { type UnitGrid, unitGrid } from './grid.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import {
  COLUMN,
  COLUMNS,
  logistic,
  type SofteningRate,
  TABLE_LAST_ROW,
  TABLE_LOWEST_C,
  TABLE_STEP_K,
  temperaturePower08,
  thermalTable,
} from './tables.ts';
import { EvaporationDrive } from './vapour.ts';

/** Places in the state before the cells' own figures; masses per m² of raw outer face. */
export const AT = {
  /** m_f [kg/m²] */
  film: 0,
  /** m_o: water set aside for the front, or owed to it when negative [kg/m²] */
  front: 1,
  /** juice and liquid inside the foil [kg/m²] */
  pool: 2,
  /** [kg/m²] */
  evaporated: 3,
  /** [kg/m²] */
  dripped: 4,
  /** water added by spritz or poured into the foil [kg/m²] */
  added: 5,
  /** k: outermost wet cell */
  wetCell: 6,
  /** f: dried share of that cell */
  driedShare: 7,
  /** outer side of the bark [°C] */
  surfaceC: 8,
  /** T_f: where water evaporates [°C] */
  frontC: 9,
  /** heat into the meat behind the front, summed [J/m²] */
  heatIn: 10,
  /** enthalpy carried away by water leaving the cells, summed [J/m²] */
  waterEnthalpyOut: 11,
  /** heat that reached the surface, summed [J/m²] */
  heatFromAir: 12,
  /** heat spent on evaporation, summed [J/m²] */
  heatEvaporating: 13,
  /** thickness of dried glaze [m] */
  glazeM: 14,
  /** share of the renderable fat still solid [1] */
  solidFatShare: 15,
  /** browning of the dry surface, equivalent hours at 110 °C (colour.ts) [h] */
  browningH: 16,
  cells: 17,
} as const;

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const WATER_CONDUCTANCE = COLUMN.waterConductance;
const WATER_VOLUME = COLUMN.waterVolume;
const SOLIDS_CONDUCTANCE = COLUMN.solidsConductance;
const SOLIDS_VOLUME = COLUMN.solidsVolume;
const RELEASE_RATE = COLUMN.releaseRate;
const DOSE_RATE = COLUMN.doseRate;
const PER_ROW = COLUMNS;
const LAST_ROW = TABLE_LAST_ROW;
const LOWEST_C = TABLE_LOWEST_C;
const ROW_K = TABLE_STEP_K;
const holdingShare = logistic;
const power08 = temperaturePower08;

const SPECIFIC_HEAT_WATER = 4186;
const SPECIFIC_HEAT_PROTEIN = 2010;
const SPECIFIC_HEAT_FAT = 1990;
const STEFAN_BOLTZMANN = 5.670374419e-8;
/** Conduction across the fibres and between muscles is a little slower than the parallel law. */
const CONDUCTION_SHARE = 0.95;
const SPECIFIC_HEAT_GAS = 1030;
/** 0.85^(−2/3): Lewis factor of water vapour in air. */
const LEWIS = 1.1144254;
const GAS_CONSTANT_AIR = 287.05;
/** Diffusivity of vapour in air at 25 °C [m²/s]. */
const DIFFUSIVITY_25C = 2.6e-5;
const BARK_RESISTANCE_FLOOR_M = 1e-6;
const NEWTON_CAP_K = 12;
const NEWTON_CLOSE_K = 1e-6;
/** Below the boiling point by so much, so that the drive stays finite [K]. */
const BELOW_BOILING_K = 0.02;
/** A step that asks for more of the front cell's water than this dries it out. */
const DRY_OUT_SHARE = 0.97;
/** Rendering of fat at 80 °C [1/s], with the juice's temperature dependence. @source from memory, weak */
const RENDERING_80_PER_S = 1 / (3 * 3600);

const latentHeat = (temperatureC: number): number => 2.501e6 - 2361 * temperatureC;

export class PieceSolver {
  readonly cells: number;
  /** Scalars at `AT`, then temperatures [°C], water [kg/kg protein], heat capacity of dried cells moved inward [J/m²K], doses [h]; each length `cells`. */
  readonly state: Float64Array;
  readonly temperatureAt: number;
  readonly moistureAt: number;
  readonly extraAt: number;
  readonly doseAt: number;

  /** Heat and water through the surface in the last step: from the air, spent evaporating, into the meat [W/m²]; through film and bark [kg/m²s]. */
  lastFromAirWm2 = 0;
  lastEvaporatingWm2 = 0;
  lastIntoMeatWm2 = 0;
  lastEvaporationKgM2S = 0;

  /** Kept for every cell when true, for the innermost alone when false. */
  doseEverywhere = false;

  #piece!: MeatParameters;
  #unit!: UnitGrid;
  #table!: Float64Array;
  #tableOf: MeatParameters['composition'] | undefined;
  readonly #tables = new Map<MeatParameters['composition'], Float64Array>();
  #thickness: Float64Array;
  #proteinKgM2: Float64Array;
  #solidsCapacity = 0;
  #rawMoisture = 0;
  #holdingStart = 0;
  #rawMassKgM2 = 0;
  #boilingC = 100;
  #boilingAtPa = 0;
  readonly #drive = new EvaporationDrive();
  readonly #conductivity: Float64Array;
  readonly #pivot: Float64Array;
  readonly #right: Float64Array;
  readonly #link: Float64Array;
  readonly #previousDoseRate: Float64Array;

  readonly #softeningRate: SofteningRate;

  constructor(cells: number, softeningRate: SofteningRate) {
    this.cells = cells;
    this.#softeningRate = softeningRate;
    this.state = new Float64Array(AT.cells + 4 * cells);
    this.temperatureAt = AT.cells;
    this.moistureAt = AT.cells + cells;
    this.extraAt = AT.cells + 2 * cells;
    this.doseAt = AT.cells + 3 * cells;
    this.#thickness = new Float64Array(cells);
    this.#proteinKgM2 = new Float64Array(cells);
    this.#conductivity = new Float64Array(cells);
    this.#pivot = new Float64Array(cells);
    this.#right = new Float64Array(cells);
    this.#link = new Float64Array(cells + 1);
    this.#previousDoseRate = new Float64Array(cells);
  }

  /** Puts a raw piece on the solver. */
  begin(piece: MeatParameters): void {
    this.#piece = piece;
    if (!this.#unit || this.#dimensionality !== piece.dimensionality) {
      this.#unit = unitGrid(this.cells, piece.dimensionality);
      this.#dimensionality = piece.dimensionality;
    }
    if (this.#tableOf !== piece.composition) {
      const known = this.#tables.get(piece.composition);
      this.#table = known ?? thermalTable(piece.composition, this.#softeningRate);
      if (!known) this.#tables.set(piece.composition, this.#table);
      this.#tableOf = piece.composition;
    }
    const { water, protein, fat, ash } = piece.composition;
    const length = piece.halfThicknessM;
    for (let i = 0; i < this.cells; i++) {
      this.#thickness[i] = (this.#unit.radius[i + 1]! - this.#unit.radius[i]!) * length;
      this.#proteinKgM2[i] = this.#unit.volume[i]! * length * piece.densityKgM3 * protein;
    }
    this.#rawMassKgM2 = (piece.densityKgM3 * length) / piece.dimensionality;
    this.#solidsCapacity = SPECIFIC_HEAT_PROTEIN + (SPECIFIC_HEAT_FAT * (fat + ash)) / protein;
    this.#rawMoisture = water / protein;
    this.#holdingStart = holdingShare((piece.startC - piece.releaseMidC) / piece.releaseWidthK);
    const state = this.state;
    state.fill(0);
    state[AT.film] = piece.filmStartKgM2;
    state[AT.wetCell] = this.cells - 1;
    state[AT.surfaceC] = piece.startC;
    state[AT.frontC] = piece.startC;
    state[AT.solidFatShare] = 1;
    state.fill(piece.startC, this.temperatureAt, this.temperatureAt + this.cells);
    state.fill(this.#rawMoisture, this.moistureAt, this.moistureAt + this.cells);
  }
  #dimensionality = NaN;

  /** Raw mass per m² of outer face [kg/m²]. */
  get rawMassKgM2(): number {
    return this.#rawMassKgM2;
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
  get boilingC(): number {
    return this.#boilingC;
  }
  /** Water left between raw (1) and fully cooked (0) at the centre, the eater's juiciness axis. */
  get juiciness(): number {
    const left = this.state[this.moistureAt]! - this.#piece.finalHoldingDryBasis;
    return left / (this.#rawMoisture - this.#piece.finalHoldingDryBasis);
  }
  /** Dried raw thickness, before shrinkage [m]. */
  get driedDepthM(): number {
    const k = this.state[AT.wetCell]!;
    const f = this.state[AT.driedShare]!;
    const radius = this.#unit.radius;
    return (1 - radius[k + 1]! + f * (radius[k + 1]! - radius[k]!)) * this.#piece.halfThicknessM;
  }
  /** Thickness of the bark, dried glaze included [m]. */
  get barkM(): number {
    return this.#piece.barkShrinkage * this.driedDepthM + this.state[AT.glazeM]!;
  }
  /** Distance of each cell's middle from the centre over the half thickness; length `cells`. */
  cellDepths(): Float64Array {
    const radius = this.#unit.radius;
    return Float64Array.from({ length: this.cells }, (_, i) => 0.5 * (radius[i]! + radius[i + 1]!));
  }

  /** Temperature of a cell [°C]; inside the dry bark straight between its outer side and the front. */
  cellC(cell: number): number {
    const k = this.state[AT.wetCell]!;
    if (cell <= k) return this.state[this.temperatureAt + cell]!;
    const radius = this.#unit.radius;
    const front = 1 - this.driedDepthM / this.#piece.halfThicknessM;
    const share = (0.5 * (radius[cell]! + radius[cell + 1]!) - front) / (1 - front);
    return this.state[AT.frontC]! + share * (this.state[AT.surfaceC]! - this.state[AT.frontC]!);
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
    const room = this.#piece.filmCapKgM2 - state[AT.film]!;
    const kept = room > 0 ? Math.min(pool, room) : 0;
    state[AT.film] = state[AT.film]! + kept;
    state[AT.dripped] = state[AT.dripped]! + pool - kept;
    state[AT.pool] = 0;
  }

  /**
   * Water that the ledgers cannot account for, of the raw water [1]: cells + film + front + pool + evaporated + dripped
   * − added against the start.
   */
  waterClosure(): number {
    const state = this.state;
    const piece = this.#piece;
    let cells = 0;
    let raw = 0;
    for (let i = 0; i < this.cells; i++) {
      cells += this.#proteinKgM2[i]! * this.#cellMoisture(i);
      raw += this.#proteinKgM2[i]! * this.#rawMoisture;
    }
    const now =
      cells +
      state[AT.film]! +
      state[AT.front]! +
      state[AT.pool]! +
      state[AT.evaporated]! +
      state[AT.dripped]! -
      state[AT.added]!;
    return (now - raw - piece.filmStartKgM2) / (raw + piece.filmStartKgM2);
  }

  /** Enthalpy that the ledgers cannot account for, of the heat that went in [1]. */
  energyClosure(): number {
    const state = this.state;
    let now = 0;
    let start = 0;
    for (let i = 0; i < this.cells; i++) {
      const protein = this.#proteinKgM2[i]!;
      if (i <= state[AT.wetCell]!)
        now +=
          (protein * (this.#solidsCapacity + SPECIFIC_HEAT_WATER * this.#cellMoisture(i)) +
            state[this.extraAt + i]!) *
          state[this.temperatureAt + i]!;
      start +=
        protein * (this.#solidsCapacity + SPECIFIC_HEAT_WATER * this.#rawMoisture) * this.#piece.startC;
    }
    const ledger = state[AT.heatIn]! - state[AT.waterEnthalpyOut]!;
    const scale = Math.abs(state[AT.heatIn]!) + Math.abs(start) + 1;
    return (now - start - ledger) / scale;
  }

  #cellMoisture(i: number): number {
    const state = this.state;
    const k = state[AT.wetCell]!;
    if (i > k) return this.#piece.barkMoistureDryBasis;
    const f = i === k ? state[AT.driedShare]! : 0;
    return (1 - f) * state[this.moistureAt + i]! + f * this.#piece.barkMoistureDryBasis;
  }

  /**
   * Goes on by `stepS` seconds.
   *
   * @param around at the end of the step
   */
  step(stepS: number, around: Surroundings, cover: Cover): void {
    const state = this.state;
    const piece = this.#piece;
    const table = this.#table;
    const T = this.temperatureAt;
    const M = this.moistureAt;
    const X = this.extraAt;
    const k = state[AT.wetCell]! | 0;
    const f = state[AT.driedShare]!;
    const wet = 1 - f;
    const dryMoisture = piece.barkMoistureDryBasis;
    const perStep = 1 / stepS;
    const thickness = this.#thickness;
    const protein = this.#proteinKgM2;
    const conductivity = this.#conductivity;
    const pivot = this.#pivot;
    const right = this.#right;
    const link = this.#link;
    const face = this.#unit.face;
    const lastDosed = this.doseEverywhere ? k : 0;

    if (around.pressurePa !== this.#boilingAtPa) {
      this.#boilingAtPa = around.pressurePa;
      this.#boilingC = saturationTemperatureC(around.pressurePa);
    }

    // Coefficients and inward elimination in one sweep, centre to front.
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
        this.#previousDoseRate[i] =
          table[low + DOSE_RATE]! + share * (table[high + DOSE_RATE]! - table[low + DOSE_RATE]!);
      const moisture = state[M + i]!;
      conductivity[i] =
        (CONDUCTION_SHARE * (moisture * waterConductance + solidsConductance)) /
        (moisture * waterVolume + solidsVolume);
      const held = i === k ? wet * moisture + f * dryMoisture : moisture;
      const storage =
        (protein[i]! * (this.#solidsCapacity + SPECIFIC_HEAT_WATER * held) + state[X + i]!) * perStep;
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

    // The interior as the surface sees it: q = G_e (T_f − T_e).
    const frontFace = face[k + 1]! - f * (face[k + 1]! - face[k]!);
    const toFront = (2 * frontFace * conductivity[k]!) / (wet * thickness[k]!);
    const effective = toFront / (1 + toFront / pivot[k]!);
    const interiorC = right[k]! / pivot[k]!;
    this.#surface(stepS, around, cover, effective, interiorC);

    const intoMeat = this.lastIntoMeatWm2;
    state[T + k] = (right[k]! + intoMeat) / pivot[k]!;
    for (let i = k - 1; i >= 0; i--)
      state[T + i] = (right[i]! + link[i + 1]! * state[T + i + 1]!) / pivot[i]!;
    state[AT.heatIn] = state[AT.heatIn]! + intoMeat * stepS;
    state[AT.heatFromAir] = state[AT.heatFromAir]! + this.lastFromAirWm2 * stepS;
    state[AT.heatEvaporating] = state[AT.heatEvaporating]! + this.lastEvaporatingWm2 * stepS;

    this.#dryFront(stepS);
    this.#releaseJuice(stepS, cover.kind !== 'open', lastDosed);
  }

  /** Flow through the front of the last step [kg/m²s]. */
  #throughFront = 0;

  /** Solves the surface, books film and pool, and leaves the heat into the meat in `lastIntoMeatWm2`. */
  #surface(stepS: number, around: Surroundings, cover: Cover, effective: number, interiorC: number): void {
    const state = this.state;
    const piece = this.#piece;
    const bark = this.barkM;
    const barkConductance = piece.barkConductivityWmK / Math.max(bark, BARK_RESISTANCE_FLOOR_M);
    if (cover.kind !== 'open') {
      this.#closedSurface(stepS, around, cover, effective, interiorC);
      return;
    }
    const drive = this.#drive;
    drive.configure(around.pressurePa, around.humidityRatio, cover.waterActivity);
    const share = piece.evaporatingShare;
    const perMass = SPECIFIC_HEAT_GAS / (around.convectionWm2K * LEWIS);
    // 1/ρ = 287.05 T/P
    const paper = (cover.vapourResistanceSM * GAS_CONSTANT_AIR) / around.pressurePa;
    const sealing = 1 + (bark / piece.barkSealingM) * (bark / piece.barkSealingM);
    const throughBark =
      (sealing * bark * GAS_CONSTANT_AIR * 298.15) /
      (around.pressurePa * piece.barkOpenness * DIFFUSIVITY_25C);
    const film = state[AT.film]!;
    const reserve = piece.filmReserveKgM2;
    const convection = around.convectionWm2K;
    const radiant = 4 * STEFAN_BOLTZMANN * piece.emissivity * cover.radiationShare;
    const wallC = around.wallC;
    const canDry = state[AT.wetCell]! > 1;
    const highestFrontC = this.#boilingC - BELOW_BOILING_K;

    let surfaceC = state[AT.surfaceC]!;
    let frontC = state[AT.frontC]!;
    let fromAir = 0;
    let filmFlow = 0;
    let frontFlow = 0;
    let intoMeat = 0;
    let dryShare = 0;
    for (let iteration = 0; iteration < 30; iteration++) {
      const meanK = 0.5 * (surfaceC + wallC) + 273.15;
      const hr = radiant * meanK * meanK * meanK;
      const dhr = (1.5 * hr) / meanK;
      const outer = convection + hr;
      const supply = convection * around.gasC + hr * wallC - outer * surfaceC;
      const cut = 1 + cover.heatResistanceM2KW * outer;
      fromAir = supply / cut;
      const dFromAir = (dhr * (wallC - surfaceC) - outer - fromAir * cover.heatResistanceM2KW * dhr) / cut;

      drive.at(surfaceC);
      const filmResistance = perMass + paper * (surfaceC + 273.15);
      const potential = drive.value / filmResistance;
      const dPotential = (drive.slope - potential * paper) / filmResistance;
      let wetness = 1;
      let dWetness = 0;
      if (potential > 0) {
        const needed = reserve + stepS * potential;
        if (film < needed) {
          wetness = film / needed;
          dWetness = (-wetness * stepS * dPotential) / needed;
        }
      }
      dryShare = 1 - wetness;
      // Steam condenses on fat and bone side too.
      const open = potential > 0 ? share : 1;
      filmFlow = wetness * open * potential;
      const dFilmFlow = open * (wetness * dPotential + dWetness * potential);

      frontFlow = 0;
      let dFrontBySurface = 0;
      let dFrontByFront = 0;
      if (canDry && wetness < 1) {
        drive.at(frontC);
        if (drive.value > 0) {
          const frontK = frontC + 273.15;
          const barkTerm = throughBark / power08(frontK);
          const resistance = perMass + paper * frontK + barkTerm;
          const flow = (share * drive.value) / resistance;
          const dResistance = paper - (0.8 * barkTerm) / frontK;
          frontFlow = (1 - wetness) * flow;
          dFrontBySurface = -dWetness * flow;
          dFrontByFront = ((1 - wetness) * (share * drive.slope - flow * dResistance)) / resistance;
        }
      }
      const latentSurface = latentHeat(surfaceC);
      const latentFront = latentHeat(frontC);
      const throughBarkHeat = barkConductance * (surfaceC - frontC);
      intoMeat = effective * (frontC - interiorC);
      const r1 = fromAir - latentSurface * filmFlow - throughBarkHeat;
      const r2 = throughBarkHeat - latentFront * frontFlow - intoMeat;
      const a11 = dFromAir + 2361 * filmFlow - latentSurface * dFilmFlow - barkConductance;
      const a12 = barkConductance;
      const a21 = barkConductance - latentFront * dFrontBySurface;
      const a22 = -barkConductance + 2361 * frontFlow - latentFront * dFrontByFront - effective;
      const determinant = a11 * a22 - a12 * a21;
      let dSurface = (-r1 * a22 + r2 * a12) / determinant;
      let dFront = (-r2 * a11 + r1 * a21) / determinant;
      dSurface = dSurface > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dSurface, -NEWTON_CAP_K);
      dFront = dFront > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dFront, -NEWTON_CAP_K);
      surfaceC += dSurface;
      frontC += dFront;
      if (frontC > highestFrontC) frontC = highestFrontC;
      if (
        dSurface < NEWTON_CLOSE_K &&
        dSurface > -NEWTON_CLOSE_K &&
        ((dFront < NEWTON_CLOSE_K && dFront > -NEWTON_CLOSE_K) || frontC === highestFrontC)
      )
        break;
    }
    intoMeat = effective * (frontC - interiorC);
    state[AT.surfaceC] = surfaceC;
    state[AT.frontC] = frontC;
    state[AT.browningH] =
      state[AT.browningH]! + (stepS / 3600) * browningRate(surfaceC, dryShare, cover.waterActivity);
    const evaporating = latentHeat(surfaceC) * filmFlow + latentHeat(frontC) * frontFlow;
    state[AT.film] = film - filmFlow * stepS;
    state[AT.evaporated] = state[AT.evaporated]! + (filmFlow + frontFlow) * stepS;
    this.#throughFront = frontFlow;
    this.lastFromAirWm2 = fromAir;
    this.lastEvaporatingWm2 = evaporating;
    this.lastIntoMeatWm2 = intoMeat;
    this.lastEvaporationKgM2S = filmFlow + frontFlow;
  }

  /** Foil, rest and hold: film and front stay as they are, juice goes to the pool. */
  #closedSurface(
    stepS: number,
    around: Surroundings,
    cover: Exclude<Cover, { kind: 'open' }>,
    effective: number,
    interiorC: number,
  ): void {
    const state = this.state;
    // Inside the wrap the bark is soaked: no dry layer between surface and front.
    const inner = effective;
    let outer: number;
    let leakShare = 0;
    if (cover.kind === 'foil') {
      // The foil's own radiation is worth 0.8 W/m²K: it is bright.
      outer = 1 / (1 / (around.convectionWm2K + 0.8) + cover.gapM2KW);
      leakShare = cover.leakShare;
    } else outer = cover.transmittanceWm2K;

    const pool = state[AT.pool]!;
    let surfaceC = (outer * around.gasC + inner * interiorC) / (outer + inner);
    let vented = 0;
    if (leakShare > 0 && pool > 0 && around.gasC > interiorC) {
      const cut = outer * (1 - leakShare);
      const leakingC = (cut * around.gasC + inner * interiorC) / (cut + inner);
      const leak = (leakShare * outer * (around.gasC - leakingC)) / latentHeat(leakingC);
      if (leak * stepS <= pool) {
        surfaceC = leakingC;
        vented = leak;
      } else {
        vented = pool / stepS;
        surfaceC =
          (outer * around.gasC + inner * interiorC - vented * latentHeat(leakingC)) / (outer + inner);
      }
    }
    let fromFront = 0;
    if (surfaceC > this.#boilingC) {
      // Steam vents; what the pool cannot give comes from the meat.
      surfaceC = this.#boilingC;
      const surplus = outer * (around.gasC - surfaceC) - inner * (surfaceC - interiorC);
      const steam = surplus / latentHeat(surfaceC);
      const fromPool = steam * stepS <= pool ? steam : pool / stepS;
      fromFront = state[AT.wetCell]! > 1 ? steam - fromPool : 0;
      vented = fromPool;
    }
    const intoMeat = inner * (surfaceC - interiorC);
    state[AT.surfaceC] = surfaceC;
    state[AT.frontC] = surfaceC;
    state[AT.pool] = pool - vented * stepS;
    state[AT.evaporated] = state[AT.evaporated]! + (vented + fromFront) * stepS;
    this.#throughFront = fromFront;
    this.lastFromAirWm2 = outer * (around.gasC - surfaceC);
    this.lastIntoMeatWm2 = intoMeat;
    this.lastEvaporatingWm2 = (vented + fromFront) * latentHeat(surfaceC);
    this.lastEvaporationKgM2S = vented + fromFront;
  }

  /** Takes the water that left through the bark from the front cell, and moves the front inward. */
  #dryFront(stepS: number): void {
    if (this.#throughFront === 0) return;
    const state = this.state;
    const k = state[AT.wetCell]! | 0;
    const f = state[AT.driedShare]!;
    const protein = this.#proteinKgM2[k]!;
    const dryMoisture = this.#piece.barkMoistureDryBasis;
    const moisture = state[this.moistureAt + k]!;
    const needed = this.#throughFront * stepS - state[AT.front]!;
    const there = protein * (1 - f) * (moisture - dryMoisture);
    const temperatureC = state[this.temperatureAt + k]!;
    if (needed <= DRY_OUT_SHARE * there) {
      state[AT.front] = 0;
      state[AT.driedShare] = f + needed / (protein * (moisture - dryMoisture));
      state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + SPECIFIC_HEAT_WATER * temperatureC * needed;
      return;
    }
    state[AT.front] = there - needed;
    state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + SPECIFIC_HEAT_WATER * temperatureC * there;
    const dried =
      protein * (this.#solidsCapacity + SPECIFIC_HEAT_WATER * dryMoisture) + state[this.extraAt + k]!;
    const inner = k - 1;
    const innerCapacity =
      this.#proteinKgM2[inner]! *
        (this.#solidsCapacity + SPECIFIC_HEAT_WATER * state[this.moistureAt + inner]!) +
      state[this.extraAt + inner]!;
    const innerC = state[this.temperatureAt + inner]!;
    state[this.temperatureAt + inner] =
      (innerCapacity * innerC + dried * temperatureC) / (innerCapacity + dried);
    state[this.extraAt + inner] = state[this.extraAt + inner]! + dried;
    state[this.extraAt + k] = 0;
    state[AT.wetCell] = inner;
    state[AT.driedShare] = 0;
  }

  /** Juice set free at the new temperatures, the dose, and rendered fat. */
  #releaseJuice(stepS: number, isCovered: boolean, lastDosed: number): void {
    const state = this.state;
    const piece = this.#piece;
    const table = this.#table;
    const k = state[AT.wetCell]! | 0;
    const wetShare = 1 - state[AT.driedShare]!;
    const held0 = this.#holdingStart;
    const span = (this.#rawMoisture - piece.finalHoldingDryBasis) / (1 - held0);
    const perWidth = 1 / piece.releaseWidthK;
    const rate80Step = piece.releaseRate80PerS * stepS;
    let juice = 0;
    let enthalpy = 0;
    const middle = k >> 1;
    for (let i = 0; i <= k; i++) {
      const temperatureC = state[this.temperatureAt + i]!;
      let place = (temperatureC - LOWEST_C) / ROW_K;
      place = place > 0 ? Math.min(place, LAST_ROW) : 0;
      const row = place | 0;
      const share = place - row;
      const low = row * PER_ROW;
      const rate =
        table[low + RELEASE_RATE]! +
        share * (table[low + PER_ROW + RELEASE_RATE]! - table[low + RELEASE_RATE]!);
      if (i <= lastDosed) {
        const doseRate =
          table[low + DOSE_RATE]! + share * (table[low + PER_ROW + DOSE_RATE]! - table[low + DOSE_RATE]!);
        state[this.doseAt + i] =
          state[this.doseAt + i]! + 0.5 * stepS * (this.#previousDoseRate[i]! + doseRate);
      }
      if (i === middle)
        state[AT.solidFatShare] = state[AT.solidFatShare]! / (1 + RENDERING_80_PER_S * stepS * rate);
      const equilibrium =
        this.#rawMoisture - span * (holdingShare((temperatureC - piece.releaseMidC) * perWidth) - held0);
      const moisture = state[this.moistureAt + i]!;
      const excess = moisture - equilibrium;
      if (!(excess > 0)) continue;
      const x = rate80Step * rate;
      // 1 − e^−x, its series where x is small (relative error below 10⁻⁸).
      const released =
        excess *
        (x < 0.1
          ? x * (1 - (x / 2) * (1 - (x / 3) * (1 - (x / 4) * (1 - (x / 5) * (1 - x / 6)))))
          : -expm1(-x));
      state[this.moistureAt + i] = moisture - released;
      const mass = this.#proteinKgM2[i]! * (i === k ? wetShare : 1) * released;
      juice += mass;
      enthalpy += mass * temperatureC;
    }
    state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + SPECIFIC_HEAT_WATER * enthalpy;
    if (isCovered) {
      state[AT.pool] = state[AT.pool]! + juice;
      return;
    }
    const film = state[AT.film]! + piece.juiceToSurfaceShare * juice;
    const over = film > piece.filmCapKgM2 ? film - piece.filmCapKgM2 : 0;
    state[AT.film] = film - over;
    state[AT.dripped] = state[AT.dripped]! + (1 - piece.juiceToSurfaceShare) * juice + over;
  }
}
