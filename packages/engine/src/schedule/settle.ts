import { resourcesOf } from './activities.ts';
import type { Job, Placement, Problem } from './problem.ts';
import { copied, type Edge, networkOf, propagate, widestWindows } from './windows.ts';

/** Planned clock times stand on five minutes where the neighbours leave the choice. */
const FIVE = 5;

/**
 * The same order of work, each job moved as near to its wish as the order, the lags and the absences leave, heaviest
 * wish first, and on to five minutes. Within tightened windows of difference constraints every value has a completion,
 * so no step can close the plan.
 */
export function settle(problem: Problem, placement: Placement): Placement {
  const network = networkOf(problem);
  const at = problem.jobs.map((job) => placement.start.get(job.id)!);
  const edges: Edge[] = [
    ...network.edges,
    ...handOrder(problem, placement, at),
    ...equipmentOrder(problem, at),
  ];
  let windows = widestWindows(problem);
  problem.jobs.forEach((job, k) => {
    for (const worker of problem.workers) {
      if (!placement.hands.get(job.id)?.includes(worker.id)) continue;
      for (const span of [...worker.away, ...worker.asleep]) {
        if (at[k]! + job.duration <= span.from)
          windows.last[k] = Math.min(windows.last[k]!, span.from - job.duration);
        else if (at[k]! >= span.to) windows.first[k] = Math.max(windows.first[k]!, span.to);
      }
    }
  });
  if (propagate(edges, windows) >= 0) return placement;
  const joinsAnother = new Set(
    problem.jobs.flatMap((job, k) =>
      job.at === 'pit' &&
      problem.jobs.some((other, j) => j !== k && other.at === 'pit' && at[j]! + other.duration === at[k]!)
        ? [k]
        : [],
    ),
  );
  for (const k of [...problem.jobs.keys()].sort(
    (a, b) => weight(problem.jobs[b]!) - weight(problem.jobs[a]!) || at[a]! - at[b]!,
  )) {
    const job = problem.jobs[k]!;
    const [first, last] = [windows.first[k]!, windows.last[k]!];
    const wish = Math.min(last, Math.max(first, job.wish ?? at[k]!));
    const slot = joinsAnother.has(k) || job.hands === 0 ? wish : nearestFive(wish, first, last);
    const next = copied(windows);
    next.first[k] = slot;
    next.last[k] = slot;
    if (propagate(edges, next) < 0) windows = next;
  }
  return {
    start: new Map(problem.jobs.map((job, k) => [job.id, windows.first[k]!])),
    hands: placement.hands,
  };
}

const weight = (job: Job): number =>
  (job.isPinned ? 1000 : 0) + (job.wish === undefined ? 0 : Math.max(job.earlyWeight, job.lateWeight));

function nearestFive(wish: number, first: number, last: number): number {
  const down = Math.floor(wish / FIVE) * FIVE;
  const up = Math.ceil(wish / FIVE) * FIVE;
  if (up <= last && (up - wish <= wish - down || down < first)) return up;
  return down >= first ? down : wish;
}

/** Jobs in the same hands keep their order; jobs of one walk stay joined. */
function handOrder(problem: Problem, placement: Placement, at: readonly number[]): Edge[] {
  const edges: Edge[] = [];
  for (const worker of problem.workers) {
    const mine = [...problem.jobs.keys()]
      .filter((k) => placement.hands.get(problem.jobs[k]!.id)?.includes(worker.id))
      .sort((a, b) => at[a]! - at[b]!);
    mine.slice(1).forEach((to, n) => {
      const from = mine[n]!;
      const { duration, at: place } = problem.jobs[from]!;
      edges.push({ from, to, gap: duration });
      if (place === 'pit' && problem.jobs[to]!.at === 'pit' && at[from]! + duration === at[to]!)
        edges.push({ from: to, to: from, gap: -duration });
    });
  }
  return edges;
}

/** What does not share a piece of equipment now will not share it later. */
function equipmentOrder(problem: Problem, at: readonly number[]): Edge[] {
  const edges: Edge[] = [];
  for (const { activities } of resourcesOf(problem, networkOf(problem)))
    for (const before of activities)
      for (const after of activities)
        if (
          before !== after &&
          before.endJob !== after.startJob &&
          at[before.endJob]! + before.endOffset <= at[after.startJob]! + after.startOffset
        )
          edges.push({ from: before.endJob, to: after.startJob, gap: before.endOffset - after.startOffset });
  return edges;
}
