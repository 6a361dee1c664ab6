import type { Choice, Doubt, PastedLine, PastedRecipe } from '@pitwright/engine/sauce';
import { type FormulaLine, quantity } from '@pitwright/model';

/** What was answered about one pasted line. */
export interface LineAnswer {
  readonly ingredient?: string;
  readonly massG?: number;
  readonly isLeftOut?: boolean;
  /** Places of the doubts that are answered. */
  readonly settled: readonly number[];
}

export const UNANSWERED: LineAnswer = { settled: [] };

/** To the gram, to a tenth under ten: a recipe is not rounded away. */
const onScale = (massG: number): number => (massG < 10 ? Math.round(massG * 10) / 10 : Math.round(massG));

const isCure = (line: PastedLine, answer: LineAnswer): boolean =>
  (answer.ingredient ?? line.ingredient)?.startsWith('cure_') ?? false;

/** What still asks. */
export const openDoubts = (
  line: PastedLine,
  answer: LineAnswer,
): readonly { doubt: Doubt; place: number }[] =>
  line.doubts.flatMap((doubt, place) =>
    doubt.asks && !answer.settled.includes(place) ? [{ doubt, place }] : [],
  );

/** The line as it would go in; missing while something is open. */
export function settledLine(line: PastedLine, answer: LineAnswer): FormulaLine | undefined {
  const ingredient = answer.ingredient ?? line.ingredient;
  const massG = answer.massG ?? line.massG;
  if (isCure(line, answer) || openDoubts(line, answer).length > 0) return undefined;
  if (ingredient === undefined || massG === undefined || !(massG > 0)) return undefined;
  return {
    ingredient,
    amount: quantity('mass', onScale(massG), 'g'),
    note: line.text.trim(),
  };
}

/** An answer by one of the choices; another thing than was read, without its own mass, needs one told. */
export function byChoice(line: PastedLine, answer: LineAnswer, place: number, choice: Choice): LineAnswer {
  const ingredient = choice.ingredient ?? answer.ingredient ?? line.ingredient;
  const before = answer.ingredient ?? line.ingredient;
  const massG = choice.massG ?? (ingredient === before ? (answer.massG ?? line.massG) : Number.NaN);
  return {
    ...answer,
    settled: [...answer.settled, place],
    ...(ingredient !== undefined && { ingredient }),
    ...(massG !== undefined && { massG }),
  };
}

/** Told outright: settles every question of the line. */
export const byHand = (line: PastedLine, ingredient: string, massG: number): LineAnswer => ({
  ingredient,
  massG,
  settled: line.doubts.map((_, place) => place),
});

/** Whether words must be told because no choice answers, or choices left the mass open. */
export function needsWriting(line: PastedLine, answer: LineAnswer): boolean {
  if (answer.isLeftOut || isCure(line, answer)) return false;
  const open = openDoubts(line, answer);
  if (open.some(({ doubt }) => doubt.choices.length === 0)) return true;
  return open.length === 0 && settledLine(line, answer) === undefined;
}

/** A note is at most this long in the cook file. */
export const LONGEST_NOTE = 4000;

/** What the recipe says beside its lines, its title aside, as sentences of a note; missing where it says nothing more. */
export function methodNote(recipe: PastedRecipe): string | undefined {
  const said = recipe.otherText
    .slice(recipe.title ? 1 : 0)
    .map(({ text }) => text.replace(/[\s\p{Cc}]+/gu, ' ').trim())
    .filter((line) => line !== '')
    .map((line) => (/[.:;!?…]$/.test(line) ? line : `${line}.`))
    .join(' ');
  return said === '' ? undefined : said.slice(0, LONGEST_NOTE).trim();
}

/** The note with another behind it. */
export const noteWith = (before: string | undefined, more: string | undefined): string | undefined =>
  before && more ? `${before} ${more}`.slice(0, LONGEST_NOTE).trim() : (before ?? more);
