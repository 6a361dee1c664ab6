import type { MeasuredCook } from './cooks.ts';
import { foreseeCoreC } from './foresee.ts';
import { type Scored, type Summary, summarise } from './score.ts';

const percent = (x: number): string => `${Math.round(100 * x)} %`;
const signedPercent = (x: number): string => `${x > 0 ? '+' : ''}${Math.round(100 * x)} %`;
const hours = (x: number): string => (Number.isFinite(x) ? x.toFixed(1) : 'never');
const degrees = (x: number): string => (Number.isFinite(x) ? x.toFixed(0) : '–');

const GROUPS: Readonly<Record<string, readonly string[]>> = {
  brisket: ['brisket-whole', 'brisket-flat', 'brisket-point'],
  'pork shoulder': ['pork-shoulder'],
  poultry: ['turkey-whole', 'turkey-half', 'turkey-breast', 'chicken-half', 'chicken-leg', 'chicken-whole'],
  others: [
    'lamb-leg',
    'chuck-roast',
    'beef-back-ribs',
    'beef-short-ribs',
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
function curve(scored: Scored): string {
  const { cook } = scored;
  const rows = cook.cores.map((core) => {
    const seen = foreseeCoreC(cook, core.hours);
    return `| ${core.hours.toFixed(2)} | ${core.coreC.toFixed(1)} | ${degrees(seen.middle)} (${degrees(seen.low)}–${degrees(seen.high)}) |`;
  });
  return `**${cook.id}**, ${cook.reading.cut}, ${cook.massKg} kg: ${scored.reachC.toFixed(0)} °C told at ${scored.hours.toFixed(1)} h, foreseen ${hours(scored.foreseen.middle)} h (${hours(scored.foreseen.low)}–${hours(scored.foreseen.high)}). Source: ${cook.source}

| h | told °C | foreseen °C (8 in 10) |
| --- | --- | --- |
${rows.join('\n')}`;
}

export function curves(last: readonly Scored[]): string {
  const error = (s: Scored) =>
    Number.isFinite(s.foreseen.middle)
      ? Math.abs(Math.log(s.foreseen.middle / s.hours))
      : Number.POSITIVE_INFINITY;
  const sorted = [...last].sort((a, b) => error(a) - error(b));
  return `### The five that came out best\n\n${sorted.slice(0, 5).map(curve).join('\n\n')}\n\n### The five that came out worst\n\n${sorted.slice(-5).reverse().map(curve).join('\n\n')}`;
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
  `${cooks.length} cooks with a told pit, a told size and a timed core temperature, ${cooks.reduce((n, c) => n + c.cores.length, 0)} readings`;
