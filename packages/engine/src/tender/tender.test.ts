// Dose, softening and words. Evidence: definitions and laws; practice at one temperature is from memory.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { TISSUES } from '../meat/cut.ts';
import { biteWord, doseWhereBegins, knownWord, SOFTENING, wordPast, wordsOf } from './bite.ts';
import { doseForSoftened, doseOverCurveH, relativeSofteningRate, softenedShare } from './dose.ts';

describe('dose', () => {
  test('an hour at 95 °C is one equivalent hour', () => {
    expect(doseOverCurveH([0, 3600], [95, 95])).toBeCloseTo(1, 9);
  });

  // Tough beef to a clean slice (2.4 h at 95 °C): low-temperature and braising practice, from memory.
  test.each([
    [55, 48, 72],
    [75, 9, 14],
    [95, 2, 3],
    [100, 1.5, 3],
  ])('at %d °C tough beef takes %d to %d h', (temperatureC, lowH, highH) => {
    const hours = doseForSoftened(SOFTENING.beef.k95PerH, 0.7) / relativeSofteningRate(temperatureC);
    expect(hours).toBeGreaterThan(lowH);
    expect(hours).toBeLessThan(highH);
  });

  test('a curve cut in two gives the sum of its parts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 70, noNaN: true }),
        fc.double({ min: 70, max: 105, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (fromC, toC, share) => {
          const middleC = fromC + share * (toC - fromC);
          const whole = doseOverCurveH([0, 7200], [fromC, toC]);
          const parts =
            doseOverCurveH([0, share * 7200], [fromC, middleC]) +
            doseOverCurveH([share * 7200, 7200], [middleC, toC]);
          expect(Math.abs(parts / whole - 1)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 50, seed: 1 },
    );
  });

  test('the dose for a softened share softens to it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 4, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (k95PerH, softened) => {
          expect(softenedShare(k95PerH, doseForSoftened(k95PerH, softened))).toBeCloseTo(softened, 9);
        },
      ),
      { numRuns: 50, seed: 2 },
    );
  });
});

describe.each(TISSUES)('words of %s', (tissue) => {
  test('leave no gap and only get softer', () => {
    const words = wordsOf(tissue);
    let last = 0;
    for (let x = 0; x < 1; x += 0.005) {
      const at = words.indexOf(biteWord(tissue, x, 80));
      expect(at).toBeGreaterThanOrEqual(last);
      last = at;
    }
    expect(last).toBe(words.length - 1);
  });

  test('a centre that never passed 60 °C is raw, whatever its dose', () => {
    expect(biteWord(tissue, 0.99, 59.9)).toBe('raw');
  });

  test('softer words ask for more dose', () => {
    const doses = wordsOf(tissue)
      .slice(1)
      .map((word) => doseWhereBegins(tissue, word, SOFTENING[tissue].k95PerH));
    for (let i = 1; i < doses.length; i++) expect(doses[i]!).toBeGreaterThan(doses[i - 1]!);
  });
});

test('a shoulder has no bone to fall off: that bite is taken as pulls apart', () => {
  expect(knownWord('pork-shoulder', 'falls-off')).toBe('pulls-apart');
  expect(wordPast('pork-shoulder', 'clean-bite')).toBe('pulls-apart');
  expect(wordPast('pork-shoulder', 'tender')).toBeUndefined();
});
