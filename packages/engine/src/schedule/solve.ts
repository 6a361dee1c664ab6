import { overloaded, resourcesOf } from './activities.ts';
import type { Row } from './lp-text.ts';
import { type Model, modelOf } from './model.ts';
import type { Found, Placement, Problem } from './problem.ts';
import type { LpSolution, SolveLp } from './types.ts';
import { networkOf } from './windows.ts';

/** Where the solver stops: the same in every machine, for it counts nodes and not time. */
export const LIMITS = { gap: 0.02, nodes: 2000 };
/** Times that a placement may overload equipment before the greedy one is taken. */
const MOST_CUTS = 12;

type Solved = Extract<LpSolution, { readonly values: unknown }>;

/**
 * Places all jobs with least night work, then fewest walks, then nearest to the wishes: programs in that order, each
 * keeping what the one before it reached. Equipment enters where a placement would overload it, one clash at a time.
 * @param walks  `as joined`: the walks are what `joinWalks` made of the problem; `free`: the program chooses them
 * @param near  a placement that fits, whose order is kept where jobs stand far apart; the gap is that of this room
 * @returns undefined when nothing fits or the solver gave up
 */
export function placeBySolver(
  problem: Problem,
  solveLp: SolveLp,
  walks: 'free' | 'as joined',
  near?: Placement,
): Found | undefined {
  const model = modelOf(problem, walks, near);
  if (!model) return undefined;
  for (let cut = 0; cut <= MOST_CUTS; cut++) {
    const solved = inOrder(model, solveLp);
    if (!solved) return undefined;
    const placement = placementOf(problem, model, solved.values);
    const clash = clashOf(problem, placement);
    if (!clash) return { placement, by: 'solver', ...(solved.gap !== undefined && { gap: solved.gap }) };
    model.separate(clash);
  }
  return undefined;
}

/** Lexicographic: what an earlier objective reached becomes a row of the later programs. */
function inOrder(model: Model, solveLp: SolveLp): { values: Solved['values']; gap?: number } | undefined {
  const kept: Row[] = [];
  let values: Solved['values'] | undefined;
  let gap: number | undefined = 0;
  for (const terms of [model.nightTerms, model.walkTerms, model.wishTerms]) {
    if (!terms.length) continue;
    const solution: LpSolution = solveLp(model.program.text(terms, kept), LIMITS);
    if (!isSolved(solution)) return undefined;
    values = solution.values;
    gap = gap === undefined || solution.gap === undefined ? undefined : Math.max(gap, solution.gap);
    kept.push({ terms, relation: '<=', value: Math.round(worth(terms, values)) });
  }
  if (values) return { values, ...(gap !== undefined && { gap }) };
  const solution: LpSolution = solveLp(model.program.text([]), LIMITS);
  return isSolved(solution) ? { values: solution.values, gap: 0 } : undefined;
}

function isSolved(solution: LpSolution): solution is Solved {
  return solution.status === 'optimal' || solution.status === 'feasible';
}

const worth = (terms: Row['terms'], values: Solved['values']): number =>
  terms.reduce((sum, [coefficient, name]) => sum + coefficient * (values[name] ?? 0), 0);

function placementOf(problem: Problem, model: Model, values: Solved['values']): Placement {
  const start = new Map<string, number>();
  const hands = new Map<string, readonly string[]>();
  problem.jobs.forEach((job, k) => {
    start.set(job.id, Math.round(values[model.startName(k)] ?? job.earliest));
    if (job.hands === 0) return;
    const chosen = problem.workers.filter((_, w) => {
      const name = model.handName(k, w);
      return name === undefined || (values[name] ?? 0) > 0.5;
    });
    hands.set(
      job.id,
      chosen.map((worker) => worker.id),
    );
  });
  return { start, hands };
}

function clashOf(problem: Problem, placement: Placement) {
  const network = networkOf(problem);
  const at = (job: number): number => placement.start.get(problem.jobs[job]!.id)!;
  for (const { capacity, activities } of resourcesOf(problem, network)) {
    const clash = overloaded(
      activities,
      capacity,
      (a) => at(a.startJob) + a.startOffset,
      (a) => at(a.endJob) + a.endOffset,
    );
    if (clash) return clash;
  }
  return undefined;
}
