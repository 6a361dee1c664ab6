/** Allergens of a formula, and the lines about which nothing can be said before the label is read. */
import type { Ingredient } from '../food/data/ingredients.ts';

/** The nine of the United States and the fourteen of the European Union. */
export const ALLERGEN_LAWS = ['us', 'eu'] as const;
export type AllergenLaw = (typeof ALLERGEN_LAWS)[number];

/** Sorted, by each law. */
export interface Allergens extends Readonly<Record<AllergenLaw, readonly string[]>> {
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

const isBlend = (ingredient: Ingredient): boolean =>
  ingredient.allergensUnknown === true || BLENDS.has(ingredient.id);

const sorted = (words: Iterable<string>): string[] => [...new Set(words)].sort();

/**
 * What is to be declared of these, by usual labels: what a jar holds is on its own label.
 *
 * @source US nine (FALCPA 2004, FASTER Act 2021); Regulation (EU) 1169/2011, Annex II; mapping from common labels
 */
export function allergensOf(ingredients: readonly Ingredient[]): Allergens {
  return {
    us: sorted(ingredients.flatMap((i) => i.allergensUs)),
    eu: sorted(ingredients.flatMap((i) => i.allergensEu)),
    unknown: ingredients.filter(isBlend),
  };
}
