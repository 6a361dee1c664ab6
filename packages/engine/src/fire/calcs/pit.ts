import { quantityInput, wordInput } from '../../calc/describe.ts';
import { maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { positiveOf } from '../../heat/bodyInputs.ts';
import { WET, wetSurroundings } from '../../heat/surfaceCalcs.ts';
import { wetSurface } from '../../heat/wetSurface.ts';
import { pitHumidityRatio, steadyFuelKgS } from '../balance.ts';
import { THERMOCOUPLES, type Thermocouple, thermocoupleToleranceK } from '../thermocouple.ts';

const room = 'fire';
const page = 'fire.md';
const temperatureOut = { name: 'temperature', unit: '°C', kind: 'temperature' } as const;

export const pitCalcs: readonly CalcSpec[] = [
  {
    name: 'steady-fuel-rate',
    room,
    summary: 'fuel that holds a pit steady',
    inputs: [
      quantityInput('wall-loss', 'power', { range: [0, 100, 'kW'] }),
      quantityInput('firebox-loss', 'power', { range: [0, 100, 'kW'], byDefault: [0, 'W'] }),
      quantityInput('rain', 'power', { range: [0, 100, 'kW'], byDefault: [0, 'W'] }),
      quantityInput('sun', 'power', { range: [0, 20, 'kW'], byDefault: [0, 'W'] }),
      quantityInput('evaporation', 'mass-flow', { range: [0, 20, 'kg/h'], byDefault: [0, 'kg/h'] }),
      quantityInput('heating-value', 'specific-energy', { range: [5, 60, 'MJ/kg'] }),
      quantityInput('efficiency', 'fraction', { range: [0.3, 1, '1'] }),
      quantityInput('excess-air-ratio', 'number', { range: [1, 40, '1'] }),
      quantityInput('stoichiometric-air', 'fraction', { range: [1, 20, '1'] }),
      quantityInput('exhaust-rise', 'difference', { range: [0, 500, 'K'] }),
    ],
    outputs: [{ name: 'fuel-rate', unit: 'kg/h', kind: 'mass-flow' }],
    source: 'steady heat balance',
    page,
    evaluate(inputs) {
      const fuel = steadyFuelKgS({
        wallW: numberOf(inputs, 'wall-loss'),
        fireboxW: numberOf(inputs, 'firebox-loss'),
        rainW: numberOf(inputs, 'rain'),
        sunW: numberOf(inputs, 'sun'),
        evaporationKgS: numberOf(inputs, 'evaporation'),
        netJKg: numberOf(inputs, 'heating-value'),
        efficiency: numberOf(inputs, 'efficiency'),
        excessAirRatio: numberOf(inputs, 'excess-air-ratio'),
        airRatio: numberOf(inputs, 'stoichiometric-air'),
        exhaustRiseK: numberOf(inputs, 'exhaust-rise'),
      });
      if (fuel === undefined)
        return refuse('calc.impossible', {
          input: 'excess-air-ratio',
          reason: 'so much air carries off more than the fuel gives, close down the air',
        });
      if (fuel < 0)
        refuse('calc.impossible', {
          input: 'sun',
          reason: 'the sun alone more than holds this pit, give less of it',
        });
      return { 'fuel-rate': fuel };
    },
  },
  {
    name: 'pit-humidity',
    room,
    summary: 'steady humidity ratio of the pit air',
    inputs: [
      quantityInput('fuel-rate', 'mass-flow', { range: [0, 100, 'kg/h'] }),
      quantityInput('stoichiometric-air', 'fraction', { range: [1, 20, '1'] }),
      quantityInput('excess-air-ratio', 'number', { range: [1, 40, '1'] }),
      quantityInput('water-formed', 'fraction', { range: [0, 3, '1'] }),
      quantityInput('efficiency', 'fraction', { range: [0.3, 1, '1'] }),
      quantityInput('ambient-humidity-ratio', 'fraction', { range: [0, 0.05, '1'] }),
      quantityInput('evaporation', 'mass-flow', { range: [0, 20, 'kg/h'], byDefault: [0, 'kg/h'] }),
    ],
    outputs: [{ name: 'humidity-ratio', unit: 'kg/kg', kind: 'fraction' }],
    source: 'steady water balance',
    page,
    evaluate(inputs) {
      const ratio = pitHumidityRatio({
        fuelKgS: numberOf(inputs, 'fuel-rate'),
        airRatio: numberOf(inputs, 'stoichiometric-air'),
        excessAirRatio: numberOf(inputs, 'excess-air-ratio'),
        waterRatio: numberOf(inputs, 'water-formed'),
        efficiency: numberOf(inputs, 'efficiency'),
        ambientHumidityRatio: numberOf(inputs, 'ambient-humidity-ratio'),
        evaporationKgS: numberOf(inputs, 'evaporation'),
      });
      if (ratio === undefined)
        return refuse('calc.impossible', {
          input: 'fuel-rate',
          reason: 'no dry gas passes through the pit, give a fire with its air',
        });
      return { 'humidity-ratio': ratio };
    },
  },
  {
    name: 'water-pan',
    room,
    summary: 'wet top plus heat through the bottom; cover is a factor on evaporation for a fat film or foil',
    inputs: [
      ...WET,
      quantityInput('bottom-coefficient', 'coefficient', {
        range: [0, 200, 'W/m²K'],
        byDefault: [12, 'W/m²K'],
      }),
      quantityInput('bottom-temperature', 'temperature', {
        range: [0, 800, '°C'],
        optional: true,
        remark: 'that of the gas unless given',
      }),
      quantityInput('area', 'area', { range: [10, 20000, 'cm²'], byDefault: [0.075, 'm²'] }),
      quantityInput('water', 'mass', { range: [0, 100, 'kg'], optional: true }),
      quantityInput('cover', 'fraction', { range: [0.01, 1, '1'], byDefault: [1, '1'] }),
    ],
    outputs: [
      temperatureOut,
      { name: 'evaporation', unit: 'kg/h', kind: 'mass-flow' },
      { name: 'time-to-dry', unit: 'h', kind: 'time' },
    ],
    source: 'film theory with the Chilton–Colburn analogy, heat from below',
    page,
    evaluate(inputs, wanted) {
      const surroundings = wetSurroundings(inputs);
      const state = wetSurface({
        ...surroundings,
        wetness: numberOf(inputs, 'cover'),
        otherHeatWm2: 0,
        backing: {
          coefficientWm2K: numberOf(inputs, 'bottom-coefficient'),
          temperatureC: maybeNumber(inputs, 'bottom-temperature') ?? surroundings.gasC,
        },
      });
      if (!state)
        return refuse('calc.impossible', {
          input: 'gas-temperature',
          reason: 'the water would freeze, give warmer surroundings',
        });
      const evaporation = state.evaporationKgM2S * numberOf(inputs, 'area');
      if (!wanted?.includes('time-to-dry')) return { temperature: state.surfaceC, evaporation };
      if (!(evaporation > 0))
        refuse('calc.impossible', {
          input: 'humidity-ratio',
          reason: 'water condenses into this pan, so it never dries, give drier gas',
        });
      return {
        temperature: state.surfaceC,
        evaporation,
        'time-to-dry': numberOf(inputs, 'water') / evaporation,
      };
    },
  },
  {
    name: 'spritz-drying-time',
    room,
    summary: 'mass over area over flux',
    inputs: [
      quantityInput('mass', 'mass', { range: [0, 2, 'kg'] }),
      quantityInput('area', 'area'),
      quantityInput('evaporation-flux', 'mass-flux', { range: [0.01, 20, 'kg/m²h'] }),
    ],
    outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
    source: 'water balance of the film',
    page,
    evaluate: (inputs) => ({
      time: numberOf(inputs, 'mass') / positiveOf(inputs, 'area') / numberOf(inputs, 'evaporation-flux'),
    }),
  },
  {
    name: 'probe-time-constant',
    room,
    summary: 'ρcd/4h for a stem, ρcd/6h for a bead',
    inputs: [
      wordInput('shape', ['stem', 'bead'], { byDefault: 'stem' }),
      quantityInput('diameter', 'length', { range: [0.05, 50, 'mm'] }),
      quantityInput('density', 'density', { range: [500, 20000, 'kg/m³'] }),
      quantityInput('specific-heat', 'specific-heat', { range: [0.1, 5, 'kJ/kgK'] }),
      quantityInput('coefficient', 'coefficient', { range: [0.5, 5000, 'W/m²K'] }),
    ],
    outputs: [
      { name: 'time', unit: 's', kind: 'time' },
      { name: 'inverse', unit: '1/s', kind: 'rate' },
    ],
    source: 'lumped capacity; Çengel, Heat Transfer, ch. 4',
    page,
    evaluate(inputs) {
      const time =
        (numberOf(inputs, 'density') * numberOf(inputs, 'specific-heat') * numberOf(inputs, 'diameter')) /
        ((textOf(inputs, 'shape') === 'stem' ? 4 : 6) * numberOf(inputs, 'coefficient'));
      return { time, inverse: 1 / time };
    },
  },
  {
    name: 'probe-reading',
    room,
    summary: '(h_c T_gas + h_r T_surroundings)/(h_c + h_r)',
    inputs: [
      quantityInput('gas-temperature', 'temperature', { range: [-40, 600, '°C'] }),
      quantityInput('surroundings', 'temperature', { range: [-40, 800, '°C'] }),
      quantityInput('convection-coefficient', 'coefficient', { range: [0.1, 500, 'W/m²K'] }),
      quantityInput('radiation-coefficient', 'coefficient', { range: [0, 100, 'W/m²K'] }),
    ],
    outputs: [temperatureOut],
    source: 'steady balance of a dry probe',
    page,
    evaluate(inputs) {
      const convection = numberOf(inputs, 'convection-coefficient');
      const radiation = numberOf(inputs, 'radiation-coefficient');
      return {
        temperature:
          (convection * numberOf(inputs, 'gas-temperature') + radiation * numberOf(inputs, 'surroundings')) /
          (convection + radiation),
      };
    },
  },
  {
    name: 'thermocouple-tolerance',
    room,
    summary: 'the greater of the two limits of IEC 60584',
    inputs: [
      wordInput('type', THERMOCOUPLES),
      wordInput('class', ['1', '2']),
      quantityInput('temperature', 'temperature', { range: [0, 600, '°C'] }),
    ],
    outputs: [{ name: 'tolerance', unit: 'K', kind: 'difference' }],
    source: 'IEC 60584-1',
    page,
    evaluate(inputs) {
      const tolerance = thermocoupleToleranceK(
        textOf(inputs, 'type') as Thermocouple,
        textOf(inputs, 'class') === '1' ? 1 : 2,
        numberOf(inputs, 'temperature'),
      );
      if (tolerance === undefined)
        return refuse('calc.impossible', {
          input: 'temperature',
          reason: 'the standard gives type T no tolerance above 350 °C, take another type',
        });
      return { tolerance };
    },
  },
];
