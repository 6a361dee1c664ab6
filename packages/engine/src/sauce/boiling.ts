/** Where a sauce boils: a_w(T) · p_sat(T) = P. */
import { saturationPressurePa, saturationTemperatureC } from '../air/saturation.ts';
import { sucroseWaterActivity } from '../food/waterActivity.ts';

const HOTTEST_C = 180;

/** Temperature [°C] at which a liquid whose water activity may depend on temperature boils at this pressure [Pa]. */
export function boilingTemperatureC(
  waterActivityAt: (temperatureC: number) => number,
  pressurePa: number,
): number {
  let low = saturationTemperatureC(pressurePa) - 1e-6;
  let high = HOTTEST_C;
  const short = (t: number): number => waterActivityAt(t) * saturationPressurePa(t) - pressurePa;
  if (!(short(high) > 0)) throw new RangeError(`nothing boils below ${HOTTEST_C} °C at ${pressurePa} Pa`);
  while (high - low > 1e-9) {
    const middle = (low + high) / 2;
    if (short(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Boiling point of a sucrose syrup [°C], mass fraction to 0.85.
 * Browne's table (1912) lies higher above 65 %: 0.8 K at 66 %, 1.5 at 70 %, 2.6 at 80 %; the sugarhouse rule for
 * maple syrup (4.0 K at 66.9 %) sides with the equation.
 */
export const syrupBoilingC = (sucrose: number, pressurePa: number): number =>
  boilingTemperatureC((t) => sucroseWaterActivity(sucrose, Math.min(t, 130)), pressurePa);
