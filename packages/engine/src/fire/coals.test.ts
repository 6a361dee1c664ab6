// Coals before one side. Evidence: published (view factors of discs); exact (flux at the surface of reference, far away);
// law (nearer and hotter give more, a shield less).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { discViewFactor } from '../heat/radiation.ts';
import { STEFAN_BOLTZMANN } from '../numeric/constants.ts';
import { coalsFluxWm2, wallRiseK } from './coals.ts';

describe('discs on one axis', () => {
  test('0.1 m to 0.2 m, half a metre apart: 0.1339 (Siegel & Howell, thermal radiation heat transfer, 4th ed., p. 845)', () => {
    expect(discViewFactor(0.1, 0.2, 0.5)).toBeCloseTo(0.1339, 4);
  });
  test('alike, as far apart as their radius: (3 − √5)/2', () => {
    expect(discViewFactor(1, 1, 1)).toBeCloseTo((3 - Math.sqrt(5)) / 2, 12);
  });
  test('a small one over a large one: R²/(R² + h²)', () => {
    expect(discViewFactor(1e-5, 0.15, 0.2)).toBeCloseTo(0.15 ** 2 / (0.15 ** 2 + 0.2 ** 2), 8);
  });

  const metres = fc.double({ min: 0.01, max: 2, noNaN: true });
  test('areas times factors are the same both ways; nothing is seen more than wholly', () => {
    fc.assert(
      fc.property(metres, metres, metres, (one, other, apart) => {
        const there = discViewFactor(one, other, apart);
        expect(there).toBeGreaterThan(0);
        expect(there).toBeLessThanOrEqual(1);
        const back = discViewFactor(other, one, apart);
        expect(Math.abs((one * one * there) / (other * other * back) - 1)).toBeLessThan(1e-10);
      }),
      { seed: 6 },
    );
  });
});

const SEEN = { pieceRadiusM: 0.11, bedRadiusM: 0.15, distanceM: 0.2, bedC: 620 };

describe('flux of the coals', () => {
  test('nearer, hotter and wider give more', () => {
    const metres = fc.double({ min: 0.04, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        metres,
        metres,
        fc.double({ min: 450, max: 900, noNaN: true }),
        (distanceM, bedRadiusM, bedC) => {
          const at = (told: Partial<typeof SEEN>): number =>
            coalsFluxWm2({ ...SEEN, distanceM, bedRadiusM, bedC, ...told }, 120, 121);
          expect(at({ distanceM: 1.1 * distanceM })).toBeLessThan(at({}));
          expect(at({ bedC: bedC + 20 })).toBeGreaterThan(at({}));
          expect(at({ bedRadiusM: 1.1 * bedRadiusM })).toBeGreaterThan(at({}));
        },
      ),
      { numRuns: 200, seed: 6 },
    );
  });

  test('a plate between gives less, a pan of water none', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.04, max: 1, noNaN: true }),
        fc.double({ min: 0.04, max: 0.6, noNaN: true }),
        fc.double({ min: 450, max: 900, noNaN: true }),
        (distanceM, bedRadiusM, bedC) => {
          const seen = { ...SEEN, distanceM, bedRadiusM, bedC };
          const bare = coalsFluxWm2(seen, 120, 121);
          const plate = coalsFluxWm2({ ...seen, between: 'plate' }, 120, 121);
          expect(plate).toBeLessThan(bare);
          expect(plate).toBeGreaterThan(0);
          expect(coalsFluxWm2({ ...seen, between: 'pan' }, 120, 121)).toBeLessThan(0);
        },
      ),
      { numRuns: 200, seed: 6 },
    );
  });

  test('right over a wide bed: that of the bed alone', () => {
    const flux = coalsFluxWm2({ pieceRadiusM: 0.1, bedRadiusM: 50, distanceM: 0.01, bedC: 627 }, 20, 20);
    expect(flux / (0.9 * STEFAN_BOLTZMANN * (900.15 ** 4 - 293.15 ** 4))).toBeCloseTo(1, 4);
  });
});

describe('the wall that stands for it', () => {
  const linear = (wallC: number, surfaceC: number): number =>
    4 * STEFAN_BOLTZMANN * (0.5 * (wallC + surfaceC) + 273.15) ** 3 * (wallC - surfaceC);

  test('brings the flux at a surface of 100 °C, and within 6 % from 40 to 160 °C', () => {
    for (const fluxWm2 of [-400, 500, 2000, 8000, 20_000]) {
      const riseK = wallRiseK(fluxWm2, 120);
      const brought = (surfaceC: number): number => linear(120 + riseK, surfaceC) - linear(120, surfaceC);
      expect(brought(100) / fluxWm2).toBeCloseTo(1, 6);
      for (const surfaceC of [40, 70, 130, 160])
        expect(Math.abs(brought(surfaceC) / fluxWm2 - 1), `${fluxWm2} at ${surfaceC}`).toBeLessThan(0.06);
    }
  });
  test('nothing is nothing', () => {
    expect(wallRiseK(0, 120)).toBe(0);
  });
});
