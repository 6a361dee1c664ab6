// What is wanted of a sauce, and the change that gives it. Evidence: exact (the arithmetic closes), laws.
import { describe, expect, test } from 'vitest';
import { aimAt } from './aim.ts';
import { batchMassG } from './batch.ts';
import { findIngredient } from './formulaLines.ts';
import { stepsApart, tastesOf } from './jnd.ts';
import { lookAt } from './look.ts';
import { wantedFrom } from './rebalance.ts';

const row = (id: string) => findIngredient(id)!;
const LINES = (
  [
    ['ketchup', 480],
    ['cola', 450],
    ['vinegar_cider_5', 120],
    ['sugar_brown_packed', 110],
    ['salt_table', 6],
    ['cayenne', 2],
  ] as const
).map(([id, massG]) => ({ ingredient: row(id), massG }));
const FROM = { lines: LINES, waterOffG: 350 };
const { wanted: now, finishedG } = wantedFrom(LINES, 350);

describe('a sauce wanted otherwise', () => {
  test.each([[{ sweet: -2 }], [{ sour: 1.5 }], [{ salt: 2, sweet: 1 }], [{ heat: 2, sour: -1.5 }]] as const)(
    '%j noticeable steps: there within half a step, the others as they were',
    (steps) => {
      const answer = aimAt(FROM, { steps });
      if (!answer.ok) throw new Error(answer.problems[0]!.id);
      const after = tastesOf(answer.finished);
      for (const taste of ['sweet', 'sour', 'salt', 'heat'] as const) {
        const wanted = (steps as Record<string, number>)[taste] ?? 0;
        expect(Math.abs(stepsApart(taste, now[taste], after[taste]) - wanted), taste).toBeLessThan(0.5);
      }
      expect(batchMassG(answer.finished)).toBeCloseTo(finishedG, 2);
    },
  );

  test('nothing wanted, nothing changed', () => {
    const answer = aimAt(FROM, { steps: {} });
    expect(answer.ok && answer.said.map((s) => s.id)).toEqual(['sauce.rebalance-nothing']);
  });

  test('thicker when brushed on: more boils off, and it is no sweeter for it', () => {
    const answer = aimAt(FROM, { steps: {}, brushedLevel: 3.2 });
    if (!answer.ok) throw new Error(answer.problems[0]!.id);
    expect(answer.waterOffG).toBeGreaterThan(350);
    expect(Math.abs(lookAt(answer.finished, 60).level - 3.2)).toBeLessThan(0.1);
    expect(Math.abs(stepsApart('sweet', now.sweet, tastesOf(answer.finished).sweet))).toBeLessThan(0.5);
  });

  test('thinner than its lines are raw, and thicker than they can be, is answered with what would work', () => {
    const thin = aimAt(
      { lines: [{ ingredient: row('ketchup'), massG: 500 }], waterOffG: 0 },
      { steps: {}, brushedLevel: 1 },
    );
    expect(!thin.ok && thin.problems[0]!.id).toBe('sauce.aim-too-thick-raw');
    const thick = aimAt(
      { lines: [{ ingredient: row('cola'), massG: 500 }], waterOffG: 100 },
      { steps: {}, brushedLevel: 4 },
    );
    expect(!thick.ok && thick.problems[0]!.id).toBe('sauce.aim-never-so-thick');
  });
});
