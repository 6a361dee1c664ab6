import { type Activity, overloaded, type Resource, resourcesOf } from './activities.ts';
import type { Placement, Problem } from './problem.ts';
import {
  copied,
  type Edge,
  type Network,
  networkOf,
  propagate,
  type Windows,
  widestWindows,
} from './windows.ts';

/** Whether a problem can be placed: a placement, a proof that none exists, or the node count ran out. */
export type Fit =
  | { readonly fits: true; readonly placement: Placement }
  | { readonly fits: false }
  | { readonly fits: 'unknown' };

const NODES = 3000;

/** What a search sets out from where more is known than the problem tells: the same answer, sooner. */
export interface Known {
  readonly network: Network;
  readonly resources: readonly Resource[];
  /** No wider than the problem's and its lags leave them. */
  readonly windows: Windows;
}

/** Where a search stands. */
interface Node {
  readonly edges: readonly Edge[];
  readonly windows: Windows;
  /** Jobs that were sent to one of several workers. */
  readonly given: ReadonlyMap<number, number>;
  /** Pairs of jobs that hands do, which may overlap in these windows. */
  readonly pairs: Int32Array;
}

/**
 * Complete search by posting precedences: the earliest starts of the windows keep every lag; where they overload a
 * resource, some pair of the overloading set must follow each other in any placement, so each such pair is tried.
 * A hand is a resource of one, its absences are held by nobody. @source the method of minimal conflict sets of
 * resource-constrained scheduling with generalised precedences (De Reyck & Herroelen 1998), from memory
 */
export function findFit(problem: Problem, nodes = NODES, known = knownOf(problem)): Fit {
  const { network, resources } = known;
  const busy: Activity[] = problem.jobs.flatMap((job, k) =>
    job.hands > 0
      ? [{ id: job.id, amount: job.hands, startJob: k, startOffset: 0, endJob: k, endOffset: job.duration }]
      : [],
  );
  const busyCount = busy.length;
  const busyJobs = Int32Array.from(busy, ({ startJob }) => startJob);
  const lengths = Int32Array.from(busy, ({ endOffset }) => endOffset);
  /** Their windows, while pairs of them are looked at. */
  const firstOf = new Int32Array(busyCount);
  const lastOf = new Int32Array(busyCount);
  let left = nodes;

  const solve = (
    asked: readonly Edge[],
    windows: Windows,
    given: ReadonlyMap<number, number>,
    near: Int32Array,
  ): Fit => {
    if (left-- <= 0) return { fits: 'unknown' };
    const edges = [...asked];
    const pairs = deduce(edges, windows, near);
    if (!pairs) return { fits: false };
    const node: Node = { edges, windows, given, pairs };
    const startOf = (activity: Activity): number => windows.first[activity.startJob]! + activity.startOffset;
    const endOf = (activity: Activity): number => windows.first[activity.endJob]! + activity.endOffset;
    for (const { capacity, activities } of resources) {
      const clash = overloaded(activities, capacity, startOf, endOf);
      if (clash) return order(clash, node);
    }
    return assign(node, startOf, endOf);
  };

  /**
   * Draws what the windows force: where one of two jobs in the same only hands cannot be first, the other is; a job
   * that does not end before an absence begins after it.
   * @param near pairs of `busy` that may overlap, by their places, one after the other
   * @returns those that still may, since windows only shrink; undefined where one closes
   */
  const deduce = (edges: Edge[], windows: Windows, near: Int32Array): Int32Array | undefined => {
    if (propagate(edges, windows) >= 0) return undefined;
    if (problem.workers.length !== 1) return near;
    const pairs = near.slice();
    let count = pairs.length;
    const { away } = problem.workers[0]!;
    for (let hasChanged = true; hasChanged; ) {
      hasChanged = false;
      for (const { startJob: k, endOffset: length } of busy)
        for (const span of away) {
          if (windows.first[k]! + length > span.from && windows.first[k]! < span.to) {
            windows.first[k] = span.to;
            hasChanged = true;
          }
          if (windows.last[k]! < span.to && windows.last[k]! + length > span.from) {
            windows.last[k] = span.from - length;
            hasChanged = true;
          }
        }
      const { first, last } = windows;
      for (let b = 0; b < busyCount; b++) {
        const k = busyJobs[b]!;
        firstOf[b] = first[k]!;
        lastOf[b] = last[k]!;
      }
      let kept = 0;
      for (let p = 0; p < count; p += 2) {
        const a = pairs[p]!;
        const b = pairs[p + 1]!;
        const firstEndA = firstOf[a]! + lengths[a]!;
        const firstEndB = firstOf[b]! + lengths[b]!;
        const mayLead = firstEndA <= lastOf[b]!;
        const mayFollow = firstEndB <= lastOf[a]!;
        if (!(mayLead && mayFollow)) {
          if (lastOf[a]! + lengths[a]! <= firstOf[b]! || lastOf[b]! + lengths[b]! <= firstOf[a]!) continue;
          if (!mayLead && !mayFollow) return undefined;
          const from = mayLead ? a : b;
          const to = mayLead ? b : a;
          const start = firstOf[from]! + lengths[from]!;
          const end = lastOf[to]! - lengths[from]!;
          if (start > firstOf[to]! || end < lastOf[from]!) {
            edges.push(precedence(busy[from]!, busy[to]!));
            hasChanged = true;
          }
        }
        pairs[kept] = a;
        pairs[kept + 1] = b;
        kept += 2;
      }
      count = kept;
      if (hasChanged && propagate(edges, windows) >= 0) return undefined;
    }
    return pairs.subarray(0, count);
  };

  /** Tries every "this ends before that begins" among the clashing activities. */
  const order = (clash: readonly Activity[], { edges, windows, given, pairs }: Node): Fit => {
    const ways = clash.flatMap((before) =>
      clash.filter((after) => after !== before).map((after) => precedence(before, after)),
    );
    const slack = ({ from, to, gap }: Edge): number => windows.last[to]! - windows.first[from]! - gap;
    return branch(
      ways.filter((edge) => slack(edge) >= 0).sort((a, b) => slack(b) - slack(a)),
      (edge) => solve([...edges, edge], copied(windows), given, pairs),
    );
  };

  /** Gives every job its hands at its earliest start; where none is free, orders it or sends it to one of them. */
  const assign = (
    node: Node,
    startOf: (activity: Activity) => number,
    endOf: (activity: Activity) => number,
  ): Fit => {
    const { windows, given } = node;
    const tooMany = overloaded(busy, problem.workers.length, startOf, endOf);
    if (tooMany) return order(tooMany, node);
    const hands = new Map<string, readonly string[]>();
    const taken = problem.workers.map(() => [] as Activity[]);
    const inOrder = [...busy].sort((a, b) => startOf(a) - startOf(b) || endOf(a) - endOf(b));
    for (const activity of inOrder) {
      const from = startOf(activity);
      const to = endOf(activity);
      const isFree = (w: number): boolean =>
        !problem.workers[w]!.away.some((span) => span.from < to && from < span.to) &&
        !taken[w]!.some((other) => startOf(other) < to && from < endOf(other));
      const may = given.get(activity.startJob);
      const choice = problem.workers
        .map((_, w) => w)
        .filter((w) => (may === undefined || may === w) && isFree(w));
      if (choice.length >= activity.amount) {
        const chosen = choice.slice(0, activity.amount);
        for (const w of chosen) taken[w]!.push(activity);
        hands.set(
          activity.id,
          chosen.map((w) => problem.workers[w]!.id),
        );
        continue;
      }
      return unassigned(activity, node, taken);
    }
    const start = new Map(problem.jobs.map((job, k) => [job.id, windows.first[k]!]));
    return { fits: true, placement: { start, hands } };
  };

  const unassigned = (activity: Activity, node: Node, taken: readonly Activity[][]): Fit => {
    const { edges, windows, given, pairs } = node;
    const job = activity.startJob;
    const all = problem.workers.map((_, k) => k);
    const w = problem.workers.length === 1 ? 0 : given.get(job);
    if (activity.amount > 1) return shiftPast(activity, w === undefined ? all : [w], node, taken);
    if (w !== undefined) return shiftPast(activity, [w], node, taken);
    return branch(all, (worker) => solve(edges, copied(windows), new Map([...given, [job, worker]]), pairs));
  };

  /** Orders a job against what keeps these workers: another job, or an absence. */
  const shiftPast = (
    activity: Activity,
    workers: readonly number[],
    { edges, windows, given, pairs }: Node,
    taken: readonly Activity[][],
  ): Fit => {
    const job = activity.startJob;
    const from = windows.first[job]!;
    const to = from + activity.endOffset;
    const moves: (() => Fit)[] = [];
    for (const w of workers) {
      const absence = problem.workers[w]!.away.find((span) => span.from < to && from < span.to);
      if (absence) {
        moves.push(() => {
          const next = copied(windows);
          next.first[job] = Math.max(next.first[job]!, absence.to);
          return solve(edges, next, given, pairs);
        });
        // Nothing is lost by not trying "before": earlier starts of the job are outside its window already,
        // save those that still end before the absence, which the earliest start would have used.
      }
      for (const other of taken[w]!) {
        const otherFrom = windows.first[other.startJob]!;
        if (!(otherFrom < to && from < otherFrom + other.endOffset)) continue;
        moves.push(() => solve([...edges, precedence(other, activity)], copied(windows), given, pairs));
        moves.push(() => solve([...edges, precedence(activity, other)], copied(windows), given, pairs));
        if (problem.workers.length > 1 && !given.has(other.startJob))
          for (let k = 0; k < problem.workers.length; k++)
            if (k !== w)
              moves.push(() =>
                solve(edges, copied(windows), new Map([...given, [other.startJob, k]]), pairs),
              );
      }
    }
    return branch(moves, (move) => move());
  };

  return solve(network.edges, copied(known.windows), new Map(), allPairs(busyCount));
}

/** Every two of so many, one after the other. */
function allPairs(count: number): Int32Array {
  const pairs = new Int32Array(count * (count - 1));
  let at = 0;
  for (let a = 0; a < count; a++)
    for (let b = a + 1; b < count; b++) {
      pairs[at++] = a;
      pairs[at++] = b;
    }
  return pairs;
}

function knownOf(problem: Problem): Known {
  const network = networkOf(problem);
  return { network, resources: resourcesOf(problem, network), windows: widestWindows(problem) };
}

function branch<T>(ways: readonly T[], tryWay: (way: T) => Fit): Fit {
  let isUnknown = false;
  for (const way of ways) {
    const fit = tryWay(way);
    if (fit.fits === true) return fit;
    if (fit.fits === 'unknown') isUnknown = true;
  }
  return isUnknown ? { fits: 'unknown' } : { fits: false };
}

const precedence = (before: Activity, after: Activity): Edge => ({
  from: before.endJob,
  to: after.startJob,
  gap: before.endOffset - after.startOffset,
});
