/** Nodes and weights of the 8-point Gauss–Legendre rule on [−1, 1]. @source Abramowitz & Stegun, table 25.4 */
const NODES = [0.183434642495649805, 0.525532409916328986, 0.79666647741362674, 0.960289856497536232];
const WEIGHTS = [0.362683783378361983, 0.313706645877887287, 0.222381034453374471, 0.101228536290376259];

/** Integral of a smooth function, by Gauss–Legendre on equal pieces. */
export function integrate(f: (x: number) => number, from: number, to: number, pieces: number): number {
  const half = (to - from) / (2 * pieces);
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const middle = from + (2 * i + 1) * half;
    for (let k = 0; k < NODES.length; k++) {
      const x = half * NODES[k]!;
      sum += WEIGHTS[k]! * (f(middle - x) + f(middle + x));
    }
  }
  return sum * half;
}
