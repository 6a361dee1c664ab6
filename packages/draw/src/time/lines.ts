import { line, type Mark, rect } from '../mark.ts';
import { SMALLEST, text, widthOf } from '../text.ts';
import type { Axis } from './axis.ts';

/** The table: a double rule at the hour and the serving window in grey. Nothing else is upright and heavy. */
export function tableLine(axis: Axis, atS: number, untilS: number, y: number, height: number): Mark[] {
  const x = axis.x(atS);
  return [
    rect(x, y, axis.x(untilS) - x, height, 'window'),
    line(x - 1.8, y, x - 1.8, y + height, 'tableA'),
    line(x + 2.2, y, x + 2.2, y + height, 'tableB'),
  ];
}

/** Now: one magenta line with a paper casing, and its flag at the top where words are given. */
export function nowLine(axis: Axis, atS: number, y: number, height: number, flag?: string): Mark[] {
  if (!(atS >= axis.fromS && atS <= axis.toS)) return [];
  const x = axis.x(atS);
  const marks = [line(x, y, x, y + height, 'nowCase'), line(x, y, x, y + height, 'nowLine')];
  if (!flag) return marks;
  const width = widthOf(flag) + 12;
  const left = Math.max(axis.x0, Math.min(axis.x1 - width, x - width / 2));
  return [
    ...marks,
    rect(left, y - SMALLEST - 7, width, SMALLEST + 7, 'nowFlag'),
    text(left + width / 2, y - 6, flag, { anchor: 'middle', className: 'nowText' }),
  ];
}

/** 10 to 90 % along time: a bar with ends and a tick at the median. Open to the right where the 90 % point is never. */
export function rangeBar(axis: Axis, range: { p10: number; p50: number; p90: number }, y: number): Mark[] {
  if (!(range.p10 < axis.toS)) return [];
  const left = axis.x(Math.max(axis.fromS, range.p10));
  const isOpen = !Number.isFinite(range.p90) || range.p90 > axis.toS;
  const right = isOpen ? axis.x1 : axis.x(range.p90);
  const marks = [line(left, y, right, y, 'range'), line(left, y - 3, left, y + 3, 'range1')];
  if (!isOpen) marks.push(line(right, y - 3, right, y + 3, 'range1'));
  if (Number.isFinite(range.p50) && range.p50 <= axis.toS)
    marks.push(line(axis.x(range.p50), y - 4, axis.x(range.p50), y + 4, 'range1'));
  return marks;
}
