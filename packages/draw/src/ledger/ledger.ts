import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { closed, line, type Mark, type Point, path, rect } from '../mark.ts';
import { text, widthOf } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import type { Voice } from '../voice.ts';

/** Heat into one piece over time: what dries it and what warms it [W]. Times are seconds since 1970 UTC. */
export interface HeatLedger {
  readonly letter: string;
  readonly timesS: readonly number[];
  readonly intoW: readonly number[];
  /** Of it, what goes into vapour. */
  readonly driesW: readonly number[];
}

/** A round figure at or above the greatest value, whose half is round too. */
function roundTop(value: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(1, value)));
  return [1, 1.2, 1.6, 2, 3, 4, 6, 8, 10].map((k) => k * power).find((top) => top >= value) ?? 10 * power;
}

/** The *why* of a piece: watts into it, parted into what dries it (water colour) and what warms it (heat colour). */
export function heatLedger(
  ledger: HeatLedger,
  setting: Setting,
  voice: Voice,
  { axis, height = 130 }: { axis: Axis; height?: number },
): Drawing {
  const shown: Shown[] = ledger.timesS
    .map((atS, i) => ({ atS, into: Math.max(0, ledger.intoW[i]!), dries: Math.max(0, ledger.driesW[i]!) }))
    .filter(({ atS }) => atS >= axis.fromS && atS <= axis.toS);
  const top = roundTop(Math.max(1, ...shown.map((s) => s.into)));
  const foot = height - 8;
  const room = foot - 14;
  const y = (watts: number): number => foot - (Math.min(watts, top) / top) * room;
  const area = (pick: (s: (typeof shown)[number]) => number): string => {
    const upper = shown.map((s): Point => [axis.x(s.atS), y(pick(s))]);
    const first = upper[0];
    const last = upper[upper.length - 1];
    return first && last ? closed([...upper, [last[0], foot], [first[0], foot]]) : '';
  };
  const narrow = isNarrow(setting.width);
  const figures = [0, top / 2, top].flatMap((watts): Mark[] => [
    line(axis.x0 - 6, y(watts), axis.x0, y(watts), 'tick'),
    text(
      narrow ? axis.x0 + 2 : axis.x0 - 10,
      y(watts) + (narrow ? -3 : 5),
      voice.say({ id: 'draw.watts', params: { watts } }),
      {
        anchor: narrow ? 'start' : 'end',
        className: narrow ? 'ink2 halo' : 'ink2',
      },
    ),
  ]);
  const dries = (s: Shown): number => Math.min(s.dries, s.into);
  const spots = shown.map((s) => ({ x: axis.x(s.atS), intoY: y(s.into), driesY: y(dries(s)), footY: foot }));
  const driesAt = roomiest(spots, 'driesY', 'footY');
  const warmsAt = roomiest(spots, 'intoY', 'driesY');
  const marks: Mark[] = [
    path(
      area((s) => s.into),
      'warms',
    ),
    path(area(dries), 'dries'),
    line(axis.x0, foot, axis.x1, foot, 'rule1'),
    ...figures,
    ...(narrow ? keyOf(axis.x1, voice) : []),
    ...(warmsAt && !narrow
      ? [text(warmsAt.x, warmsAt.y, voice.say({ id: 'draw.warms' }), { className: 'ink halo strong' })]
      : []),
    ...(driesAt?.isInside && !narrow
      ? [text(driesAt.x, driesAt.y, voice.say({ id: 'draw.dries' }), { className: 'ink halo strong' })]
      : []),
  ];
  const hourly = shown.filter((_, i) => i % Math.max(1, Math.floor(shown.length / 12)) === 0);
  return {
    width: setting.width,
    height,
    marks,
    sentence: voice.say({
      id: 'draw.ledger',
      params: { letter: ledger.letter, share: shareDrying(shown) },
    }),
    table: {
      head: ['time', 'into', 'dries', 'warms'].map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: hourly.map((s) => [
        voice.clock(s.atS),
        voice.say({ id: 'draw.watts', params: { watts: s.into } }),
        voice.say({ id: 'draw.watts', params: { watts: s.dries } }),
        voice.say({ id: 'draw.watts', params: { watts: Math.max(0, s.into - s.dries) } }),
      ]),
    },
  };
}

interface Shown {
  readonly atS: number;
  readonly into: number;
  readonly dries: number;
}

interface Spot {
  readonly x: number;
  readonly intoY: number;
  readonly driesY: number;
  readonly footY: number;
}

/** A label of two short words, and the line it stands on. */
const LABEL = { width: 70, height: 20, baseline: 5 } as const;

/**
 * Where a label has most room between two edges over its whole width; above the upper edge where no place is high
 * enough. Undefined where the chart is narrower than the label.
 */
function roomiest(
  spots: readonly Spot[],
  upper: 'intoY' | 'driesY',
  lower: 'driesY' | 'footY',
): { readonly x: number; readonly y: number; readonly isInside: boolean } | undefined {
  let best: { x: number; top: number; bottom: number } | undefined;
  for (const [i, { x }] of spots.entries()) {
    if (x + LABEL.width > spots.at(-1)!.x) break;
    const over = spots.slice(i).filter((spot) => spot.x <= x + LABEL.width);
    const top = Math.max(...over.map((spot) => spot[upper]));
    const bottom = Math.min(...over.map((spot) => spot[lower]));
    if (!best || bottom - top > best.bottom - best.top) best = { x, top, bottom };
  }
  if (!best) return undefined;
  const { x, top, bottom } = best;
  const inset = x + 4;
  if (bottom - top >= LABEL.height)
    return { x: inset, y: (top + bottom) / 2 + LABEL.baseline, isInside: true };
  const over = spots.filter((spot) => spot.x >= x && spot.x <= x + LABEL.width);
  return { x: inset, y: Math.min(...over.map((spot) => spot[upper])) - 6, isInside: false };
}

/** On a narrow sheet the areas are too slim for their words: a key at the right, above what has cooled down. */
const keyOf = (right: number, voice: Voice): Mark[] =>
  (['warms', 'dries'] as const).flatMap((what, row) => {
    const words = voice.say({ id: `draw.${what}` });
    const y = 16 + row * 20;
    return [
      rect(right - widthOf(words) - 20, y - 11, 13, 13, what),
      text(right, y, words, { anchor: 'end', className: 'ink strong halo' }),
    ];
  });

/** Share of the shown heat that dries, 0 to 1. */
function shareDrying(shown: readonly Shown[]): number {
  const into = shown.reduce((sum, s) => sum + s.into, 0);
  const dries = shown.reduce((sum, s) => sum + Math.min(s.into, s.dries), 0);
  return into > 0 ? dries / into : 0;
}
