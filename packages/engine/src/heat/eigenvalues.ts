import { besselJ01 } from '../numeric/bessel.ts';
import { cos, sin } from '../numeric/elementary.ts';
import { rootBetween } from '../numeric/roots.ts';

const TOLERANCE = 1e-13;

export const SERIES_SHAPES = ['slab', 'cylinder', 'sphere'] as const;
/** Infinite slab, infinite cylinder, sphere: the bodies whose conduction is one series. */
export type SeriesShape = (typeof SERIES_SHAPES)[number];

/** McMahon's first terms of the n-th zero of J0 (order 0) or J1 (order 1), good to 1e-3 from the first on. */
function besselZero(order: 0 | 1, n: number): number {
  if (n === 0) return 0;
  const b = (n + order / 2 - 0.25) * Math.PI;
  const mu = 4 * order * order;
  return b - (mu - 1) / (8 * b) - (4 * (mu - 1) * (7 * mu - 31)) / (3 * (8 * b) * (8 * b) * (8 * b));
}

/** The characteristic function of a shape: zero at an eigenvalue, and finite at z = 0. */
function characteristic(shape: SeriesShape, biot: number, z: number): number {
  switch (shape) {
    case 'slab':
      return z * sin(z) - biot * cos(z);
    case 'cylinder': {
      const [j0, j1] = besselJ01(z);
      return z * j1 - biot * j0;
    }
    case 'sphere':
      return cos(z) + (biot - 1) * (z < 1e-4 ? 1 - (z * z) / 6 : sin(z) / z);
  }
}

/**
 * The n-th eigenvalue (n from 1) of the transient series: slab z tan z = Bi, cylinder z J1 = Bi J0,
 * sphere 1 − z cot z = Bi. @source Carslaw & Jaeger 1959
 */
export function eigenvalue(shape: SeriesShape, biot: number, n: number): number {
  const f = (z: number) => characteristic(shape, biot, z);
  switch (shape) {
    case 'slab':
      return rootBetween(f, (n - 1) * Math.PI, (n - 0.5) * Math.PI, TOLERANCE * n);
    case 'cylinder': {
      // Between the zero of J1 before it and the zero of J0 after it; both are widened by McMahon's error.
      const lo = n === 1 ? 0 : besselZero(1, n - 1) - 2e-3;
      return rootBetween(f, lo, besselZero(0, n) + 2e-3, TOLERANCE * n);
    }
    case 'sphere':
      return rootBetween(f, (n - 1) * Math.PI, n * Math.PI, TOLERANCE * n);
  }
}

/** Coefficient of an eigenvalue's term, for the temperature at the centre. */
export function seriesCoefficient(shape: SeriesShape, biot: number, z: number): number {
  switch (shape) {
    case 'slab':
      return (4 * sin(z)) / (2 * z + sin(2 * z));
    case 'cylinder': {
      const [j0, j1] = besselJ01(z);
      return ((2 / z) * j1) / (j0 * j0 + j1 * j1);
    }
    case 'sphere':
      // sin z − z cos z = Bi sin z at an eigenvalue: no cancellation where Bi is small.
      return (4 * biot * sin(z)) / (2 * z - sin(2 * z));
  }
}
