import { findUnit, type Kind } from './kinds.ts';

/** A physical quantity in SI that remembers the unit it was written in. */
export interface Quantity<K extends Kind = Kind> {
  readonly kind: K;
  /** Value in SI: kg, m, s, m³, K (temperatures are kelvin here; `temperatureC` at function doors). */
  readonly si: number;
  /** Unit symbol as in `UNITS`; a compound such as `2 lb 10 oz` keeps its parts, largest first. */
  readonly writtenIn?: string;
  /** Standard deviation in SI where the writer gave a doubt. */
  readonly sd?: number;
}

/** Value in SI of `value` written in `unit`. @throws RangeError on a unit of another kind */
export function toSi(kind: Kind, value: number, unit: string): number {
  const definition = findUnit(kind, unit);
  if (!definition) throw new RangeError(`${unit} is no unit of ${kind}`);
  return value * definition.toSi + (definition.offset ?? 0);
}

/** Value in `unit` of a quantity held in SI. @throws RangeError on a unit of another kind */
export function fromSi(kind: Kind, si: number, unit: string): number {
  const definition = findUnit(kind, unit);
  if (!definition) throw new RangeError(`${unit} is no unit of ${kind}`);
  return (si - (definition.offset ?? 0)) / definition.toSi;
}

export const quantity = <K extends Kind>(kind: K, value: number, unit: string): Quantity<K> => ({
  kind,
  si: toSi(kind, value, unit),
  writtenIn: unit,
});
