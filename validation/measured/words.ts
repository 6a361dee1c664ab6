/** Told bites beside the chances of their words, and the score of three ordered words. */
import { biteChancesAt, forecastCook } from '@pitwright/engine';
import { type Cook, quantity, type Stage } from '@pitwright/model';
import { exampleCook } from '../../packages/engine/src/forecast/exampleCook.ts';
import { TOLD_CLASSES, TOLD_WORDS, type ToldClass, type ToldWord } from './toldWords.ts';

const SEED = 20;

function cookOf(word: ToldWord): Cook {
  const stages = word.stages.map(
    ({ kind, hours, coreC, pitC }): Stage => ({
      kind,
      until:
        coreC === undefined
          ? { by: 'clock', after: quantity('time', hours ?? 24, 'h') }
          : { by: 'core', temperature: quantity('temperature', coreC, '°C') },
      ...(pitC !== undefined && { pit: quantity('temperature', pitC, '°C') }),
    }),
  );
  const base = exampleCook(word.cut, stages, {
    bite: 'pulls-apart',
    ...(word.massKg && { mass: quantity('mass', word.massKg, 'kg') }),
  });
  return {
    ...base,
    pit: {
      ...base.pit,
      type: word.pitType,
      gauge: word.gauge,
      temperature: quantity('temperature', word.pitC, '°C'),
    },
  };
}

/** Chances of firm, done, apart at the told hour. */
function chancesOf(word: ToldWord, members: number): readonly number[] {
  const [piece] = forecastCook(cookOf(word), { members, seed: SEED }).pieces;
  const bite = biteChancesAt(piece!.columns, word.atH * 3600);
  const sum = (...words: (keyof typeof bite)[]): number =>
    words.reduce((total, one) => total + (bite[one] ?? 0), 0);
  return [sum('raw', 'firm'), sum('clean-bite', 'tender'), sum('falls-off', 'pulls-apart')];
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
  readonly chances: readonly number[];
}
export const scoredWords = (members: number): ScoredWord[] =>
  TOLD_WORDS.map((word) => ({ word, chances: chancesOf(word, members) }));
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
