/** An amount of a known ingredient in grams, with what its unit leaves open. */
import type { Ingredient } from '../../food/data/ingredients.ts';
import { pieceMass, SIZE_FACTOR } from './pieces.ts';
import type { Choice, Doubt } from './types.ts';
import type { Part } from './words.ts';

export interface Grams {
  readonly g: number;
  readonly lowG: number;
  readonly highG: number;
}

export type Weighed =
  | { readonly grams: Grams; readonly doubts: readonly Doubt[] }
  | { readonly grams: undefined; readonly doubts: readonly Doubt[] };

const POURED = new Set(['syrup', 'liquid', 'juice', 'soft_drink', 'vinegar', 'condiment', 'tomato', 'fat']);
const SPOONED = new Set([
  'tomato_paste',
  'tomato_sun_dried',
  'tomato_powder',
  'tomato_raw',
  'peanut_butter',
  'tahini',
  'capers',
  'pickles_dill',
  'miso',
  'anchovy_canned',
  'butter_salted',
  'butter_unsalted',
  'lard',
  'beef_tallow',
  'chicken_fat',
  'duck_fat',
  'chipotle_in_adobo',
]);
/** What is sold by volume in bottle and can. */
const DRINKS = new Set(['liquid', 'juice', 'soft_drink', 'vinegar']);

/** Poured from a jug: an ounce of it may be weight or volume. */
const isPoured = (i: Ingredient): boolean => POURED.has(i.category) && !SPOONED.has(i.id);

const mass = (g: number) => ({ kind: 'mass', si: g / 1000 }) as const;
const scaled = (part: Part, perUnitG: number): Grams => ({
  g: ((part.amount.low + part.amount.high) / 2) * perUnitG,
  lowG: part.amount.low * perUnitG,
  highG: part.amount.high * perUnitG,
});

function ofMeasure(part: Part, i: Ingredient, byLabel: boolean): Weighed {
  const unit = part.unit!;
  const density = i.densityGPerMl;
  if (unit.kind === 'mass') return { grams: scaled(part, unit.g), doubts: [] };
  if (unit.kind === 'volume') return { grams: scaled(part, unit.ml * density), doubts: [] };
  if (unit.kind !== 'ounce') return { grams: undefined, doubts: [] };
  const asWeight = scaled(part, unit.g);
  const asVolume = scaled(part, unit.ml * density);
  if (!isPoured(i)) return { grams: asWeight, doubts: [] };
  const choices: Choice[] = [
    { reading: 'as-weight', massG: asWeight.g },
    { reading: 'as-volume', massG: asVolume.g },
  ];
  const params = { name: i.name, weight: mass(asWeight.g), volume: mass(asVolume.g) };
  if (!byLabel)
    return { grams: undefined, doubts: [{ said: { id: 'sauce.paste-ounce', params }, asks: true, choices }] };
  const isDrink = DRINKS.has(i.category);
  const id = isDrink ? 'sauce.paste-label-volume' : 'sauce.paste-label-weight';
  return { grams: isDrink ? asVolume : asWeight, doubts: [{ said: { id, params }, asks: false, choices }] };
}

function ofVessel(part: Part, size: Part | undefined, i: Ingredient): Weighed {
  const vessel = part.unit!.id;
  const known = pieceMass(vessel, i.id);
  if (size === undefined && known !== undefined) return ofPieces(part, i, vessel, []);
  if (size === undefined)
    return {
      grams: undefined,
      doubts: [
        { said: { id: 'sauce.paste-how-large', params: { vessel, name: i.name } }, asks: true, choices: [] },
      ],
    };
  const one = ofMeasure(size, i, true);
  if (one.grams === undefined) return one;
  const { low, high } = part.amount;
  return {
    grams: { g: ((low + high) / 2) * one.grams.g, lowG: low * one.grams.lowG, highG: high * one.grams.highG },
    doubts: one.doubts.map((doubt) => ({
      ...doubt,
      choices: doubt.choices.map((choice) => ({ ...choice, massG: ((low + high) / 2) * choice.massG! })),
    })),
  };
}

function ofPieces(part: Part, i: Ingredient, unit: string | undefined, manner: readonly string[]): Weighed {
  const one = pieceMass(unit, i.id);
  if (one === undefined)
    return {
      grams: undefined,
      doubts: [
        {
          said: { id: 'sauce.paste-no-piece', params: { name: i.name, unit: unit ?? '' } },
          asks: true,
          choices: [],
        },
      ],
    };
  const size = manner.map((word) => SIZE_FACTOR[word]).find((factor) => factor !== undefined) ?? 1;
  const { low, high } = part.amount;
  const grams = {
    g: ((low + high) / 2) * one.g * size,
    lowG: low * one.lowG * (size === 1 ? 1 : Math.min(1, size)),
    highG: high * one.highG * (size === 1 ? 1 : Math.max(1, size)),
  };
  if (one.lowG === one.highG && size === 1) return { grams, doubts: [] };
  const params = { name: i.name, mass: mass(one.g * size), low: mass(one.lowG), high: mass(one.highG) };
  return { grams, doubts: [{ said: { id: 'sauce.paste-piece', params }, asks: false, choices: [] }] };
}

/** How full a heaped or a scant spoon is (judgement). */
const FILL: Readonly<Record<string, number>> = {
  heaped: 1.4,
  heaping: 1.4,
  rounded: 1.25,
  generous: 1.1,
  scant: 0.9,
  good: 1.1,
};

/** Grams of one part of a line. */
export function gramsOf(
  part: Part,
  size: Part | undefined,
  ingredient: Ingredient,
  manner: readonly string[],
): Weighed {
  const { unit } = part;
  if (unit === undefined) return ofPieces(part, ingredient, undefined, manner);
  switch (unit.kind) {
    case 'vessel':
      return ofVessel(part, size, ingredient);
    case 'piece':
      return ofPieces(part, ingredient, unit.id, manner);
    case 'habit': {
      const grams = scaled(part, unit.ml * ingredient.densityGPerMl);
      const params = { name: ingredient.name, unit: unit.id, mass: mass(grams.g) };
      return {
        grams: { g: grams.g, lowG: grams.lowG / 2, highG: grams.highG * 2 },
        doubts: [{ said: { id: 'sauce.paste-habit', params }, asks: false, choices: [] }],
      };
    }
    default: {
      const read = ofMeasure(part, ingredient, false);
      const fill = manner.map((word) => FILL[word]).find((factor) => factor !== undefined);
      if (fill === undefined || unit.kind !== 'volume' || read.grams === undefined) return read;
      const { grams } = read;
      const params = { fill: Math.round(100 * (fill - 1)), mass: mass(grams.g * fill) };
      return {
        grams: {
          g: grams.g * fill,
          lowG: grams.lowG * Math.min(1, fill),
          highG: grams.highG * Math.max(1, fill * 1.15),
        },
        doubts: [...read.doubts, { said: { id: 'sauce.paste-fill', params }, asks: false, choices: [] }],
      };
    }
  }
}
