import { exp } from './elementary.ts';

const SQRT_PI = 1.7724538509055160273;
/** Above this the continued fraction converges quickly, below it the series loses no digits. */
const SWITCH = 2;
const FRACTION_TERMS = 120;

/** erf by its series of positive terms, 0 ≤ x ≤ 2: to 1e-15. */
function erfSeries(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; term > 1e-17 * sum; n++) {
    term *= (2 * x * x) / (2 * n + 1);
    sum += term;
  }
  return (2 / SQRT_PI) * sum * exp(-x * x);
}

/** e^{x²}·erfc(x) for x ≥ 2 by Laplace's continued fraction: to 1e-15. */
function scaledFraction(x: number): number {
  let tail = x;
  for (let n = FRACTION_TERMS; n > 0; n--) tail = x + n / 2 / tail;
  return 1 / (SQRT_PI * tail);
}

/** Complementary error function of any real, to 1e-13 relative where x ≤ 2 and to rounding of e^{−x²} above. */
export function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x);
  return x < SWITCH ? 1 - erfSeries(x) : scaledFraction(x) * exp(-x * x);
}

/** e^{x²}·erfc(x) for x ≥ 0: does not underflow. @throws RangeError below zero */
export function erfcx(x: number): number {
  if (!(x >= 0)) throw new RangeError(`x must be at least 0, got ${x}`);
  return x < SWITCH ? exp(x * x) * (1 - erfSeries(x)) : scaledFraction(x);
}
