import { SEA_LEVEL_PA } from '../../air/atmosphere.ts';
import { airDensityKgM3 } from '../../air/dryAir.ts';
import { quantityInput } from '../../calc/describe.ts';
import { itemsIn, numberOf, pairIn, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { GRAVITY_MS2 } from '../../numeric/constants.ts';
import { outerWall } from '../outerWall.ts';

const room = 'fire';
const page = 'fire.md';
const heatFlow = (unit: 'W' | 'kW') => ({ name: 'heat-flow', unit, kind: 'power' }) as const;
const WATER_KGM3 = 1000;

export const wallCalcs: readonly CalcSpec[] = [
  {
    name: 'outer-wall',
    room,
    summary:
      'steady wall of a round body: U and skin temperature, the outer coefficient at the skin that results',
    inputs: [
      quantityInput('inside-temperature', 'temperature', { range: [30, 300, '°C'] }),
      quantityInput('air-temperature', 'temperature', { range: [-30, 50, '°C'] }),
      quantityInput('wind', 'speed', { range: [0, 25, 'm/s'], byDefault: [0, 'm/s'] }),
      quantityInput('diameter', 'length', { range: [0.2, 2, 'm'], byDefault: [0.5, 'm'] }),
      quantityInput('inner-coefficient', 'coefficient', {
        range: [1, 100, 'W/m²K'],
        byDefault: [10, 'W/m²K'],
      }),
      quantityInput('resistance', 'resistance', { range: [0, 5, 'm²K/W'], byDefault: [0, 'm²K/W'] }),
      quantityInput('emissivity', 'fraction', { range: [0, 1, '1'], byDefault: [0.9, '1'] }),
    ],
    outputs: [
      { name: 'transmittance', unit: 'W/m²K', kind: 'coefficient' },
      { name: 'skin-temperature', unit: '°C', kind: 'temperature' },
      { name: 'outer-coefficient', unit: 'W/m²K', kind: 'coefficient' },
    ],
    source: 'Churchill & Chu 1975, Churchill & Bernstein 1977, Stefan–Boltzmann',
    page,
    evaluate(inputs) {
      const wall = outerWall({
        insideC: numberOf(inputs, 'inside-temperature'),
        airC: numberOf(inputs, 'air-temperature'),
        windMs: numberOf(inputs, 'wind'),
        diameterM: numberOf(inputs, 'diameter'),
        innerWm2K: numberOf(inputs, 'inner-coefficient'),
        resistanceM2KW: numberOf(inputs, 'resistance'),
        emissivity: numberOf(inputs, 'emissivity'),
      });
      return {
        transmittance: wall.transmittanceWm2K,
        'skin-temperature': wall.skinC,
        'outer-coefficient': wall.outerWm2K,
      };
    },
  },
  {
    name: 'wall-time-constant',
    room,
    summary: 'C/(UA_in + UA_out)',
    inputs: [
      quantityInput('heat-capacity', 'heat-capacity', { range: [0.1, 1000, 'kJ/K'] }),
      quantityInput('inner-conductance', 'conductance', { range: [0, 1000, 'W/K'] }),
      quantityInput('outer-conductance', 'conductance', { range: [0, 1000, 'W/K'] }),
    ],
    outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
    source: 'lumped capacity',
    page,
    evaluate(inputs) {
      const conductance = numberOf(inputs, 'inner-conductance') + numberOf(inputs, 'outer-conductance');
      if (!(conductance > 0))
        refuse('calc.impossible', {
          input: 'inner-conductance',
          reason: 'without any conductance it never settles, give one above zero',
        });
      return { time: numberOf(inputs, 'heat-capacity') / conductance };
    },
  },
  {
    name: 'door-exchange',
    room,
    summary: '(C_d/3) w H^1.5 √(gΔT/T_m)',
    inputs: [
      quantityInput('width', 'length', { range: [1, 300, 'cm'] }),
      quantityInput('height', 'length', { range: [1, 300, 'cm'] }),
      quantityInput('inside-temperature', 'temperature', { range: [-20, 400, '°C'] }),
      quantityInput('outside-temperature', 'temperature', { range: [-40, 60, '°C'] }),
      quantityInput('discharge-coefficient', 'fraction', { range: [0.1, 1, '1'], byDefault: [0.6, '1'] }),
    ],
    outputs: [{ name: 'flow', unit: 'm³/s', kind: 'volume-flow' }],
    source: 'buoyant exchange through an opening',
    page,
    evaluate(inputs) {
      const inside = numberOf(inputs, 'inside-temperature');
      const outside = numberOf(inputs, 'outside-temperature');
      const height = numberOf(inputs, 'height');
      const meanK = 0.5 * (inside + outside) + 273.15;
      return {
        flow:
          (numberOf(inputs, 'discharge-coefficient') / 3) *
          numberOf(inputs, 'width') *
          height *
          Math.sqrt((height * GRAVITY_MS2 * Math.abs(inside - outside)) / meanK),
      };
    },
  },
  {
    name: 'stack-draught',
    room,
    summary: 'g H (ρ_air − ρ_gas)',
    inputs: [
      quantityInput('height', 'length', { range: [0.05, 10, 'm'] }),
      quantityInput('gas-temperature', 'temperature', { range: [0, 600, '°C'] }),
      quantityInput('air-temperature', 'temperature', { range: [-40, 60, '°C'] }),
      quantityInput('pressure', 'pressure', {
        range: [50, 120, 'kPa'],
        byDefault: [SEA_LEVEL_PA / 1000, 'kPa'],
      }),
    ],
    outputs: [{ name: 'pressure-difference', unit: 'Pa', kind: 'pressure' }],
    source: 'hydrostatics, ideal gas',
    page,
    evaluate(inputs) {
      const pressure = numberOf(inputs, 'pressure');
      const density = (name: string) => airDensityKgM3(numberOf(inputs, name), pressure);
      return {
        'pressure-difference':
          GRAVITY_MS2 *
          numberOf(inputs, 'height') *
          (density('air-temperature') - density('gas-temperature')),
      };
    },
  },
  {
    name: 'rain-heat',
    room,
    summary: 'heat to warm and evaporate rain on the hot wall',
    inputs: [
      quantityInput('rate', 'speed', { range: [0, 100, 'mm/h'] }),
      quantityInput('area', 'area'),
      quantityInput('heat-per-mass', 'specific-energy', {
        range: [2, 3, 'MJ/kg'],
        byDefault: [2600, 'kJ/kg'],
      }),
    ],
    outputs: [heatFlow('kW')],
    source: 'latent and sensible heat of the rain',
    page,
    evaluate: (inputs) => ({
      'heat-flow':
        WATER_KGM3 * numberOf(inputs, 'rate') * numberOf(inputs, 'area') * numberOf(inputs, 'heat-per-mass'),
    }),
  },
  {
    name: 'solar-gain',
    room,
    summary: 'α I A',
    inputs: [
      quantityInput('absorptivity', 'fraction', { range: [0, 1, '1'], byDefault: [0.9, '1'] }),
      quantityInput('irradiance', 'heat-flux', { range: [0, 1400, 'W/m²'] }),
      quantityInput('area', 'area'),
    ],
    outputs: [heatFlow('W')],
    source: 'definition of absorptivity',
    page,
    evaluate: (inputs) => ({
      'heat-flow':
        numberOf(inputs, 'absorptivity') * numberOf(inputs, 'irradiance') * numberOf(inputs, 'area'),
    }),
  },
  {
    name: 'start-up-heat',
    room,
    summary: 'Σ m c ΔT over parts',
    inputs: [
      { type: 'text', name: 'parts', remark: 'such as 117 kg 65 K | 85 kg 170 K' },
      quantityInput('specific-heat', 'specific-heat', {
        range: [0.1, 5, 'kJ/kgK'],
        byDefault: [0.49, 'kJ/kgK'],
      }),
    ],
    outputs: [{ name: 'heat', unit: 'MJ', kind: 'energy' }],
    source: 'sensible heat',
    page,
    evaluate: (inputs) => ({
      heat: itemsIn('parts', textOf(inputs, 'parts'))
        .map((item) => pairIn('parts', item, 'mass', 'difference'))
        .reduce((sum, [mass, rise]) => sum + mass * rise * numberOf(inputs, 'specific-heat'), 0),
    }),
  },
];
