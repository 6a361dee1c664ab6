import { CookDraws, PieceDraws } from '../../packages/engine/src/forecast/ensemble/draws.ts';
import { memberOf } from '../../packages/engine/src/forecast/ensemble/member.ts';
import { quantile } from '../../packages/engine/src/forecast/ensemble/range.ts';
import { softeningRate } from '../../packages/engine/src/forecast/ensemble/run.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../../packages/engine/src/meat/run.ts';
import type { MeasuredCook } from './cooks.ts';
import { waysOf } from './resolved.ts';
import type { Foreseen } from './score.ts';

const MEMBERS = 400;
const SEED = 20270912;
/** What is not reached by then counts as never [h]. */
const LONGEST_H = 48;

/** A told reading is sure to so much: probes in one piece differ by 2–10 °C, and clocks are read to the nearest half hour. */
const READING_SD_K = 4;
const READING_SD_LN_TIME = 0.05;
const TENTH = 1.2816;
const NO_WORDS = [Infinity, Infinity, Infinity, Infinity] as const;

/** The centre in time, one course for each member: hours and °C at every step. */
export interface Course {
  readonly hours: number[];
  readonly coreC: number[];
}

const runner = new PieceRunner(ENSEMBLE_SETTINGS, softeningRate);

/**
 * Courses of the centre from what was known before the cook, nothing told that the log does not tell. A wrap of unknown
 * kind is foil in three members of five, paper in two.
 */
export function coursesOf(cook: MeasuredCook, members = MEMBERS): Course[] {
  const last = cook.cores.at(-1)!;
  const highestC = Math.max(85, ...cook.cores.map((core) => core.coreC)) + READING_SD_K;
  const ways = waysOf(cook, last.hours, highestC);
  const cookDraws = new CookDraws(SEED);
  const pieceDraws = new PieceDraws(SEED, cook.id, 1);
  return Array.from({ length: members }, (_, m) => {
    const { piece, pit } = ways[m % ways.length]!;
    const member = memberOf(piece, pit, cookDraws.of(m), pieceDraws, m, 0);
    const hours = [0];
    const coreC = [member.meat.startC];
    runner.run(member.meat, member.stages, {
      stretch: member.stretch,
      wordDoses: NO_WORDS,
      onStep: (clockS, _stage, solver) => {
        hours.push(clockS / 3600);
        coreC.push(solver.coreC);
      },
    });
    return { hours, coreC };
  });
}

/** First passing of a temperature [h]; ∞ where the course ends below it. */
function passedH({ hours, coreC }: Course, reachC: number): number {
  const i = coreC.findIndex((c) => c >= reachC);
  if (i < 0) return Infinity;
  if (i === 0) return hours[0]!;
  const share = (reachC - coreC[i - 1]!) / (coreC[i]! - coreC[i - 1]!);
  return hours[i - 1]! + share * (hours[i]! - hours[i - 1]!);
}

/** Centre at a time [°C]; the last one where the course ends before. */
function coreAt({ hours, coreC }: Course, atH: number): number {
  const i = hours.findIndex((h) => h >= atH);
  if (i < 0) return coreC.at(-1)!;
  if (i === 0) return coreC[0]!;
  const share = (atH - hours[i - 1]!) / (hours[i]! - hours[i - 1]!);
  return coreC[i - 1]! + share * (coreC[i]! - coreC[i - 1]!);
}

const sorted = (courses: readonly Course[], read: (course: Course) => number): Float64Array =>
  Float64Array.from(courses, read).sort();

/**
 * Hours until a told reading of `reachC`: the time of the thermal centre, with the reading's own error added to the band
 * in quadrature (of ln t).
 */
export function hoursUntil(courses: readonly Course[], reachC: number): Foreseen {
  const times = sorted(courses, (course) => passedH(course, reachC));
  const low = quantile(times, 0.1);
  const middle = quantile(times, 0.5);
  if (!Number.isFinite(middle)) return { low, middle, high: middle };
  const median = (c: number): number =>
    quantile(
      sorted(courses, (course) => passedH(course, c)),
      0.5,
    );
  const sooner = median(reachC - READING_SD_K);
  const later = Math.min(median(reachC + READING_SD_K), LONGEST_H);
  const reading = TENTH * Math.hypot(Math.log(later / sooner) / 2, READING_SD_LN_TIME);
  const widen = (x: number) => Math.hypot(Math.log(x / middle), reading);
  return {
    low: middle / Math.exp(widen(low)),
    middle,
    high: middle * Math.exp(widen(quantile(times, 0.9))),
  };
}

/** Centre at a time [°C]. */
export function centreAt(courses: readonly Course[], hours: number): Foreseen {
  const temperatures = sorted(courses, (course) => coreAt(course, hours));
  return {
    low: quantile(temperatures, 0.1),
    middle: quantile(temperatures, 0.5),
    high: quantile(temperatures, 0.9),
  };
}
