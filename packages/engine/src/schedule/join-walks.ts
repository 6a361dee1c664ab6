import { resourcesOf } from './activities.ts';
import type { Lag, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { copied, networkOf, propagate, type Windows, widestWindows, withLags } from './windows.ts';

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
  let network = networkOf(problem);
  const windows = widestWindows(problem);
  if (propagate(network.edges, windows) >= 0) return problem;
  const resources = resourcesOf(problem, network);
  const middles = problem.jobs.map((job, k) => job.wish ?? (windows.first[k]! + windows.last[k]!) / 2);
  const middle = (k: number): number => middles[k]!;
  const atPit = [...problem.jobs.keys()]
    .filter((k) => problem.jobs[k]!.at === 'pit' && problem.jobs[k]!.hands > 0)
    .sort((a, b) => middle(a) - middle(b) || a - b);
  let joined = problem;
  /** What the walks joined so far leave of them. */
  let left = windows;
  const tails: number[] = [];
  const lasts = new Map<number, number>();
  for (const k of atPit) {
    const near = tails
      .filter(
        (tail) =>
          middle(k) - middle(tail) <= REACH && lasts.get(tail)! + problem.jobs[k]!.duration <= LONGEST,
      )
      .sort((a, b) => middle(b) - middle(a));
    const tail = near.find((t) => {
      const lag: Lag = { from: problem.jobs[t]!.id, to: problem.jobs[k]!.id, min: 0, max: 0 };
      const next = { ...joined, lags: [...joined.lags, lag] };
      const bound = withLags(network, [lag]);
      const open = copied(left);
      if (propagate(bound.edges, open) >= 0 || !isGentle(problem, open)) return false;
      if (findFit(next, NODES, { network: bound, resources, windows: open }).fits !== true) return false;
      joined = next;
      network = bound;
      left = open;
      return true;
    });
    if (tail !== undefined) tails.splice(tails.indexOf(tail), 1);
    lasts.set(k, (tail === undefined ? 0 : lasts.get(tail)!) + problem.jobs[k]!.duration);
    tails.push(k);
  }
  return joined;
}

/** Whether every wish can still be met nearly, one by one. */
const isGentle = ({ jobs }: Problem, { first, last }: Windows): boolean =>
  jobs.every((job, k) => {
    if (job.wish === undefined || job.at !== 'pit') return true;
    const off = Math.max(first[k]! - job.wish, job.wish - last[k]!, 0);
    return off <= (job.earlyWeight >= 6 ? OFF_START : OFF_WISH);
  });
