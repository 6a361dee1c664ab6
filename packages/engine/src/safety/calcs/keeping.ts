import { RULES, type RulesProfile } from '@pitwright/model';
import { quantityInput, wordInput } from '../../calc/describe.ts';
import { exactlyOne, maybeMix, maybeNumber, numberOf, textOf } from '../../calc/given.ts';
import { refuse } from '../../calc/problem.ts';
import type { CalcSpec } from '../../calc/spec.ts';
import { ingredientOf } from '../../food/catalogueInput.ts';
import { ALLERGEN_LAWS, type AllergenLaw, allergensOf } from '../../sauce/allergens.ts';
import { acidityClass } from '../acidity.ts';
import { hotHoldVerdict, leftoversVerdict, outVerdict, reheatVerdict } from '../keeping.ts';
import { THAW_METHODS, type ThawMethod, thawTimeS } from '../thaw.ts';

const room = 'safety';
const page = 'safety.md';

const allergens: CalcSpec = {
  name: 'allergens',
  room,
  summary: 'of the catalogue row or of all rows of a mix; the word none where nothing is to be declared',
  inputs: [
    { type: 'mix', name: 'mix', optional: true },
    { type: 'text', name: 'ingredient', optional: true },
    wordInput('law', ALLERGEN_LAWS),
  ],
  outputs: [{ name: 'allergens', unit: 'set', kind: 'set' }],
  source: 'US nine; Regulation (EU) 1169/2011, Annex II; mapping from common labels',
  page,
  evaluate(inputs) {
    const given = exactlyOne(inputs, ['mix', 'ingredient']);
    const ids =
      given === 'mix'
        ? maybeMix(inputs, 'mix')!.map((line) => line.ingredient)
        : [ingredientOf('ingredient', textOf(inputs, 'ingredient')).id];
    const rows = ids.map((id) => ingredientOf(given, id));
    const found = allergensOf(rows)[textOf(inputs, 'law') as AllergenLaw];
    return { allergens: found.length > 0 ? found : ['none'] };
  },
};

const keeping: CalcSpec = {
  name: 'keeping-verdict',
  room,
  summary: 'out of heat and cold, held hot, kept as leftovers, reheated',
  inputs: [
    wordInput('case', ['out', 'hot-hold', 'leftovers', 'reheat']),
    wordInput('profile', RULES, { byDefault: 'home-us' }),
    quantityInput('temperature', 'temperature', { range: [-30, 150, '°C'], optional: true }),
    quantityInput('air-temperature', 'temperature', { range: [-30, 60, '°C'], optional: true }),
    quantityInput('time', 'time', { optional: true }),
    wordInput('roast-table', ['yes', 'no'], { byDefault: 'no' }),
  ],
  outputs: [{ name: 'verdict', unit: 'word', kind: 'word' }],
  source: 'USDA FSIS; FDA Food Code 3-501.16, 3-403.11; UK FSA',
  page,
  evaluate(inputs) {
    const profile = textOf(inputs, 'profile') as RulesProfile;
    const timeS = maybeNumber(inputs, 'time');
    const airC = maybeNumber(inputs, 'air-temperature');
    const missing = (input: string): never => refuse('calc.missing', { input });
    switch (textOf(inputs, 'case')) {
      case 'out':
        return { verdict: outVerdict(numberOf(inputs, 'time'), airC) };
      case 'hot-hold': {
        const verdict = hotHoldVerdict({
          profile,
          coldestC: numberOf(inputs, 'temperature'),
          byRoastTable: textOf(inputs, 'roast-table') === 'yes',
          timeS,
          airC,
        });
        return { verdict: verdict ?? missing('time') };
      }
      case 'leftovers': {
        const temperatureC = maybeNumber(inputs, 'temperature');
        const verdict = leftoversVerdict(temperatureC, timeS);
        return { verdict: verdict ?? missing(temperatureC === undefined ? 'temperature' : 'time') };
      }
      default:
        return { verdict: reheatVerdict(profile, numberOf(inputs, 'temperature'), timeS) };
    }
  },
};

const thaw: CalcSpec = {
  name: 'thaw-time',
  room,
  summary: 'refrigerator 24 h per 4–5 lb (low and high), cold water 30 min per lb',
  inputs: [wordInput('method', THAW_METHODS), quantityInput('mass', 'mass', { range: [0.05, 30, 'kg'] })],
  outputs: [
    { name: 'low', unit: 'h', kind: 'time' },
    { name: 'high', unit: 'h', kind: 'time' },
  ],
  source: 'USDA thaw rule',
  page,
  evaluate: (inputs) => ({ ...thawTimeS(textOf(inputs, 'method') as ThawMethod, numberOf(inputs, 'mass')) }),
};

const acidity: CalcSpec = {
  name: 'acidity-class',
  room,
  summary: 'acid food, low-acid, low water activity, or a tomato product that is let off; always kept cold',
  inputs: [
    quantityInput('ph', 'number', { range: [0, 14, '1'] }),
    quantityInput('water-activity', 'fraction', { range: [0, 1, '1'] }),
    wordInput('tomato', ['yes', 'no'], { byDefault: 'no' }),
  ],
  outputs: [
    { name: 'class', unit: 'word', kind: 'word' },
    { name: 'shelf-stable', unit: 'word', kind: 'word' },
    { name: 'keeping', unit: 'word', kind: 'word' },
  ],
  source: '21 CFR 114.3',
  page,
  evaluate: (inputs) => ({
    class: acidityClass(
      numberOf(inputs, 'ph'),
      numberOf(inputs, 'water-activity'),
      textOf(inputs, 'tomato') === 'yes',
    ),
    // A computed pH may refuse the cupboard, never grant it.
    'shelf-stable': 'no',
    keeping: 'cold',
  }),
};

export const keepingCalcs: readonly CalcSpec[] = [allergens, keeping, thaw, acidity];
