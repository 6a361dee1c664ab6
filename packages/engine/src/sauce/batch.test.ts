/** Laws of the pot: nothing is lost that is not said to be, whatever the order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allIngredients, ingredientById } from '../food/data/ingredients.ts';
import { batchPh, titratableAcidity, titratableEq } from './acidity.ts';
import {
  addBatches,
  type Batch,
  batchMassG,
  batchOf,
  batchPerGram,
  saltG,
  scaleBatch,
  sugarsG,
} from './batch.ts';
import { phOf, strongIonDifferenceFor, undissociatedFraction } from './chargeBalance.ts';
import { evaporate } from './evaporation.ts';
import { invert } from './inversion.ts';
import { batchWaterActivity } from './solution.ts';

const rows = allIngredients();
const line = fc.record({
  ingredient: fc.constantFrom(...rows),
  massG: fc.double({ min: 0, max: 2000, noNaN: true }),
});
const formula = fc.array(line, { minLength: 1, maxLength: 12 });
const wet = formula
  .map((lines) => [...lines, { ingredient: ingredientById('water')!, massG: 200 }])
  .map((lines) => batchOf(lines));

/** Atoms of no concern here: everything that never leaves the pot. */
const staying = (b: Batch) => [
  b.sucroseG,
  b.glucoseG,
  b.fructoseG,
  b.otherSugarG,
  b.proteinG,
  b.fatG,
  b.fibreG,
  b.ashG,
  b.restG,
  b.sodiumG,
  b.strongIonsEq,
  b.pulpG,
  b.acidsG.citric,
  b.acidsG.malic,
];
const near = (a: number, b: number, scale: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(scale));

describe('mass', () => {
  test('a batch weighs what went into it, to 1e-9', () => {
    fc.assert(
      fc.property(formula, (lines) => {
        const told = lines.reduce((sum, l) => sum + l.massG, 0);
        expect(near(batchMassG(batchOf(lines)), told, told)).toBe(true);
      }),
    );
  });

  test('mixing in any order, scaling and simmering conserve every component that stays, to 1e-9', () => {
    const steps = fc.array(
      fc.oneof(
        fc.record({ kind: fc.constant('add' as const), with: wet }),
        fc.record({ kind: fc.constant('scale' as const), by: fc.double({ min: 0.1, max: 10, noNaN: true }) }),
        fc.record({
          kind: fc.constant('boil' as const),
          share: fc.double({ min: 0, max: 0.9, noNaN: true }),
        }),
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(wet, steps, (start, todo) => {
        let b = start;
        let expected = staying(start);
        let lost = 0;
        let mass = batchMassG(start);
        for (const step of todo) {
          if (step.kind === 'add') {
            b = addBatches(b, step.with);
            expected = expected.map((x, i) => x + staying(step.with)[i]!);
            mass += batchMassG(step.with);
          } else if (step.kind === 'scale') {
            b = scaleBatch(b, step.by);
            expected = expected.map((x) => x * step.by);
            mass *= step.by;
            lost *= step.by;
          } else {
            const after = evaporate(b, step.share * b.waterG);
            lost +=
              b.waterG -
              after.waterG +
              (b.ethanolG - after.ethanolG) +
              (b.acidsG.acetic - after.acidsG.acetic);
            b = after;
          }
        }
        staying(b).forEach((x, i) => {
          expect(near(x, expected[i]!, Math.max(mass, Math.abs(expected[i]!)))).toBe(true);
        });
        expect(near(batchMassG(b) + lost, mass, mass)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test('inverting sugar keeps the mass', () => {
    fc.assert(
      fc.property(wet, fc.double({ min: 0, max: 1, noNaN: true }), (b, share) => {
        expect(near(batchMassG(invert(b, share)), batchMassG(b), batchMassG(b))).toBe(true);
      }),
    );
  });

  test('twice the recipe has the same pH, water activity and acidity', () => {
    fc.assert(
      fc.property(wet, fc.double({ min: 0.1, max: 50, noNaN: true }), (b, factor) => {
        const other = scaleBatch(b, factor);
        expect(batchPh(other)).toBeCloseTo(batchPh(b), 7);
        expect(batchWaterActivity(other)).toBeCloseTo(batchWaterActivity(b), 9);
        expect(titratableAcidity(other)).toBeCloseTo(titratableAcidity(b), 8);
      }),
      { numRuns: 50 },
    );
  });

  test('a negative mass and more water than there is are refused', () => {
    const ketchup = ingredientById('ketchup')!;
    expect(() => batchOf([{ ingredient: ketchup, massG: -1 }])).toThrow(RangeError);
    expect(() => batchOf([{ ingredient: ketchup, massG: Number.NaN }])).toThrow(RangeError);
    const b = batchOf([{ ingredient: ketchup, massG: 100 }]);
    expect(() => evaporate(b, b.waterG)).toThrow(RangeError);
    expect(() => evaporate(b, Number.NaN)).toThrow(RangeError);
  });
});

describe('evaporation', () => {
  // Rayleigh at 42 % of the water: 73 % of the acetic acid left, under 1 % of the ethanol (closed form 0.58^10).
  const vinegar = batchOf([
    { ingredient: ingredientById('vinegar_cider_5')!, massG: 400 },
    { ingredient: ingredientById('ketchup')!, massG: 600 },
    { ingredient: ingredientById('bourbon_45')!, massG: 50 },
  ]);
  test('acetic acid stays mostly, alcohol goes', () => {
    const after = evaporate(vinegar, 0.42 * vinegar.waterG);
    const left = after.acidsG.acetic / vinegar.acidsG.acetic;
    expect(left).toBeGreaterThan(0.7);
    expect(left).toBeLessThan(0.76);
    expect(after.ethanolG / vinegar.ethanolG).toBeLessThan(0.01);
  });

  test('does not depend on how many pauses there are, to 0.1 %', () => {
    const once = evaporate(vinegar, 300);
    let often = vinegar;
    for (let i = 0; i < 30; i++) often = evaporate(often, 10);
    expect(often.waterG).toBeCloseTo(once.waterG, 9);
    expect(Math.abs(often.acidsG.acetic / once.acidsG.acetic - 1)).toBeLessThan(1e-3);
  });
});

describe('acidity', () => {
  // Ingredients and their own pH: the strong ions found from it give it back.
  test.each(
    rows
      .filter((i) => i.ph !== undefined && i.per100g.waterG > 5 && i.id !== 'citric_acid')
      .map((i) => [i.id, i] as const),
  )('%s by itself has its own pH', (_, i) => {
    expect(batchPh(scaleBatch(batchPerGram(i), 100))).toBeCloseTo(i.ph!, 6);
  });

  // Henderson–Hasselbalch at half titration.
  test('half neutralised acetic acid stands at its pK', () => {
    expect(phOf({ acetic: 0.2 }, 0.1)).toBeCloseTo(4.756, 2);
    expect(undissociatedFraction('acetic', 4.756)).toBeCloseTo(0.5, 6);
  });

  test('strong ions and pH are each other’s inverse', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 9, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (ph, acetic, citric) => {
          const acids = { acetic, citric };
          expect(phOf(acids, strongIonDifferenceFor(acids, ph))).toBeCloseTo(ph, 6);
        },
      ),
    );
  });

  test('vinegar sours, soda and dilution do not', () => {
    const base = batchOf([{ ingredient: ingredientById('ketchup')!, massG: 500 }]);
    const add = (id: string, massG: number) =>
      addBatches(base, batchOf([{ ingredient: ingredientById(id)!, massG }]));
    expect(batchPh(add('vinegar_white_5', 100))).toBeLessThan(batchPh(base));
    expect(titratableEq(add('vinegar_white_5', 100))).toBeGreaterThan(titratableEq(base));
    expect(batchPh(add('baking_soda', 3))).toBeGreaterThan(batchPh(base));
    // 1 g of soda is 11.9 meq.
    expect(titratableEq(base) - titratableEq(add('baking_soda', 1))).toBeCloseTo(0.0119, 4);
    expect(titratableAcidity(add('water', 200))).toBeLessThan(titratableAcidity(base));
  });
});

describe('what a cook weighs', () => {
  test('salt is sodium × 2.5421, sugars are the table’s', () => {
    const b = batchOf([{ ingredient: ingredientById('ketchup')!, massG: 100 }]);
    expect(saltG(b)).toBeCloseTo(0.907 * 2.5421, 9);
    expect(sugarsG(b)).toBeCloseTo(21.27, 9);
    expect(sugarsG(batchOf([{ ingredient: ingredientById('cola')!, massG: 100 }]))).toBeCloseTo(9.94, 9);
  });
});
