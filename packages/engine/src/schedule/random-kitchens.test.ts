/**
 * Random kitchens: what the planner places, an independent checker finds right; what it calls impossible, a second
 * formulation calls impossible too; and a conflict it names is a minimal one. Conformity and law.
 */
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { faultsOf, type Sheet } from '../../../../validation/check-schedule.ts';
import { randomKitchen } from '../../../../validation/scenarios/random-kitchen.ts';
import { loadSolver } from '../../../../validation/scenarios/solver.ts';
import { type StepKitchen, stepOptimum } from '../../../../validation/step-formulation.ts';
import { minimalConflict } from './conflict.ts';
import { demandsOf, keepingOnly } from './demands.ts';
import { placeGreedily } from './greedy.ts';
import type { Placement, Problem } from './problem.ts';
import { findFit } from './search.ts';
import { settle } from './settle.ts';
import { placeBySolver } from './solve.ts';
import type { SolveLp } from './types.ts';

const SEED = 20270912;
let solveLp: SolveLp;
beforeAll(async () => {
  solveLp = await loadSolver();
});

const problemOf = (kitchen: StepKitchen): Problem => ({
  originS: 0,
  length: kitchen.length,
  jobs: kitchen.jobs.map(({ handsNeeded, ...job }) => ({
    ...job,
    needs: job.needs as Problem['jobs'][number]['needs'],
    at: 'kitchen',
    hands: handsNeeded,
    isPinned: false,
  })),
  lags: kitchen.lags,
  workers: kitchen.hands.map((hand) => ({ ...hand, asleep: [] })),
  stays: kitchen.stays as Problem['stays'],
  capacity: kitchen.capacity,
});

/** Back from a problem, for demands that were eased in it. */
const kitchenOf = (problem: Problem): StepKitchen => ({
  length: problem.length,
  jobs: problem.jobs.map(({ hands, ...job }) => ({ ...job, handsNeeded: hands as 0 | 1 })),
  lags: problem.lags,
  stays: problem.stays,
  hands: problem.workers,
  capacity: problem.capacity,
});

const sheetOf = (kitchen: StepKitchen, placement: Placement): Sheet => ({
  ...kitchen,
  jobs: kitchen.jobs.map((job) => ({
    ...job,
    start: placement.start.get(job.id)!,
    handIds: placement.hands.get(job.id) ?? [],
  })),
});

const wishCost = (kitchen: StepKitchen, placement: Placement): number =>
  kitchen.jobs.reduce((sum, job) => {
    const start = placement.start.get(job.id)!;
    if (job.wish === undefined) return sum;
    return (
      sum + (start < job.wish ? job.earlyWeight * (job.wish - start) : job.lateWeight * (start - job.wish))
    );
  }, 0);

describe('random kitchens', () => {
  test('the complete search fits exactly those that the minute-by-minute program fits, without a fault', () => {
    let refused = 0;
    fc.assert(
      fc.property(randomKitchen, (kitchen) => {
        const fit = findFit(problemOf(kitchen));
        const oracle = stepOptimum(kitchen, solveLp);
        expect(fit.fits).toBe(oracle !== undefined);
        if (fit.fits === true) expect(faultsOf(sheetOf(kitchen, fit.placement))).toEqual([]);
        else refused++;
      }),
      { seed: SEED, numRuns: 150 },
    );
    expect(refused).toBeGreaterThan(20);
  });

  test('what is placed greedily has no fault, nor has it once settled', () => {
    let placedCount = 0;
    fc.assert(
      fc.property(randomKitchen, (kitchen) => {
        const problem = problemOf(kitchen);
        const placement = placeGreedily(problem);
        if (!placement) return;
        placedCount++;
        expect(faultsOf(sheetOf(kitchen, placement))).toEqual([]);
        expect(faultsOf(sheetOf(kitchen, settle(problem, placement)))).toEqual([]);
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(placedCount).toBeGreaterThan(100);
  });

  test('the order program reaches the optimum of the minute-by-minute program', () => {
    let compared = 0;
    fc.assert(
      fc.property(randomKitchen, (kitchen) => {
        const problem = problemOf(kitchen);
        const exact: SolveLp = (text) => solveLp(text, { gap: 0, nodes: 100_000 });
        const placed = placeBySolver(problem, exact, 'as joined');
        const oracle = stepOptimum(kitchen, solveLp);
        expect(placed !== undefined).toBe(oracle !== undefined);
        if (!placed || oracle === undefined) return;
        compared++;
        expect(faultsOf(sheetOf(kitchen, placed.placement))).toEqual([]);
        expect(wishCost(kitchen, placed.placement)).toBeCloseTo(oracle, 5);
      }),
      { seed: SEED, numRuns: 130 },
    );
    expect(compared).toBeGreaterThan(20);
  });

  test('a conflict cannot be kept whole, and can be kept without any one of its demands', () => {
    let explained = 0;
    fc.assert(
      fc.property(randomKitchen, (kitchen) => {
        const problem = problemOf(kitchen);
        if (stepOptimum(kitchen, solveLp) !== undefined) return;
        const conflict = minimalConflict(problem);
        expect(conflict?.length).toBeGreaterThan(0);
        const all = demandsOf(problem);
        const isKept = (ids: readonly string[]): boolean => {
          const kept = new Set(all.filter((demand) => ids.includes(demand.id)));
          return stepOptimum(kitchenOf(keepingOnly(problem, all, kept)), solveLp) !== undefined;
        };
        const ids = conflict!.map((demand) => demand.id);
        expect(isKept(ids)).toBe(false);
        for (const id of ids) expect(isKept(ids.filter((other) => other !== id))).toBe(true);
        explained++;
      }),
      { seed: SEED, numRuns: 20 },
    );
    expect(explained).toBeGreaterThan(5);
  });
});
