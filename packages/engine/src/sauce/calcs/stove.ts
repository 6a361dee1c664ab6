import { humidityRatioFromVapour } from '../../air/moistAir.ts';
import { saturationPressurePa } from '../../air/saturation.ts';
import { quantityInput, wordInput } from '../../calc/describe.ts';
import { maybeNumber, numberOf, textOf, without } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcInputs, CalcSpec } from '../../calc/spec.ts';
import { boilOffKgS, COOKTOP_EFFICIENCY, type CooktopSource, simmerTime } from '../cooktop.ts';
import {
  analogyFlux,
  type OpenSurface,
  stillAirFlux,
  surfaceHumidityRatio,
  windFlux,
} from '../openSurface.ts';
import { page, room } from './room.ts';

const netHeat = [
  quantityInput('power', 'power', { range: [0.05, 20, 'kW'] }),
  quantityInput('efficiency', 'fraction', { range: [0.01, 1, '1'] }),
  quantityInput('wall-loss', 'power', { range: [0, 5, 'kW'], byDefault: [0, 'W'] }),
];

const neverBoils = (): never => refuse('sauce.never-boils', { input: 'power' });

function surfaceOf(inputs: CalcInputs): OpenSurface {
  const airC = numberOf(inputs, 'air-temperature');
  const pressurePa = numberOf(inputs, 'pressure');
  const airPa = numberOf(inputs, 'relative-humidity') * saturationPressurePa(airC);
  const waterC = numberOf(inputs, 'water-temperature');
  const waterActivity = numberOf(inputs, 'water-activity');
  if (!(waterActivity * saturationPressurePa(waterC) < pressurePa))
    refuse('sauce.surface-boils', { input: 'water-temperature' });
  if (!(airPa < pressurePa)) refuse('sauce.surface-boils', { input: 'air-temperature' });
  return {
    waterC,
    waterActivity,
    airC,
    airHumidityRatio: humidityRatioFromVapour(airPa, pressurePa),
    pressurePa,
  };
}

function openSurface(inputs: CalcInputs): { flux: number; heatCoefficient?: number } {
  const method = textOf(inputs, 'method');
  const analogyOnly = ['kinematic-viscosity', 'conductivity', 'prandtl'];
  const ratios = ['surface-humidity-ratio', 'air-humidity-ratio'];
  if (method !== 'analogy') without(inputs, analogyOnly, 'it belongs to the method analogy');
  if (method !== 'wind') {
    without(inputs, ratios, 'it belongs to the method wind');
    if (numberOf(inputs, 'speed') > 0) without(inputs, ['speed'], 'it belongs to the method wind');
  }
  if (method === 'analogy')
    return analogyFlux(surfaceOf(inputs), {
      kinematicViscosity: maybeNumber(inputs, 'kinematic-viscosity'),
      conductivity: maybeNumber(inputs, 'conductivity'),
      prandtl: maybeNumber(inputs, 'prandtl'),
    });
  if (method === 'still-air') return { flux: stillAirFlux(surfaceOf(inputs)) };
  const speed = numberOf(inputs, 'speed');
  if (ratios.some((name) => inputs[name] !== undefined)) {
    without(
      inputs,
      ['water-temperature', 'air-temperature', 'relative-humidity'],
      'the humidity ratios are given',
    );
    const surface = numberOf(inputs, 'surface-humidity-ratio');
    return { flux: windFlux(speed, surface, numberOf(inputs, 'air-humidity-ratio')) };
  }
  const surface = surfaceOf(inputs);
  return { flux: windFlux(speed, surfaceHumidityRatio(surface), surface.airHumidityRatio) };
}

export const stoveCalcs: readonly CalcSpec[] = [
  {
    name: 'cooktop-efficiency',
    room,
    summary: 'heat into the food over energy in',
    inputs: [wordInput('source', ['gas', 'electric', 'induction'])],
    outputs: [{ name: 'efficiency', unit: '1', kind: 'number' }],
    source: 'MacKay 2008 (gas), US DOE boiling tests (electric), ENERGY STAR (induction)',
    page,
    evaluate: (inputs) => ({ efficiency: COOKTOP_EFFICIENCY[textOf(inputs, 'source') as CooktopSource] }),
  },
  {
    name: 'boil-off-rate',
    room,
    summary: '(P η − Q_wall)/h_fg at the boil; refused where the heat does not reach it',
    inputs: [
      ...netHeat,
      quantityInput('temperature', 'temperature', { range: [60, 130, '°C'], byDefault: [100, '°C'] }),
    ],
    outputs: [{ name: 'rate', unit: 'g/min', kind: 'mass-flow' }],
    source: 'energy balance',
    page,
    evaluate(inputs) {
      const rate = boilOffKgS(
        numberOf(inputs, 'power'),
        numberOf(inputs, 'efficiency'),
        numberOf(inputs, 'wall-loss'),
        numberOf(inputs, 'temperature'),
      );
      return { rate: rate > 0 ? rate : neverBoils() };
    },
  },
  {
    name: 'simmer-time',
    room,
    summary: 'heating from start to boiling, then driving off water, wall loss counted in both',
    inputs: [
      quantityInput('mass', 'mass', { range: [0.05, 100, 'kg'] }),
      quantityInput('start', 'temperature', { range: [0, 100, '°C'], byDefault: [20, '°C'] }),
      quantityInput('boiling', 'temperature', { range: [80, 130, '°C'], byDefault: [100, '°C'] }),
      quantityInput('specific-heat', 'specific-heat', { range: [1.5, 4.2, 'kJ/kgK'] }),
      quantityInput('evaporated', 'mass', { range: [0, 100, 'kg'] }),
      ...netHeat,
    ],
    outputs: [
      { name: 'time', unit: 'min', kind: 'time' },
      { name: 'heating-time', unit: 'min', kind: 'time' },
    ],
    source: 'energy balance',
    page,
    evaluate(inputs) {
      const massKg = numberOf(inputs, 'mass');
      const evaporatedKg = numberOf(inputs, 'evaporated');
      if (evaporatedKg > massKg)
        refuse('sauce.more-evaporated-than-mass', {
          input: 'evaporated',
          mass: { kind: 'mass', si: massKg },
        });
      const time = simmerTime({
        massKg,
        evaporatedKg,
        startC: numberOf(inputs, 'start'),
        boilingC: numberOf(inputs, 'boiling'),
        specificHeat: numberOf(inputs, 'specific-heat'),
        powerW: numberOf(inputs, 'power'),
        efficiency: numberOf(inputs, 'efficiency'),
        lossW: numberOf(inputs, 'wall-loss'),
      });
      if (time.totalS === Infinity) neverBoils();
      return { time: time.totalS, 'heating-time': time.heatingS };
    },
  },
  {
    name: 'open-surface-evaporation',
    room,
    summary:
      'still-air: 35 ρ_w (ρ_a−ρ_w)^⅓ (W_w−W_a); analogy: Sh = 0.15 (Gr Sc)^⅓; wind: (25+19v)(W_w−W_a), near room temperature only',
    inputs: [
      wordInput('method', ['still-air', 'analogy', 'wind'], { byDefault: 'still-air' }),
      quantityInput('water-temperature', 'temperature', { range: [0, 99, '°C'], optional: true }),
      quantityInput('air-temperature', 'temperature', { range: [-10, 60, '°C'], optional: true }),
      quantityInput('relative-humidity', 'fraction', { range: [0, 1, '1'], optional: true }),
      quantityInput('surface-humidity-ratio', 'fraction', { range: [0, 1, '1'], optional: true }),
      quantityInput('air-humidity-ratio', 'fraction', { range: [0, 1, '1'], optional: true }),
      quantityInput('water-activity', 'fraction', { range: [0.3, 1, '1'], byDefault: [1, '1'] }),
      quantityInput('pressure', 'pressure', { range: [50, 110, 'kPa'], byDefault: [101.325, 'kPa'] }),
      quantityInput('speed', 'speed', { range: [0, 10, 'm/s'], byDefault: [0, 'm/s'] }),
      quantityInput('area', 'area', { optional: true }),
      quantityInput('kinematic-viscosity', 'diffusivity', { optional: true }),
      quantityInput('conductivity', 'conductivity', { optional: true }),
      quantityInput('prandtl', 'number', { range: [0.5, 1, '1'], optional: true }),
    ],
    outputs: [
      { name: 'flux', unit: 'kg/m²h', kind: 'mass-flux' },
      { name: 'rate', unit: 'kg/h', kind: 'mass-flow' },
      { name: 'heat-coefficient', unit: 'W/m²K', kind: 'coefficient' },
    ],
    source: 'Shah 2002 (still air); Cengel example 14-13 (analogy); pool formula (wind)',
    page,
    evaluate(inputs) {
      const { flux, heatCoefficient } = openSurface(inputs);
      const areaM2 = maybeNumber(inputs, 'area');
      return {
        flux,
        rate: areaM2 === undefined ? undefined : flux * areaM2,
        'heat-coefficient': heatCoefficient,
      };
    },
  },
];
