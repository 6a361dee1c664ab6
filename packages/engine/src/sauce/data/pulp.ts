import type { Ingredient } from '../../food/data/ingredients.ts';

/**
 * Thickening potency t: pulp that one gram brings, ketchup 1. Judgement, ±25 %; one plate test corrects the sum.
 */
const BY_ID: Readonly<Record<string, number>> = {
  ketchup: 1,
  ketchup_low_sodium: 1,
  tomato_paste: 3.4,
  tomato_puree: 1.5,
  tomato_sauce_canned: 1,
  tomatoes_crushed: 1.1,
  tomato_juice: 0.7,
  tomato_raw: 0.7,
  tomato_sun_dried: 6,
  tomato_powder: 6,
  tomato_chili_sauce: 1,
  mustard_yellow: 1.2,
  mustard_dijon: 1.2,
  mustard_whole_grain: 1.2,
  bbq_sauce_generic: 1,
  steak_sauce_tomato: 1,
  sriracha_type: 1,
  hoisin_sauce: 1,
  plum_sauce: 0.8,
  chipotle_in_adobo: 0.8,
  jam_generic: 0.6,
  jam_apricot: 0.6,
  // By its fibre and pectin against tomato paste (5.1 against 4.1 g).
  tamarind: 4,
  prune: 2,
  raisin: 2,
  date: 2,
  applesauce: 0.8,
  miso: 1.2,
  peanut_butter: 1.2,
  tahini: 1,
  horseradish: 1,
  garlic_raw: 0.6,
  ginger_raw: 0.5,
};

/** Whole leaves and crystals that do not swell. */
const NO_PULP = new Set(['bay_leaf', 'vanilla_extract', 'coffee_instant']);

const BY_CATEGORY: Readonly<Record<string, number>> = { spice: 6, fruit: 0.6, vegetable: 0.5 };

/** Potency of one ingredient [1]; syrups, sugars, liquids and fats bring none. */
export function pulpPotency(ingredient: Ingredient): number {
  if (NO_PULP.has(ingredient.id)) return 0;
  return ingredient.pulp ?? BY_ID[ingredient.id] ?? BY_CATEGORY[ingredient.category] ?? 0;
}

/**
 * Yield stress that 1 % of a thickener adds in the cold [Pa per percent]: native corn starch 2–5, half of it lost in
 * half an hour below pH 4; xanthan from "0.1–0.2 % is a fix for a thin cold sauce". Judgement, a factor of two.
 */
export const THICKENER_YIELD_PA: Readonly<Record<string, number>> = {
  cornstarch: 3.5,
  flour_wheat: 1.5,
  xanthan_gum: 40,
  pectin_dry: 0,
  gelatin_dry: 0,
};
