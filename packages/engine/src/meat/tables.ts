/**
 * Functions of temperature that the inner loop looks up: every 0.25 K, straight between, 0 to 260 °C.
 * The chord error of an Arrhenius rate at 60–80 kJ/mol is below 5·10⁻⁵, of a property law below 10⁻⁶.
 */

import { componentConductivityWmK, componentDensityKgM3 } from '../food/choiOkos.ts';
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp, log } from '../numeric/elementary.ts';

export const TABLE_STEP_K = 0.25;
export const TABLE_LOWEST_C = -20;
const TABLE_HIGHEST_C = 260;
const ROWS = (TABLE_HIGHEST_C - TABLE_LOWEST_C) / TABLE_STEP_K + 2;
export const TABLE_LAST_ROW = ROWS - 2;

/** Columns of one row, side by side in memory. */
export const COLUMN = {
  /** k_w/ρ_w [W·m²/(kg·K)·…]: conductivity times specific volume of water */
  waterConductance: 0,
  /** 1/ρ_w [m³/kg] */
  waterVolume: 1,
  /** Σ (x_j/x_p) k_j/ρ_j over protein, fat and ash */
  solidsConductance: 2,
  /** Σ (x_j/x_p)/ρ_j over protein, fat and ash [m³/(kg protein)] */
  solidsVolume: 3,
  /** k_d(T)/k_80: release of juice, 60 kJ/mol */
  releaseRate: 4,
  /** equivalent hours at 95 °C gathered per second [h/s] */
  doseRate: 5,
} as const;
export const COLUMNS = 6;

/** Activation energy of the release of juice [J/mol]. @source fitted with k_80 on measured cooks; first order by Oillic et al. 2011 */
const RELEASE_ENERGY_JMOL = 60e3;
const RELEASE_REFERENCE_K = 353.15;

export interface Composition {
  /** Mass fractions of the raw lean and fat, bone left out. */
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly ash: number;
}

/** Softening against that at 95 °C [1] as a function of temperature [°C]. */
export type SofteningRate = (temperatureC: number) => number;

/** Rows of `COLUMNS` figures for meat of this composition; see `COLUMN`. */
function thermalTable(raw: Composition, softeningRate: SofteningRate): Float64Array {
  const table = new Float64Array(ROWS * COLUMNS);
  for (let row = 0; row < ROWS; row++) {
    const temperatureC = TABLE_LOWEST_C + row * TABLE_STEP_K;
    // The property laws are stated for 0 to 150 °C; beyond, their value at the end is kept.
    const lawC = temperatureC < 0 ? 0 : Math.min(temperatureC, 150);
    const temperatureK = temperatureC + 273.15;
    const at = row * COLUMNS;
    let conductance = 0;
    let volume = 0;
    for (const solid of ['protein', 'fat', 'ash'] as const) {
      const perProtein = raw[solid] / raw.protein;
      const specificVolume = 1 / componentDensityKgM3(solid, lawC);
      volume += perProtein * specificVolume;
      conductance += perProtein * specificVolume * componentConductivityWmK(solid, lawC);
    }
    const waterVolume = 1 / componentDensityKgM3('water', lawC);
    table[at + COLUMN.waterConductance] = waterVolume * componentConductivityWmK('water', lawC);
    table[at + COLUMN.waterVolume] = waterVolume;
    table[at + COLUMN.solidsConductance] = conductance;
    table[at + COLUMN.solidsVolume] = volume;
    table[at + COLUMN.releaseRate] = exp(
      (-RELEASE_ENERGY_JMOL / GAS_CONSTANT_JMOLK) * (1 / temperatureK - 1 / RELEASE_REFERENCE_K),
    );
    table[at + COLUMN.doseRate] = softeningRate(temperatureC) / 3600;
  }
  return table;
}

/** The tables of one softening law, made when a composition is first met. */
export class ThermalTables {
  readonly #softeningRate: SofteningRate;
  readonly #known = new Map<Composition, Float64Array>();
  #last: Composition | undefined;
  #lastTable!: Float64Array;

  constructor(softeningRate: SofteningRate) {
    this.#softeningRate = softeningRate;
  }

  of(composition: Composition): Float64Array {
    if (composition === this.#last) return this.#lastTable;
    const table = this.#known.get(composition) ?? thermalTable(composition, this.#softeningRate);
    this.#known.set(composition, table);
    this.#last = composition;
    this.#lastTable = table;
    return table;
  }
}

/** Density of the raw piece at 20 °C [kg/m³], volumes adding. @source Choi & Okos 1986 */
export function rawDensityKgM3(raw: Composition): number {
  let volume = 0;
  let mass = 0;
  for (const part of ['water', 'protein', 'fat', 'ash'] as const) {
    volume += raw[part] / componentDensityKgM3(part, 20);
    mass += raw[part];
  }
  return mass / volume;
}

const LOGISTIC_STEP = 1 / 64;
const LOGISTIC_HALF_WIDTH = 14;
const LOGISTIC = Float64Array.from(
  { length: (2 * LOGISTIC_HALF_WIDTH) / LOGISTIC_STEP + 2 },
  (_, row) => 1 / (1 + exp(LOGISTIC_HALF_WIDTH - row * LOGISTIC_STEP)),
);

/** 1/(1 + e^−x), looked up every 1/64; error below 4·10⁻⁶. */
export function logistic(x: number): number {
  if (!(x > -LOGISTIC_HALF_WIDTH)) return 0;
  if (x >= LOGISTIC_HALF_WIDTH) return 1;
  const place = (x + LOGISTIC_HALF_WIDTH) / LOGISTIC_STEP;
  const row = place | 0;
  const low = LOGISTIC[row]!;
  return low + (place - row) * (LOGISTIC[row + 1]! - low);
}

const POWER_LOWEST_K = 250;
const POWER_ROWS = 300;
const POWER_08 = Float64Array.from({ length: POWER_ROWS }, (_, row) =>
  exp(0.8 * log((POWER_LOWEST_K + row) / 298.15)),
);

/** (T/298.15 K)^0.8, looked up every kelvin from 250 to 548 K; error below 3·10⁻⁷. */
export function temperaturePower08(temperatureK: number): number {
  const place = temperatureK - POWER_LOWEST_K;
  const row = place < 0 ? 0 : place > POWER_ROWS - 2 ? POWER_ROWS - 2 : place | 0;
  const low = POWER_08[row]!;
  return low + (place - row) * (POWER_08[row + 1]! - low);
}
