import type { Job, Lag, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { type Network, networkOf, propagate, type Windows, widestWindows } from './windows.ts';

/** Jobs further apart than this are never one walk [min]. */
const REACH = 45;
/** Longest walk: other work waits in the kitchen [min]. */
const LONGEST = 30;
/** A walk may pull a job from its wish by so much [min]; a chosen start gives less. */
const OFF_WISH = 15;
const OFF_START = 5;
const NODES = 60;

/**
 * The problem with jobs at the pit bound into walks: taken in order of time, each joins the walk before it where
 * everything still fits and no job is pulled far from its wish, else it begins a new one.
 */
export function joinWalks(problem: Problem): Problem {
  const network = networkOf(problem);
  const windows = widestWindows(problem);
  if (propagate(network.edges, windows) >= 0) return problem;
  const middle = (k: number, w: Windows): number => problem.jobs[k]!.wish ?? (w.first[k]! + w.last[k]!) / 2;
  const atPit = [...problem.jobs.keys()]
    .filter((k) => problem.jobs[k]!.at === 'pit' && problem.jobs[k]!.hands > 0)
    .sort((a, b) => middle(a, windows) - middle(b, windows) || a - b);
  let joined = problem;
  const tails: number[] = [];
  const lasts = new Map<number, number>();
  for (const k of atPit) {
    const near = tails
      .filter(
        (tail) =>
          middle(k, windows) - middle(tail, windows) <= REACH &&
          lasts.get(tail)! + problem.jobs[k]!.duration <= LONGEST,
      )
      .sort((a, b) => middle(b, windows) - middle(a, windows));
    const tail = near.find((t) => {
      const next = withLag(joined, problem.jobs[t]!, problem.jobs[k]!);
      const bound = networkOf(next);
      if (!isGentle(next, bound)) return false;
      if (findFit(next, NODES, bound).fits !== true) return false;
      joined = next;
      return true;
    });
    if (tail !== undefined) tails.splice(tails.indexOf(tail), 1);
    lasts.set(k, (tail === undefined ? 0 : lasts.get(tail)!) + problem.jobs[k]!.duration);
    tails.push(k);
  }
  return joined;
}

const withLag = (problem: Problem, before: Job, after: Job): Problem => ({
  ...problem,
  lags: [...problem.lags, { from: before.id, to: after.id, min: 0, max: 0 } satisfies Lag],
});

/** Whether every wish can still be met nearly, one by one. */
function isGentle(problem: Problem, network: Network): boolean {
  const windows = widestWindows(problem);
  if (propagate(network.edges, windows) >= 0) return false;
  return problem.jobs.every((job, k) => {
    if (job.wish === undefined || job.at !== 'pit') return true;
    const off = Math.max(windows.first[k]! - job.wish, job.wish - windows.last[k]!, 0);
    return off <= (job.earlyWeight >= 6 ? OFF_START : OFF_WISH);
  });
}
