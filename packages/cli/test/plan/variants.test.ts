/** A variant, a line stirred in late and an ingredient of one's own, from the cook file to what `plan` prints. */
import { readFileSync } from 'node:fs';
import { forecastCook, standingNotices } from '@pitwright/engine';
import { printCookFile, readCookFile } from '@pitwright/model';
import { gatherReport } from '@pitwright/paper';
import { printer } from '@pitwright/words';
import { describe, expect, test } from 'vitest';
import { planJson } from '../../src/plan/json.ts';
import { readerOf } from '../../src/plan/reader.ts';
import { planText } from '../../src/plan/text/print.ts';
import { examplePath } from './examples.ts';

const SMALL = readFileSync(examplePath('two-racks'), 'utf8');
const FORMULAS = `
labels:
  - name: Harbour relish
    law: eu
    per: 100 g
    per-volume: 6 tbsp
    fat: 0 g
    carbohydrate: 30 g
    protein: 1 g
    salt: 2 g

formulas:
  - name: Kettle sauce
    kind: sauce
    lines:
      - ingredient: ketchup
        amount: 400 g
      - ingredient: cola
        amount: 300 mL
      - ingredient: own_harbour_relish
        amount: 2 tbsp
      - ingredient: vinegar_cider_5
        amount: 60 mL
        late: yes
    simmer:
      evaporated: 150 g
    variants:
      - name: without the soft drink
        changes:
          - line: cola
            ingredient: water
          - ingredient: sugar_white
            amount: 30 g
        evaporated: 120 g
    variant: without-the-soft-drink
`;
const TEXT = SMALL.slice(0, SMALL.indexOf('\nformulas:')) + FORMULAS;

function cookOf(text: string) {
  const reading = readCookFile(text);
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(JSON.stringify(reading));
  return reading.document.cook;
}

describe('a cook whose sauce is made as a variant', () => {
  const cook = cookOf(TEXT);
  const report = gatherReport(cook, forecastCook(cook, { members: 8, seed: 1 }));
  const print = printer(readerOf(cook, undefined));
  const text = planText(report, print);

  test('the file keeps base, variant and label, and comes back the same', () => {
    expect(cookOf(printCookFile({ kind: 'cook', cook }))).toEqual(cook);
  });

  test('what is weighed is the variant’s, under its name', () => {
    const [sauce] = planJson(report, print).formulas;
    expect(sauce!.name).toBe('Kettle sauce, without the soft drink');
    expect(sauce!.lines.map((line) => line.ingredient)).toEqual([
      'ketchup',
      'water',
      'own_harbour_relish',
      'vinegar_cider_5',
      'sugar_white',
    ]);
    // 2 tbsp of 6 that weigh 100 g.
    expect(sauce!.lines[2]!.massKg).toBeCloseTo(0.1 / 3, 9);
    // 120 g of water boil off, and less than a gram of the ketchup's acetic acid with it.
    const total = sauce!.lines.reduce((sum, line) => sum + line.massKg, 0);
    expect(sauce!.yieldKg).toBeLessThan(total - 0.12);
    expect(sauce!.yieldKg).toBeGreaterThan(total - 0.121);
    expect(text).not.toMatch(/cola/i);
    expect(text).toContain('Harbour relish');
  });

  test('what goes in late is a deed of the simmer and stands apart in the formula', () => {
    expect(text.replace(/\s+/g, ' ')).toMatch(/Take it off, then stir in 60 mL apple cider vinegar/);
    expect(text).toContain('then, off the heat');
    expect(planJson(report, print).formulas[0]!.lines.map((line) => line.late)).toEqual([
      false,
      false,
      false,
      true,
      false,
    ]);
  });

  test('a label whose allergens nobody read is a caution by its name', () => {
    const caution = standingNotices(cook).find(({ id }) => id === 'safety.allergens-unknown');
    expect(caution?.params).toMatchObject({ ingredients: 'Harbour relish' });
  });
});

test('as written, the soft drink is in it', () => {
  const cook = cookOf(TEXT.replace('    variant: without-the-soft-drink\n', ''));
  const [sauce] = gatherReport(cook, forecastCook(cook, { members: 8, seed: 1 })).formulas;
  expect(sauce!.formula.name).toBe('Kettle sauce');
  expect(sauce!.lines.map((line) => line.ingredientId)).toContain('cola');
});
