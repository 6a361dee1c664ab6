import { cos, sin } from './elementary.ts';

/** Above this Hankel's expansion is exact to rounding; below it Miller's backward recurrence is cheap. */
const SWITCH = 25;

/** J0 and J1 together, x ≥ 0, to 1e-15 absolute. @source Abramowitz & Stegun 9.1.27, 9.1.46, 9.2.5 */
export function besselJ01(x: number): readonly [number, number] {
  if (!(x >= 0)) throw new RangeError(`x must be at least 0, got ${x}`);
  if (x === 0) return [1, 0];
  return x < SWITCH ? byRecurrence(x) : [byExpansion(0, x), byExpansion(1, x)];
}

/** Backward from an order that is negligible, scaled by 1 = J0 + 2(J2 + J4 + …). */
function byRecurrence(x: number): readonly [number, number] {
  const top = 2 * Math.ceil((x + 30) / 2);
  let above = 0;
  let here = 1e-30;
  let sum = 0;
  for (let n = top; n > 0; n--) {
    const below = ((2 * n) / x) * here - above;
    above = here;
    here = below;
    if (n % 2 === 1) sum += here;
    if (Math.abs(here) > 1e200) {
      above *= 1e-200;
      here *= 1e-200;
      sum *= 1e-200;
    }
  }
  // `here` is J0 and was counted once among the even orders; the others count twice.
  const scale = 1 / (2 * sum - here);
  return [here * scale, above * scale];
}

/** Hankel's asymptotic expansion, stopped at its smallest term. */
function byExpansion(order: 0 | 1, x: number): number {
  const mu = 4 * order * order;
  let term = 1;
  let P = 1;
  let Q = 0;
  for (let k = 1; k < 40; k++) {
    const next = (term * (mu - (2 * k - 1) * (2 * k - 1))) / (8 * k * x);
    if (Math.abs(next) >= Math.abs(term) || Math.abs(next) < 1e-17) break;
    term = next;
    const sign = k % 4 < 2 ? 1 : -1;
    if (k % 2 === 1) Q += sign * term;
    else P += sign * term;
  }
  const chi = x - (order / 2 + 0.25) * Math.PI;
  return Math.sqrt(2 / (Math.PI * x)) * (P * cos(chi) - Q * sin(chi));
}
