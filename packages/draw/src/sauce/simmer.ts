import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { closed, group, line, type Mark, mark, type Point, path, rect, through } from '../mark.ts';
import { BODY, text, widthOf } from '../text.ts';

/** What the pot is after some time on the burner. Levels count looks: 2 begins the third of them. */
export interface SimmerMoment {
  readonly timeS: number;
  readonly massG: number;
  readonly level: number;
  /** Were it thinner, and thicker, than foreseen: 8 times in 10. */
  readonly lowLevel: number;
  readonly highLevel: number;
}

export interface SimmerChart {
  readonly moments: readonly SimmerMoment[];
  /** After the change that is looked at. */
  readonly other?: readonly SimmerMoment[];
  /** How much shorter and longer the same may take, 8 times in 10 [1]. */
  readonly fast: number;
  readonly slow: number;
  /** Where it is stopped. */
  readonly target: { readonly timeS: number; readonly massG: number; readonly level: number };
}

export interface SimmerWords {
  readonly sentence: string;
  /** Names of the looks, thinnest first. */
  readonly looks: readonly string[];
  readonly massHead: string;
  readonly lookHead: string;
  readonly minutes: (timeS: number) => string;
  readonly minutesUnit: string;
  readonly mass: (massG: number) => string;
  readonly target: string;
  readonly targetMass: string;
  readonly head: readonly string[];
}

/** A chart whose scales can be asked, so that a grip can be laid over it. */
export interface SimmerDrawing extends Drawing {
  readonly x: (timeS: number) => number;
  readonly y: (level: number) => number;
  readonly timeAt: (x: number) => number;
}

const HEIGHT = { wide: 300, narrow: 270 };
const TOP = 26;
const FOOT = 36;
const STEPS_S = [60, 120, 300, 600, 900, 1800, 3600, 7200];
const MASS_STEPS_G = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** At least so many looks are shown, so that the curve has something to climb through. */
const LEAST_LOOKS = 3;

/** First and last look of the axis: those that the curve and its doubt pass through, the thicker neighbours first. */
function looksPassed(moments: readonly SimmerMoment[], count: number): readonly [first: number, end: number] {
  const lowest = Math.min(...moments.map((moment) => moment.lowLevel));
  const highest = Math.max(...moments.map((moment) => moment.highLevel));
  const first = Math.min(count - 1, Math.max(0, Math.floor(lowest)));
  const end = Math.min(count, Math.max(first + 1, Math.ceil(highest)));
  const wanted = Math.min(count, Math.max(end, first + LEAST_LOOKS));
  return [Math.min(first, Math.max(0, wanted - LEAST_LOOKS)), wanted];
}

const stepFor = (span: number, most: number, steps: readonly number[]): number =>
  steps.find((step) => span / step <= most) ?? steps.at(-1)!;

/** Mass and look against the minutes on the burner, with their doubt, and where it is stopped. */
export function simmerChart(chart: SimmerChart, words: SimmerWords, setting: Setting): SimmerDrawing {
  const narrow = isNarrow(setting.width);
  const { moments, target } = chart;
  const height = narrow ? HEIGHT.narrow : HEIGHT.wide;
  const masses = moments.map((moment) => moment.massG);
  const mostG = Math.max(...masses);
  const leastG = Math.min(...masses);
  const massStep = stepFor(mostG - leastG, 3, MASS_STEPS_G);
  const g0 = Math.floor(leastG / massStep) * massStep;
  const g1 = Math.ceil(mostG / massStep) * massStep;
  const x0 = narrow ? 46 : 58;
  const x1 = setting.width - Math.max(...words.looks.map((look) => widthOf(look, narrow ? 13.5 : BODY))) - 12;
  const y0 = TOP;
  const y1 = height - FOOT;
  // As far as the fastest run is known: beyond it a band would have one side only.
  const endS = moments.at(-1)!.timeS * chart.fast;
  const x = (timeS: number): number => x0 + (timeS / endS) * (x1 - x0);
  const all = chart.other ? [...moments, ...chart.other] : moments;
  const [firstLook, endLook] = looksPassed(all, words.looks.length);
  const y = (level: number): number =>
    y1 - ((Math.min(endLook, Math.max(firstLook, level)) - firstLook) / (endLook - firstLook)) * (y1 - y0);
  const yMass = (massG: number): number => y1 - ((massG - g0) / (g1 - g0)) * (y1 - y0);
  const along = (of: (moment: SimmerMoment) => number, time = 1): Point[] =>
    moments.map((moment) => [x(moment.timeS * time), of(moment)]);
  const band = (upper: readonly Point[], lower: readonly Point[], className: string): Mark =>
    path(closed([...upper, ...[...lower].reverse()]), className);
  const timeStep = stepFor(endS, narrow ? 4 : 7, STEPS_S);
  const targetLook = Math.min(5, Math.floor(target.level));
  const marks: Mark[] = words.looks.slice(firstLook, endLook).flatMap((look, place) => {
    const i = firstLook + place;
    return [
      ...(i % 2 === 1 ? [rect(x0, y(i + 1), x1 - x0, y(i) - y(i + 1), 'lookBand')] : []),
      line(x0, y(i), x1, y(i), 'grid1'),
      text(x1 + 8, y(i + 0.5) + 5, look, {
        size: narrow ? 13.5 : BODY,
        className: i === targetLook ? 'ink strong' : 'ink2',
      }),
    ];
  });
  for (let timeS = 0; timeS <= endS; timeS += timeStep) {
    marks.push(
      line(x(timeS), y0, x(timeS), y1, 'grid1'),
      line(x(timeS), y1, x(timeS), y1 + 5, 'tick'),
      text(x(timeS), y1 + 20, words.minutes(timeS), { anchor: 'middle' }),
    );
  }
  marks.push(text(x1 + 8, y1 + 20, words.minutesUnit, { className: 'ink2' }));
  const clip = `${setting.id}-plot`;
  marks.push(
    mark('defs', {}, [mark('clipPath', { id: clip }, [rect(x0, y0, x1 - x0, y1 - y0, '')])]),
    group(
      [
        band(
          along((m) => yMass(m.massG), chart.fast),
          along((m) => yMass(m.massG), chart.slow),
          'massBand',
        ),
        band(
          along((m) => y(m.highLevel), chart.fast),
          along((m) => y(m.lowLevel), chart.slow),
          'lookDoubt',
        ),
        path(through(along((m) => yMass(m.massG))), 'massLine'),
        ...(chart.other
          ? [path(through(chart.other.map((m): Point => [x(m.timeS), y(m.level)])), 'lineOther')]
          : []),
        path(through(along((m) => y(m.level))), 'lineNow'),
      ],
      { clipPath: `url(#${clip})` },
    ),
  );
  for (let g = g0; g <= g1; g += massStep)
    marks.push(
      line(x0 - 5, yMass(g), x0, yMass(g), 'waterTick'),
      text(x0 - 8, yMass(g) + 4.5, words.mass(g), { anchor: 'end', className: 'waterText' }),
    );
  const tx = x(target.timeS);
  const ty = y(target.level);
  const isRight = tx < (x0 + x1) / 2;
  const label = (dy: number, said: string, className: string, size: number): Mark =>
    text(tx + (isRight ? 24 : -24), ty + dy, said, { size, anchor: isRight ? 'start' : 'end', className });
  marks.push(
    text(narrow ? 0 : x0 - 8, 14, words.massHead, {
      anchor: narrow ? 'start' : 'end',
      className: 'waterText',
    }),
    text(x1 + 8, 14, words.lookHead, { className: 'ink2' }),
    line(x(target.timeS * chart.fast), y1, Math.min(x1, x(target.timeS * chart.slow)), y1, 'targetRange'),
    line(x0, ty, tx, ty, 'targetDrop'),
    line(tx, ty, tx, y1, 'range1'),
    label(isRight ? 24 : 46, words.target, 'ink strong haloPaper', 19),
    label(isRight ? 42 : 64, words.targetMass, 'ink haloPaper', 13.5),
  );
  return {
    width: setting.width,
    height,
    marks,
    sentence: words.sentence,
    table: {
      head: words.head,
      rows: moments
        .filter((_, i) => i % Math.ceil(moments.length / 8) === 0)
        .map((m) => [
          `${words.minutes(m.timeS)} ${words.minutesUnit}`,
          words.mass(m.massG),
          words.looks[Math.min(5, Math.floor(m.level))]!,
        ]),
    },
    x,
    y,
    timeAt: (at) => (Math.min(x1, Math.max(x0, at)) - x0) * (endS / (x1 - x0)),
  };
}
