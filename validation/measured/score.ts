import { findCut } from '../../packages/engine/src/meat/cuts.ts';
import { type Case, hoursPerKilogram, median, regressionHours } from './baselines.ts';
import { hoursTo, type MeasuredCook } from './cooks.ts';

/** 10, 50 and 90 % points; ∞ where the quantile falls among members that never get there. */
export interface Foreseen {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export type ForeseeHours = (cook: MeasuredCook, reachC: number) => Foreseen;

/** One observation beside what was foreseen and what the two rules of thumb would have said. */
export interface Scored {
  readonly cook: MeasuredCook;
  readonly reachC: number;
  readonly hours: number;
  readonly foreseen: Foreseen;
  readonly byKilogram: number;
  readonly byRegression: number;
}

export type Target = {
  readonly name: string;
  readonly observe: (cook: MeasuredCook) => { reachC: number; hours: number } | undefined;
};

/** A reading after the meat had been hotter is a fall, not an arrival: the first time at the hottest one told. */
export const LAST_READING: Target = {
  name: 'last reading',
  observe: (cook) => {
    const hottest = cook.cores.reduce((most, core) => (core.coreC > most.coreC ? core : most));
    return { reachC: hottest.coreC, hours: hottest.hours };
  },
};

export const TARGETS: readonly Target[] = [
  { name: 'to 71 °C', observe: (cook) => passing(cook, 71) },
  { name: 'to 85 °C', observe: (cook) => passing(cook, 85) },
  LAST_READING,
];

function passing(cook: MeasuredCook, reachC: number) {
  const hours = hoursTo(cook, reachC);
  return hours === undefined ? undefined : { reachC, hours };
}

const meanPitC = (cook: MeasuredCook, hours: number): number => {
  let sum = 0;
  cook.reading.pit.forEach(([from, temperatureC], i) => {
    const until = Math.min(cook.reading.pit[i + 1]?.[0] ?? hours, hours);
    sum += Math.max(0, until - from) * temperatureC;
  });
  return sum / hours;
};

/** Every cook that has this observation, scored; the rules of thumb never see the cook they are asked about. */
export function score(target: Target, cooks: readonly MeasuredCook[], foresee: ForeseeHours): Scored[] {
  const seen = cooks.flatMap((cook) => {
    const observed = target.observe(cook);
    if (!observed) return [];
    const c: Case = {
      cut: cook.reading.cut,
      massKg: cook.massKg ?? findCut(cook.reading.cut)!.massKg,
      meanPitC: meanPitC(cook, observed.hours),
      endC: observed.reachC,
      isFoiled: cook.wrap !== undefined && (cook.wrap.hours ?? 0) < observed.hours,
      hours: observed.hours,
    };
    return [{ cook, observed, c }];
  });
  return seen.map(({ cook, observed, c }) => {
    const others = seen.filter((s) => s.cook !== cook).map((s) => s.c);
    return {
      cook,
      ...observed,
      foreseen: foresee(cook, observed.reachC),
      byKilogram: hoursPerKilogram(c, others),
      byRegression: regressionHours(c, others),
    };
  });
}

export interface Summary {
  readonly count: number;
  /** Median over cooks of |foreseen / observed − 1|. */
  readonly medianError: number;
  /** Median over cooks of foreseen / observed − 1. */
  readonly bias: number;
  readonly meanAbsLn: number;
  readonly neverMedians: number;
  readonly covered80: number;
  /** Median over cooks of high / low. */
  readonly bandRatio: number;
  readonly byKilogramError: number;
  readonly byRegressionError: number;
}

export function summarise(scored: readonly Scored[]): Summary {
  const arrived = scored.filter((s) => Number.isFinite(s.foreseen.middle));
  const error = (of: (s: Scored) => number) => median(scored.map((s) => Math.abs(of(s) / s.hours - 1)));
  return {
    count: scored.length,
    medianError: error((s) => s.foreseen.middle),
    bias: median(scored.map((s) => s.foreseen.middle / s.hours - 1)),
    meanAbsLn:
      arrived.reduce((sum, s) => sum + Math.abs(Math.log(s.foreseen.middle / s.hours)), 0) / arrived.length,
    neverMedians: scored.length - arrived.length,
    covered80:
      scored.filter((s) => s.hours >= s.foreseen.low && s.hours <= s.foreseen.high).length / scored.length,
    bandRatio: median(scored.map((s) => s.foreseen.high / s.foreseen.low)),
    byKilogramError: error((s) => s.byKilogram),
    byRegressionError: error((s) => s.byRegression),
  };
}
