import type { Curve } from '../calc/spec.ts';
import { exp, log, pow } from '../numeric/elementary.ts';
import { celsiusOf } from './ruleTemperature.ts';

const LN10 = Math.LN10;

/** Heat resistance of an organism in a food: D falls tenfold for each z. */
export interface Kinetics {
  /** Decimal reduction time at the reference [s]. */
  readonly dReferenceS: number;
  readonly referenceC: number;
  readonly zK: number;
}

/** What counts: nothing below the cutoff, and hotter than the cap as the cap; undefined: everywhere, as hot as it is. */
export interface Counting {
  readonly cutoffC?: number;
  readonly capC?: number;
}

export const ORGANISMS = ['salmonella', 'e-coli-o157', 'listeria'] as const;
export type Organism = (typeof ORGANISMS)[number];

/**
 * Default kinetics.
 * - salmonella: D(150 °F) 0.172 min, z 10 °F; reproduces FSIS Appendix A, 6.5 column (published process-lethality pair)
 * - e-coli-o157: beef, 90 % lean, D(60 °C) 3.17 min, z 6.0 °C (Juneja, Snyder & Marmer 1997)
 * - listeria: beef, 30.5 % fat, D(145 °F) 1.2 min, z 11.4 °F (Fain et al. 1991); the highest of its three is taken as
 *   reference, since it lies nearest to where cooking ends and leaves the longest D below
 */
export const KINETICS: Readonly<Record<Organism, Kinetics>> = {
  salmonella: { dReferenceS: 0.172 * 60, referenceC: celsiusOf(150), zK: 10 / 1.8 },
  'e-coli-o157': { dReferenceS: 3.17 * 60, referenceC: 60, zK: 6 },
  listeria: { dReferenceS: 1.2 * 60, referenceC: celsiusOf(145), zK: 11.4 / 1.8 },
};

/** Decimal reductions in a second at this temperature [1/s]. */
export function lethalRatePerS(kinetics: Kinetics, temperatureC: number, counting: Counting = {}): number {
  if (counting.cutoffC !== undefined && temperatureC < counting.cutoffC) return 0;
  const t = counting.capC === undefined ? temperatureC : Math.min(temperatureC, counting.capC);
  return pow(10, (t - kinetics.referenceC) / kinetics.zK) / kinetics.dReferenceS;
}

/** Reductions along a straight piece that is wholly counted and nowhere above the cap: its exact integral. */
function straightPiece(kinetics: Kinetics, fromC: number, toC: number, durationS: number): number {
  const rate = lethalRatePerS(kinetics, fromC);
  const x = (LN10 * (toC - fromC)) / kinetics.zK;
  // (e^x − 1)/x, whose limit at equal ends is 1.
  const mean = Math.abs(x) < 1e-5 ? 1 + x / 2 + (x * x) / 6 : (exp(x) - 1) / x;
  return rate * durationS * mean;
}

/**
 * Decimal reductions over a curve of straight pieces: the exact integral of dt / D(T), split where the curve crosses
 * the cutoff and the cap.
 */
export function logReduction(kinetics: Kinetics, curve: Curve, counting: Counting = {}): number {
  const { cutoffC = Number.NEGATIVE_INFINITY, capC = Number.POSITIVE_INFINITY } = counting;
  let sum = 0;
  for (let i = 1; i < curve.timesS.length; i++) {
    const durationS = curve.timesS[i]! - curve.timesS[i - 1]!;
    let lo = curve.temperaturesC[i - 1]!;
    let hi = curve.temperaturesC[i]!;
    if (lo > hi) [lo, hi] = [hi, lo];
    if (hi < cutoffC) continue;
    const rise = hi - lo;
    const share = (from: number, to: number) => (rise > 0 ? (to - from) / rise : 1);
    const from = Math.max(lo, cutoffC);
    const to = Math.min(hi, capC);
    if (to > from || (rise === 0 && to >= from))
      sum += straightPiece(kinetics, from, to, durationS * share(from, to));
    // Above the cap at the cap's rate; a cutoff above the cap still keeps the rest out.
    if (hi > capC) {
      const above = Math.max(lo, capC, cutoffC);
      if (hi > above || rise === 0) sum += lethalRatePerS(kinetics, capC) * durationS * share(above, hi);
    }
  }
  return sum;
}

/**
 * z-value [K] by least squares of log10 D on temperature.
 * @returns undefined where the temperatures are all one, or D does not fall with them
 */
export function zValueK(
  points: readonly (readonly [temperatureC: number, dS: number])[],
): number | undefined {
  const n = points.length;
  const meanT = points.reduce((sum, [t]) => sum + t, 0) / n;
  const meanY = points.reduce((sum, [, d]) => sum + log(d) / LN10, 0) / n;
  let sxy = 0;
  let sxx = 0;
  for (const [t, d] of points) {
    sxy += (t - meanT) * (log(d) / LN10 - meanY);
    sxx += (t - meanT) * (t - meanT);
  }
  return sxx > 0 && sxy < 0 ? -sxx / sxy : undefined;
}
