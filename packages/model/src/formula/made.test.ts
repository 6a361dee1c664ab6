// Variants of a formula: what their changes make, and the changes that make it again. Evidence: laws, conformity.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cook, Formula, FormulaLine } from '../nouns.ts';
import { quantity } from '../units/quantity.ts';
import { changesBetweenLines } from './difference.ts';
import { lostChanges, madeCook, madeFormula, withChanges } from './made.ts';

const grams = (ingredient: string, massG: number, rest: Partial<FormulaLine> = {}): FormulaLine => ({
  ingredient,
  amount: quantity('mass', massG, 'g'),
  ...rest,
});

const GLAZE: Formula = {
  id: 'glaze',
  name: 'Glaze',
  kind: 'sauce',
  lines: [grams('cola', 400, { note: 'Flat.' }), grams('honey', 120), grams('vinegar_cider_5', 100)],
  simmer: { evaporated: quantity('mass', 300, 'g'), lid: 'ajar' },
  variants: [
    {
      id: 'without-the-soft-drink',
      name: 'without the soft drink',
      changes: [
        { line: 'cola', ingredient: 'water' },
        { line: 'honey', amount: quantity('mass', 150, 'g') },
        { line: 'vinegar_cider_5', late: true },
      ],
      evaporated: quantity('mass', 250, 'g'),
    },
    {
      id: 'hotter',
      name: 'hotter',
      changes: [
        { line: 'honey', out: true },
        { ingredient: 'cayenne', amount: quantity('mass', 2, 'g'), late: true },
      ],
    },
  ],
};

describe('a formula as it is made', () => {
  test('without a chosen variant it is the formula as written, without the others', () => {
    const { variants: _, ...written } = GLAZE;
    expect(madeFormula(GLAZE)).toEqual(written);
    expect(madeFormula(written)).toBe(written);
  });

  test('another thing keeps the amount and leaves the note of what stood there', () => {
    const made = madeFormula({ ...GLAZE, variant: 'without-the-soft-drink' });
    expect(made.lines).toEqual([
      grams('water', 400),
      grams('honey', 150),
      grams('vinegar_cider_5', 100, { late: true }),
    ]);
    expect(made.simmer).toEqual({ evaporated: quantity('mass', 250, 'g'), lid: 'ajar' });
    expect(made.name).toBe('Glaze, without the soft drink');
  });

  test('a line is left out, another added', () => {
    expect(madeFormula({ ...GLAZE, variant: 'hotter' }).lines).toEqual([
      GLAZE.lines[0],
      GLAZE.lines[2],
      grams('cayenne', 2, { late: true }),
    ]);
  });

  test('a cook is made with the variant of each of its formulas', () => {
    const cook = { formulas: [{ ...GLAZE, variant: 'hotter' }] } as unknown as Cook;
    expect(madeCook(cook).formulas[0]!.name).toBe('Glaze, hotter');
    expect(madeCook(madeCook(cook)).formulas).toEqual(madeCook(cook).formulas);
  });

  test('a change whose line is gone changes nothing and is told', () => {
    const moved = { ...GLAZE, lines: GLAZE.lines.slice(1), variant: 'without-the-soft-drink' };
    expect(madeFormula(moved).lines).toHaveLength(2);
    expect(lostChanges(moved)).toEqual([{ line: 'cola', ingredient: 'water' }]);
    expect(lostChanges(GLAZE)).toEqual([]);
  });
});

const line = fc
  .record({
    ingredient: fc.constantFrom('cola', 'water', 'honey', 'salt_table', 'cayenne'),
    massG: fc.integer({ min: 1, max: 999 }),
    late: fc.boolean(),
  })
  .map(({ ingredient, massG, late }) => grams(ingredient, massG, late ? { late } : {}));
const lines = fc.array(line, { minLength: 1, maxLength: 6 });
const sorted = (all: readonly FormulaLine[]): string[] => all.map((one) => JSON.stringify(one)).sort();

test('the changes between any two lists make the second of the first', () => {
  fc.assert(
    fc.property(lines, lines, (before, after) => {
      expect(sorted(withChanges(before, changesBetweenLines(before, after)))).toEqual(sorted(after));
    }),
    { numRuns: 1000 },
  );
});

test('what was not touched makes no change, and one amount makes one', () => {
  fc.assert(
    fc.property(lines, fc.nat(5), (before, place) => {
      expect(changesBetweenLines(before, before)).toEqual([]);
      const at = place % before.length;
      const after = before.with(at, { ...before[at]!, amount: quantity('mass', 1000, 'g') });
      expect(changesBetweenLines(before, after)).toHaveLength(1);
      expect(withChanges(before, changesBetweenLines(before, after))).toEqual(after);
    }),
  );
});

test('another thing in the place of one is a change of that line', () => {
  const after = GLAZE.lines.with(0, grams('water', 400));
  expect(changesBetweenLines(GLAZE.lines, after)).toEqual([{ line: 'cola', ingredient: 'water' }]);
});
