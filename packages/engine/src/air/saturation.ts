import { ZERO_CELSIUS_K } from '../numeric/constants.ts';
import { exp, log } from '../numeric/elementary.ts';

/** Coldest and hottest temperature of the two fits [°C]. */
export const SATURATION_FROM_C = -100;
const SATURATION_TO_C = 200;

/** ln of the saturation pressure in Pa over liquid water, T in kelvin. */
const lnOverLiquid = (T: number): number =>
  -5800.2206 / T +
  1.3914993 +
  T * (-0.048640239 + T * (4.1764768e-5 - T * 1.4452093e-8)) +
  6.5459673 * log(T);

/** ln of the saturation pressure in Pa over ice, T in kelvin. */
const lnOverIce = (T: number): number =>
  -5674.5359 / T +
  6.3925247 +
  T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) +
  4.1635019 * log(T);

/** d ln p / dT of each branch [1/K]. */
const slopeOverLiquid = (T: number): number =>
  5800.2206 / (T * T) - 0.048640239 + T * (2 * 4.1764768e-5 - T * 3 * 1.4452093e-8) + 6.5459673 / T;
const slopeOverIce = (T: number): number =>
  5674.5359 / (T * T) -
  9.677843e-3 +
  T * (2 * 6.2215701e-7 + T * (3 * 2.0747825e-9 - T * 4 * 9.484024e-13)) +
  4.1635019 / T;

/**
 * Vapour pressure of pure water at saturation [Pa]: over liquid water from 0 °C, over ice below.
 *
 * Strictly increasing. Within 0.03 % of IAPWS-95 from 0 to 160 °C.
 * @param temperatureC −100 to 200 °C
 * @throws RangeError outside, or where the temperature is not a number
 * @source Hyland & Wexler 1983, as in ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 5 (ice, from memory) and 6
 */
export function saturationPressurePa(temperatureC: number): number {
  if (!(temperatureC >= SATURATION_FROM_C && temperatureC <= SATURATION_TO_C))
    throw new RangeError(`temperatureC must be in [-100, 200], got ${temperatureC}`);
  const T = temperatureC + ZERO_CELSIUS_K;
  return exp(temperatureC >= 0 ? lnOverLiquid(T) : lnOverIce(T));
}

/** Slope of the saturation pressure [Pa/K], exact derivative of the fit. @throws RangeError as above */
export function saturationSlopePaPerK(temperatureC: number): number {
  const T = temperatureC + ZERO_CELSIUS_K;
  return saturationPressurePa(temperatureC) * (temperatureC >= 0 ? slopeOverLiquid(T) : slopeOverIce(T));
}

const FREEZING_LIQUID_PA = saturationPressurePa(0);
const FREEZING_ICE_PA = exp(lnOverIce(ZERO_CELSIUS_K));
const LOWEST_PA = saturationPressurePa(SATURATION_FROM_C);
const HIGHEST_PA = saturationPressurePa(SATURATION_TO_C);

/**
 * Temperature at which water of this pressure saturates [°C]: the inverse of `saturationPressurePa`, to 1e-10 K.
 *
 * The two fits differ by 0.01 % at 0 °C; a pressure between them answers 0 °C.
 * @param pressurePa 0.0014 Pa to 1.555 MPa
 * @throws RangeError outside
 */
export function saturationTemperatureC(pressurePa: number): number {
  if (!(pressurePa >= LOWEST_PA && pressurePa <= HIGHEST_PA))
    throw new RangeError(`pressurePa must be in [${LOWEST_PA}, ${HIGHEST_PA}], got ${pressurePa}`);
  const isIce = pressurePa < FREEZING_ICE_PA;
  if (!isIce && pressurePa <= FREEZING_LIQUID_PA) return 0;
  const target = log(pressurePa);
  // Magnus form for the first guess, then Newton in ln p: near a straight line, so four steps reach rounding.
  const y = log(pressurePa / 611.2);
  let T = ZERO_CELSIUS_K + (isIce ? (272.62 * y) / (22.46 - y) : (243.12 * y) / (17.62 - y));
  for (let i = 0; i < 8; i++) {
    const step = isIce
      ? (target - lnOverIce(T)) / slopeOverIce(T)
      : (target - lnOverLiquid(T)) / slopeOverLiquid(T);
    T += step;
    if (Math.abs(step) < 1e-11 * T) break;
  }
  return T - ZERO_CELSIUS_K;
}
