/**
 * The two levels of a told pit, chosen again without the cooks they are scored on: five folds by place in the table, each
 * fold's levels the likeliest on the other four. Says how much of the agreement is choice.
 */
import { gaugeError } from '../../packages/engine/src/meat/pitKinds.ts';
import type { MeasuredCook } from './cooks.ts';
import { coursesOf, hoursUntil } from './foresee.ts';
import { LAST_READING, type Scored, type Summary, summarise } from './score.ts';

const FOLDS = 5;
const MEMBERS = 100;
/** Told pit less the air at the grate, tried [K]. */
const LEVELS_K = [4, 2, 0, -1.5, -3, -5, -7, -9];
/** What was believed before these cooks: set S. */
const PRIOR = { meanK: -3, sdK: 2.5 };
/** Of ln t, with a heavy tail. */
const SCALE = 0.25;
const FREEDOM = 4;

type Class = 'controller' | 'dial';
const classOf = ({ reading }: MeasuredCook): Class | undefined =>
  reading.gauge === 'grate'
    ? undefined
    : gaugeError(reading.pitType, reading.gauge).biasK === 0
      ? 'controller'
      : 'dial';

/** The cook told a pit so that its air at the grate lies `levelK` off the told one. */
function atLevel(cook: MeasuredCook, levelK: number): MeasuredCook {
  const { reading } = cook;
  const shiftK = levelK - gaugeError(reading.pitType, reading.gauge).biasK;
  return {
    ...cook,
    reading: {
      ...reading,
      pit: reading.pit.map(([h, c]) => [h, c + shiftK]),
      ...(reading.raised && { raised: { ...reading.raised, pitC: reading.raised.pitC + shiftK } }),
    },
  };
}

/** ln(foreseen / told) of every cook at every level; one level where the grate itself was read. */
function missesOf(cook: MeasuredCook): { scored: Scored; miss: number }[] {
  const levels = classOf(cook) === undefined ? [0] : LEVELS_K;
  return levels.map((levelK) => {
    const observed = LAST_READING.observe(cook)!;
    const foreseen = hoursUntil(coursesOf(atLevel(cook, levelK), MEMBERS), observed.reachC);
    const scored = { cook, ...observed, foreseen, byKilogram: Number.NaN, byRegression: Number.NaN };
    return { scored, miss: Math.log(foreseen.middle / observed.hours) };
  });
}

const doubt = (miss: number): number =>
  Number.isFinite(miss) ? ((FREEDOM + 1) / 2) * Math.log(1 + (miss / SCALE) ** 2 / FREEDOM) : 10;

export interface Folds {
  readonly summary: Summary;
  /** Chosen in each fold [K]. */
  readonly levels: Readonly<Record<Class, readonly number[]>>;
  /** Scored with the level of set S for all. */
  readonly before: Summary;
}

export function chosenOnOthers(cooks: readonly MeasuredCook[]): Folds {
  const rows = cooks.map((cook, i) => ({ fold: i % FOLDS, kind: classOf(cook), tried: missesOf(cook) }));
  const levels: Record<Class, number[]> = { controller: [], dial: [] };
  const scored: Scored[] = [];
  for (let fold = 0; fold < FOLDS; fold++) {
    const chosen = (kind: Class): number => {
      const others = rows.filter((row) => row.fold !== fold && row.kind === kind);
      const cost = LEVELS_K.map(
        (levelK, i) =>
          0.5 * ((levelK - PRIOR.meanK) / PRIOR.sdK) ** 2 +
          others.reduce((sum, row) => sum + doubt(row.tried[i]!.miss), 0),
      );
      return cost.indexOf(Math.min(...cost));
    };
    const best = { controller: chosen('controller'), dial: chosen('dial') };
    levels.controller.push(LEVELS_K[best.controller]!);
    levels.dial.push(LEVELS_K[best.dial]!);
    for (const row of rows)
      if (row.fold === fold) scored.push(row.tried[row.kind ? best[row.kind] : 0]!.scored);
  }
  const asBefore = LEVELS_K.indexOf(PRIOR.meanK);
  return {
    summary: summarise(scored),
    levels,
    before: summarise(rows.map((row) => row.tried[row.kind ? asBefore : 0]!.scored)),
  };
}
