import { logs, type MeasuredCook } from './cooks.ts';
import type { Folds } from './folds.ts';
import { type Course, centreAt } from './foresee.ts';
import { COOKS, LEFT_OUT } from './interpretation.ts';
import { type Scored, type Summary, summarise } from './score.ts';

const percent = (x: number): string => `${Math.round(100 * x)} %`;
const signedPercent = (x: number): string => `${x > 0 ? '+' : ''}${Math.round(100 * x)} %`;
const hours = (x: number): string => (Number.isFinite(x) ? x.toFixed(1) : 'never');
const degrees = (x: number): string => (Number.isFinite(x) ? x.toFixed(0) : '–');

const GROUPS: Readonly<Record<string, readonly string[]>> = {
  brisket: ['brisket-whole', 'brisket-flat', 'brisket-point'],
  'pork shoulder': ['pork-shoulder'],
  poultry: ['turkey-whole', 'turkey-half', 'turkey-breast', 'chicken-half', 'chicken-thigh'],
  others: [
    'lamb-leg',
    'chuck-roast',
    'beef-back-ribs',
    'beef-short-ribs',
    'chuck-short-ribs',
    'fresh-ham',
    'rib-roast',
    'spareribs',
  ],
};

function row(name: string, s: Summary): string {
  return `| ${name} | ${s.count} | ${percent(s.medianError)} | ${signedPercent(s.bias)} | ${s.meanAbsLn.toFixed(3)} | ${s.neverMedians} | ${percent(s.covered80)} | ×${Number.isFinite(s.bandRatio) ? s.bandRatio.toFixed(1) : '∞'} | ${percent(s.byKilogramError)} | ${percent(s.byRegressionError)} |`;
}

const HEAD = `| to | cooks | median error | bias | mean \\|ln\\| | never | inside the 80 % band | band, high over low | hours per kg | regression |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |`;

const CLASSES: Readonly<Record<string, (cook: MeasuredCook) => boolean>> = {
  'probe at the grate': ({ reading }) => reading.gauge === 'grate',
  'electric, pellet, oven by set-point': ({ reading }) =>
    reading.gauge === 'set-point' && ['electric', 'pellet', 'oven'].includes(reading.pitType),
  'bullet, kettle, ceramic, offset by dial': ({ reading }) =>
    reading.gauge !== 'grate' && ['bullet', 'kettle', 'ceramic', 'offset'].includes(reading.pitType),
  'kind of pit not told': ({ reading }) => reading.pitType === 'unknown',
  bare: ({ wrap }) => wrap === undefined,
  wrapped: ({ wrap }) => wrap !== undefined,
  'mass told': ({ massKg }) => massKg !== undefined,
  'mass not told': ({ massKg }) => massKg === undefined,
};

/** Last readings by kind of pit, wrap and what was told. */
export function tableByClass(last: readonly Scored[]): string {
  const rows = Object.entries(CLASSES).map(([name, isIn]) =>
    row(`last reading, ${name}`, summarise(last.filter(({ cook }) => isIn(cook)))),
  );
  return `${HEAD}\n${rows.join('\n')}`;
}

/** What the levels of a told pit owe to being chosen on the cooks they are scored on. */
export function foldsTable({ summary, before, levels }: Folds): string {
  const kelvin = (values: readonly number[]): string => `${[...new Set(values)].join(', ')} K`;
  return `| last reading, 100 members | median error | mean \\|ln\\| | never |
| --- | --- | --- | --- |
| one level of −3 K for all told pits (set S) | ${percent(before.medianError)} | ${before.meanAbsLn.toFixed(3)} | ${before.neverMedians} |
| two levels, each fold's chosen on the other four | ${percent(summary.medianError)} | ${summary.meanAbsLn.toFixed(3)} | ${summary.neverMedians} |

Chosen: controller ${kelvin(levels.controller)}; dial or unsaid ${kelvin(levels.dial)}.`;
}

/** Readings that took more than copying the row. */
export const readingsTable = (): string =>
  `| cook | read so, because |\n| --- | --- |\n${Object.entries(COOKS)
    .flatMap(([id, { because }]) => (because ? [`| ${id} | ${because} |`] : []))
    .join('\n')}`;

/** Why a cook of the logs cannot be scored. */
export function whyLeftOut(id: string, rows: readonly Record<string, string>[]): string | undefined {
  if (LEFT_OUT[id]) return LEFT_OUT[id];
  const hasHour = rows.some((row) => Number(row.elapsed_h) > 0 && row.core_temp_C);
  if (!hasHour) return 'no core temperature with an hour';
  if (COOKS[id]) return undefined;
  if (/not told|^as /u.test(rows[0]!.pit_temp_C!)) return 'pit temperature not told';
  return '';
}

export function leftOutTable(): string {
  const ids = new Map<string, string[]>();
  for (const [id, rows] of logs()) {
    const why = whyLeftOut(id, rows);
    if (why !== undefined) ids.set(why, [...(ids.get(why) ?? []), id]);
  }
  return `| why | cooks |\n| --- | --- |\n${[...ids].map(([why, some]) => `| ${why} | ${some.length}: ${some.join(', ')} |`).join('\n')}`;
}

export function tables(byTarget: ReadonlyMap<string, readonly Scored[]>): string {
  const all = [...byTarget].map(([name, scored]) => row(name, summarise(scored)));
  const byCut = [...byTarget].flatMap(([name, scored]) =>
    Object.entries(GROUPS).flatMap(([group, cuts]) => {
      const some = scored.filter((s) => cuts.includes(s.cook.reading.cut));
      return some.length >= 3 ? [row(`${name}, ${group}`, summarise(some))] : [];
    }),
  );
  return `${HEAD}\n${all.join('\n')}\n\n${HEAD}\n${byCut.join('\n')}`;
}

/** Readings of one cook beside what was foreseen at the same hour. */
function curve(scored: Scored, courses: readonly Course[]): string {
  const { cook } = scored;
  const rows = cook.cores.map((core) => {
    const seen = centreAt(courses, core.hours);
    return `| ${core.hours.toFixed(2)} | ${core.coreC.toFixed(1)} | ${degrees(seen.middle)} (${degrees(seen.low)}–${degrees(seen.high)}) |`;
  });
  return `**${cook.id}**, ${cook.reading.cut}, ${cook.massKg === undefined ? 'mass not told' : `${cook.massKg} kg`}: ${scored.reachC.toFixed(0)} °C told at ${scored.hours.toFixed(1)} h, foreseen ${hours(scored.foreseen.middle)} h (${hours(scored.foreseen.low)}–${hours(scored.foreseen.high)}). Source: ${cook.source}

| h | told °C | foreseen °C (8 in 10) |
| --- | --- | --- |
${rows.join('\n')}`;
}

export function curves(
  last: readonly Scored[],
  coursesOf: (cook: MeasuredCook) => readonly Course[],
): string {
  const error = (s: Scored) =>
    Number.isFinite(s.foreseen.middle)
      ? Math.abs(Math.log(s.foreseen.middle / s.hours))
      : Number.POSITIVE_INFINITY;
  const sorted = [...last].sort((a, b) => error(a) - error(b));
  const drawn = (some: readonly Scored[]): string =>
    some.map((s) => curve(s, coursesOf(s.cook))).join('\n\n');
  return `### The five that came out best\n\n${drawn(sorted.slice(0, 5))}\n\n### The five that came out worst\n\n${drawn(sorted.slice(-5).reverse())}`;
}

export interface Bar {
  readonly text: string;
  readonly met: boolean;
}

/** The bars these cooks are held to. */
export function bars(byTarget: ReadonlyMap<string, readonly Scored[]>): Bar[] {
  const last = summarise(byTarget.get('last reading')!);
  const to85 = summarise(byTarget.get('to 85 °C')!);
  const covered = last.covered80;
  return [
    {
      text: `last reading: median error at most 22 %, measured ${percent(last.medianError)}`,
      met: last.medianError <= 0.22,
    },
    {
      text: `last reading: mean |ln error| at most 0.28, measured ${last.meanAbsLn.toFixed(3)}`,
      met: last.meanAbsLn <= 0.28,
    },
    {
      text: `to 85 °C: median error at most 15 %, measured ${percent(to85.medianError)}`,
      met: to85.medianError <= 0.15,
    },
    {
      text: `no median that never arrives where a cook finished, measured ${last.neverMedians}`,
      met: last.neverMedians === 0,
    },
    {
      text: `the 80 % band covers 74 to 86 % of the last readings, measured ${percent(covered)}`,
      met: covered >= 0.74 && covered <= 0.86,
    },
  ];
}

export const sizesOf = (cooks: readonly MeasuredCook[]): string =>
  `${cooks.length} cooks with a told pit and a timed core temperature, ${cooks.filter((c) => c.massKg === undefined).length} of them without a told mass, ${cooks.reduce((n, c) => n + c.cores.length, 0)} readings`;
