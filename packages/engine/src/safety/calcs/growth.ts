import { quantityInput, wordInput } from '../../calc/describe.ts';
import { maybeCurve, maybeNumber, maybeText, numberOf, textOf, without } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { comeUpVerdict } from '../comeUp.ts';
import { COOLING_RULES, type CoolingRuleId, coolingVerdict } from '../cooling.ts';
import {
  GROWING,
  type GrowingOrganism,
  growthLog10,
  growthModel,
  lagS,
  MATRICES,
  type Matrix,
} from '../growth.ts';
import { curveOrHold } from './lethality.ts';

const room = 'safety';
const page = 'safety.md';

const microbialGrowth: CalcSpec = {
  name: 'microbial-growth',
  room,
  summary: 'rate and lag at a temperature, or log10 growth over a curve or a hold; no ceiling',
  inputs: [
    wordInput('organism', GROWING),
    wordInput('matrix', MATRICES, { optional: true }),
    { type: 'curve', name: 'curve', optional: true },
    quantityInput('temperature', 'temperature', { range: [-30, 100, '°C'], optional: true }),
    quantityInput('time', 'time', { optional: true }),
  ],
  outputs: [
    { name: 'growth', unit: '1', kind: 'log' },
    { name: 'rate', unit: '1/h', kind: 'rate' },
    { name: 'lag', unit: 'h', kind: 'time' },
  ],
  source: 'Baranyi & Roberts 1994 with GroPIN 1157–1162; cardinal model of S. aureus 2064',
  page,
  evaluate(inputs, wanted) {
    const organism = textOf(inputs, 'organism') as GrowingOrganism;
    const matrix = maybeText(inputs, 'matrix') as Matrix | undefined;
    if (organism === 'staphylococcus-aureus') without(inputs, ['matrix'], 'this model knows no matrix');
    else if (matrix === undefined) refuse('calc.missing', { input: 'matrix' });
    const model = growthModel(organism, matrix);
    if (maybeCurve(inputs, 'curve')) without(inputs, ['temperature', 'time'], 'the curve tells it');
    if (wanted && !wanted.includes('growth')) {
      const at = numberOf(inputs, 'temperature');
      const lag = lagS(model, at);
      if (wanted.includes('lag') && lag === undefined)
        refuse('calc.impossible', {
          input: 'temperature',
          reason: 'nothing grows here, so there is no lag, give one where it grows',
        });
      return { rate: model.ratePerS(at), lag };
    }
    const at = maybeNumber(inputs, 'temperature');
    return {
      growth: growthLog10(model, curveOrHold(inputs)),
      ...(at !== undefined && { rate: model.ratePerS(at), lag: lagS(model, at) }),
    };
  },
};

const coolingCalc: CalcSpec = {
  name: 'cooling-verdict',
  room,
  summary: 'each leg from the curve passing its first temperature to reaching the second, limits allowed',
  inputs: [
    wordInput('rule', Object.keys(COOLING_RULES)),
    { type: 'curve', name: 'curve' },
    quantityInput('chill-start', 'time', { range: [0, 24, 'h'], byDefault: [0, 'min'] }),
  ],
  outputs: [
    { name: 'verdict', unit: 'word', kind: 'word' },
    { name: 'slack', unit: 'min', kind: 'time' },
  ],
  source: 'FDA Food Code 3-501.14; USDA FSIS Appendix B',
  page,
  evaluate(inputs) {
    const rule = COOLING_RULES[textOf(inputs, 'rule') as CoolingRuleId];
    const { verdict, slackS } = coolingVerdict(
      rule,
      maybeCurve(inputs, 'curve')!,
      numberOf(inputs, 'chill-start'),
    );
    return { verdict, slack: slackS };
  },
};

const comeUpCalc: CalcSpec = {
  name: 'come-up-verdict',
  room,
  summary: 'hours between 50 and 130 °F: intact pieces by their surface, others by their centre',
  inputs: [
    wordInput('product', ['intact', 'non-intact']),
    quantityInput('centre-time', 'time'),
    quantityInput('surface-time', 'time', { optional: true }),
    wordInput('early-probe', ['yes', 'no'], { byDefault: 'no' }),
    quantityInput('earlier-time', 'time', { byDefault: [0, 'h'] }),
    wordInput('earlier-lethal', ['yes', 'no'], { byDefault: 'no' }),
  ],
  outputs: [{ name: 'verdict', unit: 'word', kind: 'word' }],
  source: 'USDA FSIS, Revised Appendix A 2021',
  page,
  evaluate: (inputs) => ({
    verdict: comeUpVerdict({
      isNonIntact: textOf(inputs, 'product') === 'non-intact',
      centreS: numberOf(inputs, 'centre-time'),
      surfaceS: maybeNumber(inputs, 'surface-time'),
      hasEarlyProbe: textOf(inputs, 'early-probe') === 'yes',
      earlierS: numberOf(inputs, 'earlier-time'),
      earlierWasLethal: textOf(inputs, 'earlier-lethal') === 'yes',
    }),
  }),
};

export const growthCalcs: readonly CalcSpec[] = [microbialGrowth, coolingCalc, comeUpCalc];
