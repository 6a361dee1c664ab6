/**
 * How long a sauce keeps in a clean jar in the fridge. A computed pH may shorten the time, it never approves a jar
 * for the shelf: keeping is always cold.
 */
import type { Said } from '@pitwright/model';
import type { ResolvedLine } from './formulaLines.ts';

export interface Keeping {
  readonly daysLow: number;
  readonly daysHigh: number;
  /** Why, and that it is cold only. */
  readonly said: readonly Said[];
  readonly isPerishable: boolean;
}

/** Computed pH above which a sauce is treated as perishable (judgement, under the 4.6 of 21 CFR 114.3). */
const PERISHABLE_PH = 4.2;
const QUALITY_PH = 4;

const DAIRY_OR_STOCK = new Set([
  'butter_salted',
  'butter_unsalted',
  'cream_heavy',
  'buttermilk',
  'coconut_milk',
  'stock_beef',
  'stock_chicken',
  'broth_beef_rts',
  'broth_chicken_rts',
]);
/** Fresh things that spoil a sauce unless they were boiled in it. */
const FRESH = new Set(['vegetable', 'fruit']);
const DRIED_FRUIT = new Set(['prune', 'raisin', 'date', 'tamarind', 'jam_generic', 'jam_apricot']);
const MEATS = /^(meat_|fish$)/;

const shortens = (line: ResolvedLine, isSimmered: boolean): boolean => {
  const { id, category } = line.ingredient;
  if (DAIRY_OR_STOCK.has(id) || MEATS.test(category)) return true;
  return !isSimmered && FRESH.has(category) && !DRIED_FRUIT.has(id);
};

const cold: Said = { id: 'sauce.keep-cold', level: 'information', source: '21 CFR 114.3' };

/**
 * @param ph computed, undefined where too much of the formula has an unknown pH
 * @param wasSimmered whether the line at this place was boiled in it, or went in afterwards
 */
export function keeping(
  lines: readonly ResolvedLine[],
  ph: number | undefined,
  wasSimmered: (index: number) => boolean,
): Keeping {
  const culprit = lines.find((line, i) => line.massG > 0 && shortens(line, wasSimmered(i)));
  const perishable = (why: Said): Keeping => ({
    daysLow: 3,
    daysHigh: 4,
    said: [why, cold],
    isPerishable: true,
  });
  if (culprit !== undefined)
    return perishable({
      id: 'sauce.keep-fresh-in-it',
      level: 'caution',
      source: 'common practice, no source',
      params: { name: culprit.ingredient.name },
    });
  // Not ≤: an unknown or broken pH must not pass.
  if (ph === undefined || !(ph <= PERISHABLE_PH))
    return perishable({
      id: ph === undefined ? 'sauce.keep-ph-unknown' : 'sauce.keep-not-sour',
      level: 'caution',
      source: '21 CFR 114.3',
      params: ph === undefined ? {} : { ph },
    });
  const isSour = ph <= QUALITY_PH && lines.some((_, i) => wasSimmered(i));
  return {
    daysLow: isSour ? 14 : 7,
    daysHigh: isSour ? 28 : 14,
    said: [{ id: isSour ? 'sauce.keep-sour' : 'sauce.keep-fairly-sour', params: { ph } }, cold],
    isPerishable: false,
  };
}
