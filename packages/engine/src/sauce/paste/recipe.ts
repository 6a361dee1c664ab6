/** A recipe as it was written, line by line, to lines by mass and a list of open questions. */
import { type Labels, ownIngredients } from '../label.ts';
import { plainText } from './amount.ts';
import { pastedLine } from './line.ts';
import { titleOf } from './title.ts';
import type { Doubt, PastedLine, PastedRecipe } from './types.ts';
import { isSystemUnit, type MeasureSystem } from './units.ts';
import { BY_COUNTRY, plainName } from './vocabulary.ts';
import { lineWords } from './words.ts';

export interface PasteOptions {
  /** Whose cups, spoons and pints these are; missing: told from the words, and said. */
  readonly system?: MeasureSystem;
  /** The person's own ingredients, found by their names. */
  readonly labels?: Labels;
}

const VERBS =
  /^(?:\d+[.)]\s*)?(?:mix|combine|stir|simmer|bring|cook|whisk|heat|add|pour|remove|serve[sd]?|let|cool|store|place|blend|put|boil|reduce|melt|makes?|yields?|brush|refrigerate|chill|taste|adjust|meanwhile|then|strain|notes?|method|directions|instructions|ingredients|preheat|season|keep|use|in a|over|when|once|to (?:make|serve)|for the|dissolve|toast|saute|fry|soak|rub|sprinkle|turn)\b/i;
const AMOUNT_FIRST = /^(?:[*•·▢□☐✓▪◦-]+\s*)?(?:[\d.½⅓⅔¼¾⅛]|an?\s|half\b|one\b|two\b|three\b|juice\b|zest\b)/i;
const MOST_WORDS = 9;

/** A heading, a step of the method, a remark: kept as it stands. */
function isOther(text: string): boolean {
  const plain = plainText(text);
  if (!/[\p{L}\d]/u.test(plain)) return true;
  if (/:$/.test(plain)) return true;
  if (VERBS.test(plain)) return true;
  return !AMOUNT_FIRST.test(plain) && !/\d/.test(plain) && plain.split(' ').length > MOST_WORDS;
}

const UK_WORDS =
  /\b(?:tins?|caster|treacle|muscovado|demerara|cornflour|bicarb\w*|groundnut|litres?|grammes?|chilli|passata|millilitres?|soft (?:light|dark|brown)|(?:light|dark) soft brown)\b/i;
const US_WORDS =
  /\b(?:catsup|sticks?|cornstarch|confectioners?|quarts?|packed brown sugar|all-purpose|chili powder)\b/i;

/** Whose measures these are, by the words. */
function systemFrom(text: string): MeasureSystem {
  if (UK_WORDS.test(text) && !US_WORDS.test(text)) return 'uk';
  return 'us';
}

function systemDoubts(lines: readonly string[], system: MeasureSystem): Doubt[] {
  const isOpen = lines.some((line) => {
    const words = lineWords(line, system);
    const countryName = Object.keys(BY_COUNTRY).some((name) => plainName(words.phrase) === plainName(name));
    return countryName || words.parts.some((part) => part.unit && isSystemUnit(part.unit));
  });
  if (!isOpen) return [];
  const choices = (['us', 'uk', 'au', 'metric'] as const).map((reading) => ({ reading }));
  return [{ said: { id: 'sauce.paste-system', params: { system } }, asks: false, choices }];
}

/** Longest text that is read; longer is no recipe. */
const MOST_LINES = 400;
const MOST_CHARACTERS = 400;

/**
 * Reads a pasted recipe. Never throws on any text: what cannot be read is a doubt of its line.
 *
 * @param text  one ingredient a line, in US, UK, Australian or metric wording; headings and method are kept aside
 */
export function pasteRecipe(text: string, options: PasteOptions = {}): PastedRecipe {
  const written = text.split(/\r\n|\r|\n|\u2028/).slice(0, MOST_LINES);
  const system = options.system ?? systemFrom(text);
  const own = ownIngredients(options.labels);
  const lines: PastedLine[] = [];
  const otherText: { number: number; text: string }[] = [];
  const ingredientLines: string[] = [];
  const readLine = (number: number, line: string): PastedLine =>
    pastedLine(number, line, system, { systemTold: options.system !== undefined, own });
  const firstAt = written.findIndex((line) => line.trim() !== '');
  const first = written[firstAt]?.slice(0, MOST_CHARACTERS);
  const title = first === undefined ? undefined : titleOf(first, readLine(firstAt + 1, first));
  written.forEach((whole, i) => {
    const line = whole.slice(0, MOST_CHARACTERS);
    if (line.trim() === '') return;
    if ((i === firstAt && title) || isOther(line)) {
      otherText.push({ number: i + 1, text: whole });
      return;
    }
    ingredientLines.push(line);
    lines.push(readLine(i + 1, line));
  });
  const doubts = options.system === undefined ? systemDoubts(ingredientLines, system) : [];
  return { ...(title && { title }), lines, otherText, doubts };
}
