import { fromSi } from '@pitwright/model';
import { decimal, fraction, toStep } from './number.ts';

type Units = 'us' | 'metric';

function metric(m3: number, isAsWritten: boolean): string {
  const ml = fromSi('volume', m3, 'mL');
  if (ml >= 995) return `${decimal(fromSi('volume', m3, 'L'), 2)} L`;
  if (ml >= 100) return `${decimal(toStep(ml, 5))} mL`;
  if (!isAsWritten && ml >= 12.5) return `${decimal(toStep(ml, ml >= 25 ? 5 : 1))} mL`;
  return `${decimal(ml >= 10 ? ml : toStep(ml, 0.5), 1)} mL`;
}

/** Nearest of quarters and thirds, as cup measures come. */
function cups(value: number): string {
  const quarter = Math.round(value * 4) / 4;
  const third = Math.round(value * 3) / 3;
  return Math.abs(third - value) < Math.abs(quarter - value) - 1e-9 ? fraction(value, 3) : fraction(value, 4);
}

function spoonsAndCups(m3: number): string {
  const tsp = fromSi('volume', m3, 'tsp');
  if (tsp < 2.75) return `${tsp < 0.3 ? fraction(Math.max(tsp, 1 / 8), 8) : fraction(tsp, 4)} tsp`;
  if (tsp < 11.5) return `${fraction(tsp / 3, 2)} tbsp`;
  const cup = tsp / 48;
  return `${cups(cup)} ${cup <= 1.1 ? 'cup' : 'cups'}`;
}

/**
 * A volume in m³ as spoons, cups or a measuring jug show it.
 * @param isAsWritten it was written in millilitres: they stay as they are
 */
export const volume = (m3: number, units: Units, { isAsWritten = false } = {}): string =>
  units === 'us' ? spoonsAndCups(m3) : metric(m3, isAsWritten);
