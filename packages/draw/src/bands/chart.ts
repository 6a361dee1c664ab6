import { isWaiting, type Range } from '@pitwright/model';
import { type Drawing, type Ink, isNarrow, type Setting } from '../drawing.ts';
import { group, line, type Mark, rect } from '../mark.ts';
import { BODY, SMALLEST, text, widthOf } from '../text.ts';
import { type Axis, foldedAxis } from '../time/axis.ts';
import { frame, RAIL } from '../time/frame.ts';
import type { Night } from '../time/rail.ts';
import type { Voice } from '../voice.ts';
import { band } from './band.ts';
import { colourClass, hatches } from './hatches.ts';
import type { BandPiece } from './piece.ts';

export interface BandChartData {
  readonly pieces: readonly BandPiece[];
  /** Serving hour and the end of its window, seconds since 1970 UTC. */
  readonly tableS: number;
  readonly untilS: number;
  readonly nowS?: number;
  readonly nights?: readonly Night[];
  /** Stretches drawn folded: hours in which nothing needs the eye. `scale`: how much of the day's; missing: a third. */
  readonly quiet?: readonly { readonly fromS: number; readonly toS: number; readonly scale?: number }[];
  /** Left end of the axis; missing: half an hour before the first meat-on. */
  readonly fromS?: number;
  /** Right end of the axis; missing: forty minutes after the serving window. */
  readonly toS?: number;
}

/** A drawing whose axis other strips may share, and the part of it that lies on that axis. */
export interface StripDrawing extends Drawing {
  readonly axis: Axis;
  readonly plot: { readonly y: number; readonly height: number };
  /** Where the band of each piece lies: what can be dragged stands there. */
  readonly lanes: readonly { readonly letter: string; readonly y: number; readonly height: number }[];
}

interface Layout {
  readonly left: number;
  readonly right: number;
  readonly lane: number;
  /** Of the band within its lane. */
  readonly bandTop: number;
  readonly band: number;
  readonly fold: number;
}

/** Wide: names left, ranges right. Narrow: names and ranges above each band. Black: the lanes of a printed sheet. */
function layoutOf(width: number, ink: Ink): Layout {
  if (isNarrow(width)) return { left: 0, right: 16, lane: 54, bandTop: 24, band: 19, fold: 1 / 4 };
  if (ink === 'black') return { left: 184, right: 24, lane: 25, bandTop: 4, band: 13, fold: 1 / 3 };
  return { left: width < 1000 ? 208 : 230, right: 190, lane: 36, bandTop: 5, band: 20, fold: 1 / 3 };
}

const LEAD_S = 1800;
/** The axis runs on past the serving window, so that what comes late is seen. */
const TAIL_S = 2400;

/** The axis of a chart of bands at this width: other strips of the page take the same. */
export function bandAxis(data: BandChartData, { width, ink = 'colour' }: Setting): Axis {
  const { left, right, fold } = layoutOf(width, ink);
  const firstS = Math.min(...data.pieces.map((piece) => piece.onS), data.tableS - 3600);
  const from = data.fromS ?? firstS - LEAD_S;
  return foldedAxis(left, width - right, from, data.toS ?? data.untilS + TAIL_S, data.quiet ?? [], fold);
}

/** `12:35–13:40`, or when it gets there at all. */
export function readyWords(ready: Range, voice: Voice): string {
  if (!Number.isFinite(ready.p10)) return voice.say({ id: 'draw.never' });
  if (!Number.isFinite(ready.p90))
    return voice.say({ id: 'draw.from', params: { time: voice.clockRange(ready.p10, ready.p10) } });
  return voice.clockRange(ready.p10, ready.p90);
}

const doneWords = (piece: BandPiece, voice: Voice): string =>
  piece.readyAtS === undefined ? readyWords(piece.ready, voice) : voice.clock(piece.readyAtS);

/** The letter in its square: drawn everywhere the piece is meant. */
export const badge = (letter: string, x: number, y: number, size = 22): Mark[] => [
  rect(x, y, size, size, 'badge'),
  text(x + size / 2, y + size / 2 + SMALLEST * 0.36, letter, { anchor: 'middle', className: 'badgeT' }),
];

/** As much of a name as its column holds, cut at a word; dots tell that there is more. */
function fitted(name: string, width: number, size: number): string {
  if (widthOf(name, size) <= width) return name;
  const words = name.split(' ');
  const cut = (): string => `${words.join(' ').replace(/[,;]$/, '')}…`;
  do words.pop();
  while (words.length > 1 && widthOf(cut(), size) > width);
  return words.length > 0 ? cut() : name;
}

function laneWords(
  piece: BandPiece,
  layout: Layout,
  y: number,
  { width, ink, tableX, voice }: { width: number; ink: Ink; tableX: number; voice: Voice },
): Mark[] {
  const done = doneWords(piece, voice);
  if (isNarrow(width)) {
    return [
      ...badge(piece.letter, 0, y + 1, 20),
      text(28, y + 16, fitted(piece.name, tableX - 48 - widthOf(done, BODY), BODY), {
        size: BODY,
        className: 'ink strong halo',
      }),
      text(tableX - 10, y + 16, done, {
        size: BODY,
        anchor: 'end',
        className: 'ink strong halo',
      }),
    ];
  }
  if (ink === 'black')
    return [
      text(0, y + 16, fitted(`${piece.letter} ${piece.name}`, layout.left - 8, SMALLEST), {
        className: 'ink strong',
      }),
    ];
  const right = width - layout.right;
  // Twelve-hour ranges over noon are long: the bite then stands under the hours.
  const isBeside = 12 + widthOf(done, BODY) + 8 + widthOf(piece.bite) <= layout.right;
  const nameRoom = layout.left - 38;
  const isRoom = widthOf(piece.name, BODY) + widthOf(piece.remark ?? '') + 12 <= nameRoom;
  const remark = isRoom ? (piece.remark ?? '') : '';
  return [
    ...badge(piece.letter, 0, y + 4),
    text(30, y + 20, fitted(piece.name, nameRoom, BODY), {
      size: BODY,
      className: 'ink strong',
    }),
    ...(remark ? [text(layout.left - 8, y + 20, remark, { anchor: 'end', className: 'ink2' })] : []),
    text(right + 12, y + 20, done, { size: BODY, className: 'ink strong' }),
    isBeside
      ? text(width, y + 20, piece.bite, { anchor: 'end', className: 'ink2' })
      : text(right + 12, y + 34, piece.bite, { className: 'ink2' }),
  ];
}

/** Where a stage is not on the pit: a rule over the band and the word in it; over the thin rule of a waiting piece. */
function placeWords(
  piece: BandPiece,
  axis: Axis,
  { bandTop }: Layout,
  laneY: number,
  tableS: number,
): Mark[] {
  return piece.stages.flatMap((stage, i) => {
    if (!stage.place || !Number.isFinite(stage.start.p50)) return [];
    const next = piece.stages[i + 1]?.start.p50 ?? tableS;
    const begins = isWaiting(stage.kind) ? Math.max(piece.ready.p90, stage.start.p50) : stage.start.p50;
    const [a, b] = [axis.x(begins), axis.x(Math.min(next, tableS, axis.toS))];
    const y = laneY + bandTop;
    const isRoom = widthOf(stage.place) + 4 < b - a;
    const word = (baseline: number): Mark[] =>
      isRoom ? [text((a + b) / 2, baseline, stage.place!, { anchor: 'middle', className: 'ink halo' })] : [];
    return isWaiting(stage.kind) ? word(y + 5) : [line(a, y - 2, b, y - 2, 'range1'), ...word(y + 14)];
  });
}

/** All pieces of a cook on one axis that ends at the table. */
export function bandChart(data: BandChartData, setting: Setting, voice: Voice): StripDrawing {
  const { width, ink = 'colour', id } = setting;
  const layout = layoutOf(width, ink);
  const axis = bandAxis(data, setting);
  const top = RAIL.foot;
  const plotHeight = data.pieces.length * layout.lane + 6;
  const height = top + plotHeight;
  const { behind, before } = frame(axis, voice, {
    ...data,
    tableWords: voice.say({ id: 'draw.table', params: { time: voice.clock(data.tableS) } }),
    nights: data.nights ?? [],
    width,
    height: plotHeight,
    isShort: isNarrow(width),
  });
  const marks: Mark[] = [
    ...behind,
    ...data.pieces.map((piece, i) => {
      const y = top + i * layout.lane;
      const rule = i > 0 ? [line(0, y, width, y, 'grid1')] : [];
      return group(
        [
          hatches(
            id,
            piece.letter,
            ink,
            piece.stages.map((stage) => stage.kind),
          ),
          ...rule,
          ...band(axis, { y: y + layout.bandTop, height: layout.band }, piece, { id, tableS: data.tableS }),
          ...laneWords(piece, layout, y, { width, ink, tableX: axis.x(data.tableS), voice }),
          ...(ink === 'black' || isNarrow(width) ? [] : placeWords(piece, axis, layout, y, data.tableS)),
        ],
        { className: ink === 'black' ? 'pc' : colourClass(piece.letter) },
      );
    }),
    ...before,
  ];
  return {
    width,
    height,
    marks,
    axis,
    plot: { y: top, height: plotHeight },
    lanes: data.pieces.map(({ letter }, i) => ({
      letter,
      y: top + i * layout.lane + layout.bandTop,
      height: layout.band,
    })),
    sentence: voice.say({
      id: 'draw.bands',
      params: { count: data.pieces.length, table: voice.clock(data.tableS) },
    }),
    table: {
      head: ['piece', 'name', 'on', 'ready', 'bite'].map((column) =>
        voice.say({ id: `draw.head-${column}` }),
      ),
      rows: data.pieces.map((piece) => [
        piece.letter,
        piece.name,
        voice.clock(piece.onS),
        doneWords(piece, voice),
        piece.bite,
      ]),
    },
  };
}
