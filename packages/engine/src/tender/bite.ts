/** From dose to the word of the bite, by tissue. */
import { BITES, type Bite } from '@pitwright/model';
import type { Tissue } from '../meat/cut.ts';
import { doseForSoftened } from './dose.ts';

export interface Softening {
  /** Softening rate at 95 °C [1/h]. */
  readonly k95PerH: number;
  /** Of ln k95, from piece to piece [1]. */
  readonly sdLn: number;
  /** Softened share X at which each word begins; a word that the tissue does not know is absent. */
  readonly begins: Readonly<Partial<Record<Bite, number>>>;
}

const RIB_WORDS = { firm: 0, 'clean-bite': 0.6, tender: 0.76, 'falls-off': 0.86, 'pulls-apart': 0.95 };
const BONELESS_WORDS = { firm: 0, 'clean-bite': 0.6, tender: 0.7, 'pulls-apart': 0.83 };
const POULTRY_WORDS = { firm: 0, 'clean-bite': 0.5, tender: 0.7, 'falls-off': 0.88 };

/**
 * Rates and words. An interpretation: on measured cooks the words agree within one class in 7 of 10, so give chances.
 * @source beef: held between 60 °C for 24–48 h and braising at 95 °C for 2–3 h (from memory); pork: calibrated on the
 * hand tests of measured cooks; spareribs: common practice, no source; lamb, poultry: from memory
 */
export const SOFTENING: Readonly<Record<Tissue, Softening>> = {
  'pork-loin-ribs': { k95PerH: 1.25, sdLn: 0.2, begins: RIB_WORDS },
  'pork-spareribs': { k95PerH: 1.05, sdLn: 0.2, begins: RIB_WORDS },
  'beef-ribs': { k95PerH: 0.5, sdLn: 0.25, begins: RIB_WORDS },
  beef: { k95PerH: 0.5, sdLn: 0.25, begins: BONELESS_WORDS },
  'pork-shoulder': { k95PerH: 1.2, sdLn: 0.25, begins: BONELESS_WORDS },
  lamb: { k95PerH: 0.8, sdLn: 0.25, begins: BONELESS_WORDS },
  poultry: { k95PerH: 3, sdLn: 0.3, begins: POULTRY_WORDS },
};

/** Centre below this has not left `raw` [°C]. */
export const FIRM_FROM_C = 60;

/** Words that a tissue knows, softest last, `raw` first. */
export const wordsOf = (tissue: Tissue): readonly Bite[] =>
  BITES.filter((word) => word === 'raw' || SOFTENING[tissue].begins[word] !== undefined);

/** The word for a softened share. @param hottestC the warmest the thermal centre has been [°C] */
export function biteWord(tissue: Tissue, softened: number, hottestC: number): Bite {
  if (!(hottestC >= FIRM_FROM_C)) return 'raw';
  let word: Bite = 'firm';
  for (const candidate of BITES) {
    const begins = SOFTENING[tissue].begins[candidate];
    if (begins !== undefined && softened >= begins) word = candidate;
  }
  return word;
}

/**
 * Dose at which a word begins for a piece of this rate [h]; ∞ where the tissue does not know the word.
 */
export function doseWhereBegins(tissue: Tissue, word: Bite, k95PerH: number): number {
  const begins = SOFTENING[tissue].begins[word];
  return begins === undefined ? Infinity : doseForSoftened(k95PerH, begins);
}

/** The word asked, or the nearest one that the tissue knows: softer first, else the softest. */
export function knownWord(tissue: Tissue, asked: Bite): Bite {
  const words = wordsOf(tissue);
  for (let i = BITES.indexOf(asked); i < BITES.length; i++) {
    const word = BITES[i]!;
    if (words.includes(word)) return word;
  }
  return words[words.length - 1]!;
}

/** The word two steps softer than this, whose begin is past the bite; undefined where there is none. */
export function wordPast(tissue: Tissue, asked: Bite): Bite | undefined {
  const words = wordsOf(tissue);
  return words[words.indexOf(knownWord(tissue, asked)) + 2];
}
