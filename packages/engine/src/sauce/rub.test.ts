/** Salt on meat, labels, enough, cooling: published figures and plain sums. */
import { type Formula, type IngredientLabel, quantity } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ingredientById } from '../food/data/ingredients.ts';
import { batchMassG, batchOf, saltG } from './batch.ts';
import { cooling, JARS, panOf } from './cooling.ts';
import { costOf, enough, kitchenG, scaleFormula, slabSurfaceM2 } from './enough.ts';
import { formulaLines } from './formulaLines.ts';
import { ingredientFromLabel, labelSpan } from './label.ts';
import { sauceOutcome } from './outcome.ts';
import { dryBrine, equilibriumBrine, rubForSurface, rubSalt, saltAtTable } from './rub.ts';

const row = (id: string) => ingredientById(id)!;

describe('salt', () => {
  test('of a rub, by kilo of edible meat', () => {
    const rub = [
      { ingredient: row('salt_table'), massG: 50 },
      { ingredient: row('paprika'), massG: 50 },
    ];
    const { saltFraction, saltPerKgEdible } = rubSalt(rub, 40, 2, 0.2);
    // Sodium of the table: (38.758 + 0.068)/2 g per 100 g × 2.5421.
    expect(saltFraction).toBeCloseTo(((38.758 + 0.068) / 200) * 2.5421, 6);
    expect(saltPerKgEdible).toBeCloseTo((40 * saltFraction) / 1.6, 9);
  });

  // Depth scale 2√(Dt) with D 1.90e-10 m²/s (pork loin at 5 °C, brine study abstract): 12 h 5.7 mm, 24 h 8.1, 72 h 14.
  test.each([
    [12, 5.7],
    [24, 8.1],
    [72, 14],
  ])('%d h at 5 °C go %d mm deep', (hours, mm) => {
    expect(Math.abs(dryBrine(0.1, hours * 3600).depthM * 1000 - mm)).toBeLessThan(0.1);
  });

  test('overnight salts the outside of a shoulder and a thin chop through', () => {
    expect(dryBrine(0.1, 12 * 3600).said[0]!.id).toBe('sauce.brine-outside');
    expect(dryBrine(0.012, 36 * 3600).said[0]!.id).toBe('sauce.brine-through');
  });

  test('an equilibrium brine ends where it was aimed', () => {
    const brine = equilibriumBrine(4, 4, 0.0282, 0.025);
    // Mass balance over the water phase: 4 kg meat of 72 % water in 4 kg water, 200 g salt, 2.82 %.
    expect(Math.abs(brine.saltG - 200)).toBeLessThan(2);
    expect(brine.nineTenthsS / brine.halfS).toBeCloseTo(193.7 / 44.95, 1);
    expect(() => equilibriumBrine(4, 0, 0.02, 0.02)).toThrow(RangeError);
  });

  test('coatings by area: light on a rack of 0.08 m² is about 25 g', () => {
    expect(slabSurfaceM2(1.1, 0.025)).toBeCloseTo(0.0838, 3);
    expect(rubForSurface(0.08, 'light').middle).toBeCloseTo(24, 6);
  });

  test('rub, spritz and glaze add up', () => {
    const sum = saltAtTable(
      [
        { name: 'rub', saltG: 20, eatenShare: 0.9 },
        { name: 'glaze', saltG: 8, eatenShare: 0.5 },
      ],
      1.1,
      4,
    );
    expect(sum.totalG).toBeCloseTo(22, 9);
    expect(sum.perServingG).toBeCloseTo(5.5, 9);
    expect(sum.said[0]!.id).toBe('sauce.salt-adds-up');
  });
});

describe('an ingredient from its label', () => {
  const g = (value: number) => quantity('mass', value, 'g');
  const label: IngredientLabel = {
    ingredient: 'own_glaze',
    name: 'Bottled glaze',
    law: 'us',
    per: g(37),
    fat: g(0),
    carbohydrate: g(17),
    sugars: g(16),
    protein: g(0),
    sodium: quantity('mass', 290, 'mg'),
    kcal: 70,
  };
  test('figures per serving become figures per 100 g, each with its span', () => {
    const own = ingredientFromLabel(label);
    if (!own.ok) throw new Error(own.problems[0]!.id);
    expect(own.ingredient.per100g.carbohydrateG).toBeCloseTo(1700 / 37, 9);
    expect(own.spans.carbohydrateG!.low).toBeCloseTo(1650 / 37, 9);
    expect(own.spans.carbohydrateG!.high).toBeCloseTo(1750 / 37, 9);
    expect(own.spans.proteinG).toEqual({ low: 0, high: 50 / 37 });
    const { ingredient } = own;
    expect(batchMassG(batchOf([{ ingredient, massG: 250 }]))).toBeCloseTo(250, 9);
    expect(saltG(batchOf([{ ingredient, massG: 37 }]))).toBeCloseTo(0.29 * 2.5421, 6);
  });

  test('what it does not say is unknown, not zero', () => {
    const own = ingredientFromLabel(label);
    if (!own.ok) throw new Error();
    expect(own.unknown).toEqual(['fibreG', 'ph', 'acids', 'density', 'sugar-split', 'body', 'allergens']);
    const formula: Formula = {
      id: 'f',
      name: 'f',
      kind: 'sauce',
      lines: [{ ingredient: 'own_glaze', amount: quantity('mass', 300, 'g') }],
    };
    const made = sauceOutcome(formula, { labels: [label] });
    expect(made.ok && made.after.ph).toBeUndefined();
    expect(made.ok && made.keeping.said[0]!.id).toBe('sauce.keep-ph-unknown');
    expect(made.ok && made.allergens.unknown.map((i) => i.id)).toEqual(['own_glaze']);
    const byCup = { ...formula, lines: [{ ingredient: 'own_glaze', amount: quantity('volume', 1, 'cup') }] };
    const answer = sauceOutcome(byCup, { labels: [label] });
    expect(!answer.ok && answer.problems[0]!.id).toBe('sauce.density-missing');
  });

  test.each([
    ['no serving', { per: g(0) }, 'sauce.label-no-serving'],
    ['a minus', { fat: g(-1) }, 'sauce.label-negative'],
    ['no salt', { sodium: undefined }, 'sauce.label-too-little'],
    ['more sugar than carbohydrate', { sugars: g(30) }, 'sauce.label-sugars-over'],
    ['more than the serving', { carbohydrate: g(45) }, 'sauce.label-over-whole'],
  ])('%s is refused', (_, wrong, id) => {
    const own = ingredientFromLabel({ ...label, ...wrong } as IngredientLabel);
    expect(!own.ok && own.problems.map((p) => p.id)).toContain(id);
  });

  test('a printed figure lies in its own span', () => {
    fc.assert(
      fc.property(fc.constantFrom('us' as const, 'eu' as const), fc.nat(1000), (law, printed) => {
        const span = labelSpan(law, 'sodiumMg', printed);
        expect(span.low).toBeLessThanOrEqual(printed);
        expect(span.high).toBeGreaterThan(printed);
      }),
    );
  });
});

describe('enough', () => {
  const formula: Formula = {
    id: 'f',
    name: 'f',
    kind: 'sauce',
    lines: [
      { ingredient: 'ketchup', amount: quantity('mass', 600, 'g') },
      { ingredient: 'vinegar_cider_5', amount: quantity('volume', 1, 'cup') },
    ],
  };
  const made = sauceOutcome(formula);
  if (!made.ok) throw new Error();

  test('made less needed is left, and the factor makes it just enough', () => {
    const needs = { glazed: [{ surfaceM2: 0.25, coats: 2 }], guests: 18 };
    const sum = enough(made, needs);
    expect(sum.tableG).toBe(540);
    expect(sum.leftG).toBeCloseTo(sum.madeG - sum.glazeG - sum.tableG, 9);
    const scaled = sauceOutcome(scaleFormula(formula, sum.factor));
    expect(scaled.ok && enough(scaled, needs).leftG).toBeCloseTo(0, 6);
  });

  test('scaling there and back is the same recipe', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (factor) => {
        const back = scaleFormula(scaleFormula(formula, factor), 1 / factor);
        back.lines.forEach((line, i) => {
          expect(Math.abs(line.amount.si / formula.lines[i]!.amount.si - 1)).toBeLessThan(1e-12);
        });
      }),
    );
    expect(() => scaleFormula(formula, 0)).toThrow(RangeError);
  });

  test('a kitchen scale can show it', () => {
    expect([1.234, 12.3, 123, 1234].map(kitchenG)).toEqual([1.2, 12, 125, 1230]);
  });

  test('what has no price is not free', () => {
    const resolved = formulaLines(formula);
    if (!resolved.ok) throw new Error();
    const { cost, unpriced } = costOf(resolved.lines, { ketchup: { packG: 1000, price: 4 } });
    expect(cost).toBeCloseTo(2.4, 9);
    expect(unpriced).toEqual(['vinegar_cider_5']);
  });
});

describe('cooling', () => {
  // Product solutions, filled at 85 °C: 57→21 °C in a still fridge 121, 150, 193 min; in an ice bath 33 and 48 min (exact).
  test.each([
    ['half-pint', 'fridge', 121],
    ['pint', 'fridge', 150],
    ['quart', 'fridge', 193],
    ['pint', 'ice-bath', 33],
    ['quart', 'ice-bath', 48],
  ] as const)('%s in the %s: %d min', (jar, around, minutes) => {
    const answer = cooling({ vessel: JARS[jar], around, startC: 85 });
    expect(Math.abs(answer.firstStageS / 60 / minutes - 1)).toBeLessThan(0.05);
    expect(answer.passes).toBe(around === 'ice-bath');
  });

  test('stirred in ice it is quick, on the counter never', () => {
    const pan = panOf(0.24, 0.06);
    const stirred = cooling({ vessel: pan, around: 'stirred-ice-bath', startC: 90, isStirred: true });
    expect(stirred.firstStageS).toBeLessThan(15 * 60);
    expect(cooling({ vessel: pan, around: 'counter', startC: 90 }).said[0]!.id).toBe('sauce.never-cools');
  });

  test('many jars cool slower than one', () => {
    const one = cooling({ vessel: JARS.pint, around: 'fridge', startC: 80 });
    const many = cooling({ vessel: JARS.pint, around: 'fridge', startC: 80, jars: 8 });
    expect(many.firstStageS).toBeGreaterThan(1.5 * one.firstStageS);
  });
});
