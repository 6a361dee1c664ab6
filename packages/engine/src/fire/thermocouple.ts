export const THERMOCOUPLES = ['K', 'J', 'N', 'E', 'T'] as const;
export type Thermocouple = (typeof THERMOCOUPLES)[number];

/** Copper–constantan is standardised up to here [°C]; the others beyond any pit. */
const HIGHEST_T_C = 350;

/**
 * Tolerance of new wire from 0 °C [K]: the greater of a fixed and a proportional limit.
 * @returns undefined where the standard gives this type none
 * @source IEC 60584-1
 */
export function thermocoupleToleranceK(
  type: Thermocouple,
  grade: 1 | 2,
  temperatureC: number,
): number | undefined {
  if (type === 'T' && temperatureC > HIGHEST_T_C) return undefined;
  const fixed = type === 'T' ? (grade === 1 ? 0.5 : 1) : grade === 1 ? 1.5 : 2.5;
  return Math.max(fixed, (grade === 1 ? 0.004 : 0.0075) * temperatureC);
}
