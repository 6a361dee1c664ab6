// The measured cooks, at 100 members: every log is scored or says why not, and the bars hold. Evidence: calibration.
import { expect, test } from 'vitest';
import { logs, measuredCooks } from './measured/cooks.ts';
import { coursesOf, hoursUntil } from './measured/foresee.ts';
import { bars, whyLeftOut } from './measured/report.ts';
import { score, TARGETS } from './measured/score.ts';

const cooks = measuredCooks();

test('every cook of the logs is scored or left out for a reason its own log gives', () => {
  const scored = new Set(cooks.map(({ id }) => id));
  for (const [id, rows] of logs()) expect(Boolean(whyLeftOut(id, rows)), id).toBe(!scored.has(id));
});

test('every scored cook has a core temperature within its own cook', () => {
  for (const { id, cores } of cooks) {
    expect(cores.length, id).toBeGreaterThan(0);
    for (const { hours, coreC } of cores) {
      expect(hours, id).toBeGreaterThan(0);
      expect(coreC, id).toBeGreaterThan(0);
    }
  }
});

test('the bars of docs/models/measured.md', () => {
  const courses = new Map(cooks.map((cook) => [cook, coursesOf(cook, 100)]));
  const scored = new Map(
    TARGETS.map((target) => [
      target.name,
      score(target, cooks, (cook, reachC) => hoursUntil(courses.get(cook)!, reachC)),
    ]),
  );
  expect(bars(scored).filter(({ met }) => !met)).toEqual([]);
}, 120_000);
