import { besselJ01 } from '../numeric/bessel.ts';
import { cos, exp, pow, sin } from '../numeric/elementary.ts';
import { erfc, erfcx } from '../numeric/erfc.ts';
import { eigenvalue, type SeriesShape, seriesCoefficient } from './eigenvalues.ts';

/** Below this Fourier number the skin that has felt the air is a thousandth of the body: a half-space does. */
const HALF_SPACE_FOURIER = 2e-6;
/** Enough for the smallest Fourier number above. */
const MOST_TERMS = 2000;
const NEGLIGIBLE = 1e-15;
/** Depth over 2√(αt) beyond which the half-space ratio is below 10⁻¹³: nothing has arrived, and the sum of many terms would only add its rounding. */
const UNTOUCHED_XI = 5.5;

/** Power of the radius that a thin skin's heat is spread over. */
const CURVATURE: Readonly<Record<SeriesShape, number>> = { slab: 0, cylinder: 0.5, sphere: 1 };

/**
 * (T − T₀)/(T∞ − T₀) in a half-space under a convective surface.
 *
 * @param xi  depth / (2√(αt))
 * @param eta  h√(αt)/k
 * @source Carslaw & Jaeger 1959, §2.7; written with erfcx so that no factor overflows
 */
export function halfSpaceRatio(xi: number, eta: number): number {
  return erfc(xi) - exp(-xi * xi) * erfcx(xi + eta);
}

/** The exact series of one shape at one Biot number; its terms are found once and kept. */
export interface ConductionSeries {
  /**
   * θ = (T − T∞)/(T₀ − T∞).
   * @param fourier αt/L², from 0
   * @param position 0 centre … 1 surface
   */
  readonly theta: (fourier: number, position?: number) => number;
}

/** @throws RangeError on a Biot number that is negative or no number */
export function conductionSeries(shape: SeriesShape, biot: number): ConductionSeries {
  if (!(biot >= 0)) throw new RangeError(`biot must be at least 0, got ${biot}`);
  const zs: number[] = [];
  const cs: number[] = [];
  const across = (z: number, position: number): number => {
    if (position === 0) return 1;
    const x = z * position;
    if (shape === 'slab') return cos(x);
    return shape === 'cylinder' ? besselJ01(x)[0] : sin(x) / x;
  };
  const theta = (fourier: number, position = 0): number => {
    if (!(fourier >= 0)) throw new RangeError(`fourier must be at least 0, got ${fourier}`);
    if (fourier === 0 || biot === 0) return 1;
    const root = Math.sqrt(fourier);
    if (1 - position > UNTOUCHED_XI * 2 * root) return 1;
    if (fourier < HALF_SPACE_FOURIER) {
      const skin = halfSpaceRatio((1 - position) / (2 * root), biot * root);
      return skin === 0 ? 1 : 1 - skin * pow(1 / position, CURVATURE[shape]);
    }
    let sum = 0;
    for (let n = 0; n < MOST_TERMS; n++) {
      if (n === zs.length) {
        zs.push(eigenvalue(shape, biot, n + 1));
        cs.push(seriesCoefficient(shape, biot, zs[n]!));
      }
      const size = cs[n]! * exp(-zs[n]! * zs[n]! * fourier);
      sum += size * across(zs[n]!, position);
      if (Math.abs(size) < NEGLIGIBLE) break;
    }
    return sum;
  };
  return { theta };
}

/** One direction of a body: its series and its size against the characteristic one. */
interface Axis {
  readonly series: ConductionSeries;
  readonly lengthM: number;
}

/** A body whose θ is a product of series (Newman): the first axis is the one that `position` runs along. */
export interface Body {
  readonly axes: readonly Axis[];
}

/**
 * θ of a body after a time, `position` along its first axis, at the middle of the others.
 * @source Newman 1936 (product of slabs; cylinder and slab)
 */
export function bodyTheta(body: Body, diffusivityM2S: number, timeS: number, position = 0): number {
  return body.axes.reduce(
    (product, { series, lengthM }, i) =>
      product * series.theta((diffusivityM2S * timeS) / (lengthM * lengthM), i === 0 ? position : 0),
    1,
  );
}

/**
 * Time until the centre's θ has fallen to this value [s]; infinite at 0 and below.
 * @param theta from 1 (time 0) downwards
 */
export function timeToTheta(body: Body, diffusivityM2S: number, theta: number): number {
  if (theta >= 1) return 0;
  if (!(theta > 0)) return Number.POSITIVE_INFINITY;
  const first = body.axes[0]!;
  let hi = (first.lengthM * first.lengthM) / diffusivityM2S;
  // The first root of any shape is above √Bi/2 for small Bi, so a hundred doublings reach any θ a double can hold.
  for (let i = 0; bodyTheta(body, diffusivityM2S, hi) > theta; i++) {
    if (i === 100) return Number.POSITIVE_INFINITY;
    hi *= 2;
  }
  let lo = 0;
  for (let i = 0; i < 100 && hi - lo > 1e-12 * hi; i++) {
    const middle = 0.5 * (lo + hi);
    if (bodyTheta(body, diffusivityM2S, middle) > theta) lo = middle;
    else hi = middle;
  }
  return 0.5 * (lo + hi);
}
