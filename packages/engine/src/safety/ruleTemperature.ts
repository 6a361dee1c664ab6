/**
 * Rules compare temperatures to a hundredth of a degree Fahrenheit, so that 54.444 °C is 130 °F and 54.4 °C is not.
 * Everything here counts in hundredths of °F, as whole numbers.
 */
export const hundredthsF = (celsius: number): number => Math.round((celsius * 1.8 + 32) * 100);

/** A printed temperature in hundredths of °F. */
export const printedHundredthsF = (value: number, unit: '°F' | '°C'): number =>
  unit === '°F' ? Math.round(value * 100) : hundredthsF(value);

/** [°C] of a temperature printed in °F. */
export const celsiusOf = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** Times and masses are compared exactly, limits included; this is the rounding of their arithmetic alone. */
const ROUNDING = 1e-9;

/** Whether `value` does not exceed `limit`. NaN exceeds. */
export const withinLimit = (value: number, limit: number): boolean => value <= limit * (1 + ROUNDING);
/** Whether `value` is at least `limit`. NaN is not. */
export const reachesLimit = (value: number, limit: number): boolean => value >= limit * (1 - ROUNDING);
