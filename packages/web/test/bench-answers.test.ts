// Pasted lines and their answers; edits of a formula; the level of a look. Evidence: conformity, laws.
import {
  findIngredient,
  pasteRecipe,
  rebalance,
  sauceOutcome,
  swapLine,
  wantedFrom,
} from '@pitwright/engine/sauce';
import { type Formula, quantity } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  byChoice,
  byHand,
  LONGEST_NOTE,
  methodNote,
  needsWriting,
  noteWith,
  settledLine,
  UNANSWERED,
} from '../src/places/bench/answers.ts';
import { readAmount, scaled, takeOver } from '../src/places/bench/edit.ts';

const only = (text: string) => pasteRecipe(text, { system: 'us' }).lines[0]!;

describe('a pasted line', () => {
  test('an ounce of honey settles only by an answer, to the mass that was chosen', () => {
    const line = only('4 oz honey');
    expect(settledLine(line, UNANSWERED)).toBeUndefined();
    const place = line.doubts.findIndex((doubt) => doubt.asks);
    const asWeight = line.doubts[place]!.choices.find((choice) => choice.reading === 'as-weight')!;
    // 4 oz avoirdupois = 113.398 g.
    expect(settledLine(line, byChoice(line, UNANSWERED, place, asWeight))?.amount.si).toBeCloseTo(0.113, 6);
  });

  test('another thing than was read needs a mass of its own', () => {
    const line = only('2 tbsp honey or maple syrup');
    const place = line.doubts.findIndex((doubt) => doubt.asks);
    const other = line.doubts[place]!.choices.find((choice) => choice.ingredient !== line.ingredient)!;
    const answer = byChoice(line, UNANSWERED, place, { ingredient: other.ingredient! });
    expect(settledLine(line, answer)).toBeUndefined();
    expect(needsWriting(line, answer)).toBe(true);
    expect(settledLine(line, byHand(line, other.ingredient!, 40))?.ingredient).toBe(other.ingredient);
  });

  test('curing salt is never taken over, whatever is answered', () => {
    const line = only('1 tsp pink curing salt');
    expect(settledLine(line, byHand(line, 'cure_6_25', 5))).toBeUndefined();
    expect(needsWriting(line, UNANSWERED)).toBe(false);
  });
});

describe('an amount', () => {
  test.each([
    ['240 g', 'mass', 0.24],
    ['1 lb', 'mass', 0.45359237],
    ['2 cups', 'volume', 2 * 236.5882365e-6],
  ])('%s is read', (text, kind, si) => {
    const read = readAmount(text);
    expect(read.ok && read.amount.kind).toBe(kind);
    expect(read.ok && read.amount.si).toBeCloseTo(si, 9);
  });

  test.each([
    ['8 oz', 'quantity.ounce'],
    ['-3 g', 'quantity.negative'],
    ['3', 'quantity.amount-unit'],
    ['3 m', 'quantity.amount-unit'],
  ])('%s is asked about', (text, id) => {
    const read = readAmount(text);
    expect(!read.ok && read.problem.id).toBe(id);
  });
});

const GLAZE: Formula = {
  id: 'glaze',
  name: 'Glaze',
  kind: 'sauce',
  lines: [
    { ingredient: 'tea_black', amount: quantity('volume', 1, 'L'), note: 'strong' },
    { ingredient: 'tamarind', amount: quantity('mass', 200, 'g'), locked: true },
    { ingredient: 'sugar_brown_packed', amount: quantity('mass', 220, 'g') },
    { ingredient: 'vinegar_cider_5', amount: quantity('volume', 100, 'mL') },
    { ingredient: 'salt_sea_fine', amount: quantity('mass', 14, 'g') },
  ],
  simmer: { evaporated: quantity('mass', 500, 'g') },
};

test('a swap taken over keeps the finished mass to a scale’s step, locked lines and how the rest was written', () => {
  const before = sauceOutcome(GLAZE);
  if (!before.ok) throw new Error('the glaze does not work out');
  const lines = before.lines.map((line) => ({ ...line, locked: line.line.locked ?? false }));
  const answer = rebalance({
    ...wantedFrom(lines, before.waterOffG),
    lines: swapLine(lines, 0, findIngredient('apple_juice')!),
  });
  if (!answer.ok) throw new Error('no way back');
  const next = takeOver(GLAZE, { index: 0, ingredient: 'apple_juice' }, answer);
  const after = sauceOutcome(next);
  if (!after.ok) throw new Error('the swap does not work out');
  // Ten grams is the step of kitchenG above a kilo, five above 100 g; five lines and the water.
  expect(Math.abs(after.finishedMassG - before.finishedMassG)).toBeLessThan(30);
  expect(next.lines[0]!.ingredient).toBe('apple_juice');
  expect(next.lines[1]).toBe(GLAZE.lines[1]);
});

test('scaling goes with the factor to three figures, in the unit it was written in', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (factor) => {
      const next = scaled(GLAZE, factor);
      next.lines.forEach((line, i) => {
        const wanted = GLAZE.lines[i]!.amount.si * factor;
        expect(Math.abs(line.amount.si / wanted - 1)).toBeLessThan(0.0051);
        expect(line.amount.writtenIn).toBe(GLAZE.lines[i]!.amount.writtenIn);
      });
    }),
  );
});

describe('what a recipe says beside its lines', () => {
  const recipe =
    'Dark table sauce\n2 cups ketchup\n1/2 cup cider vinegar\nSimmer until thick, 30 min\nStrain.';

  test('goes into the note as sentences, the title aside', () => {
    expect(methodNote(pasteRecipe(recipe))).toBe('Simmer until thick, 30 min. Strain.');
    expect(methodNote(pasteRecipe('2 cups ketchup'))).toBeUndefined();
  });

  test('stands behind the note that is there, never longer than a file takes', () => {
    expect(noteWith('Stir often.', 'Strain.')).toBe('Stir often. Strain.');
    expect(noteWith(undefined, 'Strain.')).toBe('Strain.');
    expect(noteWith('a'.repeat(3999), 'Strain.')!.length).toBeLessThanOrEqual(LONGEST_NOTE);
  });
});
