import { exp, log, pow } from '../numeric/elementary.ts';

export const DIMENSION_BODIES = ['brick', 'irregular', 'slab', 'cylinder', 'sphere'] as const;
export type DimensionBody = (typeof DIMENSION_BODIES)[number];

/** Parameters of E∞. @source ASHRAE Handbook Refrigeration ch. 20, Table 4 (from memory) */
const SHAPE: Readonly<Record<DimensionBody, readonly [p1: number, p2: number, p3: number]>> = {
  slab: [0, 0, 0],
  cylinder: [1.01, 0, 0],
  sphere: [1.01, 1.24, 0],
  brick: [0.75, 0.75, -1],
  irregular: [1.01, 1.24, 1],
};

/**
 * Equivalent heat-transfer dimensionality at Bi → 0: how much faster a body changes than a slab of its least
 * half-thickness, sphere 3. β1 ≤ β2 are the other half-dimensions over the least.
 * @source ASHRAE Handbook Refrigeration ch. 20 eq. 19, 20, after Lin, Cleland et al.
 */
export function dimensionalityAtZeroBiot(body: DimensionBody, b1: number, b2: number): number {
  switch (body) {
    case 'slab':
      return 1;
    case 'cylinder':
      return 2;
    case 'sphere':
      return 3;
    case 'brick':
      return 1 + 1 / b1 + 1 / b2;
    case 'irregular':
      return (
        (1.5 * (b1 + b2 + b1 * b1 * (1 + b2) + b2 * b2 * (1 + b1))) / (b1 * b2 * (1 + b1 + b2)) -
        pow((b1 - b2) * (b1 - b2), 0.4) / 15
      );
  }
}

/** The same at Bi → ∞. @source as above, eq. 21 and 22; slab ¾, where a sphere is 3 */
export function dimensionalityAtInfiniteBiot(body: DimensionBody, b1: number, b2: number): number {
  const [p1, p2, p3] = SHAPE[body];
  const f = (b: number) => 1 / (b * b) + 0.01 * p3 * exp(b - (b * b) / 6);
  return 0.75 + p1 * f(b1) + p2 * f(b2);
}

/** At a finite Biot number, between the two. @source as above (from memory) */
export function dimensionality(e0: number, eInfinity: number, biot: number): number {
  const weight = pow(biot, 4 / 3);
  return (weight + 1.85) / (weight / eInfinity + 1.85 / e0);
}

/** Biot numbers between which the exponent of the one-dimensional model was fitted, widened by half a decade. */
export const EXPONENT_BIOT: readonly [number, number] = [0.15, 10];

/**
 * Exponent E of a one-dimensional body whose area goes as r^(E−1) that warms like a brick at its centre.
 *
 * Fitted to exact products of slabs, time to θ 0.25, β 1 to 10, Bi 0.5 to 3: within 0.09. It is less than the
 * dimensionality, because a real brick lags more than its rate tells. Round bodies have their own exact one.
 */
export function finiteVolumeExponent(body: DimensionBody, b1: number, b2: number, biot: number): number {
  if (body === 'slab') return 1;
  if (body === 'cylinder') return 2;
  if (body === 'sphere') return 3;
  const c = 0.77 * pow(biot, -0.13);
  const m = 1.5 + 0.41 * log(biot / 0.5);
  return 1 + c * (pow(b1, -m) + pow(b2, -m));
}
