/** Acid food ends here. @source 21 CFR 114.3 */
const ACID_PH = 4.6;
/** Tomato products below this are let off. @source 21 CFR 114.3 */
const TOMATO_PH = 4.7;
/** Below and at this water activity a food above pH 4.6 is not low-acid. @source 21 CFR 114.3 */
const LOW_WATER_ACTIVITY = 0.85;

const ACIDITY_CLASSES = ['acid', 'low-acid', 'low-water-activity', 'acid-tomato'] as const;
export type AcidityClass = (typeof ACIDITY_CLASSES)[number];

/** Class of a food by its pH and water activity; never a licence for the cupboard. @source 21 CFR 114.3 */
export function acidityClass(ph: number, waterActivity: number, isTomato: boolean): AcidityClass {
  if (ph <= ACID_PH) return 'acid';
  if (isTomato && ph < TOMATO_PH) return 'acid-tomato';
  return waterActivity > LOW_WATER_ACTIVITY ? 'low-acid' : 'low-water-activity';
}
