// Thickness as it is seen. Evidence: laws; common practice, no source, where marked.
import { describe, expect, test } from 'vitest';
import { batchOf } from './batch.ts';
import { findIngredient } from './formulaLines.ts';
import { carriedPa, lookAt, lookLevel, THICKNESS_WORDS } from './look.ts';
import type { Rheology } from './rheology.ts';
import { drainedFilmPa } from './spread.ts';

const newtonian = (viscosityPas: number): Rheology => ({
  yieldStressPa: 0,
  consistency: viscosityPas,
  index: 1,
});
const wordOf = (r: Rheology, densityKgM3: number) =>
  THICKNESS_WORDS[Math.floor(lookLevel(carriedPa(r, densityKgM3)))];

describe('the film on a spoon', () => {
  test('of a Newtonian fluid drains as the square root of time and length, Jeffreys (1930)', () => {
    // h = √(η L/(ρ g t)): 1 Pa·s, 5 cm, 10 s, 1200 kg/m³.
    const h = Math.sqrt((1 * 0.05) / (1200 * 9.80665 * 10));
    expect(drainedFilmPa(newtonian(1), 0.05, 10, 1200)).toBeCloseTo(1200 * 9.80665 * h, 9);
  });

  // Common practice, no source: what a cook calls these, by handbook viscosities from memory.
  test.each([
    ['water', 0.001, 998, 'runs'],
    ['olive oil at 20 °C', 0.08, 915, 'pours'],
    ['honey at 20 °C', 10, 1420, 'coats'],
    ['stiff treacle, a hundred times thicker', 1000, 1450, 'coats'],
  ])('%s', (_, viscosityPas, densityKgM3, word) => {
    expect(wordOf(newtonian(viscosityPas), densityKgM3)).toBe(word);
  });

  test('only a yield stress holds a line', () => {
    for (const viscosityPas of [1, 100, 1e4, 1e8])
      expect(carriedPa(newtonian(viscosityPas), 1300)).toBeLessThan(12);
    expect(wordOf({ ...newtonian(0.01), yieldStressPa: 13 }, 1300)).toBe('holds-a-line');
  });
});

describe('the level of a look', () => {
  test('is the class at its edges and climbs without a step', () => {
    expect([1, 4, 12, 45, 120].map((pa) => lookLevel(pa))).toEqual([1, 2, 3, 4, 5]);
    expect(lookLevel(0)).toBe(0);
    let last = 0;
    for (let pa = 0.11; pa < 350; pa *= 1.02) {
      const level = lookLevel(pa);
      expect(level).toBeGreaterThan(last);
      // 2 % of a stress is never more than 2 % of a factor 3 in its logarithm.
      expect(level - last).toBeLessThan(last === 0 ? 0.1 : 0.03);
      last = level;
    }
    expect(lookLevel(1e9)).toBeLessThan(6);
  });

  test('climbs with what a plate test found, and its class is its whole part', () => {
    const batch = batchOf([{ ingredient: findIngredient('ketchup')!, massG: 1000 }]);
    let last = -1;
    for (let factor = 0.001; factor < 100; factor *= 1.3) {
      const look = lookAt(batch, 60, factor);
      expect(look.thickness).toBe(Math.floor(look.level));
      expect(look.level).toBeGreaterThanOrEqual(last);
      last = look.level;
    }
  });
});
