// Seeded chance: quantiles against published tables, and the laws that an ensemble leans on.
import { describe, expect, test } from 'vitest';
import { BLOCK, normalQuantile, Stream, studentT3Quantile } from './chance.ts';

// Abramowitz & Stegun 1964, table 26.1; Student's t: table 26.10, to its four digits.
test.each([
  [0.5, 0],
  [0.975, 1.959963985],
  [0.001, -3.090232306],
  [0.999999, 4.753424309],
])('normal deviate at %d', (p, expected) => {
  expect(Math.abs(normalQuantile(p) - expected)).toBeLessThan(1e-6);
});

test.each([
  [0.5, 0],
  [0.9, 1.638],
  [0.975, 3.182],
  [0.995, 5.841],
])("Student's t, three degrees of freedom, at %d", (p, expected) => {
  expect(Math.abs(studentT3Quantile(p) - expected)).toBeLessThan(6e-4);
  expect(studentT3Quantile(1 - p)).toBeCloseTo(-studentT3Quantile(p), 9);
});

describe('a stream', () => {
  test('gives a member the same draw in any order', () => {
    const forward = new Stream(7, 'pit');
    const jumping = new Stream(7, 'pit');
    const members = [0, 1, 39, 40, 119, 7, 81];
    const drawn = Array.from({ length: 120 }, (_, m) => forward.uniform(m));
    for (const m of members) expect(jumping.uniform(m)).toBe(drawn[m]);
  });

  test('hits every fortieth of its range once in a block', () => {
    const stream = new Stream(3, 'thickness');
    for (const block of [0, 1, 5]) {
      const strata = new Set(
        Array.from({ length: BLOCK }, (_, i) => Math.floor(BLOCK * stream.uniform(block * BLOCK + i))),
      );
      expect(strata.size).toBe(BLOCK);
    }
  });

  test('is unlike its neighbours: correlation as of chance over 300 seeds', () => {
    const names = ['cook/pit', 'cook/wall', 'piece/a/0/thickness', 'piece/a/1/thickness'];
    const members = 200;
    let squares = 0;
    let pairs = 0;
    for (let seed = 0; seed < 300; seed++) {
      const draws = names.map((name) => {
        const stream = new Stream(seed, name);
        return Array.from({ length: members }, (_, m) => stream.normal(m));
      });
      for (let a = 0; a < names.length; a++)
        for (let b = 0; b < a; b++) {
          const correlation = draws[a]!.reduce((sum, x, m) => sum + x * draws[b]![m]!, 0) / members;
          squares += correlation * correlation;
          pairs++;
        }
    }
    const expected = 1 / Math.sqrt(members * (1 - 1 / BLOCK));
    expect(Math.abs(Math.sqrt(squares / pairs) / expected - 1)).toBeLessThan(0.06);
  });
});
