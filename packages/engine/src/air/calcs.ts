import { quantityInput } from '../calc/describe.ts';
import { exactlyOne, maybeNumber, numberOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcInputs, CalcSpec } from '../calc/spec.ts';
import { standardPressurePa } from './atmosphere.ts';
import {
  airConductivityWmK,
  airDensityKgM3,
  airKinematicViscosityM2S,
  airPrandtl,
  airViscosityPas,
} from './dryAir.ts';
import {
  humidityRatioFromVapour,
  moistAirDensityKgM3,
  moistAirEnthalpyJKg,
  moistAirVolumeM3Kg,
  vapourPressurePa,
} from './moistAir.ts';
import { saturationPressurePa, saturationTemperatureC } from './saturation.ts';
import { latentHeatJKg } from './water.ts';
import { humidityRatioFromWetBulb, wetBulbC } from './wetBulb.ts';

const HUMIDITIES = [
  'humidity-ratio',
  'relative-humidity',
  'wet-bulb',
  'dew-point',
  'vapour-pressure',
] as const;

/** Air by its dry bulb, exactly one humidity, and its pressure. */
const AIR = [
  quantityInput('dry-bulb', 'temperature', { range: [-40, 200, '°C'], optional: true }),
  quantityInput('humidity-ratio', 'fraction', { range: [0, 5, '1'], optional: true }),
  quantityInput('relative-humidity', 'fraction', { range: [0, 1, '1'], optional: true }),
  quantityInput('wet-bulb', 'temperature', { range: [-40, 100, '°C'], optional: true }),
  quantityInput('dew-point', 'temperature', { range: [-40, 100, '°C'], optional: true }),
  quantityInput('vapour-pressure', 'pressure', { range: [0, 200, 'kPa'], optional: true }),
  quantityInput('pressure', 'pressure', { range: [50, 120, 'kPa'], byDefault: [101.325, 'kPa'] }),
];

/** Air written as saturated may be over by the last printed digit. */
const PRINTED_DIGITS = 1e-7;

interface Air {
  /** Missing only where a humidity ratio, dew point or vapour pressure was given without it. */
  readonly dryBulbC?: number;
  readonly humidityRatio: number;
  readonly pressurePa: number;
}

/** Refuses vapour that condenses at the dry bulb; answers it, or saturation where rounding was over. */
function notOverSaturation(input: string, vapourPa: number, dryBulbC: number | undefined): number {
  if (dryBulbC === undefined) return vapourPa;
  const saturatedPa = saturationPressurePa(dryBulbC);
  if (vapourPa <= saturatedPa) return vapourPa;
  if (vapourPa <= saturatedPa * (1 + PRINTED_DIGITS)) return saturatedPa;
  return refuse('calc.air-over-saturation', {
    input,
    dryBulb: { kind: 'temperature', si: dryBulbC + 273.15 },
  });
}

function vapourPa(input: string, pa: number, pressurePa: number): number {
  if (pa < pressurePa) return pa;
  return refuse('calc.air-over-pressure', { input, pressure: { kind: 'pressure', si: pressurePa } });
}

/** The air meant. @throws CalcProblem where no such air exists */
function airOf(inputs: CalcInputs, options: { readonly needsDryBulb: boolean }): Air {
  const pressurePa = numberOf(inputs, 'pressure');
  const dryBulbC = maybeNumber(inputs, 'dry-bulb');
  const given = exactlyOne(inputs, HUMIDITIES);
  const value = numberOf(inputs, given);
  if (
    dryBulbC === undefined &&
    (options.needsDryBulb || given === 'relative-humidity' || given === 'wet-bulb')
  )
    refuse('calc.missing', { input: 'dry-bulb' });
  switch (given) {
    case 'humidity-ratio': {
      const pa = notOverSaturation(given, vapourPressurePa(value, pressurePa), dryBulbC);
      // Kept as written unless rounding put it over saturation.
      const humidityRatio =
        pa === vapourPressurePa(value, pressurePa) ? value : humidityRatioFromVapour(pa, pressurePa);
      return { dryBulbC, humidityRatio, pressurePa };
    }
    case 'relative-humidity': {
      const pa = value * saturationPressurePa(dryBulbC!);
      if (!(pa < pressurePa))
        refuse('calc.air-no-such-relative-humidity', {
          input: given,
          relativeHumidity: { kind: 'fraction', si: value },
          dryBulb: { kind: 'temperature', si: dryBulbC! + 273.15 },
          pressure: { kind: 'pressure', si: pressurePa },
        });
      return { dryBulbC, humidityRatio: humidityRatioFromVapour(pa, pressurePa), pressurePa };
    }
    case 'wet-bulb': {
      if (value > dryBulbC!) refuse('calc.air-above-dry-bulb', { input: given });
      vapourPa(given, saturationPressurePa(value), pressurePa);
      const humidityRatio = humidityRatioFromWetBulb(dryBulbC!, value, pressurePa);
      // Bone-dry air has the lowest wet bulb there is.
      if (humidityRatio < -1e-9) refuse('calc.air-too-dry', { input: given });
      return { dryBulbC, humidityRatio: Math.max(0, humidityRatio), pressurePa };
    }
    case 'dew-point': {
      if (dryBulbC !== undefined && value > dryBulbC) refuse('calc.air-above-dry-bulb', { input: given });
      const pa = vapourPa(given, saturationPressurePa(value), pressurePa);
      return { dryBulbC, humidityRatio: humidityRatioFromVapour(pa, pressurePa), pressurePa };
    }
    default: {
      const pa = notOverSaturation(given, vapourPa(given, value, pressurePa), dryBulbC);
      return { dryBulbC, humidityRatio: humidityRatioFromVapour(pa, pressurePa), pressurePa };
    }
  }
}

const room = 'air';
const page = 'air.md';
const temperatureOut = { name: 'temperature', unit: '°C', kind: 'temperature' } as const;

export const airCalcs: readonly CalcSpec[] = [
  {
    name: 'saturation-pressure',
    room,
    summary: 'vapour pressure of water over liquid (over ice below 0 °C)',
    inputs: [quantityInput('temperature', 'temperature', { range: [-40, 200, '°C'] })],
    outputs: [{ name: 'pressure', unit: 'kPa', kind: 'pressure' }],
    source: 'Hyland & Wexler 1983, ASHRAE 2017 ch. 1 eq. 5 and 6',
    page,
    evaluate: (inputs) => ({ pressure: saturationPressurePa(numberOf(inputs, 'temperature')) }),
  },
  {
    name: 'saturation-temperature',
    room,
    summary: 'inverse of saturation-pressure',
    inputs: [quantityInput('pressure', 'pressure', { range: [0.02, 1500, 'kPa'] })],
    outputs: [temperatureOut],
    source: 'Hyland & Wexler 1983, ASHRAE 2017 ch. 1 eq. 5 and 6, inverted',
    page,
    evaluate: (inputs) => ({ temperature: saturationTemperatureC(numberOf(inputs, 'pressure')) }),
  },
  {
    name: 'latent-heat',
    room,
    summary: 'heat of vaporisation of water',
    inputs: [quantityInput('temperature', 'temperature', { range: [0, 150, '°C'] })],
    outputs: [{ name: 'heat', unit: 'kJ/kg', kind: 'specific-energy' }],
    source: 'steam tables, cubic fit',
    page,
    evaluate: (inputs) => ({ heat: latentHeatJKg(numberOf(inputs, 'temperature')) }),
  },
  {
    name: 'standard-pressure',
    room,
    summary: 'air pressure of the standard atmosphere',
    inputs: [quantityInput('altitude', 'length', { range: [-500, 5000, 'm'] })],
    outputs: [{ name: 'pressure', unit: 'kPa', kind: 'pressure' }],
    source: 'ASHRAE 2017 ch. 1 eq. 3',
    page,
    evaluate: (inputs) => ({ pressure: standardPressurePa(numberOf(inputs, 'altitude')) }),
  },
  {
    name: 'humidity-ratio',
    room,
    summary: 'kg water per kg dry air, from exactly one humidity',
    inputs: AIR,
    outputs: [{ name: 'humidity-ratio', unit: 'kg/kg', kind: 'fraction' }],
    source: 'ASHRAE 2017 ch. 1 eq. 20 and 33',
    page,
    evaluate: (inputs) => ({ 'humidity-ratio': airOf(inputs, { needsDryBulb: false }).humidityRatio }),
  },
  {
    name: 'relative-humidity',
    room,
    summary: 'share of saturation, below boiling only',
    inputs: AIR,
    outputs: [{ name: 'relative-humidity', unit: '%', kind: 'fraction' }],
    source: 'ASHRAE 2017 ch. 1 eq. 12',
    page,
    evaluate(inputs) {
      const air = airOf(inputs, { needsDryBulb: true });
      const saturatedPa = saturationPressurePa(air.dryBulbC!);
      if (saturatedPa > air.pressurePa)
        refuse('calc.air-above-boiling', {
          input: 'dry-bulb',
          dryBulb: { kind: 'temperature', si: air.dryBulbC! + 273.15 },
          pressure: { kind: 'pressure', si: air.pressurePa },
        });
      return { 'relative-humidity': vapourPressurePa(air.humidityRatio, air.pressurePa) / saturatedPa };
    },
  },
  {
    name: 'wet-bulb',
    room,
    summary: 'thermodynamic wet bulb',
    inputs: AIR,
    outputs: [temperatureOut],
    source: 'ASHRAE 2017 ch. 1 eq. 33 and 35, solved below boiling',
    page,
    evaluate(inputs) {
      const air = airOf(inputs, { needsDryBulb: true });
      return { temperature: wetBulbC(air.dryBulbC!, air.humidityRatio, air.pressurePa) };
    },
  },
  {
    name: 'dew-point',
    room,
    summary: 'temperature at which this air begins to condense',
    inputs: AIR,
    outputs: [temperatureOut],
    source: 'Hyland & Wexler 1983, inverted',
    page,
    evaluate(inputs) {
      const air = airOf(inputs, { needsDryBulb: false });
      const pa = vapourPressurePa(air.humidityRatio, air.pressurePa);
      if (!(pa >= saturationPressurePa(-100)))
        refuse('calc.air-no-dew-point', { input: exactlyOne(inputs, HUMIDITIES) });
      return { temperature: saturationTemperatureC(pa) };
    },
  },
  {
    name: 'moist-air-enthalpy',
    room,
    summary: 'per kg dry air, datum 0 °C dry air and liquid water',
    inputs: AIR,
    outputs: [{ name: 'enthalpy', unit: 'kJ/kg', kind: 'specific-energy' }],
    source: 'ASHRAE 2017 ch. 1 eq. 30',
    page,
    evaluate(inputs) {
      const air = airOf(inputs, { needsDryBulb: true });
      return { enthalpy: moistAirEnthalpyJKg(air.dryBulbC!, air.humidityRatio) };
    },
  },
  {
    name: 'moist-air-volume',
    room,
    summary: 'm³ per kg dry air; density of the moist air',
    inputs: AIR,
    outputs: [
      { name: 'volume', unit: 'm³/kg', kind: 'specific-volume' },
      { name: 'density', unit: 'kg/m³', kind: 'density' },
    ],
    source: 'ASHRAE 2017 ch. 1 eq. 26',
    page,
    evaluate(inputs) {
      const air = airOf(inputs, { needsDryBulb: true });
      return {
        volume: moistAirVolumeM3Kg(air.dryBulbC!, air.humidityRatio, air.pressurePa),
        density: moistAirDensityKgM3(air.dryBulbC!, air.humidityRatio, air.pressurePa),
      };
    },
  },
  {
    name: 'air-properties',
    room,
    summary: 'dry air',
    inputs: [
      quantityInput('temperature', 'temperature', { range: [-20, 250, '°C'] }),
      quantityInput('pressure', 'pressure', { range: [50, 120, 'kPa'], byDefault: [101.325, 'kPa'] }),
    ],
    outputs: [
      { name: 'density', unit: 'kg/m³', kind: 'density' },
      { name: 'conductivity', unit: 'W/mK', kind: 'conductivity' },
      { name: 'viscosity', unit: 'µPa·s', kind: 'viscosity' },
      { name: 'kinematic-viscosity', unit: 'mm²/s', kind: 'kinematic-viscosity' },
      { name: 'prandtl', unit: '1', kind: 'number' },
    ],
    source:
      'power law, Sutherland, ideal gas; fitted to Lemmon & Jacobsen 2004 and Incropera & DeWitt, Table A.4',
    page,
    evaluate(inputs) {
      const temperatureC = numberOf(inputs, 'temperature');
      const pressurePa = numberOf(inputs, 'pressure');
      return {
        density: airDensityKgM3(temperatureC, pressurePa),
        conductivity: airConductivityWmK(temperatureC),
        viscosity: airViscosityPas(temperatureC),
        'kinematic-viscosity': airKinematicViscosityM2S(temperatureC, pressurePa),
        prandtl: airPrandtl(temperatureC),
      };
    },
  },
];
