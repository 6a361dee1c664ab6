// Spritz jobs and the spritz that the meat is foreseen with are one. Evidence: conformity.
import { quantity } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { resolveCook } from '../../day/resolve.ts';
import { forecastCook } from '../../forecast/cookForecast.ts';
import { exampleCook } from '../../forecast/exampleCook.testing.ts';
import { planCook } from '../plan.ts';

const bare = (hours: number, every?: number) =>
  ({
    kind: 'bare',
    until: { by: 'clock', after: quantity('time', hours, 'h') },
    ...(every && {
      spritz: { amount: quantity('volume', 20, 'mL'), every: quantity('time', every, 'min') },
    }),
  }) as const;
const planned = (cook: ReturnType<typeof exampleCook>) =>
  planCook(cook, forecastCook(cook, { members: 40, seed: 1 }));
const jobs = (plan: ReturnType<typeof planned>, kind: string) => {
  const ids = new Set(plan.tasks.filter((task) => task.kind === kind).map(({ id }) => id));
  return plan.placed.filter(({ taskId }) => ids.has(taskId)).map(({ startAt }) => Date.parse(startAt));
};
const spritz = (pieces: readonly string[]) =>
  ({
    id: 'spritz',
    name: 'Spritz',
    kind: 'spritz',
    for: pieces,
    lines: [{ ingredient: 'water', amount: quantity('volume', 300, 'mL') }],
  }) as const;

describe('a spritz told on a stage', () => {
  test('is a job every so often while the stage lasts, never further apart than told', () => {
    const plan = planned(exampleCook('loin-back-ribs', [bare(4, 45)]));
    const times = jobs(plan, 'spritz');
    expect(times.length).toBeGreaterThanOrEqual(4);
    const onAt = Date.parse(plan.pieces[0]!.onAt);
    for (const [i, at] of times.entries()) {
      const sinceMin = (at - (times[i - 1] ?? onAt)) / 60_000;
      expect(sinceMin).toBeLessThanOrEqual(46);
      expect(sinceMin).toBeGreaterThan(25);
    }
  });

  test('that none is told leaves looks alone', () => {
    const plan = planned(exampleCook('loin-back-ribs', [bare(4)]));
    expect(jobs(plan, 'spritz')).toEqual([]);
    expect(jobs(plan, 'look').length).toBeGreaterThan(0);
  });
});

describe('a spritz mixed for a piece', () => {
  const mixed = (cut: 'loin-back-ribs' | 'pork-shoulder') => ({
    ...exampleCook(cut, [bare(5)]),
    formulas: [spritz(['a'])],
  });

  test('is sprayed on a rack, in the jobs and in the meat', () => {
    const cook = mixed('loin-back-ribs');
    expect(resolveCook(cook).pieces[0]!.stages[0]!.spritz!.everyS).toBe(3000);
    expect(jobs(planned(cook), 'spritz').length).toBeGreaterThan(0);
    expect(resolveCook(cook).notUsed).toEqual([]);
  });

  test('waits to be told on a big cut, and that is said', () => {
    const cook = mixed('pork-shoulder');
    expect(resolveCook(cook).pieces[0]!.stages[0]!.spritz).toBeUndefined();
    expect(jobs(planned(cook), 'spritz')).toEqual([]);
    expect(resolveCook(cook).notUsed.map(({ id }) => id)).toContain('day.spritz-not-used');
  });
});
