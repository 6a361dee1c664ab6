/** Pins: a job stays where a hand put it, what moved with it is said, and the same cook gives the same plan again. */
import { type CookForecast, forecastCook, type PlacedTask } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { beforeAll, describe, expect, test } from 'vitest';
import { exampleCook } from '../../../validation/scenarios/kitchens.ts';
import { gatherReport, pinnedReport } from './gather.ts';
import type { PlanReport } from './report.ts';

const MEMBERS = 24;

describe('a cook with a job put by hand', () => {
  let cook: Cook;
  let forecast: CookForecast;
  let free: PlanReport;
  let rub: PlacedTask;
  beforeAll(() => {
    cook = exampleCook('two-racks');
    forecast = forecastCook(cook, { members: MEMBERS, seed: 1 });
    free = gatherReport(cook, forecast);
    rub = free.plan.placed.find((placed) => /\/rub$/.test(placed.taskId))!;
  });

  const earlier = (instant: string, minutes: number) =>
    new Date(Date.parse(instant) - minutes * 60_000).toISOString().replace('.000Z', 'Z');
  const startOf = (report: PlanReport, id: string) =>
    Date.parse(report.plan.placed.find((placed) => placed.taskId === id)!.startAt);

  test('the job stands where it was put; every other job stands as before or is said to have moved', () => {
    const pinned = { ...cook, pinned: { [rub.taskId]: earlier(rub.startAt, 10) } };
    const report = gatherReport(pinned, forecast);
    expect(startOf(report, rub.taskId)).toBe(Date.parse(rub.startAt) - 600_000);
    const said = new Set(report.plan.moved.map((moved) => moved.taskId));
    for (const { taskId } of report.plan.placed)
      if (!said.has(taskId)) expect(startOf(report, taskId), taskId).toBe(startOf(free, taskId));
    expect(said.has(rub.taskId)).toBe(true);
  });

  test('laid over a plan that stands, or planned from the cook alone: the same', () => {
    const pinned = { ...cook, pinned: { [rub.taskId]: earlier(rub.startAt, 15) } };
    expect(pinnedReport(free, pinned).plan).toEqual(gatherReport(pinned, forecast).plan);
  });

  test('no pins: the plan as it stood', () => {
    expect(gatherReport({ ...cook, pinned: {} }, forecast).plan).toEqual(free.plan);
  });

  test('a pin that cannot be kept is named among what does not fit', () => {
    const slice = free.plan.placed.find((placed) => /\/slice$/.test(placed.taskId))!;
    const pinned = { ...cook, pinned: { [slice.taskId]: earlier(slice.startAt, 300) } };
    const demands = gatherReport(pinned, forecast).plan.conflicts.flatMap((conflict) => conflict.demands);
    expect(demands.some((demand) => demand.taskIds.includes(slice.taskId))).toBe(true);
  });
});
