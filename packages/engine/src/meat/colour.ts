/**
 * How far the surface has browned: equivalent hours of a dry surface at 110 °C, and the colour grade they make.
 *
 * Rate: a wet surface does not brown, a dry one twice as fast every 12 K. Sugar on it, as a glaze or in the rub,
 * quickens it. The grades are set so that racks and briskets have the colour that cooks tell at their usual wraps and
 * ends; common practice, no source. Smoke's own colour is in the grades, not resolved.
 */
import { exp, log } from '../numeric/elementary.ts';

const REFERENCE_C = 110;
const DOUBLES_EVERY_K = 12;
const PER_KELVIN = Math.LN2 / DOUBLES_EVERY_K;
/** A film below this activity is a sugar glaze: it browns though it is wet. */
const GLAZE_ACTIVITY = 0.92;
/** So many times faster than bare meat. @source common practice, no source */
const GLAZE_FACTOR = 2;
/** Factor on the rate for each unit of sugars in the rub: a rub half of sugar browns twice as fast. */
const PER_RUB_SUGAR = 2;

/**
 * Browning in one hour, equivalent hours at 110 °C [1].
 *
 * @param surfaceC outer side of the bark [°C]
 * @param dryShare of the surface without a film [1]
 * @param waterActivity of the film
 * @source common practice, no source
 */
export function browningRate(surfaceC: number, dryShare: number, waterActivity: number): number {
  const bare = exp(PER_KELVIN * (surfaceC - REFERENCE_C));
  return waterActivity < GLAZE_ACTIVITY ? GLAZE_FACTOR * bare : dryShare * bare;
}

/** Factor of a rub on the browning. @param sugarShare sugars of its mass, 0 to 1 */
export const rubFactor = (sugarShare: number): number => 1 + PER_RUB_SUGAR * sugarShare;

/** Browning at which grade 2, 3 … 6 begins, equivalent hours at 110 °C. @source common practice, no source */
const GRADE_BEGINS_H = [0.02, 0.07, 0.2, 0.6, 1.8] as const;

/**
 * Colour on the grader's scale: 1 raw pink-grey, 2 tan, 3 red-brown, 4 mahogany, 5 dark mahogany, 6 black-brown;
 * between grades straight in the logarithm of the browning.
 */
export function colourIndex(browningH: number): number {
  if (!(browningH > GRADE_BEGINS_H[0] / 4)) return 1;
  let grade = 0;
  while (grade < GRADE_BEGINS_H.length && browningH >= GRADE_BEGINS_H[grade]!) grade++;
  const from = grade === 0 ? GRADE_BEGINS_H[0] / 4 : GRADE_BEGINS_H[grade - 1]!;
  const to = GRADE_BEGINS_H[grade];
  if (to === undefined) return 6;
  return 1 + grade + log(browningH / from) / log(to / from);
}
