/**
 * Eight cooks of our own, planned with the solver and judged from the public plan by the independent checker. The
 * forecasts are made up: these tests are about the run sheet, not about the meat.
 */
import { type CookPlan, planCook, replanCook, type SolveLp } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { beforeAll, describe, expect, test } from 'vitest';
import { faultsOf } from '../check-schedule.ts';
import { sheetOfPlan } from '../sheet-of-plan.ts';
import { exampleCook, regattaInBoxes, scenarios } from './kitchens.ts';
import { loadSolver } from './solver.ts';
import { type MadeUp, syntheticForecast } from './synthetic-forecast.ts';

let solveLp: SolveLp;
beforeAll(async () => {
  solveLp = await loadSolver();
});

/** Pieces surer than the physics is, so that a chance of 90 % can be had. */
const SURE: Readonly<Record<string, MadeUp>> = {
  'loin-back-ribs': { medianH: 4.1, spread: 0.05, pastAfterH: 2 },
  'st-louis-ribs': { medianH: 4.8, spread: 0.05, pastAfterH: 2 },
  'pork-shoulder': { medianH: 11, spread: 0.07, pastAfterH: 5 },
  'brisket-whole': { medianH: 12, spread: 0.07, pastAfterH: 4 },
  'chicken-leg': { medianH: 1.1, spread: 0.08, pastAfterH: 1 },
};

const minutesBetween = (a: string, b: string): number => (Date.parse(b) - Date.parse(a)) / 60_000;
const startOf = (plan: CookPlan, taskId: string): string =>
  plan.placed.find((one) => one.taskId === taskId)!.startAt;

describe.each(scenarios())('$name', ({ cook, fits }) => {
  test('every line of the plan holds, or what clashes is said', () => {
    const plan = planCook(cook, syntheticForecast(cook, SURE), { solveLp });
    const faults = faultsOf(sheetOfPlan(plan, cook));
    if (fits) {
      expect(plan.conflicts.flatMap((conflict) => conflict.demands.map((demand) => demand.id))).toEqual([]);
      expect(faults).toEqual([]);
      expect(plan.solved.by).toBe('solver');
      expect(plan.solved.gap).toBeLessThanOrEqual(0.02);
    } else {
      expect(plan.conflicts.length).toBeGreaterThan(0);
      expect(faults.length).toBeGreaterThan(0);
    }
  });
});

describe('the regatta dinner', () => {
  const cook = regattaInBoxes();
  const plan = (): CookPlan => planCook(cook, syntheticForecast(cook, SURE), { solveLp });

  test('reaches the chance asked, with at most twelve prompts in the rib hours', () => {
    const whole = plan();
    expect(whole.chanceAllOnTime).toBeGreaterThanOrEqual(0.9);
    expect(whole.promptsInLastHours).toBeLessThanOrEqual(12);
  });

  test('the sauce is in its jars before night, and nobody is woken but for the fire and what lies on it', () => {
    const whole = plan();
    const jar = whole.placed.find((one) => one.taskId.endsWith('/jar-sauce'))!;
    expect(Date.parse(jar.endAt)).toBeLessThanOrEqual(Date.parse('2027-09-11T22:30:00Z'));
    expect(whole.placed.filter((one) => one.inNight && one.walk === undefined)).toEqual([]);
  });

  test('a night on oak is said to cost the sleep it costs', () => {
    const watch = plan().fireWatch!;
    expect(watch.reachS).toBe(40 * 60);
    expect(watch.asleepS).toBe(6 * 3600);
  });

  test('is the same plan every time', () => {
    expect(JSON.stringify(plan())).toBe(JSON.stringify(plan()));
  });

  test('a chance too high for any start says so and keeps the best', () => {
    const asked: Cook = { ...cook, chanceAsked: 0.9999 };
    const unsure = syntheticForecast(asked, { 'loin-back-ribs': { medianH: 4, spread: 0.4 } });
    const best = planCook(asked, unsure, {});
    expect(best.chanceAllOnTime).toBeLessThan(0.9999);
    expect(best.tightest!.chance).toBeGreaterThanOrEqual(best.chanceAllOnTime);
  });

  test('a piece that no member ever gets ready does not stop the plan', () => {
    const never = syntheticForecast(cook, { ...SURE, e: { medianH: 1, spread: 0.1, neverShare: 1 } });
    const whole = planCook(cook, never, {});
    expect(whole.pieces.find((piece) => piece.pieceId === 'e')!.misses.never).toBeCloseTo(1, 12);
    expect(whole.pieces.find((piece) => piece.pieceId === 'a')!.chanceOnTime).toBeGreaterThan(0.9);
    expect(faultsOf(sheetOfPlan(whole, cook))).toEqual([]);
  });
});

describe('planned again', () => {
  const cook = regattaInBoxes();
  const forecast = syntheticForecast(cook, SURE);

  test('three cancel on Saturday night: what is done stays, nothing else needs to move', () => {
    const before = planCook(cook, forecast, {});
    const now = '2027-09-11T20:00:00Z';
    const done = Object.fromEntries(
      before.placed
        .filter((one) => one.endAt <= now)
        .map((one) => [one.taskId, { startAt: one.startAt, endAt: one.endAt }]),
    );
    const fewer: Cook = { ...cook, guests: { ...cook.guests, adults: cook.guests.adults - 3 } };
    const after = replanCook(before, fewer, forecast, { now, done });
    for (const [taskId, as] of Object.entries(done)) expect(startOf(after, taskId)).toBe(as.startAt);
    expect(after.moved).toEqual([]);
    expect(after.conflicts).toEqual([]);
  });

  test('late by half an hour with the racks: the racks move, nothing starts before now, the shoulder stays', () => {
    const before = planCook(cook, forecast, {});
    const planned = startOf(before, 'c/meat-on');
    const now = new Date(Date.parse(planned) + 30 * 60_000).toISOString();
    const done = Object.fromEntries(
      before.placed
        .filter((one) => one.endAt <= now && !/^[abc]\//.test(one.taskId))
        .map((one) => [one.taskId, { startAt: one.startAt, endAt: one.endAt }]),
    );
    const after = replanCook(before, cook, forecast, { now, done });
    for (const one of after.placed)
      if (!done[one.taskId]) expect(Date.parse(one.startAt)).toBeGreaterThanOrEqual(Date.parse(now));
    expect(startOf(after, 'd/meat-on')).toBe(startOf(before, 'd/meat-on'));
    expect(after.moved.map((moved) => moved.taskId)).toContain('c/meat-on');
  });

  test('a task pinned an hour later stays where it was put, and the rest resolves', () => {
    const before = planCook(cook, forecast, {});
    const from = startOf(before, 'racks/skin-and-trim');
    const to = new Date(Date.parse(from) + 60 * 60_000).toISOString().replace('.000Z', 'Z');
    const after = replanCook(before, cook, forecast, {
      now: '2027-09-11T07:00:00Z',
      pinned: { 'racks/skin-and-trim': to },
    });
    expect(minutesBetween(to, startOf(after, 'racks/skin-and-trim'))).toBe(0);
    expect(after.tasks.find((task) => task.id === 'racks/skin-and-trim')!.pinned).toBe(to);
    expect(faultsOf(sheetOfPlan(after, cook))).toEqual([]);
  });
});

test('the night of a clock change has its own length: elapsed time is true time', () => {
  const cook = exampleCook('night-of-the-clocks');
  const plan = planCook(cook, syntheticForecast(cook, SURE), {});
  for (const one of plan.placed) expect(one.elapsedS / 60).toBe(minutesBetween(plan.firstOnAt, one.startAt));
});
