import { colourClass } from '../bands/hatches.ts';
import { group, line, type Mark, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { LanePlace, LaneUse, RoomLane } from './data.ts';

/** Heights of the whole capacity [px]: the grate by its share, shelves and rings by their number. */
const GRATE = { wide: 100, narrow: 64 };
const EACH = { wide: 24, narrow: 15 };
/** A lane grows until its smallest use can carry its letter, but no higher than this. */
const LETTER = 15;
const MOST = { grate: 180, other: 100 };
const TOP = { wide: 10, narrow: 28 };
const LIT = 5;
/** Words beside a bar stand off by this much [px]. */
const OFF = 5;
/** A lower bar carries no line of words [px]. */
const LEAST_WITH_WORDS = 13;

interface Stacked {
  readonly use: LaneUse;
  /** Share of the capacity under it. */
  readonly under: number;
}

/** A use where it is drawn [px]. */
interface Bar {
  readonly use: LaneUse;
  readonly a: number;
  readonly b: number;
  readonly up: number;
  readonly height: number;
}

interface Taken {
  readonly from: number;
  readonly to: number;
  readonly up: number;
  readonly down: number;
}

/** Each use lies as low as those that are there at the same time let it. */
function stacked(uses: readonly LaneUse[]): Stacked[] {
  const placed: Stacked[] = [];
  for (const use of [...uses].sort((a, b) => a.fromS - b.fromS || b.toS - a.toS)) {
    const beside = placed
      .filter((one) => one.use.fromS < use.toS && use.fromS < one.use.toS)
      .sort((a, b) => a.under - b.under);
    let under = 0;
    for (const one of beside) {
      if (one.under - under >= use.amount - 1e-9) break;
      under = Math.max(under, one.under + one.use.amount);
    }
    placed.push({ use, under });
  }
  return placed;
}

const CLASSES = { pit: 'useOwn', heat: 'warms', cold: 'dries' } as const;

/** What holds room on the grate, on a ring, in the oven, on a shelf: as high as the share that it takes. */
export function roomLane(
  lane: RoomLane,
  { axis, y, isNarrow, tableS }: LanePlace,
  fullWords: string,
): { readonly marks: Mark[]; readonly height: number } {
  const placed = stacked(lane.uses);
  const isGrate = lane.look === 'pit';
  const most = placed.reduce((top, { use, under }) => Math.max(top, under + use.amount), 0);
  const whole = isGrate ? Math.max(lane.capacity, most) : Math.max(1, most);
  const unit = heightOf(lane, whole, isNarrow) / whole;
  const top = y + (isNarrow ? TOP.narrow : TOP.wide);
  const foot = top + whole * unit;
  const bars = placed.map(({ use, under }): Bar => {
    const a = axis.x(Math.max(axis.fromS, use.fromS));
    const b = axis.x(Math.min(axis.toS, use.toS));
    const height = use.amount * unit;
    return { use, a, b, height, up: foot - (under + use.amount) * unit };
  });
  /** What bars and the words beside them take already. */
  const taken = bars.map(({ a, b, up, height }): Taken => ({ from: a, to: b, up, down: up + height }));
  const marks = bars.map((bar) => {
    const { use, a, b, up, height } = bar;
    const most = use.toS <= tableS ? axis.x(tableS) - 6 : axis.x1;
    const words = height < LEAST_WITH_WORDS ? [] : wordsOf(bar, { from: axis.x0, to: most }, taken);
    return group([rect(a, up, Math.max(2, b - a), height - 1, CLASSES[lane.look]), ...words], {
      className: use.letter ? colourClass(use.letter) : 'pc',
    });
  });
  const full =
    isGrate && !isNarrow
      ? [
          line(axis.x0, foot - lane.capacity * unit, axis.x1, foot - lane.capacity * unit, 'was'),
          text(axis.x0 + 4, foot - lane.capacity * unit + 15, fullWords, { className: 'ink2' }),
        ]
      : [];
  const lit = lane.lit
    ? [
        rect(
          axis.x(Math.max(axis.fromS, lane.lit.fromS)),
          foot + 1,
          axis.x(Math.min(axis.toS, lane.lit.toS)) - axis.x(Math.max(axis.fromS, lane.lit.fromS)),
          LIT,
          'lit',
        ),
      ]
    : [];
  return { marks: [...full, ...marks, ...lit], height: foot + (lane.lit ? LIT + 1 : 0) + 9 - y };
}

function heightOf({ look, uses }: RoomLane, whole: number, isNarrow: boolean): number {
  const isGrate = look === 'pit';
  const size = isNarrow ? 'narrow' : 'wide';
  const usual = isGrate ? GRATE : { wide: EACH.wide * whole, narrow: EACH.narrow * whole };
  const least = uses.reduce((small, { amount }) => Math.min(small, amount), whole);
  const most = Math.max(usual[size], isGrate ? MOST.grate : MOST.other);
  return Math.min(most, Math.max(usual[size], (LETTER / least) * whole));
}

/** The words of a use in its bar, beside it, or nowhere; a piece at least has its letter. */
function wordsOf(bar: Bar, room: { readonly from: number; readonly to: number }, taken: Taken[]): Mark[] {
  const { use, a, b, up, height } = bar;
  const baseline = up + height / 2 + 4.5;
  const width = widthOf(use.words);
  if (use.letter) {
    const size = Math.min(18, height - 1);
    const letter = [
      rect(a, up, size, height - 1, 'badge'),
      text(a + size / 2, baseline, use.letter, { anchor: 'middle', className: 'badgeT' }),
    ];
    return width + size + 12 < b - a ? [...letter, text(a + size + 6, baseline, use.words)] : letter;
  }
  if (width + 12 < b - a) return [text(a + 6, baseline, use.words)];
  const beside = [
    { from: b + OFF, to: b + OFF + width, anchor: 'start', x: b + OFF },
    { from: a - OFF - width, to: a - OFF, anchor: 'end', x: a - OFF },
  ] as const;
  const way = beside.find(
    ({ from, to }) =>
      from >= room.from &&
      to <= room.to &&
      taken.every((one) => one.to <= from || to <= one.from || one.down <= up || up + height <= one.up),
  );
  if (!way) return [];
  taken.push({ from: way.from, to: way.to, up, down: up + height });
  return [text(way.x, baseline, use.words, { anchor: way.anchor, className: 'ink' })];
}
