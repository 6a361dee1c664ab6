import type { Range } from '@pitwright/model';
import { readyWords } from '../bands/chart.ts';
import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { line, type Mark } from '../mark.ts';
import { BODY, text, widthOf } from '../text.ts';
import { type Axis, timeAxis } from '../time/axis.ts';
import { rangeBar, tableLine } from '../time/lines.ts';
import { grid, rail } from '../time/rail.ts';
import type { Voice } from '../voice.ts';

/** One thing with a range along time: a piece, or one of several choices. Words are printed already. */
export interface RangeRow {
  readonly name: string;
  readonly range: Range;
  readonly remark?: string;
}

const LANE = { wide: 30, narrow: 46 };
const RAIL = { table: 13, foot: 44, height: 31 };

/** Ranges side by side on one axis that ends at the table. */
export function rangesChart(
  rows: readonly RangeRow[],
  { tableS, untilS, fromS, axis: shared }: { tableS: number; untilS: number; fromS?: number; axis?: Axis },
  setting: Setting,
  voice: Voice,
): Drawing {
  const narrow = isNarrow(setting.width);
  const left = narrow ? 0 : Math.min(240, Math.max(...rows.map((row) => widthOf(row.name, BODY))) + 16);
  const ends = rows.flatMap(({ range }) => [range.p10, range.p90]).filter(Number.isFinite);
  const from = fromS ?? Math.min(tableS - 3600, ...ends) - 1800;
  const to = Math.max(untilS + 1800, ...ends.map((end) => Math.min(end, untilS + 4 * 3600) + 900));
  const axis =
    shared ?? timeAxis(left, setting.width - (narrow ? 16 : 130), [{ fromS: from, toS: to, scale: 1 }]);
  const lane = narrow ? LANE.narrow : LANE.wide;
  const height = RAIL.foot + rows.length * lane + 6;
  const tableWords = voice.say({ id: 'draw.table', params: { time: voice.clock(tableS) } });
  const half = widthOf(tableWords) / 2;
  const marks: Mark[] = [
    ...grid(axis, voice, RAIL.foot, height - RAIL.foot),
    ...rail(axis, voice, RAIL.foot - RAIL.height, RAIL.height, {
      keepClear: [{ atS: tableS, halfWidth: 0 }],
      short: narrow,
    }),
    text(Math.min(axis.x(tableS), setting.width - half), RAIL.table, tableWords, {
      anchor: 'middle',
      className: 'ink strong',
    }),
    ...rows.flatMap(({ name, range, remark }, i): Mark[] => {
      const y = RAIL.foot + i * lane;
      const words = readyWords(range, voice);
      const note = remark ? `${words}, ${remark}` : words;
      return [
        ...(i > 0 ? [line(0, y, setting.width, y, 'grid1')] : []),
        text(0, y + 19, name, { size: BODY, className: 'ink strong halo' }),
        narrow
          ? text(setting.width, y + 19, note, { anchor: 'end', className: 'ink halo' })
          : text(axis.x1 + 12, y + 19, words, { className: 'ink strong' }),
        ...rangeBar(axis, range, narrow ? y + 33 : y + 14),
      ];
    }),
    ...tableLine(axis, tableS, untilS, RAIL.table + 5, height - RAIL.table - 5),
  ];
  return {
    width: setting.width,
    height,
    marks,
    sentence: voice.say({ id: 'draw.ranges', params: { count: rows.length, table: voice.clock(tableS) } }),
    table: {
      head: ['what', 'ready', 'remark'].map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: rows.map((row) => [row.name, readyWords(row.range, voice), row.remark ?? '']),
    },
  };
}
