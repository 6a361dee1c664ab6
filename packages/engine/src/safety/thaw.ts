const POUND_KG = 0.45359237;
const HOUR_S = 3600;

export const THAW_METHODS = ['refrigerator', 'cold-water'] as const;
export type ThawMethod = (typeof THAW_METHODS)[number];

/**
 * Least and longest thawing time [s]: a refrigerator takes 24 h for each 4 to 5 lb, cold water changed every half hour
 * 30 min a pound. @source USDA thaw rule, as widely reproduced
 */
export function thawTimeS(
  method: ThawMethod,
  massKg: number,
): { readonly low: number; readonly high: number } {
  const pounds = massKg / POUND_KG;
  if (method === 'refrigerator') return { low: (pounds / 5) * 24 * HOUR_S, high: (pounds / 4) * 24 * HOUR_S };
  const steady = pounds * 0.5 * HOUR_S;
  return { low: steady, high: steady };
}
