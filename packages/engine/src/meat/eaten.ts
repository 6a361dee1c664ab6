/**
 * Words for what the eater gets, weakest first, and where each begins. Ordinary words of graders; where each begins is
 * common practice, no source: bark by what is there when cooks wrap, juiciness by what they say of the meat.
 */
import type { Cut } from './cut.ts';

/** Bark, by the finger that tests it. */
export const BARK_WORDS = [
  'wipes-off',
  'smears',
  'holds-to-finger',
  'nail-does-not-lift',
  'crusty',
  'hard-shell',
] as const;
export type BarkWord = (typeof BARK_WORDS)[number];
/**
 * In parts of the thickness that a nail does not lift. The trade grades dried layers of 1 to 4 mm: a big cut is a hard
 * shell from 4 mm.
 */
const BARK_BEGINS = [0.25, 0.5, 1, 1.8, 3] as const;
/** Skin sets thin and goes on crisping for long. */
const SKIN_BEGINS = [0.25, 0.5, 1, 1.8, 4] as const;

/** Colour, grades 1 to 6. */
export const COLOUR_WORDS = [
  'pink-grey',
  'tan',
  'red-brown',
  'mahogany',
  'dark-mahogany',
  'black-brown',
] as const;
export type ColourWord = (typeof COLOUR_WORDS)[number];

export const JUICINESS_WORDS = ['dry', 'moist', 'juicy'] as const;
export type JuicinessWord = (typeof JUICINESS_WORDS)[number];
/** Where a word begins: lean meat has its water alone; in fat meat melted fat wets the mouth, and little water will do. */
const JUICINESS_BEGINS = { lean: [0.2, 0.5], fat: [0.05, 0.2], collagen: [0.1, 0.28] } as const;
const LEAN_BELOW_FAT = 0.1;
/** What the gelatin of a wholly softened working muscle is worth, in parts of the water that cooking drives out. */
const GELATIN_WORTH = 0.15;

/**
 * Dried layer that a nail does not lift [m]: what the model has when cooks call a bark set, racks after 2½ h at 121 °C, big
 * cuts at a centre near 70 °C. Common practice, no source.
 */
const NAIL_THIN_M = 1.0e-3;
const NAIL_BIG_M = 1.35e-3;
const NAIL_SKIN_M = 0.4e-3;
/** Thinner pieces are wrapped as racks are [m of half thickness]. */
const THIN_BELOW_M = 0.02;
/** Racks are wrapped when the rub no longer comes off on a finger, midway between that word's begin and the next. */
const HOLDS_TO_FINGER = 0.71;

const isThin = (cut: Cut): boolean => cut.halfThicknessM < THIN_BELOW_M;
const nailM = (cut: Cut): number => (cut.isPoultry ? NAIL_SKIN_M : isThin(cut) ? NAIL_THIN_M : NAIL_BIG_M);

/** Whether the bark of a cut is ready to be wrapped when it holds to a finger, not only when a nail does not lift it. */
export const wrapsAtFinger = (cut: Cut): boolean => !cut.isPoultry && isThin(cut);

/** Dried layer at which a stage told `until: bark` ends [m]. */
export const barkSetM = (cut: Cut): number => (wrapsAtFinger(cut) ? HOLDS_TO_FINGER : 1) * nailM(cut);

const wordAt = <W>(words: readonly W[], begins: readonly number[], value: number): W =>
  words[begins.filter((begin) => value >= begin).length]!;

/** @param barkM thickness of the dried layer [m] */
export const barkWord = (cut: Cut, barkM: number): BarkWord =>
  wordAt(BARK_WORDS, cut.isPoultry ? SKIN_BEGINS : BARK_BEGINS, barkM / nailM(cut));

/** @param index colour index, 1 to 6 */
export const colourWord = (index: number): ColourWord => wordAt(COLOUR_WORDS, [2, 3, 4, 5, 6], index);

/**
 * @param waterLeft water at the centre between raw (1) and fully cooked (0)
 * @param softened share of the collagen there that is gelatin
 */
export function juicinessWord(cut: Cut, waterLeft: number, softened: number): JuicinessWord {
  if (cut.isCollagenRich)
    return wordAt(JUICINESS_WORDS, JUICINESS_BEGINS.collagen, waterLeft + GELATIN_WORTH * softened);
  const isLean = cut.isPoultry || cut.composition.fat < LEAN_BELOW_FAT;
  return wordAt(JUICINESS_WORDS, isLean ? JUICINESS_BEGINS.lean : JUICINESS_BEGINS.fat, waterLeft);
}
