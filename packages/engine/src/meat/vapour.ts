/**
 * Saturation pressure as the inner loop needs it: value and slope every 0.5 K from −20 to 130 °C, cubic between
 * (Hermite); relative error below 10⁻⁸ of the law it tabulates.
 */
import { saturationPressurePa, saturationSlopePaPerK, saturationTemperatureC } from '../air/saturation.ts';
import { log } from '../numeric/elementary.ts';

/** An imported name is looked up at every use where modules are not bundled; the loop reads its own. */
const ln = log;

const LOWEST_C = -20;
const HIGHEST_C = 130;
const STEP_K = 0.5;
const ROWS = (HIGHEST_C - LOWEST_C) / STEP_K + 1;

const PRESSURE_AND_SLOPE = (() => {
  const table = new Float64Array(2 * ROWS);
  for (let row = 0; row < ROWS; row++) {
    const temperatureC = LOWEST_C + row * STEP_K;
    table[2 * row] = saturationPressurePa(temperatureC);
    table[2 * row + 1] = saturationSlopePaPerK(temperatureC);
  }
  return table;
})();

/** Share of the air pressure from which the logarithm goes on straight, so that Newton's steps stay finite. */
const NEAR_BOILING = 0.985;
const SLOPE_NEAR_BOILING_PER_K = 0.02;

/**
 * ln[(1 − Y∞)/(1 − Y(a_w p_s(T)))], the drive of evaporation from a surface of temperature T, with its slope.
 * Y is the vapour's mass fraction, .622 p/(P − .378 p). `value` and `slope` hold the answer of the last `at`.
 */
export class EvaporationDrive {
  value = 0;
  slope = 0;
  #pressurePa = 0;
  #waterActivity = 0;
  #ambient = 0;
  #nearBoilingC = 0;
  #nearBoilingValue = 0;

  /** @param humidityRatio [kg/kg] of the gas round the piece */
  configure(pressurePa: number, humidityRatio: number, waterActivity: number): void {
    // 1 − Y∞ = 1/(1 + W)
    this.#ambient = -log(1 + humidityRatio);
    if (pressurePa === this.#pressurePa && waterActivity === this.#waterActivity) {
      this.#nearBoilingValue = this.#ambient + nearBoilingLog(pressurePa);
      return;
    }
    this.#pressurePa = pressurePa;
    this.#waterActivity = waterActivity;
    this.#nearBoilingC = saturationTemperatureC((NEAR_BOILING * pressurePa) / waterActivity);
    this.#nearBoilingValue = this.#ambient + nearBoilingLog(pressurePa);
  }

  at(temperatureC: number): void {
    if (temperatureC >= this.#nearBoilingC) {
      this.value = this.#nearBoilingValue + SLOPE_NEAR_BOILING_PER_K * (temperatureC - this.#nearBoilingC);
      this.slope = SLOPE_NEAR_BOILING_PER_K;
      return;
    }
    const place = (temperatureC - LOWEST_C) / STEP_K;
    const row = place <= 0 ? 0 : place | 0;
    const t = place - row;
    const p0 = PRESSURE_AND_SLOPE[2 * row]!;
    const m0 = PRESSURE_AND_SLOPE[2 * row + 1]! * STEP_K;
    const p1 = PRESSURE_AND_SLOPE[2 * row + 2]!;
    const m1 = PRESSURE_AND_SLOPE[2 * row + 3]! * STEP_K;
    const c2 = 3 * (p1 - p0) - 2 * m0 - m1;
    const c3 = 2 * (p0 - p1) + m0 + m1;
    const p = this.#waterActivity * (p0 + t * (m0 + t * (c2 + t * c3)));
    const dp = (this.#waterActivity * (m0 + t * (2 * c2 + t * 3 * c3))) / STEP_K;
    const dry = this.#pressurePa - p;
    const mixed = this.#pressurePa - 0.378 * p;
    this.value = this.#ambient + ln(mixed / dry);
    this.slope = dp * (1 / dry - 0.378 / mixed);
  }
}

const nearBoilingLog = (pressurePa: number): number =>
  log((pressurePa - 0.378 * NEAR_BOILING * pressurePa) / (pressurePa - NEAR_BOILING * pressurePa));
