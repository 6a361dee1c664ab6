import { fromSi } from '@pitwright/model';
import { decimal, fraction, toStep } from './number.ts';

type Units = 'us' | 'metric';
/** Below half an ounce a kitchen scale is read in grams, in both systems: its ounces are too coarse. */
const GRAMS_BELOW_OZ = 0.5;

function grams(kg: number): string {
  const g = kg * 1e3;
  if (g >= 999.5) return `${decimal(kg, kg < 10 ? 2 : 1)} kg`;
  if (g >= 10) return `${decimal(g)} g`;
  return `${decimal(g >= 1 ? toStep(g, 0.5) : g, 1)} g`;
}

function poundsAndOunces(kg: number): string {
  const oz = fromSi('mass', kg, 'oz');
  if (oz < GRAMS_BELOW_OZ) return grams(kg);
  if (oz < 15.875) return `${fraction(oz, 4)} oz`;
  const whole = Math.round(oz);
  const lb = Math.floor(whole / 16);
  const rest = whole - lb * 16;
  return rest === 0 ? `${decimal(lb)} lb` : `${decimal(lb)} lb ${rest} oz`;
}

/** A mass in kg as a kitchen scale shows it: 1 g, 10 g from a kilo; a quarter ounce, an ounce from a pound. */
export const mass = (kg: number, units: Units): string => (units === 'us' ? poundsAndOunces(kg) : grams(kg));

/** A range of masses in kg in one unit: `5.2–6.6 kg`, `11 1/2–14 1/2 lb`. */
export function massRange(lowKg: number, highKg: number, units: Units): string {
  if (units === 'us') {
    const [low, high] = [fromSi('mass', lowKg, 'lb'), fromSi('mass', highKg, 'lb')];
    return high < 1
      ? `${fraction(low * 16, 4)}–${fraction(high * 16, 4)} oz`
      : `${decimal(low, 1)}–${decimal(high, 1)} lb`;
  }
  return highKg < 1
    ? `${decimal(lowKg * 1e3)}–${decimal(highKg * 1e3)} g`
    : `${decimal(lowKg, highKg < 10 ? 2 : 1)}–${decimal(highKg, highKg < 10 ? 2 : 1)} kg`;
}
