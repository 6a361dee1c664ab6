import { standardPressurePa } from '../../air/atmosphere.ts';
import { quantityInput } from '../../calc/describe.ts';
import { maybeMix, maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcInputs, CalcSpec, MixLine } from '../../calc/spec.ts';
import { gramsOfVolume, ingredientOf } from '../../food/catalogueInput.ts';
import { batchPh, titratableAcidity } from '../acidity.ts';
import { baseSwap } from '../baseSwap.ts';
import { type Batch, type BatchLine, batchMassG, batchOf, saltG, sugarsG } from '../batch.ts';
import { boilingTemperatureC } from '../boiling.ts';
import { evaporate } from '../evaporation.ts';
import { batchDensity, totalSolidsG, waterActivityOf } from '../solution.ts';
import { energyPer100g, sweetness } from '../taste.ts';
import { page, room } from './room.ts';

const SEA_LEVEL_PA = 101325;
const KCAL_J = 4184;

const linesOf = (mix: readonly MixLine[]): BatchLine[] =>
  mix.map(({ ingredient, massG }) => ({ ingredient: ingredientOf('mix', ingredient), massG }));

function mixOf(inputs: CalcInputs): readonly MixLine[] {
  return maybeMix(inputs, 'mix') ?? refuse('calc.missing', { input: 'mix' });
}

/** The batch once that water is off. @throws CalcProblem where there is not so much water */
function simmered(raw: Batch, evaporatedG: number): Batch {
  if (evaporatedG > 0 && !(evaporatedG < raw.waterG))
    refuse('sauce.more-evaporated-than-water', {
      input: 'evaporated',
      water: { kind: 'mass', si: raw.waterG / 1000 },
    });
  return evaporate(raw, evaporatedG);
}

function pressureOf(inputs: CalcInputs): number {
  const altitudeM = maybeNumber(inputs, 'altitude');
  const pressurePa = numberOf(inputs, 'pressure');
  if (altitudeM === undefined) return pressurePa;
  if (pressurePa !== SEA_LEVEL_PA)
    refuse('calc.more-than-one-of', {
      input: 'altitude',
      given: 'pressure|altitude',
      names: 'pressure|altitude',
    });
  return standardPressurePa(altitudeM);
}

const mixture: CalcSpec = {
  name: 'mixture',
  room,
  summary:
    'a batch from the catalogue; evaporated is the water driven off, acetic acid and ethanol follow it by their own law; concentrations are of the finished mass',
  inputs: [
    { type: 'mix', name: 'mix' },
    quantityInput('evaporated', 'mass', { range: [0, 100, 'kg'], byDefault: [0, 'g'] }),
    quantityInput('fructose-factor', 'number', { range: [0.5, 2, '1'], byDefault: [1.2, '1'] }),
    quantityInput('glucose-factor', 'number', { range: [0.3, 1, '1'], byDefault: [0.7, '1'] }),
    quantityInput('pressure', 'pressure', { range: [50, 110, 'kPa'], byDefault: [101.325, 'kPa'] }),
    quantityInput('altitude', 'length', { range: [-500, 5000, 'm'], optional: true }),
  ],
  outputs: [
    { name: 'mass', unit: 'g', kind: 'mass' },
    { name: 'water', unit: 'g', kind: 'mass' },
    { name: 'sugars', unit: 'g', kind: 'mass' },
    { name: 'acetic', unit: 'g', kind: 'mass' },
    { name: 'ph', unit: '1', kind: 'number' },
    { name: 'titratable-acidity', unit: 'g/100 g', kind: 'fraction' },
    { name: 'water-activity', unit: '1', kind: 'number' },
    { name: 'sodium', unit: 'mg/100 g', kind: 'fraction' },
    { name: 'salt', unit: 'g/100 g', kind: 'fraction' },
    { name: 'total-solids', unit: 'g/100 g', kind: 'fraction' },
    { name: 'sweetness', unit: 'g/100 g', kind: 'fraction' },
    { name: 'density', unit: 'kg/m³', kind: 'density' },
    { name: 'volume', unit: 'mL', kind: 'volume' },
    { name: 'energy', unit: 'kcal/100 g', kind: 'food-energy' },
    { name: 'boiling-temperature', unit: '°C', kind: 'temperature' },
    { name: 'acetic-retention', unit: '1', kind: 'number' },
  ],
  source: 'mass balance by component over the catalogue; charge balance; Ross; Choi–Okos densities',
  page,
  evaluate(inputs, wanted) {
    const raw = batchOf(linesOf(mixOf(inputs)));
    const b = simmered(raw, 1000 * numberOf(inputs, 'evaporated'));
    const pressurePa = pressureOf(inputs);
    const massG = batchMassG(b);
    const hasWater = b.waterG > 0;
    const activityAt = hasWater ? waterActivityOf(b) : undefined;
    const factors = {
      fructose: numberOf(inputs, 'fructose-factor'),
      glucose: numberOf(inputs, 'glucose-factor'),
    };
    return {
      mass: massG / 1000,
      water: b.waterG / 1000,
      sugars: sugarsG(b) / 1000,
      acetic: b.acidsG.acetic / 1000,
      ph: hasWater ? batchPh(b) : undefined,
      'titratable-acidity': hasWater ? titratableAcidity(b) / 100 : undefined,
      'water-activity': activityAt?.(25),
      sodium: b.sodiumG / massG,
      salt: saltG(b) / massG,
      'total-solids': totalSolidsG(b) / massG,
      sweetness: sweetness(b, factors) / 100,
      density: batchDensity(b),
      volume: massG / 1000 / batchDensity(b),
      energy: energyPer100g(b) * KCAL_J * 10,
      'boiling-temperature':
        activityAt !== undefined && (wanted === undefined || wanted.includes('boiling-temperature'))
          ? boilingTemperatureC(activityAt, pressurePa)
          : undefined,
      'acetic-retention': raw.acidsG.acetic > 0 ? b.acidsG.acetic / raw.acidsG.acetic : undefined,
    };
  },
};

const swap: CalcSpec = {
  name: 'base-swap',
  room,
  summary:
    'replace one liquid by another of equal volume, boil down to the reference mass, restore sweetness, titratable acidity and salt: grams to add, negative to take out; acid lost in the simmer is left out',
  inputs: [
    { type: 'mix', name: 'mix' },
    { type: 'text', name: 'replace' },
    { type: 'text', name: 'with' },
    quantityInput('evaporated', 'mass', { range: [0, 100, 'kg'], byDefault: [0, 'g'] }),
  ],
  outputs: [
    { name: 'brown-sugar', unit: 'g', kind: 'mass' },
    { name: 'vinegar', unit: 'g', kind: 'mass' },
    { name: 'salt', unit: 'g', kind: 'mass' },
  ],
  source: 'mass balance and charge balance, three linear unknowns',
  page,
  evaluate(inputs) {
    const mix = mixOf(inputs);
    const replace = textOf(inputs, 'replace');
    const instead = textOf(inputs, 'with');
    const replaced = mix.find((line) => line.ingredient === replace);
    ingredientOf('replace', replace);
    if (replaced === undefined) return refuse('sauce.not-in-the-mix', { input: 'replace', text: replace });
    simmered(batchOf(linesOf(mix)), 1000 * numberOf(inputs, 'evaporated'));
    const volumeM3 = replaced.massG / (ingredientOf('replace', replace).densityGPerMl * 1e6);
    const base: BatchLine = {
      ingredient: ingredientOf('with', instead),
      massG: gramsOfVolume('with', instead, volumeM3),
    };
    const kept = linesOf(mix.filter((line) => line !== replaced));
    const change = baseSwap(batchOf(linesOf(mix)), batchOf([...kept, base]));
    return {
      'brown-sugar': change.sugarG / 1000,
      vinegar: change.vinegarG / 1000,
      salt: change.saltG / 1000,
    };
  },
};

export const mixtureCalcs: readonly CalcSpec[] = [mixture, swap];
