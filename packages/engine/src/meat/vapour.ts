/**
 * The drive of evaporation as the inner loop needs it: looked up every half kelvin, cubic between (Hermite), where the
 * vapour pressure is below four fifths of the air's; nearer to boiling from the saturation pressure, looked up alike.
 * Error of the drive below 10⁻⁶ of it.
 */
import { saturationPressurePa, saturationSlopePaPerK, saturationTemperatureC } from '../air/saturation.ts';
import { log } from '../numeric/elementary.ts';

/** An imported name is looked up at every use where modules are not bundled; the loop reads its own. */
const ln = log;

const LOWEST_C = -20;
const HIGHEST_C = 130;
const STEP_K = 0.5;
const PER_STEP = 1 / STEP_K;
const ROWS = (HIGHEST_C - LOWEST_C) / STEP_K + 1;

/** Saturation pressure and its change over one row [Pa]. */
const SATURATION = (() => {
  const table = new Float64Array(2 * ROWS);
  for (let row = 0; row < ROWS; row++) {
    const temperatureC = LOWEST_C + row * STEP_K;
    table[2 * row] = saturationPressurePa(temperatureC);
    table[2 * row + 1] = STEP_K * saturationSlopePaPerK(temperatureC);
  }
  return table;
})();

/** Share of the air pressure up to which the logarithm itself is looked up. */
const TABULATED = 0.8;
/** Share from which the logarithm goes on straight, so that Newton's steps stay finite. */
const NEAR_BOILING = 0.985;
const SLOPE_NEAR_BOILING_PER_K = 0.02;
/** Tables kept: a cook has one pressure, and film and glaze for activities. */
const MOST_TABLES = 8;

/** −ln(1 − Y) of the film at one pressure and activity: value and change over one row, side by side. */
interface DriveTable {
  readonly pressurePa: number;
  readonly waterActivity: number;
  readonly rows: Float64Array;
  readonly tabulatedToC: number;
  readonly nearBoilingC: number;
  readonly nearBoilingValue: number;
}

function driveTable(pressurePa: number, waterActivity: number): DriveTable {
  const tabulatedToC = Math.min(saturationTemperatureC((TABULATED * pressurePa) / waterActivity), HIGHEST_C);
  const count = Math.floor((tabulatedToC - LOWEST_C) * PER_STEP) + 1;
  const rows = new Float64Array(2 * count);
  for (let row = 0; row < count; row++) {
    const p = waterActivity * SATURATION[2 * row]!;
    const dry = pressurePa - p;
    const mixed = pressurePa - 0.378 * p;
    rows[2 * row] = ln(mixed / dry);
    rows[2 * row + 1] = waterActivity * SATURATION[2 * row + 1]! * (1 / dry - 0.378 / mixed);
  }
  return {
    pressurePa,
    waterActivity,
    rows,
    tabulatedToC: LOWEST_C + (count - 1) * STEP_K,
    nearBoilingC: saturationTemperatureC((NEAR_BOILING * pressurePa) / waterActivity),
    nearBoilingValue: ln(
      (pressurePa - 0.378 * NEAR_BOILING * pressurePa) / (pressurePa - NEAR_BOILING * pressurePa),
    ),
  };
}

/**
 * ln[(1 − Y∞)/(1 − Y(a_w p_s(T)))], the drive of evaporation from a surface of temperature T, with its slope.
 * Y is the vapour's mass fraction, .622 p/(P − .378 p). `value` and `slope` hold the answer of the last `at`.
 */
export class EvaporationDrive {
  value = 0;
  slope = 0;
  #table!: DriveTable;
  #humidityRatio = NaN;
  #ambient = 0;
  readonly #tables: DriveTable[] = [];

  /** @param humidityRatio [kg/kg] of the gas round the piece */
  configure(pressurePa: number, humidityRatio: number, waterActivity: number): void {
    if (humidityRatio !== this.#humidityRatio) {
      this.#humidityRatio = humidityRatio;
      // 1 − Y∞ = 1/(1 + W)
      this.#ambient = -ln(1 + humidityRatio);
    }
    const table = this.#table;
    if (table && table.pressurePa === pressurePa && table.waterActivity === waterActivity) return;
    for (const known of this.#tables)
      if (known.pressurePa === pressurePa && known.waterActivity === waterActivity) {
        this.#table = known;
        return;
      }
    if (this.#tables.length >= MOST_TABLES) this.#tables.length = 0;
    this.#table = driveTable(pressurePa, waterActivity);
    this.#tables.push(this.#table);
  }

  at(temperatureC: number): void {
    const table = this.#table;
    if (temperatureC < table.tabulatedToC) {
      const rows = table.rows;
      const place = (temperatureC - LOWEST_C) * PER_STEP;
      const row = place <= 0 ? 0 : place | 0;
      const t = place - row;
      const at = 2 * row;
      const v0 = rows[at]!;
      const m0 = rows[at + 1]!;
      const v1 = rows[at + 2]!;
      const m1 = rows[at + 3]!;
      const c2 = 3 * (v1 - v0) - 2 * m0 - m1;
      const c3 = 2 * (v0 - v1) + m0 + m1;
      this.value = this.#ambient + v0 + t * (m0 + t * (c2 + t * c3));
      this.slope = PER_STEP * (m0 + t * (2 * c2 + t * 3 * c3));
      return;
    }
    if (temperatureC < table.nearBoilingC) {
      this.#nearBoiling(table, temperatureC);
      return;
    }
    this.value =
      this.#ambient + table.nearBoilingValue + SLOPE_NEAR_BOILING_PER_K * (temperatureC - table.nearBoilingC);
    this.slope = SLOPE_NEAR_BOILING_PER_K;
  }

  #nearBoiling(table: DriveTable, temperatureC: number): void {
    const place = (temperatureC - LOWEST_C) * PER_STEP;
    const row = place | 0;
    const t = place - row;
    const p0 = SATURATION[2 * row]!;
    const m0 = SATURATION[2 * row + 1]!;
    const p1 = SATURATION[2 * row + 2]!;
    const m1 = SATURATION[2 * row + 3]!;
    const c2 = 3 * (p1 - p0) - 2 * m0 - m1;
    const c3 = 2 * (p0 - p1) + m0 + m1;
    const p = table.waterActivity * (p0 + t * (m0 + t * (c2 + t * c3)));
    const dp = table.waterActivity * PER_STEP * (m0 + t * (2 * c2 + t * 3 * c3));
    const dry = table.pressurePa - p;
    const mixed = table.pressurePa - 0.378 * p;
    this.value = this.#ambient + ln(mixed / dry);
    this.slope = dp * (1 / dry - 0.378 / mixed);
  }
}
