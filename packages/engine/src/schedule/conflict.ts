import type { Said } from '@pitwright/model';
import { CAPACITY_EPSILON } from './activities.ts';
import { type Droppable, demandsOf, keepingOnly } from './demands.ts';
import type { Problem } from './problem.ts';
import { findFit } from './search.ts';
import type { Conflict, DemandKind } from './types.ts';

/** Nodes per question: a refusal is only believed when the search was complete. */
const NODES = 1000;

export interface FoundConflict {
  readonly conflict: Conflict;
  readonly demands: readonly Droppable[];
  /** The demand advised to give up, and how far it must. */
  readonly giveUp: Droppable;
  readonly amount: number;
}

/**
 * A minimal set of demands that cannot all be kept: leave out any one and the rest can be.
 * Divide and conquer (QuickXplain, Junker 2004, from memory) over the complete search.
 * @returns undefined when the whole can be placed or the search was cut short
 */
export function minimalConflict(problem: Problem): readonly Droppable[] | undefined {
  const all = demandsOf(problem);
  let isComplete = true;
  const clashes = (kept: readonly Droppable[]): boolean => {
    const fit = findFit(keepingOnly(problem, all, new Set(kept)), NODES);
    if (fit.fits === 'unknown') isComplete = false;
    return fit.fits === false;
  };
  if (!clashes(all)) return undefined;
  const explain = (
    background: readonly Droppable[],
    hasGrown: boolean,
    rest: readonly Droppable[],
  ): readonly Droppable[] => {
    if (hasGrown && clashes(background)) return [];
    if (rest.length === 1) return rest;
    const half = Math.floor(rest.length / 2);
    const left = rest.slice(0, half);
    const right = rest.slice(half);
    const fromRight = explain([...background, ...left], left.length > 0, right);
    const fromLeft = explain([...background, ...fromRight], fromRight.length > 0, left);
    return [...fromLeft, ...fromRight];
  };
  const conflict = explain([], true, all);
  return isComplete ? conflict : undefined;
}

/** What is easiest to give, first: a waiting limit before a helper, a helper before the table. */
const EASE: readonly DemandKind[] = [
  'latest',
  'earliest',
  'lag',
  'pinned',
  'hand-busy',
  'capacity',
  'hand-away',
  'hand-asleep',
  'fire-watch',
  'table',
  'chance',
];

/**
 * The minimal conflict with the ways out that a person would take; where there is none such, with the one that is left.
 * What is not there at all clashes with nothing else: no shorter wait in it would help.
 */
export function explainConflict(problem: Problem): FoundConflict | undefined {
  const all = demandsOf(problem);
  const lacking = all.find((demand) => demand.kind === 'capacity' && isLacking(problem, demand));
  const demands = lacking ? [lacking] : minimalConflict(problem);
  if (!demands?.length) return undefined;
  const kept = new Set(all.filter((d) => demands.some((member) => member.id === d.id)));
  const alone = keepingOnly(problem, all, kept);
  const ways = demands
    .map((demand) => ({ demand, amount: leastEasing(alone, demand) }))
    .sort(
      (a, b) =>
        Number(isAskingTooMuch(a)) - Number(isAskingTooMuch(b)) ||
        EASE.indexOf(a.demand.kind) - EASE.indexOf(b.demand.kind) ||
        a.amount - b.amount ||
        (a.demand.id < b.demand.id ? -1 : 1),
    );
  const advised = ways[0]!;
  const offered = demands.flatMap(({ id }) =>
    ways.filter((way) => way.demand.id === id && (way === advised || !isAskingTooMuch(way))),
  );
  return {
    conflict: {
      demands: demands.map(({ id, kind, taskIds, said }) => ({ id, kind, taskIds, said })),
      wayOut: offered.map(({ demand, amount }) => ({
        demandId: demand.id,
        buys: easingSaid(demand, amount),
      })),
      giveUpId: advised.demand.id,
    },
    demands,
    giveUp: advised.demand,
    amount: advised.amount,
  };
}

const isAskingTooMuch = ({
  demand,
  amount,
}: {
  readonly demand: Droppable;
  readonly amount: number;
}): boolean => demand.mostTaken !== undefined && amount > demand.mostTaken;

/** Whether one job or stay alone needs more of it than the kitchen has. */
function isLacking({ jobs, stays, capacity }: Problem, { said }: Droppable): boolean {
  const needs = [...jobs.flatMap((job) => job.needs), ...stays.map((stay) => stay.need)];
  return needs.some(
    ({ kind, amount }) => kind === said.params!.kind && amount > capacity[kind]! + CAPACITY_EPSILON,
  );
}

/** Smallest easing of one demand with which the others fit, in its own steps. */
function leastEasing(alone: Problem, demand: Droppable): number {
  const fits = (steps: number): boolean =>
    findFit(demand.easedBy(alone, Math.min(demand.all, steps * demand.step)), NODES).fits === true;
  let low = 0;
  let high = Math.ceil(demand.all / demand.step);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return Math.min(demand.all, high * demand.step);
}

const easingSaid = (demand: Droppable, amount: number): Said => ({
  id: `way-out.${demand.kind}`,
  params: { ...demand.said.params, amount: Math.round(amount * 100) / 100 },
});
