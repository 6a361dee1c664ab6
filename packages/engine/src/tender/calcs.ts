import { quantityInput, wordInput } from '../calc/describe.ts';
import { exactlyOne, maybeCurve, maybeText, numberOf, textOf, without } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcInputs, CalcSpec } from '../calc/spec.ts';
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp, expm1, log } from '../numeric/elementary.ts';
import { doseOverCurveH, relativeSofteningRate, type SofteningLaw } from './dose.ts';
import { overCurveS } from './rate.ts';

const room = 'tender';
const page = 'tender.md';

const LAW = [
  quantityInput('activation-energy', 'molar-energy', {
    range: [20, 800, 'kJ/mol'],
    byDefault: [78, 'kJ/mol'],
  }),
  quantityInput('unfolding-midpoint', 'temperature', { range: [40, 70, '°C'], byDefault: [53, '°C'] }),
  quantityInput('unfolding-width', 'difference', { range: [0.1, 10, 'K'], byDefault: [1.2, 'K'] }),
];

const lawOf = (inputs: CalcInputs): SofteningLaw => ({
  activationEnergyJmol: numberOf(inputs, 'activation-energy'),
  unfoldingMidC: numberOf(inputs, 'unfolding-midpoint'),
  unfoldingWidthK: numberOf(inputs, 'unfolding-width'),
});

/** A curve, or one temperature for a time. @throws CalcProblem where it is neither or both */
function history(inputs: CalcInputs): {
  readonly timesS: readonly number[];
  readonly temperaturesC: readonly number[];
} {
  if (exactlyOne(inputs, ['curve', 'temperature']) === 'curve') {
    without(inputs, ['time'], 'the curve tells its own time');
    return maybeCurve(inputs, 'curve')!;
  }
  const temperatureC = numberOf(inputs, 'temperature');
  return { timesS: [0, numberOf(inputs, 'time')], temperaturesC: [temperatureC, temperatureC] };
}

const dose: CalcSpec = {
  name: 'tenderness-dose',
  room,
  summary: 'equivalent hours at 95 °C (g(95) counts: 1.000); over a curve, or time at one temperature',
  inputs: [
    { name: 'curve', type: 'curve', optional: true },
    quantityInput('temperature', 'temperature', { range: [0, 130, '°C'], optional: true }),
    quantityInput('time', 'time', { optional: true }),
    ...LAW,
  ],
  outputs: [{ name: 'dose', unit: 'h', kind: 'dose-time' }],
  source: 'softening of cross-linked collagen, one activation energy and a helix that unfolds first',
  page,
  evaluate(inputs) {
    const { timesS, temperaturesC } = history(inputs);
    for (const c of temperaturesC)
      if (!(c >= 0 && c <= 130))
        refuse('calc.out-of-range', { input: 'curve', text: `${c} °C`, limits: '0..130 °C' });
    return { dose: 3600 * doseOverCurveH(timesS, temperaturesC, lawOf(inputs)) };
  },
};

const doseTime: CalcSpec = {
  name: 'tenderness-time',
  room,
  summary: 'time at one temperature to gather a dose; refused below 50 °C where the law is not valid',
  inputs: [
    quantityInput('temperature', 'temperature', { range: [50, 130, '°C'] }),
    quantityInput('dose', 'dose-time'),
    ...LAW,
  ],
  outputs: [{ name: 'time', unit: 'h', kind: 'time' }],
  source: dose.source,
  page,
  evaluate: (inputs) => ({
    time: numberOf(inputs, 'dose') / relativeSofteningRate(numberOf(inputs, 'temperature'), lawOf(inputs)),
  }),
};

/** `7.98e43 1/min`: beyond what a quantity of kind rate is usually, so it is read as text. */
const PRE_EXPONENTIAL =
  /^([+]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)\s*(?:1\/|\/)(s|min|h)$|^([+]?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?)\s*(s|min|h)\^?-1$/u;
const SECONDS: Readonly<Record<string, number>> = { s: 1, min: 60, h: 3600 };

function preExponentialPerS(text: string): number {
  const match = PRE_EXPONENTIAL.exec(text.trim());
  if (!match)
    return refuse('calc.impossible', {
      input: 'pre-exponential',
      reason: `“${text}” should be a number of 1/s, 1/min or 1/h, such as 7.98e43 1/min`,
    });
  const value = Number(match[1] ?? match[3]);
  if (!(value > 0 && value < Infinity))
    return refuse('calc.impossible', { input: 'pre-exponential', reason: 'give a finite number above zero' });
  return value / SECONDS[(match[2] ?? match[4])!]!;
}

const conversion: CalcSpec = {
  name: 'first-order-conversion',
  room,
  summary:
    '1 − exp(−k·t): softening from a dose (rate-constant is k95, time the dose), or any first-order change with k = pre-exponential·exp(−E/RT) over a curve or a hold',
  inputs: [
    quantityInput('rate-constant', 'rate', { range: [0, 1000, '1/h'], optional: true }),
    { name: 'pre-exponential', type: 'text', optional: true },
    quantityInput('activation-energy', 'molar-energy', { range: [0, 1000, 'kJ/mol'], optional: true }),
    { name: 'curve', type: 'curve', optional: true },
    quantityInput('temperature', 'temperature', { range: [0, 150, '°C'], optional: true }),
    quantityInput('time', 'time', { optional: true }),
  ],
  outputs: [{ name: 'conversion', unit: '1', kind: 'fraction' }],
  source: 'first-order rate law with Arrhenius temperature dependence',
  page,
  evaluate(inputs) {
    if (exactlyOne(inputs, ['rate-constant', 'pre-exponential']) === 'rate-constant') {
      without(
        inputs,
        ['activation-energy', 'curve', 'temperature'],
        'a rate constant holds at its own temperature',
      );
      return { conversion: -expm1(-numberOf(inputs, 'rate-constant') * numberOf(inputs, 'time')) };
    }
    const factorPerS = preExponentialPerS(maybeText(inputs, 'pre-exponential')!);
    const energyJmol = numberOf(inputs, 'activation-energy');
    const { timesS, temperaturesC } = history(inputs);
    for (const c of temperaturesC)
      if (!(c >= 0 && c <= 150))
        refuse('calc.out-of-range', { input: 'curve', text: `${c} °C`, limits: '0..150 °C' });
    const lnFactor = log(factorPerS);
    const progress = overCurveS(timesS, temperaturesC, (c) =>
      exp(lnFactor - energyJmol / (GAS_CONSTANT_JMOLK * (c + 273.15))),
    );
    return { conversion: -expm1(-progress) };
  },
};

const ratio: CalcSpec = {
  name: 'arrhenius-ratio',
  room,
  summary:
    'k(to)/k(from) for a rate that rises with heat; rises = no turns it round (yield stress, viscosity)',
  inputs: [
    quantityInput('activation-energy', 'molar-energy', { range: [0, 1000, 'kJ/mol'] }),
    quantityInput('from', 'temperature', { range: [-40, 300, '°C'] }),
    quantityInput('to', 'temperature', { range: [-40, 300, '°C'] }),
    wordInput('rises', ['yes', 'no'], { byDefault: 'yes' }),
  ],
  outputs: [{ name: 'ratio', unit: '1', kind: 'number' }],
  source: 'Arrhenius equation',
  page,
  evaluate(inputs) {
    const exponent =
      (numberOf(inputs, 'activation-energy') / GAS_CONSTANT_JMOLK) *
      (1 / (numberOf(inputs, 'from') + 273.15) - 1 / (numberOf(inputs, 'to') + 273.15));
    return { ratio: exp(textOf(inputs, 'rises') === 'yes' ? exponent : -exponent) };
  },
};

const activationEnergy: CalcSpec = {
  name: 'activation-energy',
  room,
  summary: 'from a quantity at two temperatures (absolute value)',
  inputs: [
    quantityInput('first', 'number', { range: [1e-30, 1e30, '1'] }),
    quantityInput('first-temperature', 'temperature', { range: [-40, 300, '°C'] }),
    quantityInput('second', 'number', { range: [1e-30, 1e30, '1'] }),
    quantityInput('second-temperature', 'temperature', { range: [-40, 300, '°C'] }),
  ],
  outputs: [{ name: 'activation-energy', unit: 'kJ/mol', kind: 'molar-energy' }],
  source: 'Arrhenius equation',
  page,
  evaluate(inputs) {
    const first = numberOf(inputs, 'first-temperature');
    const second = numberOf(inputs, 'second-temperature');
    if (first === second)
      refuse('calc.impossible', {
        input: 'second-temperature',
        reason: 'give one that differs from the first',
      });
    const energy =
      (GAS_CONSTANT_JMOLK * log(numberOf(inputs, 'second') / numberOf(inputs, 'first'))) /
      (1 / (first + 273.15) - 1 / (second + 273.15));
    return { 'activation-energy': energy < 0 ? -energy : energy };
  },
};

/** Figures of tenderness that can be asked for by name. */
export const tenderCalcs: readonly CalcSpec[] = [dose, doseTime, conversion, ratio, activationEnergy];
