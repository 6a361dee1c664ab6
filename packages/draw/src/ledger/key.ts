import { type Mark, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';

/** What the fills of a chart mean, in a row that goes on below where it does not fit. */
export interface Key {
  readonly title: string;
  readonly entries: readonly { readonly className: string; readonly words: string }[];
  /** Edges of the chart, and where the row would best begin [px]. */
  readonly x0: number;
  readonly x1: number;
  readonly fromX: number;
}

const LINE_PX = 22;
const SWATCH_PX = 13;
const GAP_PX = 16;

interface Placed {
  readonly entry: Key['entries'][number] | undefined;
  readonly words: string;
  readonly x: number;
  readonly row: number;
}

function placed({ title, entries, x0, x1, fromX }: Key): Placed[] {
  const all = [{ words: title }, ...entries.map((entry) => ({ words: entry.words, entry }))];
  const wide = (one: (typeof all)[number]): number =>
    widthOf(one.words) + ('entry' in one ? SWATCH_PX + 6 : 0);
  const whole = all.reduce((sum, one) => sum + wide(one) + GAP_PX, -GAP_PX);
  const left = Math.max(x0, Math.min(fromX, x1 - whole));
  let x = left;
  let row = 0;
  return all.map((one) => {
    const width = wide(one);
    if (x + width > x1 && x > left) {
      x = left;
      row += 1;
    }
    const at = { entry: 'entry' in one ? one.entry : undefined, words: one.words, x, row };
    x += width + GAP_PX;
    return at;
  });
}

export const keyHeight = (key: Key): number => LINE_PX * (1 + Math.max(...placed(key).map(({ row }) => row)));

/** @param y of its upper edge */
export const keyRow = (key: Key, y: number): Mark[] =>
  placed(key).flatMap(({ entry, words, x, row }): Mark[] => {
    const baseline = y + LINE_PX * row + 16;
    if (!entry) return [text(x, baseline, words, { className: 'ink strong' })];
    return [
      rect(x, baseline - 11, SWATCH_PX, SWATCH_PX, entry.className),
      text(x + SWATCH_PX + 6, baseline, words, { className: 'ink' }),
    ];
  });
