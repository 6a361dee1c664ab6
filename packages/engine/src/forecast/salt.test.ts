// Salt at the table. Evidence: exact (sums and normal tails), law.
import { describe, expect, test } from 'vitest';
import { type SaltFrom, saltForecast } from './salt.ts';

const edible = (low: number, high: number) => ({
  p10: low,
  p50: Math.sqrt(low * high),
  p90: high,
  neverShare: 0,
});
const rub = (lowG: number, highG: number): SaltFrom => ({ part: 'rub', lowG, highG });

describe('salt as served', () => {
  test('8 g on 1 kg, both exact, lie on the edge of mild', () => {
    const salt = saltForecast([rub(8.001, 8.001)], edible(1, 1))!;
    expect(salt.perKg.p50).toBeCloseTo(8.001, 9);
    expect(salt.words.seasoned).toBe(1);
  });

  test('one part of known span keeps it: the 10 and 90 % points are those told', () => {
    const salt = saltForecast([rub(6, 12)], edible(1, 1))!;
    expect(salt.perKg.p10).toBeCloseTo(6, 9);
    expect(salt.perKg.p90).toBeCloseTo(12, 9);
  });

  test('a median on the edge of a word halves the chance', () => {
    const salt = saltForecast([rub(10, 22.5)], edible(1, 1))!;
    expect(salt.words.salty).toBeCloseTo(0.5, 9);
    const sum = Object.values(salt.words).reduce((a, b) => a! + b!, 0);
    expect(sum).toBeCloseTo(1, 12);
  });

  test('less meat from the same rub is saltier; another source adds', () => {
    const one = saltForecast([rub(6, 12)], edible(1, 1.1))!;
    const dried = saltForecast([rub(6, 12)], edible(0.8, 0.9))!;
    const glazed = saltForecast([rub(6, 12), { part: 'glaze', lowG: 1, highG: 2 }], edible(1, 1.1))!;
    expect(dried.perKg.p50).toBeGreaterThan(one.perKg.p50);
    expect(glazed.perKg.p50).toBeGreaterThan(one.perKg.p50);
    expect(glazed.parts.map(({ part }) => part)).toEqual(['rub', 'glaze']);
  });

  test('nothing salts it: nothing is said; nothing served is refused', () => {
    expect(saltForecast([], edible(1, 1))).toBeUndefined();
    expect(() => saltForecast([rub(1, 2)], edible(0, 1))).toThrow(RangeError);
    expect(() => saltForecast([rub(1, 2)], edible(NaN, 1))).toThrow(RangeError);
  });
});
