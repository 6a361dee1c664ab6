import { fromSi } from '@pitwright/model';
import { decimal, fraction } from './number.ts';

/** A length in m as a ruler shows it: mm, cm from 10 cm, m from half a metre; eighths of an inch, feet from 3 ft. */
export function length(m: number, units: 'us' | 'metric'): string {
  if (units === 'us') {
    const inches = fromSi('length', m, 'in');
    return inches < 36 ? `${fraction(inches, 8)} in` : `${decimal(inches / 12)} ft`;
  }
  // A bark grows by tenths of a millimetre.
  if (m < 0.1) return `${decimal(m * 1e3, m < 9.95e-3 ? 1 : 0)} mm`;
  return m < 0.5 ? `${decimal(m * 100)} cm` : `${decimal(m, 1)} m`;
}
