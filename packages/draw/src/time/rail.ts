import { line, type Mark, path, px, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { Voice } from '../voice.ts';
import type { Axis } from './axis.ts';

const QUARTER_S = 900;
const HOUR_S = 3600;
/** Room that a label of the rail keeps to its neighbour [px]. */
const GAP = 8;
/** A rule stands off the words that break it by this much [px]. */
const OFF = 2;

/** A night as the sky gives it: shade from sunset to sunrise, deeper between the ends of twilight. */
export interface Night {
  readonly sunsetS: number;
  readonly darkFromS: number;
  readonly darkToS: number;
  readonly sunriseS: number;
}

/** Shade of the nights behind everything. */
export function nightShade(axis: Axis, nights: readonly Night[], y: number, height: number): Mark[] {
  const shade = (fromS: number, toS: number, className: string): Mark[] => {
    const a = axis.x(Math.max(axis.fromS, fromS));
    const b = axis.x(Math.min(axis.toS, toS));
    return toS > axis.fromS && fromS < axis.toS && b > a ? [rect(a, y, b - a, height, className)] : [];
  };
  return nights.flatMap((night) => [
    ...shade(night.sunsetS, night.sunriseS, 'night'),
    ...shade(night.darkFromS, night.darkToS, 'night2'),
  ]);
}

/** Instants on full quarters of the wall within the axis. Every zone in use is offset by whole quarters. */
function quarters(axis: Axis): number[] {
  const first = Math.ceil(axis.fromS / QUARTER_S) * QUARTER_S;
  const found: number[] = [];
  for (let atS = first; atS <= axis.toS; atS += QUARTER_S) found.push(atS);
  return found;
}

const scaleAt = (axis: Axis, atS: number): number =>
  (axis.stretches.find((s) => atS <= s.toS) ?? axis.stretches[axis.stretches.length - 1]!).scale;

/** Fine upright rules: hours, and quarters where there is room. */
export function grid(axis: Axis, voice: Voice, y: number, height: number): Mark[] {
  return quarters(axis).flatMap((atS) => {
    const isHour = voice.wallMinutes(atS) % 60 === 0;
    const room = (axis.hourPx * scaleAt(axis, atS)) / 4;
    if (!isHour && room < 10) return [];
    const x = axis.x(atS);
    return [line(x, y, x, y + height, isHour ? 'grid1' : 'grid0')];
  });
}

/** A box that a rule does not run through [px]. */
interface Clear {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Barbs at the rail and a dotted rule where the scale of time changes, broken where words stand. */
export function foldMarks(axis: Axis, y: number, height: number, words: readonly Clear[] = []): Mark[] {
  return axis.stretches
    .slice(1)
    .flatMap(({ x0 }) => [
      path(`M${px(x0)} ${px(y)}l-4 4l8 5l-4 4`, 'fold'),
      ...broken(x0, y + 13, y + height, words).map(([from, to]) => line(x0, from, x0, to, 'foldL')),
    ]);
}

/** What is left of an upright rule beside the words that stand on it. */
function broken(x: number, from: number, to: number, words: readonly Clear[]): [number, number][] {
  const left: [number, number][] = [];
  let at = from;
  for (const { y0, y1 } of words
    .filter(({ x0, x1 }) => x0 - OFF < x && x < x1 + OFF)
    .sort((a, b) => a.y0 - b.y0)) {
    if (y0 - OFF > at) left.push([at, y0 - OFF]);
    at = Math.max(at, y1 + OFF);
  }
  if (to > at) left.push([at, to]);
  return left;
}

/** The least step of labelled hours whose figures do not touch. */
function hoursApart(axis: Axis, labelPx: number): number {
  for (const step of [1, 2, 3, 4, 6, 12]) if (axis.hourPx * step >= labelPx + GAP) return step;
  return 24;
}

export interface RailOptions {
  /** Instants whose own label stands here: hours near them are not written. */
  readonly keepClear?: readonly { readonly atS: number; readonly halfWidth: number }[];
  readonly short?: boolean;
}

/** The rail: ticks, hours and the names of the days. `y` is its top, the ticks stand on `y + height`. */
export function rail(
  axis: Axis,
  voice: Voice,
  y: number,
  height: number,
  { keepClear = [], short = false }: RailOptions = {},
): Mark[] {
  const marks: Mark[] = [];
  const foot = y + height;
  const name = short ? voice.shortHour : voice.hour;
  const labelPx = widthOf(name(axis.toS));
  const everyDay = hoursApart(axis, labelPx);
  let lastLabelEnd = -Infinity;
  for (const atS of quarters(axis)) {
    const wall = voice.wallMinutes(atS);
    const scale = scaleAt(axis, atS);
    const isHour = wall % 60 === 0;
    if (!isHour && (axis.hourPx * scale) / 2 < 8) continue;
    if (!isHour && wall % 30 !== 0) continue;
    const x = axis.x(atS);
    const every = everyDay * Math.ceil(1 / scale - 1e-9);
    const isLabelled = isHour && Math.round(wall / 60) % every === 0;
    marks.push(line(x, foot - (isLabelled ? 9 : isHour ? 6 : 3), x, foot, 'tick'));
    if (!isLabelled) continue;
    const words = name(atS);
    const half = widthOf(words) / 2;
    const blocked =
      x - half < axis.x0 - 24 ||
      x - half < lastLabelEnd + GAP ||
      keepClear.some((clear) => Math.abs(axis.x(clear.atS) - x) < clear.halfWidth + half + GAP);
    if (blocked) continue;
    marks.push(text(x, foot - 13, words, { anchor: 'middle' }));
    lastLabelEnd = x + half;
  }
  marks.push(line(axis.x0, foot, axis.x1, foot, 'rule1'));
  return marks;
}

/** Names of the days above the rail: at the left edge and at each midnight, where they have room. */
export function dayNames(axis: Axis, voice: Voice, y: number, untilX = axis.x1): Mark[] {
  const marks = [text(axis.x0, y, voice.day(axis.fromS), { className: 'ink strong' })];
  let clearFrom = axis.x0 + widthOf(voice.day(axis.fromS)) + GAP;
  for (let atS = Math.ceil(axis.fromS / QUARTER_S) * QUARTER_S; atS < axis.toS - HOUR_S; atS += QUARTER_S) {
    if (voice.wallMinutes(atS) !== 0) continue;
    const x = axis.x(atS);
    if (x - 4 < clearFrom || x + 5 + widthOf(voice.day(atS)) + GAP > untilX) continue;
    marks.push(line(x, y - 11, x, y + 3, 'tick'));
    marks.push(text(x + 5, y, voice.day(atS), { className: 'ink strong' }));
    clearFrom = x + 5 + widthOf(voice.day(atS)) + GAP;
  }
  return marks;
}
