/**
 * What salt the eater gets: grams in a kilogram as served, as a range, and the chance of each word. What goes on by hand
 * is told as its usual span; the parts are taken as independent, their sum as lognormal.
 */

import type { Range, Said } from '@pitwright/model';
import { NORMAL_P90_SD } from '../numeric/constants.ts';
import { exp, log } from '../numeric/elementary.ts';
import { erfc } from '../numeric/erfc.ts';

/** Weakest first. */
export const SALT_WORDS = ['mild', 'seasoned', 'salty'] as const;
export type SaltWord = (typeof SALT_WORDS)[number];
/** Where the second and the third word begin [g per kg as served]. @source judgement: 8 to 15 is called usual */
const BEGINS = [8, 15] as const;

const SALT_PARTS = ['rub', 'brine', 'spritz', 'glaze', 'solution'] as const;
export type SaltPart = (typeof SALT_PARTS)[number];

/** One source of salt of one piece: what of it is eaten [g], 10 to 90 %. */
export interface SaltFrom {
  readonly part: SaltPart;
  readonly lowG: number;
  readonly highG: number;
}

export interface SaltForecast {
  /** [g per kg as served] */
  readonly perKg: Range;
  readonly words: Readonly<Partial<Record<SaltWord, number>>>;
  /** Shares of the middle, the largest first; sums to 1. */
  readonly parts: readonly { readonly part: SaltPart; readonly share: number }[];
}

/**
 * @param edibleKg served of the whole piece, its bone taken off; ∞ and 0 are refused
 * @returns undefined where nothing salts it
 * @throws RangeError where nothing is served
 */
export function saltForecast(sources: readonly SaltFrom[], edibleKg: Range): SaltForecast | undefined {
  if (!(edibleKg.p10 > 0 && edibleKg.p90 < Infinity))
    throw new RangeError(`edibleKg must be finite and above 0, got ${edibleKg.p10} to ${edibleKg.p90}`);
  const salting = sources
    .filter(({ lowG, highG }) => lowG > 0 && highG >= lowG)
    .map(({ part, lowG, highG }) => ({
      part,
      middleG: Math.sqrt(lowG * highG),
      sdLn: log(highG / lowG) / (2 * NORMAL_P90_SD),
    }));
  const totalG = salting.reduce((sum, { middleG }) => sum + middleG, 0);
  if (!(totalG > 0)) return undefined;
  const ofParts =
    salting.reduce((sum, { middleG, sdLn }) => sum + middleG * sdLn * middleG * sdLn, 0) / (totalG * totalG);
  const ofMeat = log(edibleKg.p90 / edibleKg.p10) / (2 * NORMAL_P90_SD);
  const sdLn = Math.sqrt(ofParts + ofMeat * ofMeat);
  const p50 = totalG / Math.sqrt(edibleKg.p10 * edibleKg.p90);
  const factor = factorAt90(sdLn);
  return {
    perKg: { p10: p50 / factor, p50, p90: p50 * factor, neverShare: 0 },
    words: wordChances(p50, sdLn),
    parts: salting
      .map(({ part, middleG }) => ({ part, share: middleG / totalG }))
      .sort((a, b) => b.share - a.share),
  };
}

const factorAt90 = (sdLn: number): number => exp(NORMAL_P90_SD * sdLn);

/** Chance of less than `level`. */
const below = (level: number, p50: number, sdLn: number): number =>
  sdLn > 0 ? erfc(-log(level / p50) / (Math.SQRT2 * sdLn)) / 2 : level > p50 ? 1 : 0;

function wordChances(p50: number, sdLn: number): SaltForecast['words'] {
  const edges = [0, ...BEGINS.map((level) => below(level, p50, sdLn)), 1];
  return Object.fromEntries(SALT_WORDS.map((word, i) => [word, edges[i + 1]! - edges[i]!]));
}

/** It in one statement. */
export function saltSaid(salt: SaltForecast, members: number): Said {
  const likeliest = SALT_WORDS.reduce((a, b) => ((salt.words[b] ?? 0) > (salt.words[a] ?? 0) ? b : a));
  return {
    id: 'eater.salt',
    params: {
      word: likeliest,
      share: salt.words[likeliest] ?? 0,
      low: salt.perKg.p10,
      high: salt.perKg.p90,
      most: salt.parts[0]!.part,
      members,
    },
    source: 'rubs-and-brines.md',
  };
}
