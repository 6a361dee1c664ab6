/**
 * Root of a continuous function between two points of opposite sign, by the Illinois method with bisection where
 * it dawdles; the answer lies within `tolerance` of a change of sign.
 *
 * @throws RangeError where the ends do not differ in sign
 * @source Dowell & Jarratt 1971
 */
export function rootBetween(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new RangeError(`no change of sign between ${from} and ${to}`);
  for (let i = 0; i < 200 && Math.abs(b - a) > tolerance; i++) {
    // Every third step halves, so that a flat end cannot hold the search.
    let c = i % 3 === 2 ? 0.5 * (a + b) : b - (fb * (b - a)) / (fb - fa);
    if (!(c > Math.min(a, b) && c < Math.max(a, b))) c = 0.5 * (a + b);
    const fc = f(c);
    if (fc === 0) return c;
    if (fc * fb < 0) {
      a = b;
      fa = fb;
    } else fa *= 0.5;
    b = c;
    fb = fc;
  }
  return b;
}
