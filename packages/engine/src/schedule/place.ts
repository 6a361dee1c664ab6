import { explainConflict } from './conflict.ts';
import { type Droppable, demandsOf, keepingOnly } from './demands.ts';
import { placeGreedily } from './greedy.ts';
import { joinWalks } from './join-walks.ts';
import type { Found, Placement, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { settle } from './settle.ts';
import { placeBySolver } from './solve.ts';
import type { Conflict, SolveLp } from './types.ts';

export interface Placed extends Found {
  /** The problem that was placed: the one asked, less what had to be given up. */
  readonly problem: Problem;
  readonly conflicts: readonly Conflict[];
}

/** A cook that clashes more often than this is not planned but thought over. */
const MOST_CONFLICTS = 6;

/**
 * Places all jobs; where they do not fit, gives up the demand that each minimal conflict advises, only as far as it
 * must, and says so.
 * @throws Error when the bare order of the work has a circle in it
 */
export function placeOrGiveUp(asked: Problem, place: (problem: Problem) => Found | undefined): Placed {
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
  const left = leaveOut(problem, place);
  return { ...left, conflicts: [...conflicts, ...left.conflicts] };
}

/**
 * Where no conflict could be proven in the nodes given: leaves out longest lags first, then windows, then hands, until
 * a placement is found.
 */
function leaveOut(problem: Problem, place: (problem: Problem) => Found | undefined): Placed {
  const all = demandsOf(problem);
  const groups = ['most:', 'latest:', 'earliest:', 'least:', 'hands', 'away:', 'capacity:', 'pinned:'];
  const left = new Set(all);
  for (const group of groups) {
    for (const demand of all) if (demand.id.startsWith(group)) left.delete(demand);
    const eased = keepingOnly(problem, all, left);
    const placed = place(eased);
    if (!placed) continue;
    const broken = all.filter(
      (demand) => !left.has(demand) && isBroken(problem, all, demand, placed.placement),
    );
    return { ...placed, problem: eased, conflicts: broken.map(unproven) };
  }
  throw new Error('the order of the work contradicts itself');
}

/** Whether a placement made without the demand goes against it. */
function isBroken(
  problem: Problem,
  all: readonly Droppable[],
  demand: Droppable,
  placement: Placement,
): boolean {
  const alone = keepingOnly(problem, all, new Set([demand]));
  const fixed = alone.jobs.map((job) => ({ ...job, start: placement.start.get(job.id)! }));
  if (demand.id === 'hands' || demand.kind === 'hand-away' || demand.kind === 'capacity') return true;
  if (fixed.some((job) => job.start < job.earliest || job.start > job.latest)) return true;
  const ends = new Map(fixed.map((job) => [job.id, job.start + job.duration]));
  return alone.lags.some((lag) => {
    const gap = placement.start.get(lag.to)! - ends.get(lag.from)!;
    return gap < lag.min || (lag.max !== undefined && gap > lag.max);
  });
}

/** A demand that had to go without a proof of what it clashes with. */
const unproven = ({ id, kind, taskIds, said }: Droppable): Conflict => ({
  demands: [{ id, kind, taskIds, said }],
  wayOut: [{ demandId: id, buys: { id: 'way-out.unproven' } }],
  giveUpId: id,
});

/**
 * Places all jobs: nobody woken where that can be, walks joined, then by the solver nearest to the wishes; without a
 * solver, or where it gives up, greedily and by complete search.
 * @returns undefined when nothing was found
 */
export function placeAll(problem: Problem, solveLp?: SolveLp): Found | undefined {
  const asleep = keepingSleep(problem);
  for (const kept of asleep === problem ? [problem] : [asleep, problem]) {
    const joined = joinWalks(kept);
    for (const each of joined === kept ? [kept] : [joined, kept]) {
      const placement = placeGreedily(each) ?? searched(each);
      if (!placement) continue;
      // The solver is only asked to better what is known to fit: proving that nothing fits is not its strength.
      const solved = solveLp && placeBySolver(each, solveLp, 'as joined', placement);
      if (solved) return { ...solved, placement: settle(each, solved.placement) };
      return { placement: settle(each, placement), by: 'greedy' };
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
