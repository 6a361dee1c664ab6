/**
 * Times of ordinary cooks beside the forecast's median: steady grate, fridge-cold start, sea level, the middle of the
 * stated size, kind of pit not told. Evidence: common practice, no source; the levels of thickness were fitted to these
 * too, so this is calibration as much as proof. `npx tsx validation/commonPractice.ts` prints the table.
 */
import { pathToFileURL } from 'node:url';
import { resolvePiece, resolvePit } from '../packages/engine/src/day/resolve.ts';
import { CookDraws, PieceDraws } from '../packages/engine/src/forecast/ensemble/draws.ts';
import { memberOf } from '../packages/engine/src/forecast/ensemble/member.ts';
import { rangeOf } from '../packages/engine/src/forecast/ensemble/range.ts';
import { softeningRate } from '../packages/engine/src/forecast/ensemble/run.ts';
import { stagesIn } from '../packages/engine/src/forecast/piece/stages.ts';
import { findCut } from '../packages/engine/src/meat/cuts.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../packages/engine/src/meat/run.ts';
import { doseForSoftened } from '../packages/engine/src/tender/dose.ts';

interface Practice {
  readonly cut: string;
  readonly massKg: number;
  /** Done at a centre temperature, or at a softened share X. */
  readonly done: { readonly coreC: number } | { readonly softened: number };
  readonly pitC: number;
  /** Bare, or foil from then on. */
  readonly foilFrom?: string;
  readonly lowH: number;
  readonly highH: number;
}

const core = (coreC: number) => ({ coreC }) as const;
/** The middle of `clean bite` for ribs. */
const CLEAN = { softened: 0.7 } as const;

const rows = (
  cut: string,
  massKg: number,
  done: Practice['done'],
  times: readonly (readonly [pitC: number, lowH: number, highH: number, foilFrom?: string])[],
): Practice[] =>
  times.map(([pitC, lowH, highH, foilFrom]) => ({
    cut,
    massKg,
    done,
    pitC,
    lowH,
    highH,
    ...(foilFrom && { foilFrom }),
  }));

export const PRACTICE: readonly Practice[] = [
  ...rows('brisket-whole', 6.2, core(93), [
    [107, 13, 18],
    [121, 11, 14],
    [135, 8.5, 11],
  ]),
  ...rows('pork-shoulder', 3.6, core(93), [
    [107, 12, 16],
    [121, 10, 13],
    [135, 8, 10.5],
  ]),
  ...rows('loin-back-ribs', 1.1, CLEAN, [
    [107, 4.5, 6],
    [121, 3.5, 5],
    [135, 3, 4],
  ]),
  ...rows('st-louis-ribs', 1.25, CLEAN, [
    [107, 5.5, 7],
    [121, 4.5, 6],
    [135, 3.75, 5],
  ]),
  ...rows('spareribs', 2.05, CLEAN, [
    [107, 6, 7.5],
    [121, 5, 6.5],
    [135, 4.5, 5.5],
  ]),
  ...rows('beef-short-ribs', 2.5, CLEAN, [
    [107, 9, 11],
    [121, 7.5, 9.5],
    [135, 6, 8],
  ]),
  ...rows('chicken-whole', 2, core(77), [
    [107, 4, 5],
    [121, 3, 4],
    [135, 2.25, 3],
  ]),
  // A flattened bird of 2.2 kg: about 3 h.
  ...rows('chicken-half', 1.1, core(77), [[121, 3, 3]]),
  ...rows('turkey-whole', 5.5, core(77), [
    [121, 5, 6.5],
    [135, 4, 5],
  ]),
  ...rows('turkey-half', 2.75, core(77), [
    [121, 3.5, 4.5],
    [135, 2.5, 3.5],
  ]),
];

/** What foil saves against bare [h]. */
export const FOIL_PRACTICE: readonly (Practice & { readonly foilFrom: string })[] = [
  ...rows('brisket-whole', 6.2, core(93), [
    [107, 2, 4, 'until 72 °C'],
    [121, 2, 4, 'until 72 °C'],
  ]),
  ...rows('pork-shoulder', 3.6, core(93), [
    [107, 2, 4, 'until 72 °C'],
    [121, 2, 4, 'until 72 °C'],
  ]),
  ...rows('loin-back-ribs', 1.1, CLEAN, [[121, 0.5, 1, '2 h']]),
  ...rows('st-louis-ribs', 1.25, CLEAN, [[121, 0.75, 1.25, '2.5 h']]),
  ...rows('beef-short-ribs', 2.5, CLEAN, [[121, 1, 1.5, 'until 72 °C']]),
] as (Practice & { foilFrom: string })[];

const MEMBERS = 160;
const SEED = 20270912;
const runner = new PieceRunner(ENSEMBLE_SETTINGS, softeningRate);

/** Each asked for by the tests and by the table. */
const known = new Map<string, ReturnType<typeof foreseen>>();

/** 10, 50 and 90 % of the time until done [h]. */
export function hoursUntilDone(practice: Practice): { p10: number; p50: number; p90: number } {
  const key = [practice.cut, practice.massKg, practice.pitC, practice.foilFrom].join('|');
  const hours = known.get(key) ?? foreseen(practice);
  known.set(key, hours);
  return hours;
}

function foreseen(practice: Practice): { p10: number; p50: number; p90: number } {
  const pit = resolvePit({
    type: 'unknown',
    temperatureC: practice.pitC,
    gauge: 'grate',
    hasWaterPan: false,
    altitudeM: 0,
  });
  const stages = practice.foilFrom ? `bare ${practice.foilFrom} | foil 40 h` : 'bare 40 h';
  const piece = resolvePiece({
    id: 'piece',
    items: 1,
    cut: findCut(practice.cut)!,
    massKg: practice.massKg,
    startC: 5,
    placeOffsetK: { mean: 0, sd: 0 },
    bite: 'tender',
    stages: stagesIn(stages, pit, undefined),
  });
  const cook = new CookDraws(SEED);
  const draws = new PieceDraws(SEED, piece.id, 1);
  const { done } = practice;
  const hours = Float64Array.from({ length: MEMBERS }, (_, m) => {
    const member = memberOf(piece, pit, cook.of(m), draws, m, 0);
    const dose = 'softened' in done ? doseForSoftened(member.k95PerH, done.softened) : Infinity;
    const outcome = runner.run(member.meat, member.stages, {
      stretch: member.stretch,
      wordDoses: [dose, Infinity, Infinity, Infinity],
      ...('coreC' in done && { reachC: done.coreC }),
    });
    return ('coreC' in done ? outcome.reachS : outcome.wordS[1]!) / 3600;
  });
  return rangeOf(hours);
}

/** How far a median lies outside its range, over the nearer end; 0 inside. */
export function missShare(hours: number, { lowH, highH }: Practice): number {
  if (hours < lowH) return hours / lowH - 1;
  return hours > highH ? hours / highH - 1 : 0;
}

const figure = (h: number): string => h.toFixed(1);
const miss = (share: number): string =>
  share === 0 ? '' : `${share > 0 ? '+' : '−'}${Math.abs(100 * share).toFixed(0)} %`;

export function commonPracticeTable(): string {
  return [
    '| piece | pit °C | common practice h | median [10–90 %] h | miss of the nearer end |',
    '|---|---|---|---|---|',
    ...PRACTICE.map((practice) => {
      const { p10, p50, p90 } = hoursUntilDone(practice);
      const done = 'coreC' in practice.done ? `${practice.done.coreC} °C` : `X ${practice.done.softened}`;
      return `| ${practice.cut} ${practice.massKg} kg, ${done} | ${practice.pitC} | ${practice.lowH}–${practice.highH} | ${figure(p50)} [${figure(p10)}–${figure(p90)}] | ${miss(missShare(p50, practice))} |`;
    }),
  ].join('\n');
}

export function foilTable(): string {
  return [
    '| foil | pit °C | saves, common practice h | saves h |',
    '|---|---|---|---|',
    ...FOIL_PRACTICE.map((practice) => {
      const { foilFrom, ...bare } = practice;
      const saved = hoursUntilDone(bare).p50 - hoursUntilDone(practice).p50;
      return `| ${practice.cut}, ${foilFrom} | ${practice.pitC} | ${practice.lowH}–${practice.highH} | ${figure(saved)} |`;
    }),
  ].join('\n');
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  console.log(`${commonPracticeTable()}\n\n${foilTable()}`);
