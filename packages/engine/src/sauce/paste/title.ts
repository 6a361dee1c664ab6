/** What a pasted recipe calls itself. */
import type { FormulaKind } from '@pitwright/model';
import type { PastedLine, PastedTitle } from './types.ts';

/** Last words of a name, and what such a thing is. */
const KINDS: Readonly<Record<string, FormulaKind>> = {
  sauce: 'sauce',
  glaze: 'sauce',
  baste: 'sauce',
  dip: 'sauce',
  dressing: 'sauce',
  rub: 'rub',
  seasoning: 'rub',
  brine: 'brine',
  marinade: 'brine',
  mop: 'spritz',
  spritz: 'spritz',
};
const MOST_WORDS = 8;

/** A guess by a near spelling, or a word left over: no ingredient is named outright. */
const GUESSES = new Set(['sauce.paste-did-you-mean', 'sauce.paste-taken-as']);
const isNamed = ({ ingredient, doubts }: PastedLine): boolean =>
  ingredient !== undefined && !doubts.some(({ said }) => GUESSES.has(said.id));

/**
 * The name in the first line: one that ends in what is made, holds no figure and names no ingredient. `Soy sauce` is a
 * line without an amount, and asks for it.
 *
 * @param asLine  the same read as a line of the recipe
 */
export function titleOf(text: string, asLine: PastedLine): PastedTitle | undefined {
  const name = text
    .replace(/^[#*•·\s-]+/, '')
    .replace(/[\s:*]+$/, '')
    .trim();
  if (/\d/.test(name) || name.split(/\s+/).length > MOST_WORDS || isNamed(asLine)) return undefined;
  const kind = KINDS[/[\p{L}]+$/u.exec(name.toLowerCase())?.[0] ?? ''];
  return kind && { name, kind };
}
