import { type Activity, overloaded, resourcesOf } from './activities.ts';
import type { Placement, Problem } from './problem.ts';
import { copied, type Edge, networkOf, propagate, type Windows, widestWindows } from './windows.ts';

/** Whether a problem can be placed: a placement, a proof that none exists, or the node count ran out. */
export type Fit =
  | { readonly fits: true; readonly placement: Placement }
  | { readonly fits: false }
  | { readonly fits: 'unknown' };

const NODES = 3000;

/**
 * Complete search by posting precedences: the earliest starts of the windows keep every lag; where they overload a
 * resource, some pair of the overloading set must follow each other in any placement, so each such pair is tried.
 * A hand is a resource of one, its absences are held by nobody. @source the method of minimal conflict sets of
 * resource-constrained scheduling with generalised precedences (De Reyck & Herroelen 1998), from memory
 */
export function findFit(problem: Problem, nodes = NODES, network = networkOf(problem)): Fit {
  const resources = resourcesOf(problem, network).map((resource) => ({
    capacity: resource.capacity,
    activities: resource.activities,
  }));
  const busy: Activity[] = problem.jobs.flatMap((job, k) =>
    job.hands > 0
      ? [{ id: job.id, amount: job.hands, startJob: k, startOffset: 0, endJob: k, endOffset: job.duration }]
      : [],
  );
  let left = nodes;

  const solve = (edges: readonly Edge[], windows: Windows, given: ReadonlyMap<number, number>): Fit => {
    if (left-- <= 0) return { fits: 'unknown' };
    const known = [...edges];
    if (!deduce(known, windows)) return { fits: false };
    const startOf = (activity: Activity): number => windows.first[activity.startJob]! + activity.startOffset;
    const endOf = (activity: Activity): number => windows.first[activity.endJob]! + activity.endOffset;
    for (const { capacity, activities } of resources) {
      const clash = overloaded(activities, capacity, startOf, endOf);
      if (clash) return order(clash, known, windows, given);
    }
    return assign(known, windows, given, startOf, endOf);
  };

  /**
   * Draws what the windows force: where one of two jobs in the same only hands cannot be first, the other is; a job
   * that does not end before an absence begins after it.
   * @returns whether the windows stay open
   */
  const deduce = (edges: Edge[], windows: Windows): boolean => {
    if (propagate(edges, windows) >= 0) return false;
    if (problem.workers.length !== 1) return true;
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
      for (let a = 0; a < busy.length; a++) {
        const one = busy[a]!;
        const i = one.startJob;
        for (let b = a + 1; b < busy.length; b++) {
          const other = busy[b]!;
          const j = other.startJob;
          if (last[i]! + one.endOffset <= first[j]!) continue;
          if (last[j]! + other.endOffset <= first[i]!) continue;
          const mayLead = first[i]! + one.endOffset <= last[j]!;
          const mayFollow = first[j]! + other.endOffset <= last[i]!;
          if (mayLead && mayFollow) continue;
          if (!mayLead && !mayFollow) return false;
          const from = mayLead ? one : other;
          const to = mayLead ? other : one;
          const start = first[from.startJob]! + from.endOffset;
          const end = last[to.startJob]! - from.endOffset;
          if (start <= first[to.startJob]! && end >= last[from.startJob]!) continue;
          edges.push(precedence(from, to));
          hasChanged = true;
        }
      }
      if (hasChanged && propagate(edges, windows) >= 0) return false;
    }
    return true;
  };

  /** Tries every "this ends before that begins" among the clashing activities. */
  const order = (
    clash: readonly Activity[],
    edges: readonly Edge[],
    windows: Windows,
    given: ReadonlyMap<number, number>,
  ): Fit => {
    const ways = clash.flatMap((before) =>
      clash.filter((after) => after !== before).map((after) => precedence(before, after)),
    );
    const slack = ({ from, to, gap }: Edge): number => windows.last[to]! - windows.first[from]! - gap;
    return branch(
      ways.filter((edge) => slack(edge) >= 0).sort((a, b) => slack(b) - slack(a)),
      (edge) => solve([...edges, edge], copied(windows), given),
    );
  };

  /** Gives every job its hands at its earliest start; where none is free, orders it or sends it to one of them. */
  const assign = (
    edges: readonly Edge[],
    windows: Windows,
    given: ReadonlyMap<number, number>,
    startOf: (activity: Activity) => number,
    endOf: (activity: Activity) => number,
  ): Fit => {
    const tooMany = overloaded(busy, problem.workers.length, startOf, endOf);
    if (tooMany) return order(tooMany, edges, windows, given);
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
      return unassigned(activity, edges, windows, given, taken);
    }
    const start = new Map(problem.jobs.map((job, k) => [job.id, windows.first[k]!]));
    return { fits: true, placement: { start, hands } };
  };

  const unassigned = (
    activity: Activity,
    edges: readonly Edge[],
    windows: Windows,
    given: ReadonlyMap<number, number>,
    taken: readonly Activity[][],
  ): Fit => {
    const job = activity.startJob;
    const w = problem.workers.length === 1 ? 0 : given.get(job);
    if (w === undefined || activity.amount > 1)
      return activity.amount > 1
        ? shiftPast(
            activity,
            problem.workers.map((_, k) => k),
            edges,
            windows,
            given,
            taken,
          )
        : branch(
            problem.workers.map((_, k) => k),
            (worker) => solve(edges, copied(windows), new Map([...given, [job, worker]])),
          );
    return shiftPast(activity, [w], edges, windows, given, taken);
  };

  /** Orders a job against what keeps these workers: another job, or an absence. */
  const shiftPast = (
    activity: Activity,
    workers: readonly number[],
    edges: readonly Edge[],
    windows: Windows,
    given: ReadonlyMap<number, number>,
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
          return solve(edges, next, given);
        });
        // Nothing is lost by not trying "before": earlier starts of the job are outside its window already,
        // save those that still end before the absence, which the earliest start would have used.
      }
      for (const other of taken[w]!) {
        const otherFrom = windows.first[other.startJob]!;
        if (!(otherFrom < to && from < otherFrom + other.endOffset)) continue;
        moves.push(() => solve([...edges, precedence(other, activity)], copied(windows), given));
        moves.push(() => solve([...edges, precedence(activity, other)], copied(windows), given));
        if (problem.workers.length > 1 && !given.has(other.startJob))
          for (let k = 0; k < problem.workers.length; k++)
            if (k !== w)
              moves.push(() => solve(edges, copied(windows), new Map([...given, [other.startJob, k]])));
      }
    }
    return branch(moves, (move) => move());
  };

  return solve(network.edges, widestWindows(problem), new Map());
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
