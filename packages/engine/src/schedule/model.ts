import type { Activity } from './activities.ts';
import { Program, type Row } from './lp-text.ts';
import type { Job, Placement, Problem, Slots } from './problem.ts';
import { longestGaps, type Network, networkOf, propagate, type Windows, widestWindows } from './windows.ts';

/**
 * The run sheet as a mixed-integer program with a binary for each order of two jobs in the same hands (big-M,
 * disjunctive). Starts are minutes; big-M are as small as the tightened windows allow.
 *
 * s_i start · y_ij = 1: i ends before j begins · a_iw = 1: worker w does i · m_ij = 1: j follows i at the pit without a
 * gap, in the same walk · z_iw = 1: i lies in the sleep of w · b_i: before or after an absence · e_i, l_i: early, late
 * against the wish.
 */
export interface Model {
  readonly program: Program;
  readonly nightTerms: Row['terms'];
  /** Least first: minus the number of jobs that join a walk. */
  readonly walkTerms: Row['terms'];
  readonly wishTerms: Row['terms'];
  readonly startName: (job: number) => string;
  readonly handName: (job: number, worker: number) => string | undefined;
  /** Adds: one of these activities ends before another begins. */
  readonly separate: (clash: readonly Activity[]) => void;
}

/** Jobs that stand further apart than this in a placement that fits keep their order [min]. */
const FAR = 25;

/**
 * @param walks  whether jobs at the pit may still choose whom they follow
 * @param near   a placement that fits: the order of what is far apart in it, and its sides of sleep and absence, stay
 * @returns undefined when the windows alone already show that nothing fits
 */
export function modelOf(problem: Problem, walks: 'free' | 'as joined', near?: Placement): Model | undefined {
  const network = networkOf(problem);
  const windows = widestWindows(problem);
  if (propagate(network.edges, windows) >= 0) return undefined;
  return new Builder(problem, network, windows, near).build(walks);
}

class Builder {
  readonly #problem: Problem;
  readonly #network: Network;
  readonly #windows: Windows;
  readonly #program = new Program();
  readonly #night: [number, string][] = [];
  readonly #walks: [number, string][] = [];
  readonly #wishes: [number, string][] = [];
  readonly #longest: Float64Array;
  readonly #near: readonly number[] | undefined;
  #count = 0;

  constructor(problem: Problem, network: Network, windows: Windows, near: Placement | undefined) {
    this.#problem = problem;
    this.#near = near && problem.jobs.map((job) => near.start.get(job.id)!);
    this.#network = network;
    this.#windows = windows;
    this.#longest = longestGaps(problem.jobs.length, network.edges);
  }

  build(walks: 'free' | 'as joined'): Model {
    const { jobs } = this.#problem;
    jobs.forEach((_, k) => {
      this.#program.integer(start(k), this.#first(k), this.#last(k));
    });
    for (const { from, to, gap } of this.#network.edges)
      if (from !== to && this.#first(to) - this.#last(from) < gap)
        this.#program.row(
          [
            [1, start(to)],
            [-1, start(from)],
          ],
          '>=',
          gap,
        );
    const busy = [...jobs.keys()].filter((k) => jobs[k]!.hands > 0);
    this.#assign(busy);
    busy.forEach((i, n) => {
      for (const j of busy.slice(n + 1)) this.#keepApart(i, j);
    });
    if (walks === 'free') this.#joinWalks(busy.filter((k) => jobs[k]!.at === 'pit'));
    for (const k of busy) this.#absences(k);
    jobs.forEach((job, k) => {
      this.#wish(job, k);
    });
    return {
      program: this.#program,
      nightTerms: this.#night,
      walkTerms: this.#walks,
      wishTerms: this.#wishes,
      startName: start,
      handName: (job, worker) => this.#hand(job, worker),
      separate: (clash) => this.#separate(clash),
    };
  }

  #first = (k: number): number => this.#windows.first[k]!;
  #last = (k: number): number => this.#windows.last[k]!;
  #length = (k: number): number => this.#network.duration[k]!;

  #hand(job: number, worker: number): string | undefined {
    return this.#problem.workers.length > 1 ? `a${job}_${worker}` : undefined;
  }

  #assign(busy: readonly number[]): void {
    const { workers, jobs } = this.#problem;
    if (workers.length < 2) return;
    for (const k of busy)
      this.#program.row(
        workers.map((_, w) => [1, this.#program.binary(this.#hand(k, w)!)]),
        '=',
        Math.min(jobs[k]!.hands, workers.length),
      );
  }

  /** s_after ≥ end of before, unless the terms that loosen it say otherwise. */
  #follows(
    before: number,
    after: number,
    loosen: readonly (readonly [number, string])[],
    constant: number,
  ): void {
    const bigM = this.#last(before) + this.#length(before) - this.#first(after);
    if (bigM <= 0) return;
    // s_after − s_before + bigM·(Σ loosen + constant) ≥ length
    this.#program.row(
      [
        [1, start(after)],
        [-1, start(before)],
        ...loosen.map(([c, name]): [number, string] => [c * bigM, name]),
      ],
      '>=',
      this.#length(before) - bigM * constant,
    );
  }

  #mayPrecede = (i: number, j: number): boolean => this.#first(i) + this.#length(i) <= this.#last(j);
  /** By the windows, or by a chain of lags. */
  #mustPrecede = (i: number, j: number): boolean =>
    this.#last(i) + this.#length(i) <= this.#first(j) ||
    this.#longest[i * this.#problem.jobs.length + j]! >= this.#length(i);

  /** Two jobs never overlap in the same hands. */
  #keepApart(i: number, j: number): void {
    if (this.#mustPrecede(i, j) || this.#mustPrecede(j, i)) return;
    if (this.#isFarBefore(i, j)) this.#follows(i, j, [], 0);
    else if (this.#isFarBefore(j, i)) this.#follows(j, i, [], 0);
    else this.#inEitherOrder(i, j);
  }

  #isFarBefore = (i: number, j: number): boolean =>
    this.#near !== undefined && this.#near[j]! - this.#near[i]! - this.#length(i) > FAR;

  #inEitherOrder(i: number, j: number): void {
    const y = this.#program.binary(`y${i}_${j}`);
    const { workers } = this.#problem;
    if (workers.length < 2) {
      if (!this.#mayPrecede(j, i)) this.#program.row([[1, y]], '=', 1);
      else if (!this.#mayPrecede(i, j)) this.#program.row([[1, y]], '=', 0);
      this.#follows(i, j, [[-1, y]], 1);
      this.#follows(j, i, [[1, y]], 0);
      return;
    }
    workers.forEach((_, w) => {
      const apart: [number, string][] = [
        [-1, this.#hand(i, w)!],
        [-1, this.#hand(j, w)!],
      ];
      this.#follows(i, j, [[-1, y], ...apart], 3);
      this.#follows(j, i, [[1, y], ...apart], 2);
    });
  }

  /** j joins the walk of i by beginning where it ends; each job has at most one before and one after it. */
  #joinWalks(atPit: readonly number[]): void {
    const out = new Map<number, string[]>();
    const into = new Map<number, string[]>();
    for (const i of atPit)
      for (const j of atPit) {
        if (i === j) continue;
        const end = this.#length(i);
        if (this.#last(i) + end < this.#first(j) || this.#first(i) + end > this.#last(j)) continue;
        const m = this.#program.binary(`m${i}_${j}`);
        this.#walks.push([-1, m]);
        out.set(i, [...(out.get(i) ?? []), m]);
        into.set(j, [...(into.get(j) ?? []), m]);
        const late = this.#last(j) - this.#first(i) - end;
        if (late > 0)
          this.#program.row(
            [
              [1, start(j)],
              [-1, start(i)],
              [late, m],
            ],
            '<=',
            end + late,
          );
        const early = this.#last(i) + end - this.#first(j);
        if (early > 0)
          this.#program.row(
            [
              [1, start(j)],
              [-1, start(i)],
              [-early, m],
            ],
            '>=',
            end - early,
          );
        this.#problem.workers.forEach((_, w) => {
          const first = this.#hand(i, w);
          const second = this.#hand(j, w);
          if (!first || !second) return;
          this.#program.row(
            [
              [1, first],
              [-1, second],
              [1, m],
            ],
            '<=',
            1,
          );
        });
      }
    for (const names of [...out.values(), ...into.values()])
      if (names.length > 1)
        this.#program.row(
          names.map((name) => [1, name]),
          '<=',
          1,
        );
  }

  /** Never while away; in sleep only at the price of the night. */
  #absences(k: number): void {
    this.#problem.workers.forEach((worker, w) => {
      for (const span of worker.away) this.#avoid(k, w, span, undefined);
      for (const span of worker.asleep) this.#avoid(k, w, span, this.#length(k));
    });
  }

  #avoid(k: number, w: number, span: Slots, price: number | undefined): void {
    const length = this.#length(k);
    if (this.#last(k) + length <= span.from || this.#first(k) >= span.to) return;
    const n = this.#count++;
    const isAfter = this.#program.binary(`b${n}`);
    if (this.#near && (this.#near[k]! + length <= span.from || this.#near[k]! >= span.to))
      this.#program.row([[1, isAfter]], '=', this.#near[k]! >= span.to ? 1 : 0);
    const loosen: [number, string][] = [];
    let constant = 0;
    if (price !== undefined) {
      const inSleep = this.#program.binary(`z${n}`);
      loosen.push([1, inSleep]);
      this.#night.push([price, inSleep]);
    }
    const hand = this.#hand(k, w);
    if (hand) {
      loosen.push([-1, hand]);
      constant = 1;
    }
    const late = Math.max(0, this.#last(k) + length - span.from);
    // s + length ≤ span.from + late·(isAfter + loosen)
    this.#program.row(
      [[1, start(k)], [-late, isAfter], ...loosen.map(([c, name]): [number, string] => [-c * late, name])],
      '<=',
      span.from - length + late * constant,
    );
    const early = Math.max(0, span.to - this.#first(k));
    // s ≥ span.to − early·(1 − isAfter + loosen)
    this.#program.row(
      [[1, start(k)], [-early, isAfter], ...loosen.map(([c, name]): [number, string] => [c * early, name])],
      '>=',
      span.to - early - early * constant,
    );
  }

  #wish(job: Job, k: number): void {
    if (job.wish === undefined || (job.earlyWeight === 0 && job.lateWeight === 0)) return;
    const early = this.#program.atLeastZero(`e${k}`);
    const late = this.#program.atLeastZero(`l${k}`);
    this.#program.row(
      [
        [1, start(k)],
        [1, early],
        [-1, late],
      ],
      '=',
      job.wish,
    );
    if (job.earlyWeight > 0) this.#wishes.push([job.earlyWeight, early]);
    if (job.lateWeight > 0) this.#wishes.push([job.lateWeight, late]);
  }

  #separate(clash: readonly Activity[]): void {
    const ways: [number, string][] = [];
    for (const before of clash)
      for (const after of clash) {
        if (before === after) continue;
        const n = this.#count++;
        const way = this.#program.binary(`o${n}`);
        const gap = before.endOffset - after.startOffset;
        const bigM = this.#last(before.endJob) - this.#first(after.startJob) + gap;
        ways.push([1, way]);
        if (bigM > 0 && before.endJob !== after.startJob)
          this.#program.row(
            [
              [1, start(after.startJob)],
              [-1, start(before.endJob)],
              [-bigM, way],
            ],
            '>=',
            gap - bigM,
          );
        else if (before.endJob === after.startJob && gap > 0) this.#program.row([[1, way]], '=', 0);
      }
    this.#program.row(ways, '>=', 1);
  }
}

const start = (job: number): string => `s${job}`;
