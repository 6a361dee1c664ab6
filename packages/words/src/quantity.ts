import { printCookQuantity, type Quantity } from '@pitwright/model';

/** Halves and quarters have signs in every font; thirds and eighths stay spelled. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/\b1\/2\b/g, '½'],
  [/\b1\/4\b/g, '¼'],
  [/\b3\/4\b/g, '¾'],
];

/** A quantity as its writer put it (`2 lb 10 oz`, `1 ½ cups`), without its doubt; in SI where it remembers no unit. */
export function writtenQuantity({ sd: _, ...q }: Quantity): string {
  return SIGNS.reduce((text, [spelled, sign]) => text.replace(spelled, sign), printCookQuantity(q));
}
