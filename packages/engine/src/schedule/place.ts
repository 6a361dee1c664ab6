import { explainConflict } from './conflict.ts';
import { demandsOf, keepingOnly } from './demands.ts';
import { placeGreedily } from './greedy.ts';
import { joinWalks } from './join-walks.ts';
import type { Placement, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { settle } from './settle.ts';
import { placeBySolver } from './solve.ts';
import type { Conflict, SolveLp } from './types.ts';

export interface Placed {
  readonly placement: Placement;
  /** The problem that was placed: the one asked, less what had to be given up. */
  readonly problem: Problem;
  readonly conflicts: readonly Conflict[];
  readonly by: 'solver' | 'greedy';
  readonly gap?: number;
}

/** A cook that clashes more often than this is not planned but thought over. */
const MOST_CONFLICTS = 6;

/**
 * Places all jobs; where they do not fit, gives up the demand that each minimal conflict advises, only as far as it
 * must, and says so.
 * @throws Error when the bare order of the work has a circle in it
 */
export function placeOrGiveUp(
  asked: Problem,
  place: (problem: Problem) => Pick<Placed, 'placement' | 'by' | 'gap'> | undefined,
): Placed {
  let problem = asked;
  const conflicts: Conflict[] = [];
  for (let k = 0; k <= MOST_CONFLICTS; k++) {
    const placed = place(problem);
    if (placed) return { ...placed, problem, conflicts };
    const found = explainConflict(problem);
    if (!found) break;
    conflicts.push(found.conflict);
    problem = found.giveUp.easedBy(problem, found.amount);
  }
  return { ...leaveOut(problem, place), conflicts };
}

/**
 * Where no conflict could be proven in the nodes given: leaves out longest lags first, then windows, then hands, until
 * a placement is found.
 */
function leaveOut(
  problem: Problem,
  place: (problem: Problem) => Pick<Placed, 'placement' | 'by' | 'gap'> | undefined,
): Omit<Placed, 'conflicts'> {
  const all = demandsOf(problem);
  const groups = ['most:', 'latest:', 'earliest:', 'least:', 'hands', 'away:', 'capacity:', 'pinned:'];
  const left = new Set(all);
  for (const group of groups) {
    for (const demand of all) if (demand.id.startsWith(group)) left.delete(demand);
    const eased = keepingOnly(problem, all, left);
    const placed = place(eased);
    if (placed) return { ...placed, problem: eased };
  }
  throw new Error('the order of the work contradicts itself');
}

/**
 * Places all jobs: nobody woken where that can be, walks joined, then by the solver nearest to the wishes; without a
 * solver, or where it gives up, greedily and by complete search.
 * @returns undefined when nothing was found
 */
export function placeAll(
  problem: Problem,
  solveLp?: SolveLp,
): Pick<Placed, 'placement' | 'by' | 'gap'> | undefined {
  const asleep = keepingSleep(problem);
  for (const kept of asleep === problem ? [problem] : [asleep, problem]) {
    const joined = joinWalks(kept);
    const solved = solveLp && placeBySolver(joined, solveLp, 'as joined');
    if (solved) return { ...solved, placement: settle(joined, solved.placement) };
    for (const each of [joined, kept]) {
      const placement = placeGreedily(each) ?? searched(each);
      if (placement) return { placement: settle(each, placement), by: 'greedy' };
    }
  }
  return undefined;
}

function searched(problem: Problem): Placement | undefined {
  const fit = findFit(problem);
  return fit.fits === true ? fit.placement : undefined;
}

/** The same with nobody woken. */
const keepingSleep = (problem: Problem): Problem =>
  problem.workers.some((worker) => worker.asleep.length)
    ? {
        ...problem,
        workers: problem.workers.map((worker) => ({
          ...worker,
          away: [...worker.away, ...worker.asleep],
          asleep: [],
        })),
      }
    : problem;
