/** What a cook would use instead: hours per kilogram, and a regression on mass, pit and end temperature. */

export interface Case {
  readonly cut: string;
  readonly massKg: number;
  readonly meanPitC: number;
  readonly endC: number;
  readonly isFoiled: boolean;
  readonly hours: number;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
};

/** Hours for `target` from the median hours per kilogram of the other cases of its cut (of all cuts where it is alone). */
export function hoursPerKilogram(target: Case, others: readonly Case[]): number {
  const same = others.filter((c) => c.cut === target.cut);
  return target.massKg * median((same.length >= 2 ? same : others).map((c) => c.hours / c.massKg));
}

const features = (c: Case): number[] => [
  1,
  (2 / 3) * Math.log(c.massKg),
  (c.meanPitC - 120) / 20,
  (c.endC - 85) / 20,
  c.isFoiled ? 1 : 0,
];

/** Hours for `target` by least squares of ln hours on the other cases, with a small ridge for stability. */
export function regressionHours(target: Case, others: readonly Case[]): number {
  const rows = others.map(features);
  const n = rows[0]!.length;
  const a = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => rows.reduce((s, r) => s + r[i]! * r[j]!, i === j ? 0.05 : 0)),
  );
  const b = Array.from({ length: n }, (_, i) =>
    rows.reduce((s, r, k) => s + r[i]! * Math.log(others[k]!.hours), 0),
  );
  const beta = solve(a, b);
  return Math.exp(features(target).reduce((s, x, i) => s + x * beta[i]!, 0));
}

/** Gaussian elimination with pivoting of a small symmetric system. */
function solve(a: number[][], b: number[]): number[] {
  const m = a.map((row, i) => [...row, b[i]!]);
  const n = b.length;
  for (let i = 0; i < n; i++) {
    const pivot = m
      .slice(i)
      .reduce((best, row, k) => (Math.abs(row[i]!) > Math.abs(m[best]![i]!) ? i + k : best), i);
    [m[i], m[pivot]] = [m[pivot]!, m[i]!];
    for (let k = i + 1; k < n; k++) {
      const f = m[k]![i]! / m[i]![i]!;
      for (let j = i; j <= n; j++) m[k]![j]! -= f * m[i]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let s = m[i]![n]!;
    for (let j = i + 1; j < n; j++) s -= m[i]![j]! * x[j]!;
    x[i] = s / m[i]![i]!;
  }
  return x;
}

export { median };
