import { quantityInput } from '../../calc/describe.ts';
import { exactlyOne, maybeNumber, numberOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { apparentViscosity, sauceRheology, shearStress, wallShearRate } from '../rheology.ts';
import {
  drainedFilmM,
  plateDiameterM,
  plateYieldStressPa,
  viscousTravelM,
  yieldFilmM,
  yieldTravelM,
} from '../spread.ts';
import { page, room } from './room.ts';

const density = quantityInput('density', 'density', { range: [900, 1500, 'kg/m³'] });

export const thicknessCalcs: readonly CalcSpec[] = [
  {
    name: 'apparent-viscosity',
    room,
    summary: 'Herschel–Bulkley stress over shear rate',
    inputs: [
      quantityInput('yield-stress', 'stress', { range: [0, 5000, 'Pa'] }),
      quantityInput('consistency', 'consistency'),
      quantityInput('index', 'number', { range: [0.05, 1.5, '1'] }),
      quantityInput('shear-rate', 'rate', { range: [0.0001, 10000, '1/s'] }),
    ],
    outputs: [
      { name: 'viscosity', unit: 'Pa·s', kind: 'viscosity' },
      { name: 'stress', unit: 'Pa', kind: 'stress' },
    ],
    source: 'Herschel & Bulkley',
    page,
    evaluate(inputs) {
      const fluid = {
        yieldStressPa: numberOf(inputs, 'yield-stress'),
        consistency: numberOf(inputs, 'consistency'),
        index: numberOf(inputs, 'index'),
      };
      const shearRate = numberOf(inputs, 'shear-rate');
      return { viscosity: apparentViscosity(fluid, shearRate), stress: shearStress(fluid, shearRate) };
    },
  },
  {
    name: 'wall-shear-rate',
    room,
    summary: 'Newtonian wall value 4Q/(πr³)',
    inputs: [
      quantityInput('flow', 'volume-flow'),
      quantityInput('radius', 'length', { range: [0.1, 100, 'mm'] }),
    ],
    outputs: [{ name: 'shear-rate', unit: '1/s', kind: 'rate' }],
    source: 'Hagen–Poiseuille',
    page,
    evaluate: (inputs) => ({
      'shear-rate': wallShearRate(numberOf(inputs, 'flow'), numberOf(inputs, 'radius')),
    }),
  },
  {
    name: 'sauce-rheology',
    room,
    summary: 'thickness foreseen from pulp index P and effective Brix',
    inputs: [
      quantityInput('pulp-index', 'number', { range: [0, 4, '1'] }),
      quantityInput('effective-brix', 'fraction', { range: [0, 0.8, '1'] }),
      quantityInput('temperature', 'temperature', { range: [0, 100, '°C'], byDefault: [25, '°C'] }),
      quantityInput('factor', 'number', { range: [0.1, 10, '1'], byDefault: [1, '1'] }),
    ],
    outputs: [
      { name: 'yield-stress', unit: 'Pa', kind: 'stress' },
      { name: 'consistency', unit: 'Pa·sⁿ', kind: 'consistency' },
      { name: 'index', unit: '1', kind: 'number' },
    ],
    source: 'Higgs & Norrington (1971) ketchup; exponents from practice with tomato concentrates',
    page,
    evaluate(inputs) {
      const r = sauceRheology(
        numberOf(inputs, 'pulp-index'),
        100 * numberOf(inputs, 'effective-brix'),
        numberOf(inputs, 'temperature'),
        numberOf(inputs, 'factor'),
      );
      return { 'yield-stress': r.yieldStressPa, consistency: r.consistency, index: r.index };
    },
  },
  {
    name: 'bostwick-travel',
    room,
    summary: 'travel from the gate; the smaller of the yield-limited and the viscosity-limited',
    inputs: [
      quantityInput('yield-stress', 'stress', { range: [0.01, 5000, 'Pa'], optional: true }),
      quantityInput('viscosity', 'viscosity', { range: [0.001, 5000, 'Pa·s'], optional: true }),
      quantityInput('time', 'time', { range: [1, 600, 's'], byDefault: [30, 's'] }),
      density,
    ],
    outputs: [{ name: 'travel', unit: 'cm', kind: 'length' }],
    source: 'plane slump balance; Huppert plane gravity current',
    page,
    evaluate(inputs) {
      const yieldPa = maybeNumber(inputs, 'yield-stress');
      const viscosity = maybeNumber(inputs, 'viscosity');
      if (yieldPa === undefined && viscosity === undefined)
        refuse('calc.none-of', { input: 'yield-stress', names: 'yield-stress|viscosity' });
      const rho = numberOf(inputs, 'density');
      const limits = [
        ...(yieldPa === undefined ? [] : [yieldTravelM(yieldPa, rho)]),
        ...(viscosity === undefined ? [] : [viscousTravelM(viscosity, rho, numberOf(inputs, 'time'))]),
      ];
      return { travel: Math.min(...limits) };
    },
  },
  {
    name: 'spoon-film',
    room,
    summary: 'film left on a vertical spoon: the larger of τ0/(ρg) and √(ηL/(ρgt))',
    inputs: [
      quantityInput('yield-stress', 'stress', { range: [0, 5000, 'Pa'], byDefault: [0, 'Pa'] }),
      quantityInput('viscosity', 'viscosity', { range: [0, 5000, 'Pa·s'], byDefault: [0, 'Pa·s'] }),
      quantityInput('length', 'length', { range: [1, 30, 'cm'], byDefault: [50, 'mm'] }),
      quantityInput('time', 'time', { range: [0.1, 600, 's'], byDefault: [10, 's'] }),
      density,
    ],
    outputs: [{ name: 'film', unit: 'mm', kind: 'length' }],
    source: 'yield balance; Jeffreys drainage',
    page,
    evaluate(inputs) {
      const rho = numberOf(inputs, 'density');
      const drained = drainedFilmM(
        numberOf(inputs, 'viscosity'),
        numberOf(inputs, 'length'),
        numberOf(inputs, 'time'),
        rho,
      );
      return { film: Math.max(yieldFilmM(numberOf(inputs, 'yield-stress'), rho), drained) };
    },
  },
  {
    name: 'plate-test',
    room,
    summary: 'puddle on a flat plate: τ0 = 225 ρ g V²/(128 π² R⁵)',
    inputs: [
      quantityInput('volume', 'volume', { range: [1, 500, 'mL'], byDefault: [15, 'mL'] }),
      density,
      quantityInput('yield-stress', 'stress', { range: [0.01, 5000, 'Pa'], optional: true }),
      quantityInput('diameter', 'length', { range: [1, 50, 'cm'], optional: true }),
    ],
    outputs: [
      { name: 'diameter', unit: 'cm', kind: 'length' },
      { name: 'yield-stress', unit: 'Pa', kind: 'stress' },
    ],
    source: 'Roussel & Coussot 2005, spreading regime',
    page,
    evaluate(inputs) {
      const given = exactlyOne(inputs, ['yield-stress', 'diameter']);
      const value = numberOf(inputs, given);
      const volume = numberOf(inputs, 'volume');
      const rho = numberOf(inputs, 'density');
      return given === 'diameter'
        ? { diameter: value, 'yield-stress': plateYieldStressPa(volume, rho, value) }
        : { diameter: plateDiameterM(volume, rho, value), 'yield-stress': value };
    },
  },
];
