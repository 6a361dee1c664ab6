import { curveIn } from './curve.ts';
import { quantityIn } from './given.ts';
import { mixIn } from './mix.ts';
import { refuse } from './problem.ts';
import type { CalcInputs, CalcSpec, InputSpec } from './spec.ts';
import type { WrittenInputs } from './written.ts';

/** A limit written in another unit may miss it by rounding: 392 °F is 200 °C and a few 1e-14 more. */
const ROUNDING = 1e-12;

type Value = Exclude<CalcInputs[string], undefined>;

/** The value of one input, read by its description. @throws CalcProblem naming the input */
function readOne(input: InputSpec, text: string): Value {
  if (text === '') refuse('calc.empty', { input: input.name });
  switch (input.type) {
    case 'quantity': {
      const { min = -Infinity, max = Infinity } = input;
      const value = quantityIn(input.name, text, input.kind, { mayBeNegative: min < 0 && min > -Infinity });
      if (value >= min && value <= max) return value;
      const slack = (limit: number) => ROUNDING * (input.kind === 'temperature' ? 1000 : Math.abs(limit));
      if (value < min && value >= min - slack(min)) return min;
      if (value > max && value <= max + slack(max)) return max;
      return refuse('calc.out-of-range', { input: input.name, text, limits: input.limits ?? '' });
    }
    case 'word':
      return input.words.includes(text)
        ? text
        : refuse('calc.no-such-word', { input: input.name, text, words: input.words.join('|') });
    case 'text':
      return text;
    case 'curve':
      return curveIn(input.name, text);
    case 'mix':
      return mixIn(input.name, text);
  }
}

/**
 * What was written, read by the calc's description with its defaults filled in.
 * @throws CalcProblem on an unknown key, a missing input, or a value that is not what it should be
 */
export function readInputs(calc: CalcSpec, written: WrittenInputs): CalcInputs {
  const known = new Set(calc.inputs.map((input) => input.name));
  for (const key of written.keys())
    if (!known.has(key))
      refuse('calc.unknown-key', { input: key, calc: calc.name, names: [...known].join('|') });
  const values: Record<string, CalcInputs[string]> = {};
  for (const input of calc.inputs) {
    const text = written.get(input.name);
    if (text !== undefined) values[input.name] = readOne(input, text);
    else if ('byDefault' in input && input.byDefault !== undefined) values[input.name] = input.byDefault;
    else if (!input.optional) refuse('calc.missing', { input: input.name });
  }
  return values;
}
