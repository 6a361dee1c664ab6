import { widthOf } from '@pitwright/draw';

/** Text is set lighter than the heaviest words, which the drawings measure. */
const LIGHTER = 0.96;

/** Lines that words take in a column [px], estimated: broken between words, as a browser breaks them. */
export function linesOf(words: string, widthPx: number, sizePx: number): number {
  const roomPx = widthPx / LIGHTER;
  let lines = 1;
  let line = '';
  for (const word of words.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer, sizePx) > roomPx) {
      lines++;
      line = word;
    } else line = longer;
  }
  return lines;
}

/** Height of a line in the tables and of the rule under a row [px]. */
const LINE_PX = 18;
const RULE_PX = 1;
/** Limits of the padding above and below a row [px]. */
const PADDING = { least: 1, most: 8 } as const;

const heightPx = (lines: readonly number[], paddingPx: number): number =>
  lines.reduce((sum, count) => sum + count * LINE_PX + RULE_PX + 2 * paddingPx, 0);

/**
 * The wordiest of several ways to write the same rows that has room, and the padding that then fills it.
 *
 * @param ways  wordiest first; the last is taken where none has room
 * @param linesOfRow  lines that a row takes
 */
export function fitRows<Row>(
  ways: readonly (readonly Row[])[],
  linesOfRow: (row: Row) => number,
  roomPx: number,
): { rows: readonly Row[]; paddingPx: number } {
  const lined = ways.map((rows) => ({ rows, lines: rows.map(linesOfRow) }));
  const chosen =
    lined.find(({ lines }) => heightPx(lines, PADDING.least) <= roomPx) ?? lined[lined.length - 1]!;
  const spare = roomPx - heightPx(chosen.lines, 0);
  const each = Math.floor(spare / (2 * Math.max(1, chosen.rows.length)));
  return { rows: chosen.rows, paddingPx: Math.max(PADDING.least, Math.min(PADDING.most, each)) };
}
