import { fromSi, type Kind, toSi } from '@pitwright/model';
import type { InputSpec } from './spec.ts';

const ZERO_CELSIUS_K = 273.15;

/** A value in SI as the calcs carry it: temperatures in °C. */
export const inCalcUnit = (kind: Kind, si: number): number =>
  kind === 'temperature' ? si - ZERO_CELSIUS_K : si;

/** The same, out: a value the calcs carry, written in `unit`. */
export const fromCalcUnit = (kind: Kind, value: number, unit: string): number =>
  kind === 'temperature' && unit === '°C'
    ? value
    : fromSi(kind, kind === 'temperature' ? value + ZERO_CELSIUS_K : value, unit);

const calcValue = (kind: Kind, value: number, unit: string): number =>
  kind === 'temperature' && unit === '°C' ? value : inCalcUnit(kind, toSi(kind, value, unit));

interface QuantityOptions {
  /** Ends included: lowest, highest, unit. */
  readonly range?: readonly [number, number, string];
  /** Value and unit. */
  readonly byDefault?: readonly [number, string];
  readonly optional?: boolean;
  readonly remark?: string;
}

/** An input that is a physical quantity; range and default are written in the unit that people use. */
export function quantityInput(name: string, kind: Kind, options: QuantityOptions = {}): InputSpec {
  const { range, byDefault, optional, remark } = options;
  return {
    type: 'quantity',
    name,
    kind,
    ...(range && {
      min: calcValue(kind, range[0], range[2]),
      max: calcValue(kind, range[1], range[2]),
      limits: `${range[0]}..${range[1]}${range[2] === '1' ? '' : ` ${range[2]}`}`,
    }),
    ...(byDefault && { byDefault: calcValue(kind, byDefault[0], byDefault[1]) }),
    ...((optional || byDefault) && { optional: true }),
    ...(remark && { remark }),
  };
}

/** An input that is one of some words. */
export function wordInput(
  name: string,
  words: readonly string[],
  options: { readonly byDefault?: string; readonly optional?: boolean } = {},
): InputSpec {
  const { byDefault, optional } = options;
  return {
    type: 'word',
    name,
    words,
    ...(byDefault && { byDefault }),
    ...((optional || byDefault) && { optional: true }),
  };
}
