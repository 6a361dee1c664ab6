/** One line of a recipe to an ingredient by mass, with every doubt; nothing is guessed without saying so. */
import type { Said } from '@pitwright/model';
import { type Ingredient, ingredientById } from '../../food/data/ingredients.ts';
import { type Grams, gramsOf, type Weighed } from './grams.ts';
import { type Named, nameOf } from './name.ts';
import { isNeutral, LEAF_HERBS } from './neutral.ts';
import type { Choice, Doubt, PastedLine } from './types.ts';
import type { MeasureSystem } from './units.ts';
import { plainName } from './vocabulary.ts';
import { type LineWords, lineWords } from './words.ts';

const asks = (id: string, params: Said['params'] = {}, choices: readonly Choice[] = []): Doubt => ({
  said: { id, params },
  asks: true,
  choices,
});
const notes = (id: string, params: Said['params'] = {}, choices: readonly Choice[] = []): Doubt => ({
  ...asks(id, params, choices),
  asks: false,
});

/** The whole amount in grams of this ingredient. */
function weigh(words: LineWords, ingredient: Ingredient): Weighed {
  const doubts: Doubt[] = [];
  let sum: Grams = { g: 0, lowG: 0, highG: 0 };
  for (const part of words.parts) {
    const read = gramsOf(part, words.size, ingredient, words.manner);
    doubts.push(...read.doubts);
    if (read.grams === undefined) return otherWriting(words, ingredient, doubts);
    sum = { g: sum.g + read.grams.g, lowG: sum.lowG + read.grams.lowG, highG: sum.highG + read.grams.highG };
  }
  return against(words, ingredient, sum, doubts);
}

/** The first amount cannot be weighed, but `1 bottle (500 g)` or `7 oz (200 g)` can. */
function otherWriting(words: LineWords, ingredient: Ingredient, doubts: readonly Doubt[]): Weighed {
  for (const part of words.also) {
    const read = gramsOf(part, undefined, ingredient, []);
    if (read.grams !== undefined) return { grams: read.grams, doubts: read.doubts };
  }
  return { grams: undefined, doubts };
}

/** Two writings further apart than this are not one amount rounded. */
const MOST_APART = 0.15;

/** A mass beside a volume is the better of the two; both must say the same. */
function against(words: LineWords, ingredient: Ingredient, sum: Grams, doubts: readonly Doubt[]): Weighed {
  for (const part of words.also) {
    const read = gramsOf(part, undefined, ingredient, []);
    const other = read.grams ?? (part.unit?.kind === 'ounce' ? gramsFromWeightOunces(part) : undefined);
    if (other === undefined) continue;
    if (Math.abs(other.g - sum.g) > MOST_APART * Math.max(other.g, sum.g)) {
      const params = {
        first: { kind: 'mass', si: sum.g / 1000 },
        second: { kind: 'mass', si: other.g / 1000 },
      } as const;
      const choices = [{ massG: sum.g }, { massG: other.g }];
      return { grams: undefined, doubts: [...doubts, asks('sauce.paste-amounts-disagree', params, choices)] };
    }
    const isVolumeFirst = words.parts.every((p) => p.unit?.kind === 'volume');
    if (isVolumeFirst && part.unit?.kind === 'mass') return { grams: other, doubts };
  }
  return { grams: sum, doubts };
}

const gramsFromWeightOunces = (part: LineWords['parts'][number]): Grams | undefined =>
  part.unit?.kind === 'ounce'
    ? {
        g: ((part.amount.low + part.amount.high) / 2) * part.unit.g,
        lowG: part.amount.low * part.unit.g,
        highG: part.amount.high * part.unit.g,
      }
    : undefined;

const isByVolume = (words: LineWords): boolean => words.parts.some((part) => part.unit?.kind === 'volume');

/** Brown sugar in a cup: packed 220 g, scooped 145 g. */
function brownSugar(words: LineWords): { id: string; doubts: Doubt[] } {
  const manner = `${words.manner.join(' ')} ${words.note} ${words.phrase}`.toLowerCase();
  if (!isByVolume(words)) return { id: 'sugar_brown_packed', doubts: [] };
  if (/\bloose|\blightly|\bscooped|\bunpacked|\bnot packed/.test(manner))
    return { id: 'sugar_brown_loose', doubts: [] };
  if (/\bpacked/.test(manner)) return { id: 'sugar_brown_packed', doubts: [] };
  const massAs = (id: string): number | undefined => weigh(words, ingredientById(id)!).grams?.g;
  const packed = massAs('sugar_brown_packed');
  const loose = massAs('sugar_brown_loose');
  const choices = [
    { ingredient: 'sugar_brown_packed', massG: packed, reading: 'packed' },
    { ingredient: 'sugar_brown_loose', massG: loose, reading: 'loose' },
  ];
  const params = {
    packed: { kind: 'mass', si: (packed ?? 0) / 1000 },
    loose: { kind: 'mass', si: (loose ?? 0) / 1000 },
  } as const;
  return { id: 'sugar_brown_packed', doubts: [notes('sauce.paste-packed', params, choices)] };
}

/** Which row is meant, where the words leave several. Salts by weight are all one. */
function whichOf(
  named: Named,
  words: LineWords,
  own: readonly Ingredient[],
): { ingredient: Ingredient; doubts: Doubt[] } {
  const find = (id: string): Ingredient => own.find((i) => i.id === id) ?? ingredientById(id)!;
  const rows = named.ids.map(find);
  const first = rows[0]!;
  if (rows.length === 1) return { ingredient: first, doubts: [] };
  const allSalt = rows.every((row) => row.category === 'salt');
  if (allSalt && !isByVolume(words)) return { ingredient: first, doubts: [] };
  const choices = rows.map((row) => ({ ingredient: row.id, massG: weigh(words, row).grams?.g }));
  const params = { name: words.phrase, names: rows.map((row) => row.name).join('|') };
  return {
    ingredient: first,
    doubts: [asks(allSalt ? 'sauce.paste-which-salt' : 'sauce.paste-which', params, choices)],
  };
}

const CUT_NOTE = /chopped|sliced|slices|pieces|quartered|chunks|halves|diced/;

/** What the name leaves open, apart from the amount. */
function nameDoubts(named: Named, ingredient: Ingredient, words: LineWords): Doubt[] {
  const doubts: Doubt[] = [];
  const name = ingredient.name;
  if (ingredient.id.startsWith('cure_')) doubts.push(asks('sauce.paste-cure', { name }));
  if (named.isMended)
    doubts.push(
      asks('sauce.paste-did-you-mean', { text: words.phrase, name }, [{ ingredient: ingredient.id }]),
    );
  if (named.isTaken) doubts.push(notes('sauce.paste-near', { text: words.phrase, name }));
  if (named.leftOver.length > 0)
    doubts.push(
      asks('sauce.paste-taken-as', { words: named.leftOver.join(' '), name }, [
        { ingredient: ingredient.id },
      ]),
    );
  const isGround = /\bground\b|\bpowder/i.test(`${words.phrase} ${words.note}`);
  if (LEAF_HERBS.has(ingredient.id) && isGround && isByVolume(words))
    doubts.push(asks('sauce.paste-ground-herb', { name }));
  if (isByVolume(words) && CUT_NOTE.test(ingredient.densityNote))
    doubts.push(notes('sauce.paste-cut', { name, measure: ingredient.densityNote }));
  return doubts;
}

/** Words behind the comma that make it another thing: "ginger, ground", "lemons, juiced". */
function noteDoubts(words: LineWords, ingredient: Ingredient): Doubt[] {
  const changing = plainName(words.note)
    .split(' ')
    .filter((word) =>
      /^(dried|dry|ground|powdered|powder|juiced|zested|canned|smoked|toasted|sweetened|sugar)$/.test(word),
    )
    .filter((word) => !isNeutral(word, ingredient.category));
  if (changing.length === 0) return [];
  return [
    asks('sauce.paste-taken-as', { words: changing.join(' '), name: ingredient.name }, [
      { ingredient: ingredient.id },
    ]),
  ];
}

const LARGEST_G = 25_000;

function amountDoubts(words: LineWords, text: string): Doubt[] {
  const doubts: Doubt[] = [];
  if (words.isMinus) doubts.push(asks('sauce.paste-minus', { text }));
  if (words.strayNumber !== undefined)
    doubts.push(asks('sauce.paste-stray-number', { number: words.strayNumber, text }));
  for (const part of [...words.parts, ...(words.size ? [words.size] : [])]) {
    if (part.amount.otherReading !== undefined)
      doubts.push(
        asks('sauce.paste-thousands', { first: part.amount.low, second: part.amount.otherReading }),
      );
    if (part.amount.low === 0) doubts.push(asks('sauce.paste-nothing', { text }));
    if (part.isLetter) doubts.push(notes('sauce.paste-letter', { unit: part.unit!.id }));
    if (part.amount.high > part.amount.low)
      doubts.push(notes('sauce.paste-range', { low: part.amount.low, high: part.amount.high }));
  }
  if (words.hasMore) doubts.push(notes('sauce.paste-more', { text }));
  return doubts;
}

/** Two things in one line: "salt and pepper", "honey or maple syrup". */
function severalDoubts(words: LineWords, system: MeasureSystem): Doubt[] {
  const link = /\s(and|&|\+|or)\s/i.exec(words.phrase);
  if (!link) return [];
  const sides = [words.phrase.slice(0, link.index), words.phrase.slice(link.index + link[0].length)];
  const meant = sides.map((side) => nameOf(side, system)?.ids[0]);
  if (meant[0] === undefined || meant[1] === undefined || meant[0] === meant[1]) return [];
  const choices = meant.map((ingredient) => ({ ingredient }));
  const isOr = link[1]!.toLowerCase() === 'or';
  return [
    asks(
      isOr ? 'sauce.paste-either' : 'sauce.paste-two-in-one',
      { first: sides[0]!, second: sides[1]! },
      choices,
    ),
  ];
}

/** Reads one line. `own` ingredients are known by their whole name. */
export function pastedLine(
  number: number,
  text: string,
  system: MeasureSystem,
  options: { readonly systemTold?: boolean; readonly own?: readonly Ingredient[] } = {},
): PastedLine {
  const own = options.own ?? [];
  const words = lineWords(text, system);
  const doubts = amountDoubts(words, text);
  const base = { number, text, ...(words.note !== '' && { note: words.note }) };
  const several = severalDoubts(words, system);
  const firstOf = several.length > 0 ? words.phrase.split(/\s(?:and|&|\+|or)\s/i)[0]! : words.phrase;
  const ownOne = own.find((i) => plainName(i.name) === plainName(words.phrase));
  const named: Named | undefined = ownOne
    ? { ids: [ownOne.id], isTaken: false, leftOver: [], isMended: false }
    : nameOf(firstOf, options.systemTold === false ? undefined : system);
  if (named === undefined)
    return {
      ...base,
      doubts: [...doubts, asks('sauce.paste-unknown', { name: words.phrase === '' ? text : words.phrase })],
    };
  const which = whichOf(named, words, own);
  const isBrown = which.ingredient.id === 'sugar_brown_packed';
  const brown = isBrown ? brownSugar(words) : undefined;
  const ingredient = brown ? ingredientById(brown.id)! : which.ingredient;
  const weighed = words.parts.length === 0 ? undefined : weigh(words, ingredient);
  const all: Doubt[] = [
    ...doubts,
    ...several,
    ...which.doubts,
    ...(brown?.doubts ?? []),
    ...nameDoubts(named, ingredient, words),
    ...noteDoubts(words, ingredient),
    ...(weighed?.doubts ?? [
      asks(words.isToTaste ? 'sauce.paste-to-taste' : 'sauce.paste-no-amount', { name: ingredient.name }),
    ]),
  ];
  const grams = weighed?.grams;
  if (grams !== undefined && grams.g > LARGEST_G)
    all.push(
      asks('sauce.paste-very-much', { mass: { kind: 'mass', si: grams.g / 1000 }, name: ingredient.name }),
    );
  return {
    ...base,
    ingredient: ingredient.id,
    ...(grams && { massG: grams.g, lowG: grams.lowG, highG: grams.highG }),
    doubts: all,
  };
}
