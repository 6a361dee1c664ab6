import { readFile } from 'node:fs/promises';
import { calcs, findCalc, isCalcProblem, readWritten } from '@pitwright/engine';
import { METRIC, say } from '@pitwright/words';
import { ask, type Outcome, printValue } from './answers.ts';
import { answerBatch } from './batch.ts';
import { describeCalc, listCalcs } from './describe.ts';

export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

interface Asked {
  readonly name?: string;
  readonly inputs: Map<string, string>;
  readonly output?: string;
  readonly batch?: string;
  readonly wantsList: boolean;
  readonly wantsHelp: boolean;
  readonly wantsJson: boolean;
}

const FLAGS = ['list', 'help', 'json'] as const;

/**
 * Reads `NAME --key value --key=value key=value`, `--input key=value`, and the options of the command itself.
 * A value runs to the next `--`, so that a unit may stand apart: `--temperature 121 °C`.
 * @throws CalcProblem on a key that stands twice or an option without its value
 */
export function readArguments(words: readonly string[]): Asked {
  const inputs = new Map<string, string>();
  const flags = new Set<string>();
  const options = new Map<string, string>();
  let name: string | undefined;
  const add = (written: string) => {
    for (const [key, value] of readWritten(written)) {
      if (inputs.has(key)) readWritten(`${key}=;${key}=`);
      inputs.set(key, value);
    }
  };
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (!word.startsWith('--')) {
      if (name === undefined) name = word;
      else add(word);
      continue;
    }
    const equals = word.indexOf('=');
    const key = equals < 0 ? word.slice(2) : word.slice(2, equals);
    if (equals < 0 && (FLAGS as readonly string[]).includes(key)) {
      flags.add(key);
      continue;
    }
    const parts = equals < 0 ? [] : [word.slice(equals + 1)];
    while (i + 1 < words.length && !words[i + 1]!.startsWith('--')) parts.push(words[++i]!);
    const value = parts.join(' ').trim();
    if (key === 'input') add(value);
    else if (key === 'output' || key === 'batch') options.set(key, value);
    else add(`${key}="${value.replace(/^(["'])(.*)\1$/s, '$2')}"`);
  }
  return {
    name,
    inputs,
    output: options.get('output'),
    batch: options.get('batch'),
    wantsList: flags.has('list'),
    wantsHelp: flags.has('help'),
    wantsJson: flags.has('json'),
  };
}

const line = (output: string, outcome: Outcome): string =>
  'problem' in outcome
    ? `${output}  –  ${outcome.problem}`
    : `${output}  ${printValue(outcome.answer.value)}${
        ['word', 'set'].includes(outcome.answer.unit) ? '' : ` ${outcome.answer.unit}`
      }`;

const record = (output: string, outcome: Outcome): object =>
  'problem' in outcome
    ? { output, problem: outcome.problem }
    : { output, value: outcome.answer.value, unit: outcome.answer.unit };

function answerOne(asked: Asked, streams: Streams): number {
  const calc = findCalc(asked.name!);
  const outputs = asked.output === undefined ? calc.outputs.map((output) => output.name) : [asked.output];
  const outcomes = outputs.map((output) => ask(calc.name, asked.inputs, output));
  const answered = outcomes.filter((outcome) => 'answer' in outcome).length;
  if (asked.wantsJson)
    streams.out(
      `${JSON.stringify({ calc: calc.name, answers: outcomes.map((o, i) => record(outputs[i]!, o)) }, null, 2)}\n`,
    );
  // Nothing answered: the same input is wrong for every output, so it is said once.
  else if (answered === 0) streams.err(`${(outcomes[0] as { problem: string }).problem}\n`);
  else streams.out(outcomes.map((outcome, i) => `${line(outputs[i]!, outcome)}\n`).join(''));
  return answered > 0 ? 0 : 1;
}

/** Runs `pitwright calc`. @returns the exit status: 0 where something was answered (in a batch: every row) */
export async function runCalc(words: readonly string[], streams: Streams): Promise<number> {
  try {
    const asked = readArguments(words);
    if (asked.batch !== undefined) {
      const { csv, allAnswered } = answerBatch(await readFile(asked.batch, 'utf8'));
      streams.out(csv);
      return allAnswered ? 0 : 1;
    }
    if (asked.name !== undefined && asked.wantsHelp) streams.out(`${describeCalc(findCalc(asked.name))}\n`);
    else if (asked.name === undefined && asked.wantsJson && asked.wantsList)
      streams.out(`${JSON.stringify(calcs, null, 2)}\n`);
    else if (asked.name === undefined) streams.out(`${listCalcs()}\n`);
    else return answerOne(asked, streams);
    return 0;
  } catch (error) {
    if (isCalcProblem(error)) streams.err(`${say(error.said, METRIC)}\n`);
    else if (error instanceof Error && ('code' in error || error instanceof RangeError))
      streams.err(`--batch: ${error.message}\n`);
    else throw error;
    return 1;
  }
}
