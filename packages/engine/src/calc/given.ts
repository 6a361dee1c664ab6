import { type Kind, parseQuantity, toSi } from '@pitwright/model';
import { inCalcUnit } from './describe.ts';
import { refuse } from './problem.ts';
import type { CalcInputs, Curve, MixLine } from './spec.ts';

/** The number of an input, or undefined where it was left out. */
export function maybeNumber(inputs: CalcInputs, name: string): number | undefined {
  const value = inputs[name];
  return typeof value === 'number' ? value : undefined;
}

/** The number of an input. @throws CalcProblem where it is missing */
export const numberOf = (inputs: CalcInputs, name: string): number =>
  maybeNumber(inputs, name) ?? refuse('calc.missing', { input: name });

/** The word or text of an input, or undefined where it was left out. */
export function maybeText(inputs: CalcInputs, name: string): string | undefined {
  const value = inputs[name];
  return typeof value === 'string' ? value : undefined;
}

/** The word or text of an input. @throws CalcProblem where it is missing */
export const textOf = (inputs: CalcInputs, name: string): string =>
  maybeText(inputs, name) ?? refuse('calc.missing', { input: name });

/** The curve of an input, or undefined where it was left out. */
export function maybeCurve(inputs: CalcInputs, name: string): Curve | undefined {
  const value = inputs[name];
  return typeof value === 'object' && 'timesS' in value ? value : undefined;
}

/** The lines of a mix, or undefined where it was left out. */
export function maybeMix(inputs: CalcInputs, name: string): readonly MixLine[] | undefined {
  const value = inputs[name];
  return Array.isArray(value) ? value : undefined;
}

/** Which one of these inputs was given. @throws CalcProblem where it is none or more than one */
export function exactlyOne(inputs: CalcInputs, names: readonly string[]): string {
  const given = names.filter((name) => inputs[name] !== undefined);
  if (given.length === 0) refuse('calc.none-of', { input: names[0]!, names: names.join('|') });
  if (given.length > 1)
    refuse('calc.more-than-one-of', {
      input: given[1]!,
      given: given.join('|'),
      names: names.join('|'),
    });
  return given[0]!;
}

/** Refuses an input that this case has no use for, so that nothing is silently left out. */
export function without(inputs: CalcInputs, names: readonly string[], reason: string): void {
  for (const name of names) if (inputs[name] !== undefined) refuse('calc.not-here', { input: name, reason });
}

/**
 * A quantity written inside a text [SI, temperatures in °C]. A length is never negative, unless the range of its
 * input reaches below zero, as an altitude's does. @throws CalcProblem naming the input
 */
export function quantityIn(
  input: string,
  text: string,
  kind: Kind,
  { mayBeNegative = false }: { readonly mayBeNegative?: boolean } = {},
): number {
  const reading = parseQuantity(text, kind);
  if (reading.ok) return inCalcUnit(kind, reading.quantity.si);
  const { id, params } = reading.problem;
  if (mayBeNegative && id === 'quantity.negative')
    return toSi(kind, params?.value as number, params?.unit as string);
  return refuse(`calc.${id.slice(id.indexOf('.') + 1)}`, { ...params, input });
}

/** Two quantities parted by a blank, such as `55 °C 21.13 min`. @throws CalcProblem naming the input */
export function pairIn(input: string, text: string, first: Kind, second: Kind): [number, number] {
  const item = text.trim();
  for (const blank of item.matchAll(/\s+/g)) {
    const a = parseQuantity(item.slice(0, blank.index), first);
    const b = parseQuantity(item.slice(blank.index), second);
    if (a.ok && b.ok) return [inCalcUnit(first, a.quantity.si), inCalcUnit(second, b.quantity.si)];
  }
  return refuse('calc.not-a-pair', { input, text: item, first, second });
}

/** The items of a list parted by `|`. @throws CalcProblem on an empty item */
export function itemsIn(input: string, text: string): readonly string[] {
  const items = text.split('|').map((item) => item.trim());
  if (items.includes('')) refuse('calc.empty-item', { input });
  return items;
}
