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
/** In parts of the thickness at which a bark of this cut counts as set. */
const BARK_BEGINS = [0.25, 0.5, 1, 1.6, 2.5] as const;
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
/** Lean meat has its water alone; in fat cuts melted fat and gelatin wet the mouth, and little water will do. */
const JUICINESS_BEGINS = { lean: [0.2, 0.5], fat: [0.05, 0.2] } as const;
const LEAN_BELOW_FAT = 0.1;

/**
 * Dried layer at which a bark counts as set [m]: what the model has when cooks wrap, racks after 2–3 h at 121 °C, big cuts
 * at a centre near 70 °C. Common practice, no source.
 */
const BARK_SET_RIBS_M = 1.0e-3;
const BARK_SET_BIG_M = 1.35e-3;
const BARK_SET_SKIN_M = 0.4e-3;
export const barkSetM = (cut: Cut): number =>
  cut.isPoultry ? BARK_SET_SKIN_M : cut.tissue.endsWith('ribs') ? BARK_SET_RIBS_M : BARK_SET_BIG_M;

const wordAt = <W>(words: readonly W[], begins: readonly number[], value: number): W =>
  words[begins.filter((begin) => value >= begin).length]!;

/** @param barkM thickness of the dried layer [m] */
export const barkWord = (cut: Cut, barkM: number): BarkWord =>
  wordAt(BARK_WORDS, cut.isPoultry ? SKIN_BEGINS : BARK_BEGINS, barkM / barkSetM(cut));

/** @param index colour index, 1 to 6 */
export const colourWord = (index: number): ColourWord => wordAt(COLOUR_WORDS, [2, 3, 4, 5, 6], index);

/** @param juiciness water at the centre between raw (1) and fully cooked (0) */
export const juicinessWord = (cut: Cut, juiciness: number): JuicinessWord =>
  wordAt(
    JUICINESS_WORDS,
    cut.isPoultry || cut.composition.fat < LEAN_BELOW_FAT ? JUICINESS_BEGINS.lean : JUICINESS_BEGINS.fat,
    juiciness,
  );
