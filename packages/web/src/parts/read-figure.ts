import {
  type Kind,
  type Limits,
  type Quantity,
  type Reading,
  readCookQuantity,
  withinLimits,
} from '@pitwright/model';
import type { Writing } from '../words.tsx';

/** The unit that a bare number is taken in: only where this hand's own writing leaves one. */
function bareUnit(kind: Kind, value: number, units: Writing['units']): string | undefined {
  const isUs = units === 'us';
  if (kind === 'temperature') return isUs ? '°F' : '°C';
  // A mass is asked for its unit: labels carry both.
  // Millimetres or centimetres: asked, save for nothing at all.
  if (kind === 'length') return isUs ? 'in' : value === 0 ? 'mm' : undefined;
  // 8 is 8 %; 0.08 is read as a share before it comes here.
  if (kind === 'fraction') return value >= 1 ? '%' : undefined;
  return undefined;
}

const BARE = /^\d+(?:[.,]\d+)?$/;

export type Figure<K extends Kind> =
  | { readonly ok: true; readonly quantity: Quantity<K> }
  | { readonly ok: false; readonly why: 'unread' | 'outside' };

/** A figure written by hand, in the person's own unit where only the number stands; read only between its limits. */
export function readFigure<K extends Kind>(
  text: string,
  kind: K,
  limits: Limits,
  units: Writing['units'],
): Figure<K> {
  const reading = readBare(text.trim(), kind, units) ?? readCookQuantity(text, kind);
  if (!reading.ok) return { ok: false, why: 'unread' };
  if (!withinLimits(reading.quantity, limits)) return { ok: false, why: 'outside' };
  return reading;
}

function readBare<K extends Kind>(text: string, kind: K, units: Writing['units']): Reading<K> | undefined {
  if (!BARE.test(text)) return undefined;
  const unit = bareUnit(kind, Number(text.replace(',', '.')), units);
  return unit === undefined ? undefined : readCookQuantity(`${text} ${unit}`, kind);
}
