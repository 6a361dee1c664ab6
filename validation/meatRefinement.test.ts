// Exact solution and observed order of the piece model; the tables stand in docs/models/meat.md as the script prints them.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  BIOTS,
  conductionError,
  FINISH_GRIDS,
  finishHours,
  GRIDS,
  refinementTables,
  SHAPES,
} from './meatRefinement.ts';

describe.each(SHAPES)('conduction, %s, against the exact series (Carslaw & Jaeger 1959)', (shape) => {
  test.each(BIOTS)('Bi %d: below 0.2 %% on the fine grid, and falling with refinement', (biot) => {
    const [coarse, middle, fine] = GRIDS.map(({ cells, fourierStep }) =>
      conductionError(shape, biot, cells, fourierStep),
    );
    expect(fine).toBeLessThan(0.002);
    expect(middle! / coarse!).toBeLessThan(0.5);
    expect(fine! / middle!).toBeLessThan(0.5);
  });
});

test('the finish moves by less than 0.5 % on doubling cells and halving steps', () => {
  const hours = FINISH_GRIDS.map(({ cells, longestStepS, stepShare }) =>
    finishHours(cells, longestStepS, stepShare),
  );
  for (let grid = 1; grid < hours.length; grid++)
    for (const level of [0, 1, 2] as const)
      expect(Math.abs(hours[grid]![level] / hours[grid - 1]![level] - 1)).toBeLessThan(0.005);
});

test('docs/models/meat.md shows these tables', () => {
  const page = readFileSync(new URL('../docs/models/meat.md', import.meta.url), 'utf8');
  expect(page).toContain(refinementTables());
});
