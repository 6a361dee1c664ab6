import { quantityInput, wordInput } from '../calc/describe.ts';
import { exactlyOne, numberOf, textOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcSpec } from '../calc/spec.ts';
import { gramsOfVolume, ingredientOf } from './catalogueInput.ts';
import {
  ACROSS_FIBRES,
  COMPONENTS,
  type Composition,
  conductivityWmK,
  densityKgM3,
  specificHeatJkgK,
} from './choiOkos.ts';
import { saltWaterActivity, sucroseWaterActivity } from './waterActivity.ts';

const room = 'food';
const page = 'food.md';

/** Fractions that add to this much are a composition with its rounding; others are a mistake. */
const LEAST_SUM = 0.97;
const MOST_SUM = 1.03;
/** Slack for the sum of written decimals. */
const ROUNDING = 1e-9;

const choiOkos: CalcSpec = {
  name: 'choi-okos',
  room,
  summary:
    'properties of a food from its composition; fractions adding to 0.97–1.03 are divided by their sum',
  inputs: [
    ...COMPONENTS.map((component) =>
      quantityInput(component, 'fraction', { range: [0, 1, '1'], byDefault: [0, '1'] }),
    ),
    quantityInput('temperature', 'temperature', { range: [0, 150, '°C'] }),
    wordInput('direction', ['along', 'across'], { byDefault: 'along' }),
  ],
  outputs: [
    { name: 'conductivity', unit: 'W/mK', kind: 'conductivity' },
    { name: 'density', unit: 'kg/m³', kind: 'density' },
    { name: 'specific-heat', unit: 'kJ/kgK', kind: 'specific-heat' },
    { name: 'diffusivity', unit: 'mm²/s', kind: 'diffusivity' },
  ],
  source: 'Choi & Okos 1986',
  page,
  evaluate(inputs) {
    const temperatureC = numberOf(inputs, 'temperature');
    const sum = COMPONENTS.reduce((total, component) => total + numberOf(inputs, component), 0);
    if (!(sum >= LEAST_SUM - ROUNDING && sum <= MOST_SUM + ROUNDING))
      refuse('calc.fractions-do-not-add', { input: COMPONENTS.join('|'), sum });
    const food = Object.fromEntries(
      COMPONENTS.map((component) => [component, numberOf(inputs, component) / sum]),
    ) as unknown as Composition;
    const k =
      conductivityWmK(food, temperatureC) * (textOf(inputs, 'direction') === 'across' ? ACROSS_FIBRES : 1);
    const rho = densityKgM3(food, temperatureC);
    const c = specificHeatJkgK(food, temperatureC);
    return { conductivity: k, density: rho, 'specific-heat': c, diffusivity: k / (rho * c) };
  },
};

const waterActivity: CalcSpec = {
  name: 'water-activity',
  room,
  summary: 'over a sucrose solution, or over salt water; give one',
  inputs: [
    quantityInput('sucrose', 'fraction', { range: [0, 0.85, '1'], optional: true }),
    quantityInput('salt-molality', 'molality', { range: [0, 6.2, 'mol/kg'], optional: true }),
    quantityInput('temperature', 'temperature', { range: [0, 120, '°C'], byDefault: [25, '°C'] }),
  ],
  outputs: [{ name: 'water-activity', unit: '1', kind: 'number' }],
  source: 'Starzak & Peacock (sucrose), Pitzer with Silvester & Pitzer 1977 (sodium chloride)',
  page,
  evaluate(inputs) {
    const given = exactlyOne(inputs, ['sucrose', 'salt-molality']);
    return {
      'water-activity':
        given === 'sucrose'
          ? sucroseWaterActivity(numberOf(inputs, given), numberOf(inputs, 'temperature'))
          : saltWaterActivity(numberOf(inputs, given), numberOf(inputs, 'temperature')),
    };
  },
};

const ingredient: CalcSpec = {
  name: 'ingredient',
  room,
  summary: 'one row of the catalogue, per 100 g',
  inputs: [{ type: 'text', name: 'ingredient' }],
  outputs: [
    { name: 'water', unit: 'g/100 g', kind: 'fraction' },
    { name: 'protein', unit: 'g/100 g', kind: 'fraction' },
    { name: 'fat', unit: 'g/100 g', kind: 'fraction' },
    { name: 'carbohydrate', unit: 'g/100 g', kind: 'fraction' },
    { name: 'sugars', unit: 'g/100 g', kind: 'fraction' },
    { name: 'ash', unit: 'g/100 g', kind: 'fraction' },
    { name: 'sodium', unit: 'mg/100 g', kind: 'fraction' },
    { name: 'ph', unit: '1', kind: 'number' },
    { name: 'density', unit: 'g/mL', kind: 'density' },
    { name: 'energy', unit: 'kcal/100 g', kind: 'food-energy' },
  ],
  source: 'catalogue of ingredients, each row with its own source',
  page,
  evaluate(inputs) {
    const row = ingredientOf('ingredient', textOf(inputs, 'ingredient'));
    const { per100g } = row;
    const { sugarsG } = per100g;
    return {
      water: per100g.waterG / 100,
      protein: per100g.proteinG / 100,
      fat: per100g.fatG / 100,
      carbohydrate: per100g.carbohydrateG / 100,
      sugars: sugarsG === undefined ? undefined : sugarsG / 100,
      ash: per100g.ashG / 100,
      sodium: per100g.sodiumMg * 1e-5,
      ph: row.ph,
      density: row.densityGPerMl * 1000,
      energy: per100g.energyKcal * 4184 * 10,
    };
  },
};

const volumeToMass: CalcSpec = {
  name: 'volume-to-mass',
  room,
  summary: 'by the density of the catalogue; cup, tbsp, tsp and fl oz are US customary',
  inputs: [{ type: 'text', name: 'ingredient' }, quantityInput('volume', 'volume')],
  outputs: [{ name: 'mass', unit: 'g', kind: 'mass' }],
  source: 'catalogue of ingredients, density column',
  page,
  evaluate: (inputs) => ({
    mass: gramsOfVolume('ingredient', textOf(inputs, 'ingredient'), numberOf(inputs, 'volume')) / 1000,
  }),
};

export const foodCalcs: readonly CalcSpec[] = [choiOkos, waterActivity, ingredient, volumeToMass];
