import { ingredientById } from '../food/data/ingredients.ts';

/** The nine of the United States and the fourteen of the European Union. */
export const ALLERGEN_LAWS = ['us', 'eu'] as const;
export type AllergenLaw = (typeof ALLERGEN_LAWS)[number];

/**
 * What is to be declared of these catalogue rows, sorted; empty where nothing is.
 *
 * By usual labels: what a jar holds is on its own label.
 * @returns undefined where a row is not in the catalogue: unknown is never none
 * @source US nine (FALCPA 2004, FASTER Act 2021); Regulation (EU) 1169/2011, Annex II; mapping from common labels
 */
export function allergensOf(ingredients: readonly string[], law: AllergenLaw): readonly string[] | undefined {
  const found = new Set<string>();
  for (const id of ingredients) {
    const row = ingredientById(id);
    if (!row) return undefined;
    for (const allergen of law === 'us' ? row.allergensUs : row.allergensEu) found.add(allergen);
  }
  return [...found].sort();
}
