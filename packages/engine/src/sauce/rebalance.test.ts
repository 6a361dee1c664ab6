/** Another base, another sugar: the least change that brings the taste back, and what matters at all. */
import { describe, expect, test } from 'vitest';
import { ingredientById } from '../food/data/ingredients.ts';
import { type BatchLine, batchMassG } from './batch.ts';
import { TASTES } from './jnd.ts';
import { lineEffects } from './matters.ts';
import { type RebalanceLine, rebalance, swapLine, wantedFrom } from './rebalance.ts';

const row = (id: string) => ingredientById(id)!;
const lines = (text: string): BatchLine[] =>
  text.split('|').map((item) => {
    const [id, g] = item.trim().split(' ');
    return { ingredient: row(id!), massG: Number(g) };
  });
const HELPERS = ['sugar_brown_packed', 'vinegar_cider_5', 'salt_table', 'cayenne', 'tomato_paste'].map(row);

/** Three formulas of our own, each with the liquid that is changed last. */
const FORMULAS = {
  'tamarind and black-tea glaze': lines(
    'tamarind 240 | sugar_brown_packed 260 | molasses 120 | vinegar_cider_5 121 | tomato_paste 60 | ginger_raw 30 | garlic_raw 15 | salt_sea_fine 16 | chipotle_ground 4 | tea_black 1201',
  ),
  'ketchup and cola sauce': lines(
    'ketchup 500 | vinegar_cider_5 150 | sugar_brown_packed 120 | molasses 60 | worcestershire_type 34 | mustard_yellow 20 | salt_table 5 | cayenne 2 | garlic_powder 6 | cola 380',
  ),
  'mustard and apple sauce': lines(
    'mustard_yellow 300 | honey 160 | vinegar_cider_5 90 | tomato_paste 60 | salt_table 4 | cayenne 1.5 | apple_juice 300',
  ),
};
const SWAPS = [
  ['tamarind and black-tea glaze', 'apple_juice', 700],
  ['tamarind and black-tea glaze', 'water', 700],
  ['ketchup and cola sauce', 'coffee_brewed', 350],
  ['ketchup and cola sauce', 'pineapple_juice', 350],
  ['mustard and apple sauce', 'stout', 150],
  ['mustard and apple sauce', 'cola', 150],
] as const;

describe('swapping the liquid', () => {
  test.each(SWAPS)('%s with %s: all five within half a noticeable step', (name, instead, offG) => {
    const base = FORMULAS[name];
    const { wanted, finishedG } = wantedFrom(base, offG);
    const answer = rebalance({
      wanted,
      finishedG,
      lines: swapLine(base, base.length - 1, row(instead)),
      mayAdd: HELPERS,
    });
    if (!answer.ok) throw new Error(answer.problems[0]!.id);
    for (const taste of TASTES) expect(Math.abs(answer.stepsAfter[taste]), taste).toBeLessThan(0.5);
    expect(batchMassG(answer.finished)).toBeCloseTo(finishedG, 2);
    // Few lines move: what is left is weighed as before.
    expect(
      answer.shifts.filter((s) => Math.abs(s.afterG - s.beforeG) > 0.01 * s.beforeG).length,
    ).toBeLessThanOrEqual(4);
    for (const { afterG } of answer.shifts) expect(afterG).toBeGreaterThanOrEqual(0);
  });

  test('the sugar that coffee lacks against cola is about 38 g of brown sugar, as three linear unknowns give too', () => {
    const base = FORMULAS['ketchup and cola sauce'];
    const { wanted, finishedG } = wantedFrom(base, 350);
    const answer = rebalance({
      wanted,
      finishedG,
      lines: swapLine(base, base.length - 1, row('coffee_brewed')),
    });
    if (!answer.ok) throw new Error();
    const sugar = answer.shifts.find((s) => s.ingredient.id === 'sugar_brown_packed')!;
    expect(sugar.afterG - sugar.beforeG).toBeGreaterThan(30);
    expect(sugar.afterG - sugar.beforeG).toBeLessThan(46);
  });

  test('an unchanged formula asks for no change', () => {
    const base = FORMULAS['ketchup and cola sauce'];
    const answer = rebalance({ ...wantedFrom(base, 350), lines: base, mayAdd: HELPERS });
    expect(answer.ok && answer.said.map((s) => s.id)).toEqual(['sauce.rebalance-nothing']);
  });

  test('a locked line never moves, and what is then out of reach is said', () => {
    const base = FORMULAS['ketchup and cola sauce'];
    const { wanted, finishedG } = wantedFrom(base, 350);
    const swapped: RebalanceLine[] = swapLine(base, base.length - 1, row('coffee_brewed')).map((line) => ({
      ...line,
      locked: line.ingredient.id !== 'salt_table',
    }));
    const answer = rebalance({ wanted, finishedG, lines: swapped });
    if (!answer.ok) throw new Error();
    for (const shift of answer.shifts)
      if (shift.ingredient.id !== 'salt_table') expect(shift.afterG).toBe(shift.beforeG);
    expect(answer.said.map((s) => s.id)).toContain('sauce.rebalance-still-less');
  });

  test('vinegar that goes in late keeps all its acid: brought back within half a step, to the finished mass', () => {
    const base = FORMULAS['ketchup and cola sauce'].map((line) => ({
      ...line,
      isLate: line.ingredient.category === 'vinegar',
    }));
    const { wanted, finishedG } = wantedFrom(base, 350);
    const early = wantedFrom(FORMULAS['ketchup and cola sauce'], 350);
    expect(wanted.sour).toBeGreaterThan(early.wanted.sour);
    const answer = rebalance({
      wanted,
      finishedG,
      lines: swapLine(base, base.length - 1, row('coffee_brewed')),
      mayAdd: HELPERS,
    });
    if (!answer.ok) throw new Error(answer.problems[0]!.id);
    for (const taste of TASTES) expect(Math.abs(answer.stepsAfter[taste]), taste).toBeLessThan(0.5);
    expect(batchMassG(answer.finished)).toBeCloseTo(finishedG, 2);
  });

  test('no free line, and too little of everything: refused', () => {
    const base = FORMULAS['mustard and apple sauce'];
    const { wanted, finishedG } = wantedFrom(base, 150);
    const locked = rebalance({ wanted, finishedG, lines: base.map((line) => ({ ...line, locked: true })) });
    expect(!locked.ok && locked.problems[0]!.id).toBe('sauce.rebalance-all-locked');
    const little = rebalance({ wanted, finishedG: 5000, lines: base });
    expect(!little.ok && little.problems[0]!.id).toBe('sauce.rebalance-no-mass');
  });
});

describe('does it matter', () => {
  const base = FORMULAS['ketchup and cola sauce'];
  const finishedG = wantedFrom(base, 350).finishedG;
  const effect = (id: string) => lineEffects(base, finishedG)[base.findIndex((l) => l.ingredient.id === id)]!;

  test('ketchup and sugar do; a little mustard does not; spices are never called unimportant', () => {
    expect(effect('ketchup').matters).toBe(true);
    expect(effect('sugar_brown_packed').matters).toBe(true);
    expect(effect('mustard_yellow').matters).toBe(false);
    expect(effect('garlic_powder').isAroma).toBe(true);
  });

  test('leaving a line out moves twice as far as halving it', () => {
    for (const { steps } of lineEffects(base, finishedG))
      for (const taste of TASTES) expect(steps['left-out'][taste]).toBeCloseTo(2 * steps.half[taste], 6);
  });
});
