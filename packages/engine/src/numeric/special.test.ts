import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { besselJ01 } from './bessel.ts';
import { erfc, erfcx } from './erfc.ts';
import { rootBetween } from './roots.ts';

// Reference values computed with SciPy 1.x (Cephes, Faddeeva), an independent library.
test.each([
  [0.5, 0.938469807240813, 0.2422684576748739],
  [1, 0.7651976865579666, 0.44005058574493353],
  [2.404825557695773, 0, 0.5191474972894667],
  [10, -0.24593576445134832, 0.0434727461688616],
  [24.99, 0.09500823696754813, -0.12635698500780518],
  [25.01, 0.0975152015931957, -0.1243314044039681],
  [30, -0.08636798358104021, -0.11875106261662291],
  [190.3, 0.03035042112922559, 0.04931596324350446],
])('J0 and J1 of %d', (x, j0, j1) => {
  const [a, b] = besselJ01(x);
  expect(Math.abs(a - j0)).toBeLessThan(1e-14);
  expect(Math.abs(b - j1)).toBeLessThan(1e-14);
});

test.each([
  [0.1, 0.8875370839817152, 0.8964569799691268],
  [0.5, 0.4795001221869535, 0.6156903441929258],
  [1, 0.15729920705028516, 0.427583576155807],
  [1.99, 0.004888586800383002, 0.25646783671952994],
  [2.01, 0.004475150644751764, 0.25433187656081824],
  [3, 2.2090496998585445e-5, 0.17900115118138998],
  [5, 1.5374597944280347e-12, 0.11070463773306861],
  [10, 2.0884875837625446e-45, 0.05614099274382259],
])('erfc and erfcx of %d', (x, plain, scaled) => {
  expect(Math.abs(erfc(x) / plain - 1)).toBeLessThan(1e-12);
  expect(Math.abs(erfcx(x) / scaled - 1)).toBeLessThan(1e-12);
});

describe('edges', () => {
  it('erfc mirrors, erfcx refuses below zero', () => {
    expect(erfc(-1) + erfc(1)).toBeCloseTo(2, 14);
    expect(() => erfcx(-0.1)).toThrow(RangeError);
    expect(() => besselJ01(Number.NaN)).toThrow(RangeError);
  });

  it('finds the root of any cubic between its signs', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), (r) => {
        const root = rootBetween((x) => (x - r) * (x * x + 1), -6, 6, 1e-12);
        expect(Math.abs(root - r)).toBeLessThan(1e-11);
      }),
    );
    expect(() => rootBetween((x) => x * x + 1, -1, 1, 1e-9)).toThrow(RangeError);
  });
});
