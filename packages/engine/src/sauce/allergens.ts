/** Allergens of a formula, and the lines about which nothing can be said before the label is read. */
import type { Ingredient } from '../food/data/ingredients.ts';

export interface Allergens {
  readonly us: readonly string[];
  readonly eu: readonly string[];
  /** Blends, stocks and made sauces: unknown until the label is read, never free. */
  readonly unknown: readonly Ingredient[];
}

const BLENDS = new Set([
  'chili_powder',
  'curry_powder',
  'bbq_sauce_generic',
  'steak_sauce_tomato',
  'teriyaki_sauce',
  'plum_sauce',
  'sweet_sour_sauce',
  'hot_sauce_vinegar',
  'hot_sauce_aged_cayenne',
  'sriracha_type',
  'worcestershire_type',
  'tomato_chili_sauce',
  'chipotle_in_adobo',
  'stock_beef',
  'stock_chicken',
  'broth_beef_rts',
  'broth_chicken_rts',
  'italian_sausage',
  'pancake_syrup',
  'smoke_condensate',
]);

export const isBlend = (ingredient: Ingredient): boolean =>
  ingredient.allergensUnknown === true || BLENDS.has(ingredient.id);

const sorted = (words: Iterable<string>): string[] => [...new Set(words)].sort();

export function allergensOf(ingredients: readonly Ingredient[]): Allergens {
  return {
    us: sorted(ingredients.flatMap((i) => i.allergensUs)),
    eu: sorted(ingredients.flatMap((i) => i.allergensEu)),
    unknown: ingredients.filter(isBlend),
  };
}
