import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { line, type Mark, type Point, path, px, rect, through } from '../mark.ts';
import { text } from '../text.ts';

/** One scale of the balance: what it measures and where the formula stands on it. Words are printed already. */
export interface BalanceScale {
  readonly name: string;
  readonly shortName: string;
  readonly unit: string;
  /** At the foot and at the head; `from` may be the larger one. */
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  /** Missing where nobody knows. */
  readonly value?: number;
  /** 8 times in 10. */
  readonly doubt?: readonly [number, number];
  readonly wanted?: readonly [number, number];
  /** After the change that is looked at. */
  readonly other?: number;
  readonly print: (value: number) => string;
}

const HEAD = 42;
const HEIGHT = { wide: 270, narrow: 236 };
const FOOT = 12;
/** Room that a figure under its point needs. */
const LABEL = 20;

const dot = (x: number, y: number, r: number, className: string): Mark =>
  path(`M${px(x - r)} ${px(y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`, className);

/** The strokes between neighbours that are both known. */
function strokes(points: readonly (Point | undefined)[], className: string): Mark[] {
  const runs: Point[][] = [[]];
  for (const point of points) {
    if (point) runs.at(-1)!.push(point);
    else runs.push([]);
  }
  return runs.filter((run) => run.length > 1).map((run) => path(through(run), className));
}

/** A formula as one line across several scales, with its doubt, what was wanted, and a change of it dashed. */
export function balanceLine(
  scales: readonly BalanceScale[],
  words: { readonly sentence: string; readonly head: readonly string[] },
  setting: Setting,
): Drawing {
  const narrow = isNarrow(setting.width);
  const height = narrow ? HEIGHT.narrow : HEIGHT.wide;
  const left = narrow ? 30 : 44;
  const right = narrow ? 24 : 52;
  const x = (i: number): number =>
    left + (i * (setting.width - left - right)) / Math.max(1, scales.length - 1);
  const y0 = HEAD;
  const y1 = height - FOOT;
  const y = (scale: BalanceScale, value: number): number => {
    const share = (value - scale.from) / (scale.to - scale.from);
    return y1 - Math.min(1, Math.max(0, share)) * (y1 - y0);
  };
  const span = (
    scale: BalanceScale,
    i: number,
    [a, b]: readonly [number, number],
    half: number,
    className: string,
  ) =>
    rect(
      x(i) - half,
      Math.min(y(scale, a), y(scale, b)),
      2 * half,
      Math.abs(y(scale, a) - y(scale, b)),
      className,
    );
  const axes = scales.flatMap((scale, i): Mark[] => {
    const ticks = narrow ? [scale.ticks[0]!, scale.ticks.at(-1)!] : scale.ticks;
    return [
      ...(scale.wanted ? [span(scale, i, scale.wanted, 9, 'wantedBox')] : []),
      ...(scale.doubt ? [span(scale, i, scale.doubt, 5, 'doubtBox')] : []),
      line(x(i), y0, x(i), y1, 'rule1'),
      ...ticks.flatMap((tick) => [
        line(x(i) - 5, y(scale, tick), x(i), y(scale, tick), 'tick'),
        text(x(i) - 8, y(scale, tick) + 4.5, scale.print(tick), {
          anchor: 'end',
          className: 'ink2 haloPaper',
        }),
      ]),
      text(x(i), 14, narrow ? scale.shortName : scale.name, { anchor: 'middle', className: 'ink strong' }),
      text(x(i), 30, scale.unit, { anchor: 'middle', className: 'ink2' }),
    ];
  });
  const at = (value: 'value' | 'other') =>
    scales.map((scale, i): Point | undefined => {
      const known = scale[value];
      return known === undefined ? undefined : [x(i), y(scale, known)];
    });
  const now = at('value');
  const other = at('other');
  const figures = scales.flatMap((scale, i): Mark[] => {
    const here = now[i];
    if (!here || scale.value === undefined) return [];
    // Beside the point, on the side that the line to the next scale leaves free.
    const next = now[i + 1];
    const isBelow = (next ? next[1] < here[1] : true) && here[1] < y1 - LABEL;
    return [
      text(here[0] + 8, here[1] + (isBelow ? 19 : -9), scale.print(scale.value), {
        size: narrow ? 13.5 : 16,
        className: 'ink strong haloPaper',
      }),
    ];
  });
  const said = (value: number | undefined, scale: BalanceScale): string =>
    value === undefined ? '?' : scale.print(value);
  const pair = (range: readonly [number, number] | undefined, scale: BalanceScale): string =>
    range ? `${scale.print(range[0])}–${scale.print(range[1])}` : '';
  return {
    width: setting.width,
    height,
    marks: [
      ...axes,
      ...strokes(other, 'lineOther'),
      ...strokes(now, 'lineNow'),
      ...other.flatMap((point) => (point ? [dot(point[0], point[1], 4, 'dotOther')] : [])),
      ...now.flatMap((point) => (point ? [dot(point[0], point[1], 5.5, 'dotNow')] : [])),
      ...figures,
    ],
    sentence: words.sentence,
    table: {
      head: words.head,
      rows: scales.map((scale) => [
        `${scale.name}, ${scale.unit}`,
        said(scale.value, scale),
        pair(scale.doubt, scale),
        pair(scale.wanted, scale),
        scale.other === undefined ? '' : said(scale.other, scale),
      ]),
    },
  };
}
