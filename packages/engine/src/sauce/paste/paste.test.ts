/** Reading amounts and names: the shapes people write, and that nothing at all is read wrongly in silence. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ingredientById } from '../../food/data/ingredients.ts';
import { plainText, readAmount } from './amount.ts';
import { edits, nameOf } from './name.ts';
import { pasteRecipe } from './recipe.ts';
import { isSettled } from './types.ts';
import { readUnit } from './units.ts';
import { vocabulary } from './vocabulary.ts';

describe('amounts', () => {
  test.each([
    ['2 cups', 2, 2],
    ['½ cup', 0.5, 0.5],
    ['1½ cups', 1.5, 1.5],
    ['1 1/2 cups', 1.5, 1.5],
    ['1-1/2 cups', 1.5, 1.5],
    ['1 and 1/2 cups', 1.5, 1.5],
    ['1⁄2 cup', 0.5, 0.5],
    ['.25 cup', 0.25, 0.25],
    ['0,5 l', 0.5, 0.5],
    ['2-3 cloves', 2, 3],
    ['2 – 3 cloves', 2, 3],
    ['2 to 3 cloves', 2, 3],
    ['half a cup', 0.5, 0.5],
    ['a quarter cup', 0.25, 0.25],
    ['a cup', 1, 1],
    ['twelve cloves', 12, 12],
  ])('%s', (text, low, high) => {
    const amount = readAmount(plainText(text))!;
    expect([amount.low, amount.high]).toEqual([low, high]);
    expect(amount.otherReading).toBeUndefined();
  });

  test.each([
    ['1,500 g', 1.5, 1500],
    ['1.500 g', 1.5, 1500],
    ['11/2 cups', 5.5, 1.5],
  ])('%s may be read two ways', (text, first, second) => {
    const amount = readAmount(plainText(text))!;
    expect([amount.low, amount.otherReading]).toEqual([first, second]);
  });

  test.each(['1/0 cup', '1/ cup', '1.2.3 g', 'cup', '', '/2'])('%s is no amount', (text) => {
    expect(readAmount(plainText(text))).toBeUndefined();
  });
});

describe('units', () => {
  // US: 231 in³ gallon; UK: 1985 Weights and Measures Act; Australian tablespoon 20 mL.
  test.each([
    ['us', 'cup', 236.5882365],
    ['us', 'pint', 473.176473],
    ['uk', 'pint', 568.26125],
    ['uk', 'tbsp', 15],
    ['au', 'tablespoons', 20],
    ['metric', 'cup', 250],
    ['us', 'fl. oz.', 29.5735295625],
    ['us', 'T', 14.78676478125],
    ['us', 't', 4.92892159375],
  ] as const)('%s %s', (system, text, ml) => {
    const unit = readUnit(`${text} honey`, system)!;
    expect(unit.unit.kind === 'volume' && unit.unit.ml).toBeCloseTo(ml, 9);
    expect(unit.rest).toBe('honey');
  });

  test('a word that begins like a unit is none', () => {
    for (const text of ['ground cumin', 'garlic', 'lemon', 'tomato paste', 'ginger', 'molasses', 'coffee'])
      expect(readUnit(text, 'us')).toBeUndefined();
  });
});

describe('names', () => {
  test('every name of the vocabulary means rows that exist and reads as itself', () => {
    for (const [name, meaning] of vocabulary()) {
      for (const id of meaning.ids) expect(ingredientById(id), `${name}: ${id}`).toBeDefined();
      const read = nameOf(name, 'us')!;
      expect(read.leftOver, name).toEqual([]);
      expect(read.isMended, name).toBe(false);
      expect(meaning.ids, name).toContain(read.ids[0]);
    }
  });

  // Damerau–Levenshtein by hand.
  test.each([
    ['ketchup', 'ketchp', 1],
    ['vinegar', 'vinegra', 1],
    ['molasses', 'molases', 1],
    ['honey', 'money', 1],
    ['salt', 'malts', 2],
    ['tea', 'vinegar', 3],
  ])('%s and %s are %d apart', (a, b, apart) => {
    expect(edits(a, b)).toBe(apart);
    expect(edits(b, a)).toBe(apart);
  });
});

describe('any text at all', () => {
  test('is read without a crash, and what is settled has a mass', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        for (const line of pasteRecipe(text).lines)
          if (isSettled(line)) expect(line.massG!).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });

  test('every line of it is kept: read, or set aside', () => {
    const text = 'Sauce:\n1 cup ketchup\n\nMix it well and serve.\nwhatever this may be';
    const { lines, otherText } = pasteRecipe(text);
    expect([...lines, ...otherText].map((line) => line.number).sort()).toEqual([1, 2, 4, 5]);
  });

  test('whose measures these are is said unless it was told', () => {
    const untold = pasteRecipe('1 cup ketchup').doubts;
    expect(untold.map((d) => d.said.id)).toEqual(['sauce.paste-system']);
    expect(pasteRecipe('1 cup ketchup', { system: 'us' }).doubts).toEqual([]);
    expect(pasteRecipe('100 g ketchup').doubts).toEqual([]);
  });
});

describe('what a recipe calls itself', () => {
  test.each([
    ["Grandad's rib sauce", { name: "Grandad's rib sauce", kind: 'sauce' }],
    ['## Harbour dry rub:', { name: 'Harbour dry rub', kind: 'rub' }],
    ['Leg brine', { name: 'Leg brine', kind: 'brine' }],
  ])('%s is a name, and no line', (text, title) => {
    const recipe = pasteRecipe(`${text}\n100 g honey`, { system: 'metric' });
    expect(recipe.title).toEqual(title);
    expect(recipe.lines).toHaveLength(1);
    expect(recipe.otherText[0]!.text).toBe(text);
  });

  // These are things to put in: their amount is asked.
  test.each(['soy sauce', 'Worcestershire sauce', 'hot sauce', '2 cups barbecue sauce', 'honey'])(
    '%s is a line',
    (text) => {
      const recipe = pasteRecipe(`${text}\n100 g honey`, { system: 'us' });
      expect(recipe.title).toBeUndefined();
      expect(recipe.lines).toHaveLength(2);
    },
  );
});
