/** Units and vessels of recipes in US, UK, Australian and metric wording. */

export type MeasureSystem = 'us' | 'uk' | 'au' | 'metric';

/** What one of a unit is. */
export type Unit =
  | { readonly kind: 'mass'; readonly id: string; readonly g: number }
  | { readonly kind: 'volume'; readonly id: string; readonly ml: number }
  /** `oz` alone: weight, or volume for what is poured. */
  | { readonly kind: 'ounce'; readonly id: 'oz'; readonly g: number; readonly ml: number }
  /** Pinch, dash, handful, knob: a habit, not a measure. */
  | { readonly kind: 'habit'; readonly id: string; readonly ml: number }
  | { readonly kind: 'vessel'; readonly id: string }
  | { readonly kind: 'piece'; readonly id: string };

const OUNCE_G = 28.349523125;
const POUND_G = 453.59237;

/** Millilitres. @source US customary: 231 in³ gallon; UK: 1985 Weights and Measures Act; Australia: 20 mL tablespoon, 250 mL cup */
const VOLUMES: Readonly<Record<MeasureSystem, Readonly<Record<string, number>>>> = {
  us: {
    tsp: 4.92892159375,
    tbsp: 14.78676478125,
    floz: 29.5735295625,
    cup: 236.5882365,
    pint: 473.176473,
    quart: 946.352946,
    gallon: 3785.411784,
  },
  uk: {
    tsp: 5,
    tbsp: 15,
    floz: 28.4130625,
    cup: 250,
    pint: 568.26125,
    quart: 1136.5225,
    gallon: 4546.09,
  },
  au: { tsp: 5, tbsp: 20, floz: 28.4130625, cup: 250, pint: 568.26125, quart: 1136.5225, gallon: 4546.09 },
  metric: { tsp: 5, tbsp: 15, floz: 29.5735295625, cup: 250, pint: 500, quart: 1000, gallon: 4000 },
};

const METRIC_ML: Readonly<Record<string, number>> = { ml: 1, cl: 10, dl: 100, l: 1000 };
const MASS_G: Readonly<Record<string, number>> = { mg: 0.001, g: 1, kg: 1000, lb: POUND_G };
/** Judgement: a pinch is a sixteenth of a teaspoon, a dash an eighth, a splash a teaspoon, a glug a tablespoon. */
const HABIT_ML: Readonly<Record<string, number>> = {
  pinch: 0.3,
  dash: 0.6,
  splash: 5,
  glug: 15,
  drizzle: 10,
};

/** Spellings, longest first where one begins another; `T` and `t` are told apart by their case. */
const SPELLINGS: readonly [RegExp, string][] = [
  [/^(?:fl(?:uid)?\.?\s*oz\.?|fl(?:uid)?\.?\s*ounces?|floz)(?![a-z])/i, 'floz'],
  [/^(?:millilit(?:er|re)s?|mls?)\b\.?/i, 'ml'],
  [/^(?:centilit(?:er|re)s?|cl)\b\.?/i, 'cl'],
  [/^(?:decilit(?:er|re)s?|dl)\b\.?/i, 'dl'],
  [/^(?:lit(?:er|re)s?|ltrs?|l)\b\.?/i, 'l'],
  [/^(?:milligrams?|mg)\b\.?/i, 'mg'],
  [/^(?:kilograms?|kilos?|kgs?)\b\.?/i, 'kg'],
  [/^(?:grammes?|grams?|gms?|gr?)\b\.?/i, 'g'],
  [/^(?:pounds?|lbs?)\b\.?/i, 'lb'],
  [/^#/, 'lb'],
  [/^(?:ounces?|ozs?)\b\.?/i, 'oz'],
  [/^(?:tablespoonfuls?|tablespoons?|tablsp|tbsps?|tbs|tbls?)\b\.?/i, 'tbsp'],
  [/^T\b\.?/, 'tbsp'],
  [/^(?:teaspoonfuls?|teaspoons?|tsps?|tspn)\b\.?/i, 'tsp'],
  [/^t\b\.?/, 'tsp'],
  [/^(?:cupfuls?|cups?)\b\.?/i, 'cup'],
  [/^[cC]\b\.?/, 'cup'],
  [/^(?:pints?|pts?)\b\.?/i, 'pint'],
  [/^(?:quarts?|qts?)\b\.?/i, 'quart'],
  [/^(?:gallons?|gals?)\b\.?/i, 'gallon'],
  [/^(?:sticks?)\b/i, 'stick'],
  [/^(?:pinch(?:es)?)\b/i, 'pinch'],
  [/^(?:dash(?:es)?)\b/i, 'dash'],
  [/^(?:splash(?:es)?)\b/i, 'splash'],
  [/^(?:glugs?)\b/i, 'glug'],
  [/^(?:drizzles?)\b/i, 'drizzle'],
  [/^(?:bottles?)\b/i, 'bottle'],
  [/^(?:cans?|tins?)\b/i, 'can'],
  [/^(?:jars?)\b/i, 'jar'],
  [/^(?:packets?|packs?|packages?|pkgs?|sachets?|envelopes?)\b\.?/i, 'packet'],
  [/^(?:tubes?)\b/i, 'tube'],
  [/^(?:boxe?s?|cartons?)\b/i, 'box'],
  [/^(?:cloves?)\b/i, 'clove'],
  [/^(?:slices?)\b/i, 'slice'],
  [/^(?:sprigs?)\b/i, 'sprig'],
  [/^(?:bunch(?:es)?)\b/i, 'bunch'],
  [/^(?:handfuls?)\b/i, 'handful'],
  [/^(?:knobs?)\b/i, 'knob'],
  [/^(?:heads?)\b/i, 'head'],
];

const VESSELS = new Set(['bottle', 'can', 'jar', 'packet', 'tube', 'box']);
const PIECES = new Set(['clove', 'slice', 'sprig', 'bunch', 'handful', 'knob', 'head', 'stick']);

export interface UnitRead {
  readonly unit: Unit;
  readonly rest: string;
  /** A single letter, of which the case decides. */
  readonly isLetter: boolean;
}

function unitOf(id: string, system: MeasureSystem): Unit {
  if (id === 'oz') return { kind: 'ounce', id, g: OUNCE_G, ml: VOLUMES[system].floz! };
  if (MASS_G[id] !== undefined) return { kind: 'mass', id, g: MASS_G[id] };
  if (METRIC_ML[id] !== undefined) return { kind: 'volume', id, ml: METRIC_ML[id] };
  if (HABIT_ML[id] !== undefined) return { kind: 'habit', id, ml: HABIT_ML[id] };
  if (VESSELS.has(id)) return { kind: 'vessel', id };
  if (PIECES.has(id)) return { kind: 'piece', id };
  return { kind: 'volume', id, ml: VOLUMES[system][id]! };
}

/** The unit that the text begins with; undefined where it begins with none. */
export function readUnit(text: string, system: MeasureSystem): UnitRead | undefined {
  for (const [spelling, id] of SPELLINGS) {
    const found = spelling.exec(text);
    if (found === null) continue;
    const rest = text.slice(found[0].length);
    return { unit: unitOf(id, system), rest: rest.trim(), isLetter: /^[TtcC]\.?$/.test(found[0]) };
  }
  return undefined;
}

/** Units whose size depends on whose recipe it is, with how far apart US and others are. */
export const isSystemUnit = (unit: Unit): boolean =>
  unit.kind === 'volume' && METRIC_ML[unit.id] === undefined && unit.id !== 'tsp';
