import { quantityInput, wordInput } from '../../calc/describe.ts';
import { exactlyOne, maybeText, numberOf, textOf, without } from '../../calc/given.ts';
import type { CalcInputs, CalcSpec, InputSpec } from '../../calc/spec.ts';
import { positiveOf } from '../../heat/bodyInputs.ts';
import { SPECIES, type Species, WOOD_GRAVITY } from '../data/species.ts';
import { gravityAt, splitBurn, splitMassKg, woodDensityKgM3 } from '../split.ts';

const room = 'fire';
const page = 'fire.md';

const WOOD: readonly InputSpec[] = [
  quantityInput('dry-basis', 'fraction', { range: [0, 0.3, '1'] }),
  wordInput('species', SPECIES, { optional: true }),
  quantityInput('specific-gravity', 'number', { optional: true, remark: 'at that moisture' }),
  quantityInput('basic-gravity', 'number', { optional: true, remark: 'with gravity-at-12' }),
  quantityInput('gravity-at-12', 'number', { optional: true }),
];
const CHARRING = quantityInput('charring-rate', 'speed', {
  range: [0.3, 1.2, 'mm/min'],
  byDefault: [0.55, 'mm/min'],
});

/** Density of the wood meant. @throws CalcProblem unless its gravity is told in exactly one way */
function densityOf(inputs: CalcInputs): number {
  const dryBasis = numberOf(inputs, 'dry-basis');
  const species = maybeText(inputs, 'species');
  switch (exactlyOne(inputs, ['species', 'specific-gravity', 'basic-gravity'])) {
    case 'species':
      without(inputs, ['gravity-at-12'], 'the species tells it');
      return woodDensityKgM3(gravityAt(WOOD_GRAVITY[species as Species], dryBasis), dryBasis);
    case 'specific-gravity':
      without(inputs, ['gravity-at-12'], 'the specific gravity at that moisture stands for it');
      return woodDensityKgM3(positiveOf(inputs, 'specific-gravity'), dryBasis);
    default:
      return woodDensityKgM3(
        gravityAt(
          { basic: positiveOf(inputs, 'basic-gravity'), at12: positiveOf(inputs, 'gravity-at-12') },
          dryBasis,
        ),
        dryBasis,
      );
  }
}

export const woodCalcs: readonly CalcSpec[] = [
  {
    name: 'wood-specific-gravity',
    room,
    summary: 'oven-dry mass over green volume (basic) and over volume at 12 %',
    inputs: [wordInput('species', SPECIES)],
    outputs: [
      { name: 'basic', unit: '1', kind: 'number' },
      { name: 'at-12-percent', unit: '1', kind: 'number' },
    ],
    source: 'USDA Forest Service, FIA reference species table (NRS-38)',
    page,
    evaluate(inputs) {
      const { basic, at12 } = WOOD_GRAVITY[textOf(inputs, 'species') as Species];
      return { basic, 'at-12-percent': at12 };
    },
  },
  {
    name: 'wood-density',
    room,
    summary: 'from species, or both gravities, or the specific gravity at that moisture',
    inputs: WOOD,
    outputs: [{ name: 'density', unit: 'kg/m³', kind: 'density' }],
    source: 'Wood Handbook ch. 4',
    page,
    evaluate: (inputs) => ({ density: densityOf(inputs) }),
  },
  {
    name: 'split-mass',
    room,
    summary: 'ρ·π/4·d²·L, d the equivalent diameter',
    inputs: [
      ...WOOD,
      quantityInput('diameter', 'length', { range: [1, 40, 'cm'] }),
      quantityInput('length', 'length', { range: [5, 120, 'cm'] }),
    ],
    outputs: [{ name: 'mass', unit: 'kg', kind: 'mass' }],
    source: 'Wood Handbook ch. 4',
    page,
    evaluate: (inputs) => ({
      mass: splitMassKg(densityOf(inputs), numberOf(inputs, 'diameter'), numberOf(inputs, 'length')),
    }),
  },
  {
    name: 'split-burn-time',
    room,
    summary: 'half the least dimension over the charring rate',
    inputs: [quantityInput('thickness', 'length', { range: [1, 40, 'cm'] }), CHARRING],
    outputs: [{ name: 'time', unit: 'min', kind: 'time' }],
    source: 'EN 1995-1-2, charring rate of hardwood',
    page,
    evaluate: (inputs) => ({ time: numberOf(inputs, 'thickness') / 2 / numberOf(inputs, 'charring-rate') }),
  },
  {
    name: 'flaming-mass-flux',
    room,
    summary: 'charring rate times dry density',
    inputs: [quantityInput('dry-density', 'density', { range: [200, 1200, 'kg/m³'] }), CHARRING],
    outputs: [{ name: 'flux', unit: 'g/m²s', kind: 'mass-flux' }],
    source: 'EN 1995-1-2, charring rate of hardwood',
    page,
    evaluate: (inputs) => ({ flux: numberOf(inputs, 'dry-density') * numberOf(inputs, 'charring-rate') }),
  },
  {
    name: 'split-burn-power',
    room,
    summary: 'heat of one split at a time after it was laid on: flames, then char',
    inputs: [
      quantityInput('mass', 'mass', { range: [0.05, 20, 'kg'] }),
      quantityInput('heating-value', 'specific-energy', {
        range: [5, 35, 'MJ/kg'],
        byDefault: [15, 'MJ/kg'],
      }),
      quantityInput('efficiency', 'fraction', { range: [0.3, 1, '1'], byDefault: [0.85, '1'] }),
      quantityInput('volatile-share', 'fraction', { range: [0, 1, '1'], byDefault: [0.65, '1'] }),
      quantityInput('lag', 'time', { range: [0, 30, 'min'], byDefault: [2, 'min'] }),
      quantityInput('burn-time', 'time', { range: [1, 300, 'min'] }),
      quantityInput('char-time-constant', 'time', { range: [5, 180, 'min'], byDefault: [45, 'min'] }),
      quantityInput('time', 'time', { range: [0, 48, 'h'] }),
    ],
    outputs: [
      { name: 'power', unit: 'kW', kind: 'power' },
      { name: 'heat-released', unit: 'MJ', kind: 'energy' },
    ],
    source: 'gamma law of shape 3 and a fading char, assumption',
    page,
    evaluate(inputs) {
      const { powerW, releasedJ } = splitBurn(
        {
          heatJ:
            numberOf(inputs, 'mass') * numberOf(inputs, 'heating-value') * numberOf(inputs, 'efficiency'),
          volatileShare: numberOf(inputs, 'volatile-share'),
          lagS: numberOf(inputs, 'lag'),
          burnS: numberOf(inputs, 'burn-time'),
          charConstantS: numberOf(inputs, 'char-time-constant'),
        },
        numberOf(inputs, 'time'),
      );
      return { power: powerW, 'heat-released': releasedJ };
    },
  },
];
