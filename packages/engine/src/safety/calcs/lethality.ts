import type { RulesProfile } from '@pitwright/model';
import { RULES } from '@pitwright/model';
import { quantityInput, wordInput } from '../../calc/describe.ts';
import {
  exactlyOne,
  itemsIn,
  maybeCurve,
  maybeNumber,
  maybeText,
  numberOf,
  pairIn,
  quantityIn,
  textOf,
  without,
} from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcInputs, CalcSpec, Curve } from '../../calc/spec.ts';
import { firstPrintedC, holdIsMet, holdTimeS } from '../hold.ts';
import {
  type Counting,
  KINETICS,
  type Kinetics,
  logReduction,
  ORGANISMS,
  type Organism,
  zValueK,
} from '../lethality.ts';
import { cookMinimum, PRODUCTS, type Product } from '../rules/cookMinimum.ts';
import { HOLD_TABLES, holdTable } from '../rules/holdTables.ts';
import { OVENS, type Oven, roastOvenC } from '../rules/roastOven.ts';
import { hundredthsF } from '../ruleTemperature.ts';

const room = 'safety';
const page = 'safety.md';
const RULE = HOLD_TABLES.map((table) => table.rule);
const temperature = (name: string, from: number, to: number, optional = false) =>
  quantityInput(name, 'temperature', { range: [from, to, '°C'], optional });

const lethalityHold: CalcSpec = {
  name: 'lethality-hold',
  room,
  summary: 'printed hold time once every part is at the temperature; the next lower printed one counts',
  inputs: [wordInput('rule', RULE), temperature('temperature', 0, 150)],
  outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
  source: 'USDA FSIS Appendix A and poultry tables, FDA Food Code 3-401.11, UK FSA',
  page,
  evaluate(inputs) {
    const rule = textOf(inputs, 'rule');
    const time = holdTimeS(rule, numberOf(inputs, 'temperature'));
    if (time === undefined)
      return refuse('calc.below-first-printed', {
        input: 'temperature',
        rule,
        first: { kind: 'temperature', si: firstPrintedC(holdTable(rule)) + 273.15 },
      });
    return { time };
  },
};

const holdVerdict: CalcSpec = {
  name: 'hold-verdict',
  room,
  summary: 'pass when the coldest part was held at least as long as the rule asks',
  inputs: [
    wordInput('rule', RULE),
    temperature('temperature', -30, 150),
    quantityInput('time', 'time'),
    quantityInput('probe-error', 'difference', { range: [0, 10, 'K'], byDefault: [0, 'K'] }),
  ],
  outputs: [{ name: 'verdict', unit: 'word', kind: 'word' }],
  source: 'as lethality-hold; the stated probe error is taken off first',
  page,
  evaluate: (inputs) => ({
    verdict: holdIsMet(
      textOf(inputs, 'rule'),
      numberOf(inputs, 'temperature'),
      numberOf(inputs, 'time'),
      numberOf(inputs, 'probe-error'),
    )
      ? 'pass'
      : 'fail',
  }),
};

const cookMinimumCalc: CalcSpec = {
  name: 'cook-minimum',
  room,
  summary: 'temperature in the coldest part and the time it must be kept (rest for whole cuts at home)',
  inputs: [wordInput('profile', RULES), wordInput('product', PRODUCTS)],
  outputs: [
    { name: 'temperature', unit: '°C', kind: 'temperature' },
    { name: 'time', unit: 's', kind: 'time' },
  ],
  source: 'USDA FSIS consumer temperatures; FDA Food Code 3-401.11; UK FSA',
  page,
  evaluate(inputs) {
    const { temperatureC, timeS } = cookMinimum(
      textOf(inputs, 'profile') as RulesProfile,
      textOf(inputs, 'product') as Product,
    );
    return { temperature: temperatureC, time: timeS };
  },
};

const roastOven: CalcSpec = {
  name: 'roast-oven-temperature',
  room,
  summary: 'oven column of the whole-roast rule: minimum for dry ovens, maximum for high humidity',
  inputs: [wordInput('oven', OVENS), quantityInput('mass', 'mass', { range: [0.1, 50, 'kg'] })],
  outputs: [
    { name: 'minimum', unit: '°C', kind: 'temperature' },
    { name: 'maximum', unit: '°C', kind: 'temperature' },
  ],
  source: 'FDA Food Code 3-401.11(B)(2)',
  page,
  evaluate(inputs) {
    const { minimumC, maximumC } = roastOvenC(textOf(inputs, 'oven') as Oven, numberOf(inputs, 'mass'));
    return { minimum: minimumC, maximum: maximumC };
  },
};

/** A temperature written as text, or the word none. */
function limitC(inputs: CalcInputs, name: string): number | undefined {
  const text = textOf(inputs, name);
  return text === 'none' ? undefined : quantityIn(name, text, 'temperature');
}

/** Points that are the cutoff to a hundredth of a degree Fahrenheit are at it, as in every rule. */
function metCutoff(curve: Curve, cutoffC: number | undefined): Curve {
  if (cutoffC === undefined) return curve;
  const at = hundredthsF(cutoffC);
  return {
    timesS: curve.timesS,
    temperaturesC: curve.temperaturesC.map((c) => (c < cutoffC && hundredthsF(c) === at ? cutoffC : c)),
  };
}

/** A curve, or one temperature held for a time. @throws CalcProblem unless exactly one of the two is given */
export function curveOrHold(inputs: CalcInputs): Curve {
  const curve = maybeCurve(inputs, 'curve');
  if (curve) {
    without(inputs, ['temperature', 'time'], 'the curve tells it');
    return curve;
  }
  if (inputs.temperature === undefined && inputs.time === undefined)
    exactlyOne(inputs, ['curve', 'temperature']);
  const at = numberOf(inputs, 'temperature');
  return { timesS: [0, numberOf(inputs, 'time')], temperaturesC: [at, at] };
}

function kineticsOf(inputs: CalcInputs): Kinetics {
  const organism = maybeText(inputs, 'organism') as Organism | undefined;
  const known = organism && KINETICS[organism];
  if (
    !known &&
    ['d-reference', 'reference-temperature', 'z-value'].every((name) => inputs[name] === undefined)
  )
    refuse('calc.none-of', { input: 'organism', names: 'organism|d-value|d-reference' });
  return {
    dReferenceS: positive('d-reference', maybeNumber(inputs, 'd-reference') ?? known?.dReferenceS),
    referenceC:
      maybeNumber(inputs, 'reference-temperature') ?? known?.referenceC ?? missing('reference-temperature'),
    zK: maybeNumber(inputs, 'z-value') ?? known?.zK ?? missing('z-value'),
  };
}

const missing = (input: string): never => refuse('calc.missing', { input });
const positive = (input: string, value: number | undefined): number => {
  if (value === undefined) return missing(input);
  return value > 0 ? value : refuse('calc.impossible', { input, reason: 'it must be above zero' });
};

const logReductionCalc: CalcSpec = {
  name: 'log-reduction',
  room,
  summary: 'decimal reductions: time over D, or the exact integral over straight pieces',
  inputs: [
    wordInput('organism', ORGANISMS, { optional: true }),
    quantityInput('d-value', 'time', { optional: true }),
    quantityInput('d-reference', 'time', { optional: true }),
    temperature('reference-temperature', 40, 150, true),
    quantityInput('z-value', 'difference', { range: [1, 30, 'K'], optional: true }),
    { type: 'curve', name: 'curve', optional: true },
    temperature('temperature', 0, 150, true),
    quantityInput('time', 'time', { optional: true }),
    { type: 'text', name: 'cutoff', byDefault: '130 °F', optional: true, remark: 'a temperature, or none' },
    { type: 'text', name: 'cap', byDefault: '165 °F', optional: true, remark: 'a temperature, or none' },
  ],
  outputs: [{ name: 'reduction', unit: '1', kind: 'reduction' }],
  source: 'log-linear kinetics (Bigelow); defaults by organism on the page',
  page,
  evaluate(inputs) {
    const counting: Counting = {
      cutoffC: limitC(inputs, 'cutoff'),
      capC: limitC(inputs, 'cap'),
    };
    if (inputs['d-value'] !== undefined) {
      without(
        inputs,
        ['curve', 'd-reference', 'reference-temperature', 'z-value'],
        'a D-value stands for one temperature and a time',
      );
      return { reduction: numberOf(inputs, 'time') / positive('d-value', maybeNumber(inputs, 'd-value')) };
    }
    return {
      reduction: logReduction(kineticsOf(inputs), metCutoff(curveOrHold(inputs), counting.cutoffC), counting),
    };
  },
};

const zValueCalc: CalcSpec = {
  name: 'z-value',
  room,
  summary: 'least squares of log10 D on temperature',
  inputs: [{ type: 'text', name: 'd-values', remark: 'such as 55 °C 21.13 min | 60 °C 3.17 min' }],
  outputs: [{ name: 'z-value', unit: 'K', kind: 'difference' }],
  source: 'Bigelow 1921',
  page,
  evaluate(inputs) {
    const points = itemsIn('d-values', textOf(inputs, 'd-values')).map((item) => {
      const [t, d] = pairIn('d-values', item, 'temperature', 'time');
      return [t, positive('d-values', d)] as const;
    });
    const z = zValueK(points);
    if (z === undefined)
      return refuse('calc.impossible', {
        input: 'd-values',
        reason: 'give at least two temperatures, with D falling as they rise',
      });
    return { 'z-value': z };
  },
};

export const lethalityCalcs: readonly CalcSpec[] = [
  lethalityHold,
  holdVerdict,
  cookMinimumCalc,
  roastOven,
  logReductionCalc,
  zValueCalc,
];
