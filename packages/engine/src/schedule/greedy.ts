import { type Activity, CAPACITY_EPSILON, type Resource, resourcesOf } from './activities.ts';
import type { Job, Placement, Problem, Slots } from './problem.ts';
import { copied, type Network, networkOf, propagate, type Windows, widestWindows } from './windows.ts';

/** Prices against five minutes off a wish: a minute of night work, a walk of its own, waiting, a start off the five. */
const NIGHT_PRICE = 200;
const WALK_PRICE = 25;
const IDLE_PRICE = 0.004;
const ODD_MINUTE_PRICE = 0.5;
const RESTARTS = 60;
/** Heavier wishes are served first: the chosen starts, then the table, then what has the least room. */
const FIRST = [0, 2e3, 4e3, 8e3];
const rankOf = (job: Job): number =>
  job.isPinned ? 3 : job.earlyWeight >= 6 ? 2 : job.lateWeight >= 6 ? 1 : 0;

/**
 * A placement by taking the job with the least room first and giving it its cheapest slot, all other windows being
 * tightened after each. A job that finds no slot goes first in the next try. No proof of being best.
 * @returns undefined when no try placed every job
 */
export function placeGreedily(problem: Problem): Placement | undefined {
  const network = networkOf(problem);
  const resources = resourcesOf(problem, network);
  const open = widestWindows(problem);
  if (propagate(network.edges, open) >= 0) return undefined;
  const urgency = new Int32Array(problem.jobs.length);
  for (let restart = 0; restart < RESTARTS; restart++) {
    const board = new Board(problem, network, resources, copied(open));
    const stuck = board.fill(urgency);
    if (stuck < 0) return board.placement();
    urgency[stuck] = restart + 1;
  }
  return undefined;
}

interface WalkEnds {
  readonly begins: ReadonlySet<number>;
  readonly ends: ReadonlySet<number>;
}

const NOBODY: readonly number[] = [];

class Board {
  readonly #problem: Problem;
  readonly #network: Network;
  readonly #resources: readonly Resource[];
  readonly #windows: Windows;
  readonly #placed = new Map<number, number>();
  readonly #hands = new Map<number, readonly number[]>();

  constructor(problem: Problem, network: Network, resources: readonly Resource[], windows: Windows) {
    this.#problem = problem;
    this.#network = network;
    this.#resources = resources;
    this.#windows = windows;
  }

  /** Places all; returns the job that found no slot, or −1. */
  fill(urgency: Int32Array): number {
    const waiting = new Set(this.#problem.jobs.keys());
    while (waiting.size) {
      const next = this.#tightest(waiting, urgency);
      if (!this.#place(next)) return next;
      waiting.delete(next);
    }
    return -1;
  }

  placement(): Placement {
    const start = new Map<string, number>();
    const hands = new Map<string, readonly string[]>();
    this.#problem.jobs.forEach((job, k) => {
      start.set(job.id, this.#placed.get(k)!);
      const workers = this.#hands.get(k);
      if (workers?.length)
        hands.set(
          job.id,
          workers.map((w) => this.#problem.workers[w]!.id),
        );
    });
    return { start, hands };
  }

  #tightest(waiting: ReadonlySet<number>, urgency: Int32Array): number {
    let best = -1;
    let bestKey = Infinity;
    for (const k of waiting) {
      const room = this.#windows.last[k]! - this.#windows.first[k]!;
      const key = room - 1e5 * urgency[k]! - FIRST[rankOf(this.#problem.jobs[k]!)]!;
      if (key < bestKey) {
        best = k;
        bestKey = key;
      }
    }
    return best;
  }

  #place(k: number): boolean {
    const job = this.#problem.jobs[k]!;
    const first = this.#windows.first[k]!;
    const taken = this.#takenHands();
    const walks = this.#walkEnds();
    const prices = new Float64Array(this.#windows.last[k]! - first + 1).fill(Infinity);
    for (let i = 0; i < prices.length; i++) {
      const span = { from: first + i, to: first + i + job.duration };
      const workers = this.#freeWorkers(job, span, taken);
      if (workers) prices[i] = this.#price(job, span, workers, walks);
    }
    for (const i of cheapestFirst(prices)) {
      const slot = first + i;
      const workers = this.#freeWorkers(job, { from: slot, to: slot + job.duration }, taken)!;
      const next = copied(this.#windows);
      next.first[k] = slot;
      next.last[k] = slot;
      if (propagate(this.#network.edges, next) >= 0 || this.#crowdsDecided(k, slot, workers, next)) continue;
      this.#placed.set(k, slot);
      if (this.#overloads(k)) {
        this.#placed.delete(k);
        continue;
      }
      this.#windows.first.set(next.first);
      this.#windows.last.set(next.last);
      this.#hands.set(k, workers);
      return true;
    }
    return false;
  }

  /** When each worker is at a job that is placed. */
  #takenHands(): readonly (readonly Slots[])[] {
    const taken = this.#problem.workers.map((): Slots[] => []);
    for (const [other, workers] of this.#hands) for (const w of workers) taken[w]!.push(this.#spanOf(other));
    return taken;
  }

  #freeWorkers(job: Job, span: Slots, taken: readonly (readonly Slots[])[]): readonly number[] | undefined {
    if (job.hands === 0) return NOBODY;
    const { workers } = this.#problem;
    const free: number[] = [];
    for (let w = 0; w < workers.length; w++)
      if (!meetsAny(workers[w]!.away, span) && !meetsAny(taken[w]!, span)) free.push(w);
    if (free.length < job.hands) return undefined;
    if (free.length > 1)
      free.sort((a, b) => this.#asleepSlots(a, span) - this.#asleepSlots(b, span) || a - b);
    return free.slice(0, job.hands);
  }

  /** Whether a waiting job whose start this decides would find its hands taken. */
  #crowdsDecided(k: number, slot: number, workers: readonly number[], next: Windows): boolean {
    const { jobs, workers: hands } = this.#problem;
    const decided: { span: Slots; hands: number }[] = [];
    const mine = { from: slot, to: slot + jobs[k]!.duration };
    for (let j = 0; j < jobs.length; j++) {
      if (j === k || this.#placed.has(j) || jobs[j]!.hands === 0 || next.first[j] !== next.last[j]) continue;
      const span = { from: next.first[j]!, to: next.first[j]! + jobs[j]!.duration };
      let free = 0;
      hands.forEach((worker, w) => {
        const isTaken =
          (workers.includes(w) && meet(mine, span)) ||
          worker.away.some((away) => meet(away, span)) ||
          [...this.#hands].some(([other, by]) => by.includes(w) && meet(this.#spanOf(other), span));
        if (!isTaken) free++;
      });
      const rivals = decided
        .filter((other) => meet(other.span, span))
        .reduce((sum, other) => sum + other.hands, 0);
      if (free - rivals < jobs[j]!.hands) return true;
      decided.push({ span, hands: jobs[j]!.hands });
    }
    return false;
  }

  #spanOf(k: number): Slots {
    const from = this.#placed.get(k)!;
    return { from, to: from + this.#problem.jobs[k]!.duration };
  }

  #asleepSlots(w: number, span: Slots): number {
    return this.#problem.workers[w]!.asleep.reduce(
      (sum, asleep) => sum + Math.max(0, Math.min(asleep.to, span.to) - Math.max(asleep.from, span.from)),
      0,
    );
  }

  #price(job: Job, span: Slots, workers: readonly number[], walks: WalkEnds): number {
    const slot = span.from;
    let night = 0;
    for (const w of workers) night += this.#asleepSlots(w, span);
    const { wish } = job;
    const early = job.earlyWeight / 5;
    const late = job.lateWeight / 5;
    const off = wish === undefined ? 0 : slot < wish ? early * (wish - slot) : late * (slot - wish);
    // Another job at the pit ends where this begins, or begins where this ends.
    const joinsWalk = walks.ends.has(span.from) || walks.begins.has(span.to);
    const walk = job.at === 'pit' && job.hands > 0 && !joinsWalk ? WALK_PRICE : 0;
    const odd = job.hands > 0 && slot % 5 !== 0 && !(job.at === 'pit' && walk === 0) ? ODD_MINUTE_PRICE : 0;
    return NIGHT_PRICE * night + walk + off + odd + IDLE_PRICE * slot;
  }

  /** Where the jobs that bring somebody to the pit begin and end. */
  #walkEnds(): WalkEnds {
    const begins = new Set<number>();
    const ends = new Set<number>();
    for (const other of this.#hands.keys()) {
      const job = this.#problem.jobs[other]!;
      if (job.at !== 'pit' || job.hands === 0) continue;
      const there = this.#spanOf(other);
      begins.add(there.from);
      ends.add(there.to);
    }
    return { begins, ends };
  }

  #overloads(k: number): boolean {
    return this.#resources.some(({ capacity, activities }) => {
      const known = activities.filter((a) => this.#placed.has(a.startJob) && this.#placed.has(a.endJob));
      const touched = known.filter((a) => a.startJob === k || a.endJob === k);
      const start = (a: Activity): number => this.#placed.get(a.startJob)! + a.startOffset;
      const end = (a: Activity): number => this.#placed.get(a.endJob)! + a.endOffset;
      // The load only changes where something starts: looking there is enough.
      return known.some((at) => {
        const moment = start(at);
        const active = known.filter((a) => start(a) <= moment && moment < end(a));
        if (!active.some((a) => touched.includes(a))) return false;
        return active.reduce((sum, a) => sum + a.amount, 0) > capacity + CAPACITY_EPSILON;
      });
    });
  }
}

const meet = (a: Slots, b: Slots): boolean => a.from < b.to && b.from < a.to;

function meetsAny(spans: readonly Slots[], span: Slots): boolean {
  for (const one of spans) if (meet(one, span)) return true;
  return false;
}

/** Mostly the first few will do: they are looked for one by one, the rest is put in order once. */
const LOOKED_FOR = 4;

/** Places of the finite prices, the cheapest first, the earlier of two alike. */
function* cheapestFirst(prices: Float64Array): Generator<number> {
  for (let round = 0; round < LOOKED_FOR; round++) {
    let best = -1;
    let least = Infinity;
    for (let i = 0; i < prices.length; i++)
      if (prices[i]! < least) {
        best = i;
        least = prices[i]!;
      }
    if (best < 0) return;
    prices[best] = Infinity;
    yield best;
  }
  const rest = [...prices.keys()].filter((i) => prices[i]! < Infinity);
  yield* rest.sort((a, b) => prices[a]! - prices[b]! || a - b);
}
