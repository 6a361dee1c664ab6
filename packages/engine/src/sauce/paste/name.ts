/** From the words of a line to a row of the catalogue, with every doubt about it. */

import { ingredientById } from '../../food/data/ingredients.ts';
import { isNeutral } from './neutral.ts';
import type { MeasureSystem } from './units.ts';
import {
  BY_COUNTRY,
  isVocabularyWord,
  namesByWord,
  plainName,
  vocabulary,
  vocabularyWords,
} from './vocabulary.ts';

export interface Named {
  /** First meant first; several ask which. */
  readonly ids: readonly string[];
  readonly isTaken: boolean;
  /** Words that no name and no usual remark accounts for. */
  readonly leftOver: readonly string[];
  /** Found only after mending a letter or two. */
  readonly isMended: boolean;
}

const FAR = 3;
const LONGEST = 40;
const rows = [new Uint8Array(LONGEST + 1), new Uint8Array(LONGEST + 1), new Uint8Array(LONGEST + 1)];

/** Edits (insert, drop, change, swap neighbours) from a to b; 3 where it is more than two or a word is over 40 letters. */
export function edits(a: string, b: string): number {
  const [m, n] = [a.length, b.length];
  if (Math.abs(m - n) >= FAR || m > LONGEST || n > LONGEST) return FAR;
  let [before, previous, row] = rows as [Uint8Array, Uint8Array, Uint8Array];
  for (let j = 0; j <= n; j++) previous[j] = j;
  for (let i = 1; i <= m; i++) {
    row[0] = i;
    let least = i;
    for (let j = 1; j <= n; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(previous[j]! + 1, row[j - 1]! + 1, previous[j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, before[j - 2]! + 1);
      row[j] = best;
      if (best < least) least = best;
    }
    if (least >= FAR) return FAR;
    [before, previous, row] = [previous, row, before];
  }
  return Math.min(FAR, previous[n]!);
}

/** The name with most words, all of them among `words`; among equals the one whose words stand together, then the longest. */
function bestName(words: readonly string[]): string | undefined {
  const has = new Set(words);
  const joined = ` ${words.join(' ')} `;
  let best: { name: string; rank: number } | undefined;
  for (const word of has)
    for (const { name, parts } of namesByWord().get(word) ?? []) {
      if (!parts.every((part) => has.has(part))) continue;
      const rank = parts.length * 1000 + (joined.includes(` ${name} `) ? 500 : 0) + name.length;
      if (best === undefined || rank > best.rank) best = { name, rank };
    }
  return best?.name;
}

function idsOf(name: string, system: MeasureSystem | undefined): readonly string[] {
  const country = Object.entries(BY_COUNTRY).find(([key]) => plainName(key) === name)?.[1];
  if (country === undefined) return vocabulary().get(name)!.ids;
  return system === undefined ? [...new Set(country)] : [country[system === 'us' ? 0 : 1]];
}

function named(words: readonly string[], system: MeasureSystem | undefined): Named | undefined {
  const name = bestName(words);
  if (name === undefined) return undefined;
  const ids = idsOf(name, system);
  const used = new Set(name.split(' '));
  const category = ingredientById(ids[0]!)?.category;
  const leftOver = words.filter((word) => !used.has(word) && !isNeutral(word, category) && !/^\d/.test(word));
  return { ids, isTaken: vocabulary().get(name)!.isTaken, leftOver, isMended: false };
}

/** Each written word mended to the nearest word that some name has: one edit in a short word, two in a long one. */
function mended(words: readonly string[], system: MeasureSystem | undefined): Named | undefined {
  const repaired = words.map((word) => {
    if (word.length < 3 || /\d/.test(word) || isVocabularyWord(word)) return word;
    let best = { word, cost: word.length < 5 ? 2 : 3 };
    for (const known of vocabularyWords()) {
      if (known.length < 3) continue;
      const cost = edits(word, known);
      if (cost < best.cost) best = { word: known, cost };
    }
    return best.word;
  });
  const found = named(repaired, system);
  return found && { ...found, isMended: true };
}

/** What this phrase names; undefined where nothing in the catalogue is near. */
export function nameOf(phrase: string, system: MeasureSystem | undefined): Named | undefined {
  const words = plainName(phrase)
    .split(' ')
    .filter((word) => word !== '');
  if (words.length === 0) return undefined;
  return named(words, system) ?? mended(words, system);
}
