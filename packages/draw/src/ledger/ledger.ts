import { type Drawing, isNarrow, type Setting } from '../drawing.ts';
import { closed, line, type Mark, type Point, path } from '../mark.ts';
import { text } from '../text.ts';
import type { Axis } from '../time/axis.ts';
import type { Voice } from '../voice.ts';
import { keyHeight, keyRow } from './key.ts';

/** As told. */
const TOLD_WAYS = ['convection', 'radiation', 'still'] as const;
const ENDS = ['evaporation', 'warming', 'juice'] as const;
type Column = (typeof TOLD_WAYS)[number] | (typeof ENDS)[number];
/** As drawn, from the middle line upwards; steam that condenses and warmth that dries the piece come in as well. */
const WAYS = [...TOLD_WAYS, 'steam', 'own'] as const;
type Area = (typeof WAYS)[number] | (typeof ENDS)[number];

/**
 * Heat of one piece over time [W]: what arrives, by moving air, by radiation, or through still air or a box where the two
 * are not parted; and what it is spent on: drying, warming, and warmth that leaves with juice. Both sum to the
 * same; negative where the piece gives heat off. Times are seconds since 1970 UTC.
 */
export interface HeatLedger {
  readonly letter: string;
  readonly timesS: readonly number[];
  readonly heat: Readonly<Record<Column, readonly number[]>>;
}

/** Height of what arrives, and of what is spent [px]. */
const HALF_PX = 84;

/** A round figure at or above the greatest value, whose half is round too. */
function roundTop(value: number): number {
  const power = 10 ** Math.floor(Math.log10(Math.max(1, value)));
  return [1, 1.2, 1.6, 2, 3, 4, 6, 8, 10].map((k) => k * power).find((top) => top >= value) ?? 10 * power;
}

interface Shown {
  readonly atS: number;
  readonly told: Readonly<Record<Column, number>>;
  /** Never below nothing, and as much above the line as below it. */
  readonly watts: Readonly<Record<Area, number>>;
}

/** What a falling store of heat gives is part of what leaves with the juice, or dries the piece. */
function drawnOf(told: Shown['told']): Shown['watts'] {
  const warmth = told.warming + told.juice;
  const juice = Math.min(Math.max(0, told.juice), Math.max(0, warmth));
  const evaporation = Math.max(0, told.evaporation);
  return {
    convection: Math.max(0, told.convection),
    radiation: Math.max(0, told.radiation),
    still: Math.max(0, told.still),
    steam: Math.max(0, -told.evaporation),
    own: Math.min(Math.max(0, -warmth), evaporation),
    evaporation,
    warming: Math.max(0, warmth) - juice,
    juice,
  };
}

const sumOf = (watts: Shown['watts'], columns: readonly Area[]): number =>
  columns.reduce((sum, column) => sum + watts[column], 0);

function shownOf({ timesS, heat }: HeatLedger, axis: Axis): Shown[] {
  const toldAt = (i: number) =>
    Object.fromEntries([...TOLD_WAYS, ...ENDS].map((column) => [column, heat[column][i]!])) as Shown['told'];
  return timesS
    .map((atS, i) => ({ atS, told: toldAt(i), watts: drawnOf(toldAt(i)) }))
    .filter(({ atS }) => atS >= axis.fromS && atS <= axis.toS);
}

/** Areas piled on each other from the middle line. @param y of so many watts from that line */
function piled(
  shown: readonly Shown[],
  columns: readonly Area[],
  axis: Axis,
  y: (watts: number) => number,
): Mark[] {
  const edge = (upTo: number): Point[] =>
    shown.map(({ atS, watts }) => [axis.x(atS), y(sumOf(watts, columns.slice(0, upTo)))]);
  return columns.flatMap((column, i) =>
    shown.some(({ watts }) => watts[column] > 0) && shown.length > 1
      ? [path(closed([...edge(i + 1), ...edge(i).reverse()]), `ledger-${column}`)]
      : [],
  );
}

/**
 * The *why* of a piece in watts: above a line what arrives, parted by the way it comes, below it as much again, parted by
 * what it is spent on. What a piece gives off when it rests is in the table alone.
 */
export function heatLedger(
  ledger: HeatLedger,
  setting: Setting,
  voice: Voice,
  { axis }: { axis: Axis },
): Drawing {
  const shown = shownOf(ledger, axis);
  const top = roundTop(
    Math.max(1, ...shown.flatMap(({ watts }) => [sumOf(watts, WAYS), sumOf(watts, ENDS)])),
  );
  const isTold = (column: Area): boolean => shown.some(({ watts }) => watts[column] > 0);
  const keyOf = (title: string, columns: readonly Area[]) => ({
    title: voice.say({ id: `draw.ledger-${title}` }),
    entries: columns.filter(isTold).map((column) => ({
      className: `ledger-${column}`,
      words: voice.say({ id: `draw.ledger-${column}` }),
    })),
    x0: Math.min(axis.x0, axis.x1),
    x1: axis.x1,
    fromX: axis.x(shown[0]?.atS ?? axis.fromS),
  });
  const arrives = keyOf('arrives', WAYS);
  const spent = keyOf('spent', ENDS);
  const middle = keyHeight(arrives) + HALF_PX;
  const above = (watts: number): number => middle - (Math.min(watts, top) / top) * HALF_PX;
  const below = (watts: number): number => middle + (Math.min(watts, top) / top) * HALF_PX;
  const narrow = isNarrow(setting.width);
  const figures = [above(top), middle, below(top)].flatMap((y, i): Mark[] => [
    line(axis.x0 - 6, y, axis.x0, y, 'tick'),
    text(
      narrow ? axis.x0 + 2 : axis.x0 - 10,
      y + (narrow ? (i === 0 ? 15 : -3) : 5),
      voice.say({ id: 'draw.watts', params: { watts: i === 1 ? 0 : top } }),
      { anchor: narrow ? 'start' : 'end', className: narrow ? 'ink2 halo' : 'ink2' },
    ),
  ]);
  const foot = middle + HALF_PX;
  const marks: Mark[] = [
    ...keyRow(arrives, 0),
    ...piled(shown, WAYS, axis, above),
    ...piled(shown, ENDS, axis, below),
    line(axis.x0, middle, axis.x1, middle, 'rule1'),
    ...figures,
    ...keyRow(spent, foot),
  ];
  return {
    width: setting.width,
    height: foot + keyHeight(spent),
    marks,
    ...inWords(ledger.letter, shown, voice),
  };
}

const HEAD = ['time', 'into', 'convection', 'radiation', 'still', 'dries', 'warms', 'with-juice'] as const;

function inWords(letter: string, shown: readonly Shown[], voice: Voice) {
  const hourly = shown.filter((_, i) => i % Math.max(1, Math.floor(shown.length / 12)) === 0);
  const watts = (value: number): string => voice.say({ id: 'draw.watts', params: { watts: value } });
  const notParted = voice.say({ id: 'draw.not-parted' });
  const total = (columns: readonly Area[]): number =>
    shown.reduce((sum, one) => sum + sumOf(one.watts, columns), 0);
  const share = (columns: readonly Area[], of: readonly Area[]): number =>
    total(of) > 0 ? total(columns) / total(of) : 0;
  return {
    sentence: voice.say({
      id: 'draw.ledger',
      params: {
        letter,
        air: share(['convection'], ['convection', 'radiation']),
        dries: share(['evaporation'], ENDS),
        juice: share(['juice'], ENDS),
      },
    }),
    table: {
      head: HEAD.map((column) => voice.say({ id: `draw.head-${column}` })),
      rows: hourly.map(({ atS, told: at }) => {
        const isStill = at.still !== 0;
        return [
          voice.clock(atS),
          watts(TOLD_WAYS.reduce((sum, way) => sum + at[way], 0)),
          isStill ? notParted : watts(at.convection),
          isStill ? notParted : watts(at.radiation),
          isStill ? watts(at.still) : '',
          watts(at.evaporation),
          watts(at.warming + at.juice),
          watts(at.juice),
        ];
      }),
    },
  };
}
