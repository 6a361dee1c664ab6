import { type Mark, rect } from '../mark.ts';
import { boxOf, text, widthOf } from '../text.ts';
import type { Voice } from '../voice.ts';
import type { Axis } from './axis.ts';
import { nowLine, tableLine } from './lines.ts';
import { dayNames, foldMarks, grid, type Night, nightShade, rail } from './rail.ts';

/** From the top of a strip [px]: the line its day names stand on, the foot of the rail, which its lanes hang from, and the rail's height. */
export const RAIL = { days: 13, foot: 44, height: 31 };
/** The double rule of the table begins this far under the words of its hour [px]. */
const UNDER_WORDS = 5;

interface Framed {
  /** Serving hour and the end of its window, seconds since 1970 UTC. */
  readonly tableS: number;
  readonly untilS: number;
  readonly tableWords: string;
  readonly nowS?: number | undefined;
  readonly nights: readonly Night[];
  /** Of the drawing [px]. */
  readonly width: number;
  /** Of all that hangs from the rail [px]. */
  readonly height: number;
  /** Hours of the rail in few figures. */
  readonly isShort: boolean;
  /** Words of the lanes, which the rules of a fold leave clear. */
  readonly words?: readonly Mark[];
}

/** What a strip of lanes along time stands in: behind them nights, hours and the rail, before them the table's rule and now. */
export function frame(axis: Axis, voice: Voice, of: Framed): { behind: Mark[]; before: Mark[] } {
  const { tableS, tableWords, nowS, width, height, isShort } = of;
  const half = widthOf(tableWords) / 2;
  const tableX = Math.min(axis.x(tableS), width - half);
  const nowWords =
    nowS === undefined ? undefined : voice.say({ id: 'draw.now', params: { time: voice.clock(nowS) } });
  const keepClear = [
    { atS: tableS, halfWidth: 0 },
    ...(nowS === undefined || !nowWords ? [] : [{ atS: nowS, halfWidth: widthOf(nowWords) / 2 + 6 }]),
  ];
  const ruleY = RAIL.days + UNDER_WORDS;
  return {
    behind: [
      rect(axis.x0, RAIL.foot, axis.x1 - axis.x0, height, 'sheet'),
      ...nightShade(axis, of.nights, RAIL.foot, height),
      ...grid(axis, voice, RAIL.foot, height),
      ...foldMarks(axis, RAIL.foot - 5, height + 5, of.words?.map(boxOf)),
      ...dayNames(axis, voice, RAIL.days, tableX - half),
      ...rail(axis, voice, RAIL.foot - RAIL.height, RAIL.height, { keepClear, short: isShort }),
      text(tableX, RAIL.days, tableWords, { anchor: 'middle', className: 'ink strong' }),
    ],
    before: [
      ...tableLine(axis, tableS, of.untilS, ruleY, RAIL.foot + height - ruleY),
      ...(nowS === undefined ? [] : nowLine(axis, nowS, RAIL.foot, height, nowWords)),
    ],
  };
}
