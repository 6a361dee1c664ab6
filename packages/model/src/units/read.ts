import type { Said } from '../said.ts';
import { findUnit, type Kind, kindsOfUnit, mayBeNegative, takesBareNumber, UNITS } from './kinds.ts';
import type { Quantity } from './quantity.ts';

/** A quantity read from text, or what is wrong with the text. */
export type Reading<K extends Kind = Kind> =
  | { readonly ok: true; readonly quantity: Quantity<K> }
  | { readonly ok: false; readonly problem: Said };

/** Decimal point, optional e-notation, no thousands separator; the unit with or without a space. */
const NUMBER_THEN_UNIT = /^([+\-−]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+\-−]?\d+)?)\s*(.*)$/su;

/** The units a kind may be written in, for a sentence that says what would be right. */
const unitList = (kind: Kind): string => UNITS[kind].map((unit) => unit.symbol).join(', ');

export const problem = (id: string, params: Said['params']): { ok: false; problem: Said } => ({
  ok: false,
  problem: { id, params },
});

/**
 * The quantity of a number and the text of its unit. Problems: `quantity.unit-missing`, `quantity.unit-of-other-kind`,
 * `quantity.unit-unknown`, `quantity.not-finite`, `quantity.negative`, `quantity.below-absolute-zero`.
 */
export function quantityOf<K extends Kind>(kind: K, value: number, unitText: string): Reading<K> {
  const bare = unitText.trim() === '';
  if (bare && !takesBareNumber(kind))
    return problem('quantity.unit-missing', { kind, value, units: unitList(kind) });
  const unit = findUnit(kind, bare ? '1' : unitText);
  if (!unit) {
    const others = kindsOfUnit(unitText);
    const params = { kind, unit: unitText.trim(), units: unitList(kind) };
    return others.length > 0
      ? problem('quantity.unit-of-other-kind', { ...params, other: others[0]! })
      : problem('quantity.unit-unknown', params);
  }
  // Adding zero turns a written −0 into 0.
  const si = value * unit.toSi + (unit.offset ?? 0) + 0;
  if (!Number.isFinite(si)) return problem('quantity.not-finite', { kind });
  if (si < 0 && kind === 'temperature')
    return problem('quantity.below-absolute-zero', { value, unit: unit.symbol });
  if (si < 0 && !mayBeNegative(kind)) return problem('quantity.negative', { kind, value, unit: unit.symbol });
  return { ok: true, quantity: { kind, si, writtenIn: unit.symbol } };
}

/**
 * A quantity as `calc` takes it: `121 °C`, `1.2e3kg`, `0.02`. A bare number is taken only for fractions and pure
 * numbers. Problems: `quantity.empty`, `quantity.not-a-number` and those of {@link quantityOf}.
 */
export function parseQuantity<K extends Kind>(text: string, kind: K): Reading<K> {
  const trimmed = text.trim();
  if (trimmed === '') return problem('quantity.empty', { kind, units: unitList(kind) });
  const parts = NUMBER_THEN_UNIT.exec(trimmed);
  if (!parts || parts[2]!.startsWith(','))
    return problem('quantity.not-a-number', { text: trimmed, kind, units: unitList(kind) });
  return quantityOf(kind, Number(parts[1]!.replaceAll('−', '-')), parts[2]!);
}
