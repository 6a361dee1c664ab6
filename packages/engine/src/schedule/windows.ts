import type { Lag, Problem } from './problem.ts';

/** start[to] − start[from] ≥ gap, in slots. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly gap: number;
}

/** The jobs by number, and every lag as difference constraints between starts. */
export interface Network {
  readonly index: ReadonlyMap<string, number>;
  readonly duration: Int32Array;
  readonly edges: readonly Edge[];
}

/** First and last start of every job. */
export interface Windows {
  readonly first: Int32Array;
  readonly last: Int32Array;
}

export function networkOf(problem: Pick<Problem, 'jobs' | 'lags'>): Network {
  const index = new Map(problem.jobs.map((job, k) => [job.id, k]));
  const duration = Int32Array.from(problem.jobs, (job) => job.duration);
  return withLags({ index, duration, edges: [] }, problem.lags);
}

/** The same with more lags. */
export function withLags(network: Network, lags: readonly Lag[]): Network {
  const { index, duration } = network;
  const edges = [...network.edges];
  for (const lag of lags) {
    const from = index.get(lag.from);
    const to = index.get(lag.to);
    if (from === undefined || to === undefined)
      throw new RangeError(`lag ${lag.from} → ${lag.to} joins no jobs`);
    edges.push({ from, to, gap: duration[from]! + lag.min });
    if (lag.max !== undefined) edges.push({ from: to, to: from, gap: -(duration[from]! + lag.max) });
  }
  return { index, duration, edges };
}

export function widestWindows({ jobs }: Pick<Problem, 'jobs'>): Windows {
  const first = new Int32Array(jobs.length);
  const last = new Int32Array(jobs.length);
  for (const [k, job] of jobs.entries()) {
    first[k] = job.earliest;
    last[k] = job.latest;
  }
  return { first, last };
}

export const copied = (windows: Windows): Windows => ({
  first: windows.first.slice(),
  last: windows.last.slice(),
});

/**
 * Tightens the windows in place until nothing changes (Bellman–Ford on difference constraints).
 * @returns the number of a job whose window has closed, or −1 when all stay open
 */
export function propagate(edges: readonly Edge[], windows: Windows): number {
  const { first, last } = windows;
  for (let k = 0; k < first.length; k++) if (first[k]! > last[k]!) return k;
  const count = edges.length;
  // A window shrinks with every change, so this ends; a positive cycle of gaps ends by closing one.
  for (let hasChanged = true; hasChanged; ) {
    hasChanged = false;
    for (let e = 0; e < count; e++) {
      const { from, to, gap } = edges[e]!;
      if (first[from]! + gap > first[to]!) {
        first[to] = first[from]! + gap;
        if (first[to]! > last[to]!) return to;
        hasChanged = true;
      }
      if (last[to]! - gap < last[from]!) {
        last[from] = last[to]! - gap;
        if (first[from]! > last[from]!) return from;
        hasChanged = true;
      }
    }
  }
  return -1;
}

/**
 * Longest chain of gaps from each job to each other (Floyd–Warshall), −∞ where none leads: start[b] − start[a] is at
 * least `longest[a * n + b]` in every placement.
 */
export function longestGaps(count: number, edges: readonly Edge[]): Float64Array {
  const longest = new Float64Array(count * count).fill(-Infinity);
  for (let k = 0; k < count; k++) longest[k * count + k] = 0;
  for (const { from, to, gap } of edges)
    longest[from * count + to] = Math.max(longest[from * count + to]!, gap);
  for (let via = 0; via < count; via++)
    for (let a = 0; a < count; a++) {
      const first = longest[a * count + via]!;
      if (first === -Infinity) continue;
      for (let b = 0; b < count; b++) {
        const through = first + longest[via * count + b]!;
        if (through > longest[a * count + b]!) longest[a * count + b] = through;
      }
    }
  return longest;
}
