import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { seriesAt } from '../inside/field.ts';
import { closed, line, type Mark, type Point, path } from '../mark.ts';
import { text } from '../text.ts';
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
  const shown = ledger.timesS
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
  const middleS = shown.length > 0 ? shown[Math.floor(shown.length * 0.45)]!.atS : axis.fromS;
  const at = (values: readonly number[]): number => Math.max(0, seriesAt(ledger.timesS, values, middleS));
  const marks: Mark[] = [
    path(
      area((s) => s.into),
      'warms',
    ),
    path(
      area((s) => Math.min(s.dries, s.into)),
      'dries',
    ),
    line(axis.x0, foot, axis.x1, foot, 'rule1'),
    ...figures,
    ...(shown.length > 0
      ? [
          text(axis.x(middleS) + 6, y(at(ledger.intoW)) - 6, voice.say({ id: 'draw.warms' }), {
            className: 'ink halo strong',
          }),
          text(axis.x(middleS) + 6, foot - 6, voice.say({ id: 'draw.dries' }), {
            className: 'ink halo strong',
          }),
        ]
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

/** Share of the shown heat that dries, 0 to 1. */
function shareDrying(shown: readonly { readonly into: number; readonly dries: number }[]): number {
  const into = shown.reduce((sum, s) => sum + s.into, 0);
  const dries = shown.reduce((sum, s) => sum + Math.min(s.into, s.dries), 0);
  return into > 0 ? dries / into : 0;
}
