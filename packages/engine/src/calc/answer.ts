import type { Kind } from '@pitwright/model';
import { fromCalcUnit } from './describe.ts';
import { refuse } from './problem.ts';
import { readInputs } from './read.ts';
import { calcs } from './registry.ts';
import { CalcProblem, type CalcSpec, type OutputSpec } from './spec.ts';
import { readWritten, type WrittenInputs } from './written.ts';

/** One figure in the unit it is answered in. */
export interface Answer {
  readonly output: string;
  readonly value: number | string | readonly string[];
  readonly unit: string;
}

const byName = new Map(calcs.map((calc) => [calc.name, calc]));

/** The calc of this name. @throws CalcProblem where there is none */
export function findCalc(name: string): CalcSpec {
  return byName.get(name) ?? refuse('calc.unknown-calc', { input: name });
}

/** The described output, the first where none is named. @throws CalcProblem where the calc has no such output */
function findOutput(calc: CalcSpec, name: string | undefined): OutputSpec {
  if (name === undefined || name === '') return calc.outputs[0]!;
  return (
    calc.outputs.find((output) => output.name === name) ??
    refuse('calc.unknown-output', {
      input: name,
      calc: calc.name,
      names: calc.outputs.map((output) => output.name).join('|'),
    })
  );
}

function evaluated(calc: CalcSpec, written: WrittenInputs, output: OutputSpec): Answer['value'] {
  const inputs = readInputs(calc, written);
  let value: Answer['value'] | undefined;
  try {
    value = calc.evaluate(inputs, [output.name])[output.name];
  } catch (error) {
    if (error instanceof CalcProblem) throw error;
    // A room's own guard, outside what its equations hold for: said with its reason, so that one row of a batch that
    // trips it does not take the others along.
    const reason = error instanceof Error ? error.message : String(error);
    return refuse('calc.outside-validity', { input: calc.name, reason });
  }
  if (value === undefined) return refuse('calc.not-from-these', { input: output.name, calc: calc.name });
  if (typeof value === 'number' && !Number.isFinite(value))
    return refuse('calc.not-finite-answer', { input: output.name, calc: calc.name });
  return value;
}

/**
 * One figure asked for by name.
 *
 * @param inputs key → text as written, or the text `key=value; key=value`
 * @param output the first of the calc where it is left out or empty
 * @throws CalcProblem: what cannot be computed is said, never answered with a number
 */
export function answer(name: string, inputs: WrittenInputs | string, output?: string): Answer {
  const calc = findCalc(name);
  const wanted = findOutput(calc, output);
  const written = typeof inputs === 'string' ? readWritten(inputs) : inputs;
  const value = evaluated(calc, written, wanted);
  const unit = wanted.unitFrom === undefined ? wanted.unit : written.get(wanted.unitFrom)!;
  if (typeof value !== 'number' || wanted.unitFrom !== undefined) return { output: wanted.name, value, unit };
  return { output: wanted.name, value: fromCalcUnit(wanted.kind as Kind, value, unit), unit };
}

/** Whether an error says what cannot be computed, rather than that the program is wrong. */
export const isCalcProblem = (error: unknown): error is CalcProblem => error instanceof CalcProblem;
