/** Told bites beside the chances of their words, and the score of three ordered words. */
import type { Bite } from '@pitwright/model';
import { CookDraws, PieceDraws } from '../../packages/engine/src/forecast/ensemble/draws.ts';
import { memberOf } from '../../packages/engine/src/forecast/ensemble/member.ts';
import { softeningRate } from '../../packages/engine/src/forecast/ensemble/run.ts';
import { findCut } from '../../packages/engine/src/meat/cuts.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../../packages/engine/src/meat/run.ts';
import { biteWord, FIRM_FROM_C } from '../../packages/engine/src/tender/bite.ts';
import { softenedShare } from '../../packages/engine/src/tender/dose.ts';
import { cooksRead } from './cooks.ts';
import { waysOf } from './resolved.ts';
import { TOLD_CLASSES, TOLD_WORDS, type ToldClass, type ToldWord } from './toldWords.ts';

const SEED = 20;
const CLASS_OF: Readonly<Record<Bite, ToldClass>> = {
  raw: 'firm',
  firm: 'firm',
  'clean-bite': 'done',
  tender: 'done',
  'falls-off': 'apart',
  'pulls-apart': 'apart',
};
const NO_WORDS = [Infinity, Infinity, Infinity, Infinity] as const;
const read = cooksRead();
const runner = new PieceRunner(ENSEMBLE_SETTINGS, softeningRate);

/** What is known: nothing but the plan, or the core temperatures that the log tells up to the hand test as well. */
export type Known = 'plan' | 'probe';

interface Softened {
  readonly doseH: number;
  readonly k95PerH: number;
  readonly hasWarmed: boolean;
  /** Of the core temperatures told until then; 1 where none is. */
  readonly likelihood: number;
}

/** A reading of the core against a member's: Student's t with this scale [K], 4 degrees of freedom. */
const READING_K = 4;
const FREEDOM = 4;
/** Readings of one piece err alike, and so does a model: each counts half. */
const TEMPER = 0.5;
const readingLikelihood = (missK: number): number =>
  (1 + (missK / READING_K) ** 2 / FREEDOM) ** ((-TEMPER * (FREEDOM + 1)) / 2);

const between = (share: number, from: number, to: number): number => from + share * (to - from);

/** Dose of the centre at the told hour, member by member. */
function softenedAt({ id, atH }: ToldWord, members: number): Softened[] {
  const cook = read.get(id)!;
  const cores = cook.cores.filter(({ hours }) => hours <= atH);
  // The last stage ends at once: nothing is wanted after the told hour.
  const ways = waysOf(cook, atH, 0);
  const cookDraws = new CookDraws(SEED);
  const pieceDraws = new PieceDraws(SEED, id, 1);
  return Array.from({ length: members }, (_, m) => {
    const { piece, pit } = ways[m % ways.length]!;
    const member = memberOf(piece, pit, cookDraws.of(m), pieceDraws, m, 0);
    let before = { hours: 0, doseH: 0, coreC: member.meat.startC };
    let doseH = 0;
    let likelihood = 1;
    const { wordS } = runner.run(member.meat, member.stages, {
      stretch: member.stretch,
      wordDoses: NO_WORDS,
      onStep: (clockS, _stage, { coreDoseH, coreC }) => {
        const now = { hours: clockS / 3600, doseH: coreDoseH, coreC };
        const shareAt = (h: number): number => (h - before.hours) / (now.hours - before.hours);
        for (const core of cores)
          if (core.hours > before.hours && core.hours <= now.hours)
            likelihood *= readingLikelihood(
              between(shareAt(core.hours), before.coreC, now.coreC) - core.coreC,
            );
        if (before.hours < atH) doseH = between(Math.min(1, shareAt(atH)), before.doseH, now.doseH);
        before = now;
      },
    });
    return { doseH, k95PerH: member.k95PerH, hasWarmed: wordS[0]! / 3600 <= atH, likelihood };
  });
}

/** Chances of firm, done, apart at the told hour: of the plan alone, and with the core temperatures told until then. */
function chancesOf(word: ToldWord, members: number): Readonly<Record<Known, readonly number[]>> {
  const { tissue } = findCut(read.get(word.id)!.reading.cut)!;
  const plan = [0, 0, 0];
  const probe = [0, 0, 0];
  let sum = 0;
  for (const { doseH, k95PerH, hasWarmed, likelihood } of softenedAt(word, members)) {
    const bite = biteWord(tissue, softenedShare(k95PerH, doseH), hasWarmed ? FIRM_FROM_C : 0);
    const at = TOLD_CLASSES.indexOf(CLASS_OF[bite]);
    plan[at] = plan[at]! + 1 / members;
    probe[at] = probe[at]! + likelihood;
    sum += likelihood;
  }
  return { plan, probe: probe.map((weight) => weight / sum) };
}

/** Ranked probability score of three ordered classes (Epstein 1969): 0 sure and right, 1 sure and as wrong as can be. */
export function rankedScore(chances: readonly number[], told: ToldClass): number {
  const at = TOLD_CLASSES.indexOf(told);
  let below = 0;
  let sum = 0;
  for (let i = 0; i < TOLD_CLASSES.length - 1; i++) {
    below += chances[i]!;
    sum += (below - (at <= i ? 1 : 0)) ** 2;
  }
  return sum / (TOLD_CLASSES.length - 1);
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, v) => sum + v, 0) / values.length;
export const ALWAYS_TENDER = [0, 1, 0];

export interface ScoredWord {
  readonly word: ToldWord;
  readonly cut: string;
  readonly chances: readonly number[];
  /** A core temperature was told before the hand test. */
  readonly hasProbe: boolean;
}
export function scoredWords(members: number): Readonly<Record<Known, readonly ScoredWord[]>> {
  const rows = TOLD_WORDS.map((word) => {
    const { reading, cores } = read.get(word.id)!;
    const hasProbe = cores.some(({ hours }) => hours <= word.atH);
    return { word, cut: reading.cut, hasProbe, both: chancesOf(word, members) };
  });
  const of = (known: Known): ScoredWord[] =>
    rows.map(({ both, ...row }) => ({ ...row, chances: both[known] }));
  return { plan: of('plan'), probe: of('probe') };
}
export const isRack = ({ cut }: ScoredWord): boolean => cut.endsWith('ribs');
/** How often each class was told among the others: the best that knows nothing of the cook. */
export const frequencies = (left: ToldWord): number[] =>
  TOLD_CLASSES.map((one) => {
    const others = TOLD_WORDS.filter((word) => word !== left);
    return others.filter(({ told }) => told === one).length / others.length;
  });
export const likeliest = (chances: readonly number[]): ToldClass =>
  TOLD_CLASSES[chances.indexOf(Math.max(...chances))]!;
export const grade = (chances: readonly number[]): number => chances[1]! + 2 * chances[2]!;

/** Of all pairs told apart, the share that the expected grades put in the same order; one half by chance. */
export function orderShare(rows: readonly ScoredWord[]): { share: number; pairs: number } {
  let right = 0;
  let pairs = 0;
  for (const one of rows)
    for (const other of rows) {
      if (TOLD_CLASSES.indexOf(one.word.told) >= TOLD_CLASSES.indexOf(other.word.told)) continue;
      pairs++;
      if (grade(one.chances) < grade(other.chances)) right++;
    }
  return { share: right / pairs, pairs };
}
