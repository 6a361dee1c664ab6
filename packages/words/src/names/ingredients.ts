import { lowered } from '../figures/number.ts';

/** Longer than this, what follows the head is a remark and no part of what one calls it. */
const MOST_WORDS = 2;

/**
 * An ingredient as one says it, from its name in the catalogue: `Vinegar, apple cider, 5 % acidity` is apple cider
 * vinegar, `Tomato paste, canned, no salt` tomato paste.
 */
export function spokenIngredient(name: string): string {
  // `Pepper, red (cayenne), ground`: the narrower word is the one that is said.
  const narrower = /^([^,\s]+), [^,(]*\((\p{L}+)\),/u.exec(name);
  if (narrower) return `${narrower[2]} ${lowered(narrower[1]!)}`;
  const [head = name, kind] = name.replace(/\s*\([^)]*\)/g, '').split(/,\s*/);
  const isHead = !head.includes(' ');
  return isHead && kind !== undefined && kind.split(' ').length <= MOST_WORDS && !/\d/.test(kind)
    ? `${lowered(kind)} ${lowered(head)}`
    : lowered(head);
}
