/** The catalogue agrees with itself: proximates sum, energy agrees, every exception is a listed one. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ingredientModule } from '../../../../../scripts/ingredients.ts';
import { ACIDS, allIngredients, type Ingredient, ingredientById, searchIngredients } from './ingredients.ts';

const rows = allIngredients();
const acidSum = (i: Ingredient) => Object.values(i.per100g.acidsG).reduce((sum, g) => sum + g, 0);
/** Acetic acid of vinegars and of smoke condensate is not counted in their carbohydrate (sum of the table). */
const acidOutside = (i: Ingredient) =>
  i.category === 'vinegar' || i.id === 'smoke_condensate' ? (i.per100g.acidsG.acetic ?? 0) : 0;
const proximateSum = (i: Ingredient) => {
  const c = i.per100g;
  return c.waterG + c.proteinG + c.fatG + c.carbohydrateG + c.ashG + c.alcoholG + acidOutside(i);
};
const atwaterKcal = (i: Ingredient) => {
  const c = i.per100g;
  return 4 * c.proteinG + 9 * c.fatG + 4 * c.carbohydrateG + 7 * c.alcoholG + 3 * acidOutside(i);
};
const flagged = (i: Ingredient, what: string) =>
  i.remarks.some((r) => r.startsWith('EXCEPTION') && r.includes(what));

describe('the table of ingredients', () => {
  test('the compact module is what the table says', () => {
    const at = new URL('.', import.meta.url);
    const written = readFileSync(new URL('ingredients.rows.ts', at), 'utf8');
    expect(written).toBe(ingredientModule(readFileSync(new URL('ingredients.csv', at), 'utf8')));
  });

  test('has 237 rows, each with its own id, a source and its evidence', () => {
    expect(rows.length).toBe(237);
    expect(new Set(rows.map((i) => i.id)).size).toBe(237);
    expect(rows.filter((i) => i.usdaId !== undefined).length).toBe(212);
    for (const i of rows) expect(Object.values(i.evidence).every((e) => e !== undefined)).toBe(true);
  });

  test('proximates sum to 100 ± 2 g, and the rows that do not are the listed exceptions', () => {
    const off = rows.filter((i) => Math.abs(proximateSum(i) - 100) > 2).map((i) => i.id);
    expect(off.sort()).toEqual(['baking_soda', 'pepper_black', 'pepper_white']);
    // The table counts smoke condensate without its acid (94.3); with it the row closes.
    expect(
      rows
        .filter((i) => flagged(i, 'SUM'))
        .map((i) => i.id)
        .sort(),
    ).toEqual([...off, 'smoke_condensate']);
  });

  test('energy agrees with 4/9/4/7 within 10 %, and every row that does not is flagged', () => {
    const off = rows.filter((i) => {
      const kcal = i.per100g.energyKcal;
      return Math.abs(atwaterKcal(i) - kcal) > Math.max(0.105 * kcal, 6);
    });
    // Smoke condensate's energy leaves out its acetic acid: 20 against 36.5 kcal.
    expect(off.filter((i) => !flagged(i, 'KCAL')).map((i) => i.id)).toEqual(['smoke_condensate']);
    expect(rows.filter((i) => flagged(i, 'KCAL')).length).toBe(74);
  });

  test.each(rows.map((i) => [i.id, i] as const))('%s: parts are not more than the whole', (_, i) => {
    const c = i.per100g;
    const split = (c.sucroseG ?? 0) + (c.glucoseG ?? 0) + (c.fructoseG ?? 0);
    // Cola: the split of SR27 (10.58 g) is 0.64 g above the total of SR28 (9.94 g).
    expect(split).toBeLessThanOrEqual((c.sugarsG ?? Infinity) + (i.id === 'cola' ? 0.65 : 0.5));
    expect(c.sugarsG ?? 0).toBeLessThanOrEqual(c.carbohydrateG + 1);
    expect(c.fibreG).toBeLessThanOrEqual(c.carbohydrateG + 0.1);
    expect(i.densityGPerMl).toBeGreaterThan(0.1);
    expect(i.densityGPerMl).toBeLessThan(1.5);
    for (const acid of Object.keys(c.acidsG)) expect(ACIDS as readonly string[]).toContain(acid);
    expect(acidSum(i)).toBeLessThan(100);
    if (i.ph !== undefined) expect(i.ph).toBeGreaterThan(2);
  });

  test('what is not known is undefined, not zero', () => {
    expect(ingredientById('pepper_white')!.per100g.sugarsG).toBeUndefined();
    expect(ingredientById('oil_olive')!.ph).toBeUndefined();
    expect(ingredientById('unicorn_syrup')).toBeUndefined();
  });
});

describe('finding by name', () => {
  test.each([
    ['ketchup', 'ketchup'],
    ['cider vinegar', 'vinegar_cider_5'],
    ['vinegar cider', 'vinegar_cider_5'],
    ['brown sugar', 'sugar_brown_packed'],
    ['tamar', 'tamarind'],
    ['black pep', 'pepper_black'],
    ['jalapeño', 'jalapeno_raw'],
  ])('%s finds %s among the first three', (text, id) => {
    expect(searchIngredients(text, 3).map((i) => i.id)).toContain(id);
  });

  test('nothing is found for a word that no row holds, nor for none', () => {
    expect(searchIngredients('unicorn')).toEqual([]);
    expect(searchIngredients('  ')).toEqual([]);
  });
});
