import { quantityInput, wordInput } from '../../calc/describe.ts';
import { exactlyOne, maybeNumber, maybeText, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcInputs, CalcSpec, InputSpec } from '../../calc/spec.ts';
import {
  combustionWater,
  dryBasisOf,
  type Elements,
  elementsOf,
  netFromGrossJKg,
  stoichiometricAir,
  wetBasisOf,
  woodNetJKg,
} from '../combustion.ts';
import { FUEL_IDS, FUELS, type Fuel, type FuelId } from '../data/fuels.ts';

const room = 'fire';
const page = 'fire.md';
const ratio = { unit: 'kg/kg', kind: 'fraction' } as const;

const MOISTURE: readonly InputSpec[] = [
  quantityInput('wet-basis', 'fraction', { range: [0, 0.67, '1'], optional: true }),
  quantityInput('dry-basis', 'fraction', { range: [0, 2, '1'], optional: true }),
];
const ANALYSIS: readonly InputSpec[] = [
  { type: 'text', name: 'formula', optional: true, remark: 'such as C3H8 or CH1.4O0.6' },
  quantityInput('carbon', 'fraction', { range: [0, 1, '1'], optional: true }),
  quantityInput('hydrogen', 'fraction', { range: [0, 1, '1'], optional: true }),
  quantityInput('oxygen', 'fraction', { range: [0, 1, '1'], optional: true }),
];
const ELEMENTS = ['carbon', 'hydrogen', 'oxygen'] as const;

/** Moisture on wet basis, from exactly one of the two. */
const moistureOf = (inputs: CalcInputs): number =>
  exactlyOne(inputs, ['wet-basis', 'dry-basis']) === 'wet-basis'
    ? numberOf(inputs, 'wet-basis')
    : wetBasisOf(numberOf(inputs, 'dry-basis'));

/** The same, where a fuel that tells none is dry. */
const moistureOrDry = (inputs: CalcInputs): number =>
  inputs['wet-basis'] === undefined && inputs['dry-basis'] === undefined ? 0 : moistureOf(inputs);

/** Analysis of the dry fuel: a formula, or its elements; one that is left out is none of it. */
function analysisOf(inputs: CalcInputs, needed: readonly string[]): Elements {
  const formula = maybeText(inputs, 'formula');
  const given = ELEMENTS.filter((element) => inputs[element] !== undefined);
  if (formula !== undefined) {
    if (given.length > 0) exactlyOne(inputs, ['formula', given[0]!]);
    return (
      elementsOf(formula) ??
      refuse('calc.impossible', {
        input: 'formula',
        reason: `“${formula}” is no formula of C, H, O and N, write it as C3H8`,
      })
    );
  }
  if (!needed.some((element) => inputs[element] !== undefined)) exactlyOne(inputs, ['formula', ...needed]);
  const [carbon, hydrogen, oxygen] = ELEMENTS.map((element) => maybeNumber(inputs, element) ?? 0) as [
    number,
    number,
    number,
  ];
  if (carbon + hydrogen + oxygen > 1 + 1e-9)
    refuse('calc.impossible', {
      input: given[given.length - 1]!,
      reason: 'the elements add to more than the fuel, let them add to 1 at most',
    });
  return { carbon, hydrogen, oxygen };
}

export const fuelCalcs: readonly CalcSpec[] = [
  {
    name: 'moisture-basis',
    room,
    summary: 'wood moisture: M = x/(1+x)',
    inputs: [...MOISTURE].reverse(),
    outputs: [
      { name: 'wet-basis', unit: '1', kind: 'fraction' },
      { name: 'dry-basis', unit: '1', kind: 'fraction' },
    ],
    source: 'definition',
    page,
    evaluate(inputs) {
      const wet = moistureOf(inputs);
      return { 'wet-basis': wet, 'dry-basis': maybeNumber(inputs, 'dry-basis') ?? dryBasisOf(wet) };
    },
  },
  {
    name: 'wood-net-heating-value',
    room,
    summary: 'NCV = NCV0 (1−M) − 2.44 M',
    inputs: [
      ...MOISTURE,
      quantityInput('dry-value', 'specific-energy', { range: [15, 22, 'MJ/kg'], byDefault: [18.5, 'MJ/kg'] }),
    ],
    outputs: [{ name: 'heating-value', unit: 'MJ/kg', kind: 'specific-energy' }],
    source: 'European wood-fuels handbook',
    page,
    evaluate: (inputs) => ({
      'heating-value': woodNetJKg(moistureOf(inputs), numberOf(inputs, 'dry-value')),
    }),
  },
  {
    name: 'net-heating-value',
    room,
    summary: 'gross value less the heat of the water formed, 2.442 MJ/kg',
    inputs: [
      quantityInput('gross-value', 'specific-energy', { range: [5, 60, 'MJ/kg'] }),
      quantityInput('water-formed', 'fraction', { range: [0, 3, '1'] }),
    ],
    outputs: [{ name: 'heating-value', unit: 'MJ/kg', kind: 'specific-energy' }],
    source: 'heat of vaporisation at 25 °C',
    page,
    evaluate(inputs) {
      const net = netFromGrossJKg(numberOf(inputs, 'gross-value'), numberOf(inputs, 'water-formed'));
      if (net <= 0)
        refuse('calc.impossible', {
          input: 'water-formed',
          reason: 'so much water would take all the heat, give less of it',
        });
      return { 'heating-value': net };
    },
  },
  {
    name: 'stoichiometric-air',
    room,
    summary: 'kg air per kg fuel as fired; the analysis is of the dry fuel',
    inputs: [...MOISTURE, ...ANALYSIS],
    outputs: [{ name: 'air', ...ratio }],
    source: 'stoichiometry',
    page,
    evaluate(inputs) {
      const air = stoichiometricAir(analysisOf(inputs, ['carbon', 'hydrogen']), moistureOrDry(inputs));
      if (air <= 0)
        refuse('calc.impossible', { input: 'oxygen', reason: 'it burns without air, give less oxygen' });
      return { air };
    },
  },
  {
    name: 'combustion-water',
    room,
    summary: 'kg water leaving per kg fuel as fired: 8.937 H (1−M) + M',
    inputs: [...MOISTURE, ...ANALYSIS],
    outputs: [{ name: 'water', ...ratio }],
    source: 'stoichiometry',
    page,
    evaluate: (inputs) => ({
      water: combustionWater(analysisOf(inputs, ['hydrogen']).hydrogen, moistureOrDry(inputs)),
    }),
  },
  {
    name: 'combustion-air',
    room,
    summary: 'air drawn = λ · A_st · fuel',
    inputs: [
      quantityInput('fuel-rate', 'mass-flow', { range: [0, 100, 'kg/h'] }),
      quantityInput('stoichiometric-air', 'fraction', { range: [1, 20, '1'] }),
      quantityInput('excess-air-ratio', 'number', { range: [1, 30, '1'] }),
    ],
    outputs: [{ name: 'air-rate', unit: 'kg/h', kind: 'mass-flow' }],
    source: 'definition of the excess air ratio',
    page,
    evaluate: (inputs) => ({
      'air-rate':
        numberOf(inputs, 'fuel-rate') *
        numberOf(inputs, 'stoichiometric-air') *
        numberOf(inputs, 'excess-air-ratio'),
    }),
  },
  {
    name: 'fuel-properties',
    room,
    summary: 'defaults as fired; wood at 20 % dry basis; gross value for propane only',
    inputs: [wordInput('fuel', FUEL_IDS)],
    outputs: [
      { name: 'net-value', unit: 'MJ/kg', kind: 'specific-energy' },
      { name: 'gross-value', unit: 'MJ/kg', kind: 'specific-energy' },
      { name: 'water', ...ratio },
      { name: 'air', ...ratio },
    ],
    source: 'table of fuels, each with its own source',
    page,
    evaluate(inputs) {
      const fuel: Fuel = FUELS[textOf(inputs, 'fuel') as FuelId];
      return {
        'net-value': fuel.netJKg,
        'gross-value': fuel.grossJKg,
        water: fuel.waterRatio,
        air: fuel.airRatio,
      };
    },
  },
];
