import { SEA_LEVEL_PA } from '../air/atmosphere.ts';
import { airConductivityWmK, airKinematicViscosityM2S, airPrandtl } from '../air/dryAir.ts';
import { quantityInput, wordInput } from '../calc/describe.ts';
import { exactlyOne, maybeNumber, numberOf, textOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcInputs, CalcSpec, InputSpec } from '../calc/spec.ts';
import { exp, log } from '../numeric/elementary.ts';
import { positiveOf } from './bodyInputs.ts';
import {
  crossFlowNusselt,
  LAMINAR_RAYLEIGH,
  laminarVerticalNusselt,
  NATURAL_SHAPES,
  type NaturalShape,
  naturalNusselt,
  rayleighNumber,
} from './convection.ts';
import { discViewFactor, radiationWm2K } from './radiation.ts';
import { wetSurface } from './wetSurface.ts';

const room = 'heat';
const page = 'heat.md';
const ONE = { unit: '1', kind: 'number' } as const;
const coefficientOut = { name: 'coefficient', unit: 'W/m²K', kind: 'coefficient' } as const;
const heatFlowOut = { name: 'heat-flow', unit: 'W', kind: 'power' } as const;

/** Air at the mean of surface and air, unless a property is given. */
const FILM: readonly InputSpec[] = [
  quantityInput('conductivity', 'conductivity', { optional: true }),
  quantityInput('kinematic-viscosity', 'kinematic-viscosity', { optional: true }),
  quantityInput('prandtl', 'number', { range: [0.5, 1, '1'], optional: true }),
];
const SURFACE: readonly InputSpec[] = [
  quantityInput('surface-temperature', 'temperature', { range: [-40, 400, '°C'], optional: true }),
  quantityInput('air-temperature', 'temperature', { range: [-40, 300, '°C'], optional: true }),
];

const filmC = (inputs: CalcInputs): number =>
  0.5 * (numberOf(inputs, 'surface-temperature') + numberOf(inputs, 'air-temperature'));
const viscosityOf = (inputs: CalcInputs): number =>
  inputs['kinematic-viscosity'] === undefined
    ? airKinematicViscosityM2S(filmC(inputs), SEA_LEVEL_PA)
    : positiveOf(inputs, 'kinematic-viscosity');
const conductivityOf = (inputs: CalcInputs): number =>
  inputs.conductivity === undefined ? airConductivityWmK(filmC(inputs)) : positiveOf(inputs, 'conductivity');
/** That of air at 20 °C where no temperature is told, as beside a Rayleigh number. */
const prandtlOf = (inputs: CalcInputs): number => {
  const given = maybeNumber(inputs, 'prandtl');
  if (given !== undefined) return given;
  const isTold = inputs['surface-temperature'] !== undefined && inputs['air-temperature'] !== undefined;
  return airPrandtl(isTold ? filmC(inputs) : 20);
};
const deltaOf = (inputs: CalcInputs): number =>
  numberOf(inputs, 'surface-temperature') - numberOf(inputs, 'air-temperature');

/** A cold face that looks up holds its air down as a hot one that looks down does, and the other way round. */
const facing = (shape: NaturalShape, isCold: boolean): NaturalShape => {
  if (!isCold) return shape;
  if (shape === 'plate-facing-up') return 'plate-facing-down';
  return shape === 'plate-facing-down' ? 'plate-facing-up' : shape;
};

const naturalConvection: CalcSpec = {
  name: 'natural-convection',
  room,
  summary: 'length is the diameter, the height, or area over perimeter; the plates are hotter than the air',
  inputs: [
    wordInput('shape', NATURAL_SHAPES),
    wordInput('correlation', ['general', 'laminar'], { byDefault: 'general' }),
    quantityInput('length', 'length', { range: [1, 5000, 'mm'], optional: true }),
    ...SURFACE,
    quantityInput('area', 'area', { optional: true }),
    quantityInput('rayleigh', 'number', { range: [0, 1e13, '1'], optional: true }),
    quantityInput('expansion', 'expansion', { optional: true }),
    ...FILM,
  ],
  outputs: [coefficientOut, { name: 'nusselt', ...ONE }, { name: 'rayleigh', ...ONE }, heatFlowOut],
  source: 'Churchill & Chu 1975; Squire & Eckert; plates as in Çengel ch. 9',
  page,
  evaluate(inputs, wanted) {
    const Pr = prandtlOf(inputs);
    const expansion = () => maybeNumber(inputs, 'expansion') ?? 1 / (filmC(inputs) + 273.15);
    const Ra =
      maybeNumber(inputs, 'rayleigh') ??
      rayleighNumber(numberOf(inputs, 'length'), deltaOf(inputs), expansion(), viscosityOf(inputs), Pr);
    const surface = maybeNumber(inputs, 'surface-temperature');
    const air = maybeNumber(inputs, 'air-temperature');
    const shape = facing(
      textOf(inputs, 'shape') as NaturalShape,
      surface !== undefined && air !== undefined && surface < air,
    );
    const isLaminar = textOf(inputs, 'correlation') === 'laminar';
    if (isLaminar && shape !== 'vertical-plate')
      refuse('calc.impossible', {
        input: 'correlation',
        reason: 'laminar is for a vertical plate only, use general for this shape',
      });
    if (isLaminar && Ra > LAMINAR_RAYLEIGH)
      refuse('calc.impossible', {
        input: 'correlation',
        reason: `at a Rayleigh number of ${Ra.toPrecision(3)} the layer is no longer laminar, use general`,
      });
    const nusselt = isLaminar ? laminarVerticalNusselt(Ra, Pr) : naturalNusselt(shape, Ra, Pr);
    if (!wanted?.some((output) => output === 'coefficient' || output === 'heat-flow'))
      return { nusselt, rayleigh: Ra };
    const coefficient = (nusselt * conductivityOf(inputs)) / numberOf(inputs, 'length');
    if (!wanted.includes('heat-flow')) return { coefficient, nusselt, rayleigh: Ra };
    return {
      coefficient,
      nusselt,
      rayleigh: Ra,
      'heat-flow': coefficient * numberOf(inputs, 'area') * deltaOf(inputs),
    };
  },
};

const forcedConvection: CalcSpec = {
  name: 'forced-convection',
  room,
  summary: 'air across a cylinder; properties at the mean temperature unless given',
  inputs: [
    quantityInput('diameter', 'length', { range: [0.5, 5000, 'mm'] }),
    quantityInput('speed', 'speed', { range: [0, 60, 'm/s'] }),
    ...SURFACE,
    ...FILM,
  ],
  outputs: [coefficientOut, { name: 'nusselt', ...ONE }, { name: 'reynolds', ...ONE }],
  source: 'Churchill & Bernstein 1977',
  page,
  evaluate(inputs, wanted) {
    const diameter = numberOf(inputs, 'diameter');
    const reynolds = (numberOf(inputs, 'speed') * diameter) / viscosityOf(inputs);
    const nusselt = crossFlowNusselt(reynolds, prandtlOf(inputs));
    if (!wanted?.includes('coefficient')) return { nusselt, reynolds };
    return { coefficient: (nusselt * conductivityOf(inputs)) / diameter, nusselt, reynolds };
  },
};

const radiationExchange: CalcSpec = {
  name: 'radiation-exchange',
  room,
  summary: 'εσ(T₁²+T₂²)(T₁+T₂), small grey body in large surroundings',
  inputs: [
    quantityInput('emissivity', 'fraction', { range: [0, 1, '1'], byDefault: [0.9, '1'] }),
    quantityInput('temperature', 'temperature', { range: [-40, 1200, '°C'] }),
    quantityInput('surroundings', 'temperature', { range: [-40, 1200, '°C'] }),
    quantityInput('area', 'area', { optional: true }),
  ],
  outputs: [coefficientOut, heatFlowOut],
  source: 'Stefan–Boltzmann law',
  page,
  evaluate(inputs, wanted) {
    const surface = numberOf(inputs, 'temperature');
    const surroundings = numberOf(inputs, 'surroundings');
    const coefficient = radiationWm2K(numberOf(inputs, 'emissivity'), surface, surroundings);
    if (!wanted?.includes('heat-flow')) return { coefficient };
    return { coefficient, 'heat-flow': coefficient * numberOf(inputs, 'area') * (surface - surroundings) };
  },
};

const wallTransmittance: CalcSpec = {
  name: 'wall-transmittance',
  room,
  summary: 'U = 1/(1/h_i + R + 1/h_o)',
  inputs: [
    quantityInput('inner-coefficient', 'coefficient', { range: [1, 200, 'W/m²K'] }),
    quantityInput('outer-coefficient', 'coefficient', { range: [1, 200, 'W/m²K'] }),
    quantityInput('resistance', 'resistance', { range: [0, 10, 'm²K/W'], byDefault: [0, 'm²K/W'] }),
  ],
  outputs: [{ name: 'transmittance', unit: 'W/m²K', kind: 'coefficient' }],
  source: 'resistances in series',
  page,
  evaluate: (inputs) => ({
    transmittance:
      1 /
      (1 / numberOf(inputs, 'inner-coefficient') +
        numberOf(inputs, 'resistance') +
        1 / numberOf(inputs, 'outer-coefficient')),
  }),
};

/** Surroundings of a wet surface, shared with the water pan. */
export const WET: readonly InputSpec[] = [
  quantityInput('gas-temperature', 'temperature', { range: [0, 300, '°C'] }),
  quantityInput('wall-temperature', 'temperature', {
    range: [0, 600, '°C'],
    optional: true,
    remark: 'that of the gas unless given',
  }),
  quantityInput('humidity-ratio', 'fraction', { range: [0, 2, '1'] }),
  quantityInput('convection-coefficient', 'coefficient', { range: [0.1, 200, 'W/m²K'] }),
  quantityInput('radiation-coefficient', 'coefficient', { range: [0, 100, 'W/m²K'], optional: true }),
  quantityInput('emissivity', 'fraction', { range: [0, 1, '1'], optional: true }),
  quantityInput('pressure', 'pressure', { range: [50, 120, 'kPa'], byDefault: [101.325, 'kPa'] }),
];

/** Those surroundings, read. @throws CalcProblem unless exactly one of the radiation inputs is given */
export function wetSurroundings(inputs: CalcInputs) {
  exactlyOne(inputs, ['radiation-coefficient', 'emissivity']);
  const gasC = numberOf(inputs, 'gas-temperature');
  return {
    gasC,
    wallC: maybeNumber(inputs, 'wall-temperature') ?? gasC,
    humidityRatio: numberOf(inputs, 'humidity-ratio'),
    convectionWm2K: numberOf(inputs, 'convection-coefficient'),
    radiationWm2K: maybeNumber(inputs, 'radiation-coefficient'),
    emissivity: maybeNumber(inputs, 'emissivity'),
    pressurePa: numberOf(inputs, 'pressure'),
  };
}

const wetSurfaceCalc: CalcSpec = {
  name: 'wet-surface',
  room,
  summary: 'steady surface balance; give the radiation coefficient or the emissivity; wetness 0…1',
  inputs: [
    ...WET,
    quantityInput('wetness', 'fraction', { range: [0, 1, '1'], byDefault: [1, '1'] }),
    quantityInput('other-heat', 'heat-flux', { range: [-5, 20, 'kW/m²'], byDefault: [0, 'W/m²'] }),
  ],
  outputs: [
    { name: 'temperature', unit: '°C', kind: 'temperature' },
    { name: 'evaporation-flux', unit: 'kg/m²h', kind: 'mass-flux' },
  ],
  source: 'film theory with the Chilton–Colburn analogy, Spalding 1960',
  page,
  evaluate(inputs) {
    const state = wetSurface({
      ...wetSurroundings(inputs),
      wetness: numberOf(inputs, 'wetness'),
      otherHeatWm2: numberOf(inputs, 'other-heat'),
    });
    if (!state)
      return refuse('calc.impossible', {
        input: 'other-heat',
        reason: 'the surface would freeze, take less heat from it',
      });
    return { temperature: state.surfaceC, 'evaporation-flux': state.evaporationKgM2S };
  },
};

const stepResponse: CalcSpec = {
  name: 'step-response',
  room,
  summary: 'first-order lag: fraction of a step reached in a time, or the time to a fraction',
  inputs: [
    quantityInput('time-constant', 'time'),
    quantityInput('time', 'time', { optional: true }),
    quantityInput('fraction', 'fraction', { range: [0, 0.999999, '1'], optional: true }),
  ],
  outputs: [
    { name: 'fraction', unit: '1', kind: 'fraction' },
    { name: 'time', unit: 's', kind: 'time' },
  ],
  source: 'first-order lag',
  page,
  evaluate(inputs) {
    const constant = positiveOf(inputs, 'time-constant');
    if (exactlyOne(inputs, ['time', 'fraction']) === 'time') {
      const time = numberOf(inputs, 'time');
      return { time, fraction: 1 - exp(-time / constant) };
    }
    const fraction = numberOf(inputs, 'fraction');
    return { fraction, time: -constant * log(1 - fraction) };
  },
};

const discView: CalcSpec = {
  name: 'disc-view-factor',
  room,
  summary: 'from one disc to a parallel one on its axis',
  inputs: [
    quantityInput('from-diameter', 'length', { range: [0.001, 100, 'm'] }),
    quantityInput('to-diameter', 'length', { range: [0.001, 100, 'm'] }),
    quantityInput('distance', 'length', { range: [0.001, 100, 'm'] }),
  ],
  outputs: [{ name: 'view-factor', unit: '1', kind: 'fraction' }],
  source: 'Howell, catalogue of configuration factors, C-41',
  page,
  evaluate: (inputs) => ({
    'view-factor': discViewFactor(
      numberOf(inputs, 'from-diameter') / 2,
      numberOf(inputs, 'to-diameter') / 2,
      numberOf(inputs, 'distance'),
    ),
  }),
};

export const surfaceCalcs: readonly CalcSpec[] = [
  naturalConvection,
  forcedConvection,
  radiationExchange,
  discView,
  wallTransmittance,
  wetSurfaceCalc,
  stepResponse,
];
