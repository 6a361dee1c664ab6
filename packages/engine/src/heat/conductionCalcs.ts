import { quantityInput, wordInput } from '../calc/describe.ts';
import { exactlyOne, maybeNumber, numberOf, textOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcSpec } from '../calc/spec.ts';
import { BODY, bodyOf, positiveOf } from './bodyInputs.ts';
import { bodyTheta, halfSpaceRatio, timeToTheta } from './conduction.ts';
import {
  DIMENSION_BODIES,
  type DimensionBody,
  dimensionality,
  dimensionalityAtInfiniteBiot,
  dimensionalityAtZeroBiot,
  EXPONENT_BIOT,
  finiteVolumeExponent,
} from './dimensionality.ts';
import { eigenvalue, SERIES_SHAPES, type SeriesShape, seriesCoefficient } from './eigenvalues.ts';

const room = 'heat';
const page = 'heat.md';
const source = 'Carslaw & Jaeger 1959';
const ONE = { unit: '1', kind: 'number' } as const;

const temperature = (name: string, optional = false) =>
  quantityInput(name, 'temperature', { range: [-50, 1000, '°C'], optional });

const conductionEigenvalue: CalcSpec = {
  name: 'conduction-eigenvalue',
  room,
  summary: 'first root and coefficient of the transient series',
  inputs: [
    wordInput('shape', SERIES_SHAPES),
    quantityInput('biot', 'number', { range: [0.0001, 10000, '1'] }),
  ],
  outputs: [
    { name: 'eigenvalue', ...ONE },
    { name: 'coefficient', ...ONE },
  ],
  source,
  page,
  evaluate(inputs) {
    const shape = textOf(inputs, 'shape') as SeriesShape;
    const biot = numberOf(inputs, 'biot');
    const z = eigenvalue(shape, biot, 1);
    return { eigenvalue: z, coefficient: seriesCoefficient(shape, biot, z) };
  },
};

const transientConduction: CalcSpec = {
  name: 'transient-conduction',
  room,
  summary: 'exact series, θ = (T − T∞)/(T₀ − T∞), position along the half-thickness',
  inputs: [
    ...BODY,
    quantityInput('time', 'time', { optional: true }),
    quantityInput('fourier', 'number', { range: [0, 100, '1'], optional: true }),
    quantityInput('position', 'fraction', {
      range: [0, 1, '1'],
      byDefault: [0, '1'],
      remark: '0 centre, 1 surface',
    }),
    temperature('start', true),
    temperature('surroundings', true),
  ],
  outputs: [
    { name: 'theta', ...ONE },
    { name: 'temperature', unit: '°C', kind: 'temperature' },
  ],
  source,
  page,
  evaluate(inputs, wanted) {
    const body = bodyOf(inputs);
    const given = exactlyOne(inputs, ['fourier', 'time']);
    const firstM = body.axes[0]!.lengthM;
    if (given === 'time') positiveOf(inputs, 'half-thickness');
    const seconds =
      given === 'time'
        ? numberOf(inputs, 'time') * numberOf(inputs, 'diffusivity')
        : numberOf(inputs, 'fourier') * firstM * firstM;
    const theta = bodyTheta(body, 1, seconds, numberOf(inputs, 'position'));
    if (!wanted?.includes('temperature')) return { theta };
    const surroundings = numberOf(inputs, 'surroundings');
    return { theta, temperature: surroundings + theta * (numberOf(inputs, 'start') - surroundings) };
  },
};

const conductionTime: CalcSpec = {
  name: 'conduction-time',
  room,
  summary: 'time from the centre passing from (default: the start) to its passing to; nothing evaporating',
  inputs: [
    ...BODY,
    temperature('start'),
    temperature('surroundings'),
    temperature('from', true),
    temperature('to'),
  ],
  outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
  source,
  page,
  evaluate(inputs) {
    const body = bodyOf(inputs);
    const diffusivity = numberOf(inputs, 'diffusivity');
    positiveOf(inputs, 'half-thickness');
    const start = numberOf(inputs, 'start');
    const surroundings = numberOf(inputs, 'surroundings');
    if (start === surroundings)
      refuse('calc.impossible', {
        input: 'surroundings',
        reason: 'at the temperature of the start nothing changes, give another',
      });
    const thetaOf = (celsius: number) => (celsius - surroundings) / (start - surroundings);
    const from = maybeNumber(inputs, 'from') ?? start;
    const reached = (input: string, theta: number): number => {
      if (theta > 1)
        refuse('calc.impossible', {
          input,
          reason: 'it lies on the far side of the start, give one between',
        });
      const seconds = timeToTheta(body, diffusivity, theta);
      return Number.isFinite(seconds)
        ? seconds
        : refuse('calc.impossible', {
            input,
            reason: 'it is never reached, give one between the start and the surroundings',
          });
    };
    const fromS = reached('from', thetaOf(from));
    const toS = reached('to', thetaOf(numberOf(inputs, 'to')));
    if (toS < fromS)
      refuse('calc.impossible', { input: 'to', reason: 'it is passed before from, give one after it' });
    return { time: toS - fromS };
  },
};

const semiInfinite: CalcSpec = {
  name: 'semi-infinite-conduction',
  room,
  summary: '(T − T₀)/(T∞ − T₀) under a convective surface',
  inputs: [
    quantityInput('depth', 'length', { range: [0, 5000, 'mm'] }),
    quantityInput('time', 'time'),
    quantityInput('coefficient', 'coefficient', { range: [0.1, 1000000, 'W/m²K'] }),
    quantityInput('conductivity', 'conductivity', { range: [0.02, 500, 'W/mK'] }),
    quantityInput('diffusivity', 'diffusivity', { range: [0.01, 200, 'mm²/s'] }),
  ],
  outputs: [{ name: 'ratio', ...ONE }],
  source: 'Carslaw & Jaeger 1959, §2.7',
  page,
  evaluate(inputs) {
    const timeS = numberOf(inputs, 'time');
    if (timeS === 0) return { ratio: 0 };
    const root = Math.sqrt(numberOf(inputs, 'diffusivity') * timeS);
    return {
      ratio: halfSpaceRatio(
        numberOf(inputs, 'depth') / (2 * root),
        (numberOf(inputs, 'coefficient') * root) / numberOf(inputs, 'conductivity'),
      ),
    };
  },
};

const equivalentDimensionality: CalcSpec = {
  name: 'equivalent-dimensionality',
  room,
  summary: 'β1 ≤ β2 are the middle and longest half-dimension over the shortest',
  inputs: [
    wordInput('body', DIMENSION_BODIES, { byDefault: 'brick' }),
    quantityInput('beta1', 'number', { range: [1, 100, '1'], byDefault: [1, '1'] }),
    quantityInput('beta2', 'number', { range: [1, 100, '1'], byDefault: [1, '1'] }),
    quantityInput('biot', 'number', { range: [0.001, 1000, '1'], optional: true }),
  ],
  outputs: [
    { name: 'e0', ...ONE },
    { name: 'e-infinity', ...ONE },
    { name: 'e', ...ONE },
    { name: 'fv-exponent', ...ONE },
  ],
  source: 'ASHRAE Handbook Refrigeration ch. 20; exponent fitted to exact products',
  page,
  evaluate(inputs, wanted) {
    const body = textOf(inputs, 'body') as DimensionBody;
    const b1 = numberOf(inputs, 'beta1');
    const b2 = numberOf(inputs, 'beta2');
    if (b1 > b2)
      refuse('calc.impossible', { input: 'beta2', reason: 'the longest is not below the middle one, beta1' });
    const e0 = dimensionalityAtZeroBiot(body, b1, b2);
    if (!(e0 >= 1))
      refuse('calc.impossible', {
        input: 'beta2',
        reason: 'the equation of irregular bodies does not hold so far apart, give one nearer to beta1',
      });
    const eInfinity = dimensionalityAtInfiniteBiot(body, b1, b2);
    const biot = maybeNumber(inputs, 'biot');
    const needsBiot = wanted?.some((output) => output === 'e' || output === 'fv-exponent');
    if (biot === undefined) {
      if (needsBiot) refuse('calc.missing', { input: 'biot' });
      return { e0, 'e-infinity': eInfinity };
    }
    const [least, most] = EXPONENT_BIOT;
    if (wanted?.includes('fv-exponent') && !(biot >= least && biot <= most))
      refuse('calc.out-of-range', { input: 'biot', text: `${biot}`, limits: `${least}..${most}` });
    return {
      e0,
      'e-infinity': eInfinity,
      e: dimensionality(e0, eInfinity, biot),
      'fv-exponent': finiteVolumeExponent(body, b1, b2, biot),
    };
  },
};

export const conductionCalcs: readonly CalcSpec[] = [
  conductionEigenvalue,
  transientConduction,
  conductionTime,
  semiInfinite,
  equivalentDimensionality,
];
