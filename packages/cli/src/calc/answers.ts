import { type Answer, answer, isCalcProblem, type WrittenInputs } from '@pitwright/engine';
import { METRIC, say } from '@pitwright/words';

/** Digits of a printed number: more than any check asks for, fewer than rounding shows. */
const SIGNIFICANT_DIGITS = 10;

/** A number with its digits, decimal point, no grouping; zero without a sign. */
export const printNumber = (value: number): string =>
  (value === 0 ? 0 : value).toPrecision(SIGNIFICANT_DIGITS);

/** A value as a field: the digits, the word, or the words parted by bars. */
export const printValue = (value: Answer['value']): string =>
  typeof value === 'number' ? printNumber(value) : typeof value === 'string' ? value : value.join('|');

export type Outcome = { readonly answer: Answer } | { readonly problem: string };

/** Asks one figure; what cannot be computed comes back as its sentence. */
export function ask(name: string, inputs: WrittenInputs | string, output?: string): Outcome {
  try {
    return { answer: answer(name, inputs, output) };
  } catch (error) {
    if (!isCalcProblem(error)) throw error;
    return { problem: say(error.said, METRIC) };
  }
}
