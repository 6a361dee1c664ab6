import { placeGreedily } from './greedy.ts';
import type { Placement, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { settle } from './settle.ts';
import { copied, networkOf, propagate, widestWindows } from './windows.ts';

/**
 * A placement in which every job stays where it stood as long as the lags allow it, in the order of time; only what
 * cannot stay is placed anew.
 * @param stood  start slots before, by job id
 * @returns undefined where the jobs that stay leave no room for the others
 */
export function placeNear(problem: Problem, stood: ReadonlyMap<string, number>): Placement | undefined {
  const { edges } = networkOf(problem);
  let windows = widestWindows(problem);
  if (propagate(edges, windows) >= 0) return undefined;
  const inTime = [...problem.jobs.keys()]
    .filter((k) => stood.has(problem.jobs[k]!.id))
    .sort((a, b) => stood.get(problem.jobs[a]!.id)! - stood.get(problem.jobs[b]!.id)!);
  const stays = new Set<number>();
  for (const k of inTime) {
    const slot = stood.get(problem.jobs[k]!.id)!;
    if (slot < windows.first[k]! || slot > windows.last[k]!) continue;
    const next = copied(windows);
    next.first[k] = slot;
    next.last[k] = slot;
    if (propagate(edges, next) >= 0) continue;
    windows = next;
    stays.add(k);
  }
  const held: Problem = {
    ...problem,
    jobs: problem.jobs.map((job, k) =>
      stays.has(k) ? { ...job, earliest: windows.first[k]!, latest: windows.first[k]! } : job,
    ),
  };
  const placement = placeGreedily(held) ?? searched(held);
  return placement && settle(held, placement);
}

function searched(problem: Problem): Placement | undefined {
  const fit = findFit(problem);
  return fit.fits === true ? fit.placement : undefined;
}
