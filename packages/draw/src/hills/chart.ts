import type { Range } from '@pitwright/model';
import type { Drawing, Setting } from '../drawing.ts';
import { closed, line, type Mark, mark, type Point, rect, through } from '../mark.ts';
import { BODY, text, widthOf } from '../text.ts';
import type { Voice } from '../voice.ts';

/** An amount with its range, and its words, printed. */
export interface Hill {
  readonly range: Range;
  readonly words: string;
  readonly rangeWords: string;
}

export interface HillsData {
  /** What there is, above the line. */
  readonly above: Hill;
  /** What is wanted, below it. */
  readonly below: Hill;
  /** Figures of the axis with their words, in its own unit. */
  readonly ticks: readonly { readonly at: number; readonly words: string }[];
  readonly from: number;
  readonly to: number;
}

const PLOT = { top: 4, hill: 84, foot: 24 };
const STEPS = 96;
/** p10 to p90 of a normal, in standard deviations. */
const WIDTH_SD = 2 * 1.2815515655446004;

/** Height of a normal hill, 1 at its top. */
function heightAt(x: number, { p10, p50, p90 }: Range): number {
  const sd = Math.max((p90 - p10) / WIDTH_SD, 1e-9);
  const z = (x - p50) / sd;
  return Math.exp(-0.5 * z * z);
}

/** Two amounts against each other on one axis: what there is stands up, what is wanted hangs down. */
export function hillsChart(data: HillsData, setting: Setting, voice: Voice): Drawing {
  const { width, id } = setting;
  const middle = PLOT.top + PLOT.hill;
  const foot = middle + PLOT.hill;
  const left = 8;
  const right = width - 8;
  const x = (at: number): number =>
    left +
    ((Math.max(data.from, Math.min(data.to, at)) - data.from) / (data.to - data.from)) * (right - left);
  const shape = ({ range }: Hill, sign: 1 | -1): Point[] =>
    Array.from({ length: STEPS + 1 }, (_, i): Point => {
      const at = data.from + ((data.to - data.from) * i) / STEPS;
      return [x(at), middle - sign * (PLOT.hill - 8) * heightAt(at, range)];
    });
  const hill = (one: Hill, sign: 1 | -1): Mark[] => {
    const points = shape(one, sign);
    const filled: Point[] = [[x(data.from), middle], ...points, [x(data.to), middle]];
    const y = middle - sign * 8;
    const { p10, p50, p90 } = one.range;
    return [
      mark('path', {
        d: closed(filled),
        className: sign > 0 ? 'hillHas' : 'hillWants',
        ...(sign < 0 && { fill: `url(#${id}-wants)` }),
      }),
      mark('path', { d: through(points), className: 'hillEdge' }),
      line(x(p50), middle, x(p50), middle - sign * (PLOT.hill - 8), 'range1'),
      line(x(p10), y, x(p90), y, 'range'),
      line(x(p10), y - 4, x(p10), y + 4, 'range1'),
      line(x(p90), y - 4, x(p90), y + 4, 'range1'),
    ];
  };
  return {
    width,
    height: foot + PLOT.foot,
    marks: [
      mark('defs', {}, [
        mark(
          'pattern',
          {
            id: `${id}-wants`,
            width: 7,
            height: 7,
            patternUnits: 'userSpaceOnUse',
            patternTransform: 'rotate(45)',
          },
          [rect(0, 0, 7, 7, 'sheet'), line(0, 0, 0, 7, 'rule1')],
        ),
      ]),
      rect(left, PLOT.top, right - left, foot - PLOT.top, 'sheet'),
      ...data.ticks.flatMap(({ at }) => [line(x(at), PLOT.top, x(at), foot, 'grid1')]),
      ...hill(data.above, 1),
      ...hill(data.below, -1),
      line(left, middle, right, middle, 'rule1'),
      ...beside(data.above, { width, y: PLOT.top + 20, x }),
      ...beside(data.below, { width, y: foot - 26, x }),
      line(left, foot, right, foot, 'rule1'),
      ...data.ticks.flatMap(({ at, words }) => [
        line(x(at), foot, x(at), foot + 5, 'tick'),
        text(Math.min(x(at), width - widthOf(words) / 2), foot + 20, words, { anchor: 'middle' }),
      ]),
    ],
    sentence: voice.say({
      id: 'draw.hills',
      params: {
        above: data.above.words,
        aboveRange: data.above.rangeWords,
        below: data.below.words,
        belowRange: data.below.rangeWords,
      },
    }),
    table: {
      head: ['what', 'range'].map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: [data.above, data.below].map((one) => [one.words, one.rangeWords]),
    },
  };
}

/** Words of a hill on the side where the axis has more room. */
function beside(
  { words, rangeWords, range }: Hill,
  { width, y, x }: { width: number; y: number; x: (at: number) => number },
): Mark[] {
  const isLeft = x(range.p50) > width / 2;
  const at = isLeft ? 14 : width - 14;
  const anchor = isLeft ? 'start' : 'end';
  return [
    text(at, y, words, { size: BODY, anchor, className: 'ink strong halo' }),
    text(at, y + 18, rangeWords, { anchor, className: 'ink halo' }),
  ];
}
