/**
 * Sweetness by mass, sucrose 1. @source encyclopedia of food terms, sweeteners (glucose, fructose crystalline,
 * maltose, lactose); Public Health Nutrition 26(5), 2022, table 2 (molasses, honey, high-fructose syrup)
 */
export const RELATIVE_SWEETNESS = {
  sucrose: 1,
  glucose: 0.74,
  fructose: 1.73,
  maltose: 0.33,
  lactose: 0.16,
  molasses: 0.9,
  honey: 1,
  hfcs: 1.1,
} as const;

/** In a warm mixed sauce fructose is nearer 1.2 and glucose 0.7 (from memory). */
export const SAUCE_FRUCTOSE_FACTOR = 1.2;
export const SAUCE_GLUCOSE_FACTOR = 0.7;
export const MALTOSE_FACTOR = 0.33;
