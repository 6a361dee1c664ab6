import { parseQuantity } from '@pitwright/model';
import { standardPressurePa } from '../../air/atmosphere.ts';
import { saturationTemperatureC } from '../../air/saturation.ts';
import { quantityInput, wordInput } from '../../calc/describe.ts';
import { exactlyOne, maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { ACIDS, type AcidId } from '../../food/data/ingredients.ts';
import { boilingTemperatureC, syrupBoilingC } from '../boiling.ts';
import { phOf, undissociatedFraction } from '../chargeBalance.ts';
import { ACID_CONSTANTS } from '../data/acids.ts';
import { ACETIC_VOLATILITY, ETHANOL_VOLATILITY, rayleighLeft } from '../evaporation.ts';
import { invertedShare } from '../inversion.ts';
import { sucroseDensity, sucroseSolubility, sucroseViscosityMPas } from '../syrup.ts';
import { page, room } from './room.ts';

/** mol/L from `0.1 mol/L`, `6 g/L`, `0.053 g/100 mL`; g/100 g, and % as it, is read as g/100 mL. */
function molesPerLitre(text: string, acid: AcidId): number {
  const gramsPerMole = ACID_CONSTANTS[acid].molarMassG;
  const molarity = parseQuantity(text, 'molarity');
  if (molarity.ok) return molarity.quantity.si / 1000;
  const perVolume = parseQuantity(text, 'mass-per-volume');
  if (perVolume.ok) return perVolume.quantity.si / gramsPerMole;
  const fraction = parseQuantity(text, 'fraction');
  if (fraction.ok && /[a-z%]/i.test(text.replace(/e[+-]?\d/gi, '')))
    return (fraction.quantity.si * 1000) / gramsPerMole;
  return refuse('sauce.concentration-unread', { input: 'concentration', text });
}

const MOST_MOL_PER_L = 20;

export const solutionCalcs: readonly CalcSpec[] = [
  {
    name: 'acid-ph',
    room,
    summary: 'one acid in water, charge balance, activity coefficients left out',
    inputs: [
      wordInput('acid', ACIDS),
      { type: 'text', name: 'concentration' },
      quantityInput('strong-cation', 'molarity', { range: [0, 5, 'mol/L'], byDefault: [0, 'mol/L'] }),
    ],
    outputs: [{ name: 'ph', unit: '1', kind: 'number' }],
    source: 'charge balance with handbook pK at 25 °C',
    page,
    evaluate(inputs) {
      const acid = textOf(inputs, 'acid') as AcidId;
      const text = textOf(inputs, 'concentration');
      const molar = molesPerLitre(text, acid);
      if (!(molar >= 0 && molar <= MOST_MOL_PER_L))
        refuse('calc.out-of-range', { input: 'concentration', text, limits: `0..${MOST_MOL_PER_L} mol/L` });
      return { ph: phOf({ [acid]: molar }, numberOf(inputs, 'strong-cation') / 1000) };
    },
  },
  {
    name: 'sucrose-viscosity',
    room,
    summary: 'aqueous sucrose; the ratio is against the same syrup at reference-temperature',
    inputs: [
      quantityInput('sucrose', 'fraction', { range: [0, 0.8, '1'] }),
      quantityInput('temperature', 'temperature', { range: [0, 100, '°C'] }),
      quantityInput('reference-temperature', 'temperature', { range: [0, 100, '°C'], optional: true }),
    ],
    outputs: [
      { name: 'viscosity', unit: 'mPa·s', kind: 'viscosity' },
      { name: 'ratio', unit: '1', kind: 'number' },
    ],
    source: 'form of Génotelle after Mathlouthi & Reiser, fitted to the CRC tables',
    page,
    evaluate(inputs) {
      const sucrose = numberOf(inputs, 'sucrose');
      const viscosity = sucroseViscosityMPas(sucrose, numberOf(inputs, 'temperature'));
      const referenceC = maybeNumber(inputs, 'reference-temperature');
      return {
        viscosity: viscosity / 1000,
        ratio: referenceC === undefined ? undefined : viscosity / sucroseViscosityMPas(sucrose, referenceC),
      };
    },
  },
  {
    name: 'sucrose-density',
    room,
    summary: 'aqueous sucrose',
    inputs: [
      quantityInput('sucrose', 'fraction', { range: [0, 0.85, '1'] }),
      quantityInput('temperature', 'temperature', { range: [0, 100, '°C'] }),
    ],
    outputs: [{ name: 'density', unit: 'kg/m³', kind: 'density' }],
    source: 'Emmerich & Emmerich 1994, ICUMSA SPS-4',
    page,
    evaluate: (inputs) => ({
      density: sucroseDensity(numberOf(inputs, 'sucrose'), numberOf(inputs, 'temperature')),
    }),
  },
  {
    name: 'sucrose-solubility',
    room,
    summary: 'mass fraction in the saturated solution',
    inputs: [quantityInput('temperature', 'temperature', { range: [0, 100, '°C'] })],
    outputs: [{ name: 'sucrose', unit: 'g/100 g', kind: 'fraction' }],
    source: 'Vavrinecz',
    page,
    evaluate: (inputs) => ({ sucrose: sucroseSolubility(numberOf(inputs, 'temperature')) }),
  },
  {
    name: 'boiling-point',
    room,
    summary: 'water, a sucrose syrup, or anything of known water activity, at a pressure or an altitude',
    inputs: [
      quantityInput('pressure', 'pressure', { range: [50, 150, 'kPa'], optional: true }),
      quantityInput('altitude', 'length', { range: [-500, 5000, 'm'], optional: true }),
      quantityInput('sucrose', 'fraction', { range: [0, 0.85, '1'], optional: true }),
      quantityInput('water-activity', 'fraction', { range: [0.4, 1, '1'], optional: true }),
    ],
    outputs: [
      { name: 'temperature', unit: '°C', kind: 'temperature' },
      { name: 'elevation', unit: 'K', kind: 'difference' },
    ],
    source: 'Starzak & Peacock with the saturation pressure of Hyland & Wexler; standard atmosphere',
    page,
    evaluate(inputs) {
      const given = exactlyOne(inputs, ['pressure', 'altitude']);
      const pressurePa =
        given === 'pressure' ? numberOf(inputs, given) : standardPressurePa(numberOf(inputs, given));
      const sucrose = maybeNumber(inputs, 'sucrose');
      const activity = maybeNumber(inputs, 'water-activity');
      if (sucrose !== undefined && activity !== undefined) exactlyOne(inputs, ['sucrose', 'water-activity']);
      const waterC = saturationTemperatureC(pressurePa);
      let temperature = waterC;
      if (sucrose !== undefined && sucrose > 0) temperature = syrupBoilingC(sucrose, pressurePa);
      if (activity !== undefined && activity < 1)
        temperature = boilingTemperatureC(() => activity, pressurePa);
      return { temperature, elevation: temperature - waterC };
    },
  },
  {
    name: 'volatile-retention',
    room,
    summary: 'Rayleigh: (water left / water at first)^α',
    inputs: [
      quantityInput('evaporated-share', 'fraction', { range: [0, 0.99, '1'] }),
      wordInput('volatile', ['ethanol', 'acetic']),
      quantityInput('ph', 'number', { range: [0, 14, '1'], optional: true }),
      quantityInput('relative-volatility', 'number', { range: [0.01, 100, '1'], optional: true }),
    ],
    outputs: [{ name: 'left', unit: '1', kind: 'number' }],
    source:
      'Rayleigh; relative volatilities from memory: ethanol 10, acetic acid 0.65 of its undissociated share',
    page,
    evaluate(inputs) {
      const told = maybeNumber(inputs, 'relative-volatility');
      const byItself =
        textOf(inputs, 'volatile') === 'ethanol'
          ? ETHANOL_VOLATILITY
          : told === undefined
            ? ACETIC_VOLATILITY * undissociatedFraction('acetic', numberOf(inputs, 'ph'))
            : 0;
      return { left: rayleighLeft(1 - numberOf(inputs, 'evaporated-share'), told ?? byItself) };
    },
  },
  {
    name: 'sucrose-inversion',
    room,
    summary: 'share split by acid: k = 1.2e-4·[H⁺] at 25 °C, 108 kJ/mol',
    inputs: [
      quantityInput('ph', 'number', { range: [1, 8, '1'] }),
      quantityInput('temperature', 'temperature', { range: [0, 120, '°C'] }),
      quantityInput('time', 'time'),
    ],
    outputs: [{ name: 'inverted', unit: '1', kind: 'number' }],
    source: 'first order in the acid; activation energy from a polarimetric measurement',
    page,
    evaluate: (inputs) => ({
      inverted: invertedShare(
        numberOf(inputs, 'ph'),
        numberOf(inputs, 'temperature'),
        numberOf(inputs, 'time'),
      ),
    }),
  },
];
