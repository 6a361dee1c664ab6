// Exact solution and observed order of the piece model; the tables stand in docs/models/meat.md as the script prints them.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PIECE } from '../packages/engine/src/meat/onePiece.testing.ts';
import { BARE } from '../packages/engine/src/meat/parameters.ts';
import { PieceSolver } from '../packages/engine/src/meat/solver.ts';
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
  test.each(BIOTS)('Bi %d: below 3e-4 on the fine grid, and falling with refinement', (biot) => {
    const [coarse, middle, fine] = GRIDS.map(({ cells, fourierStep }) =>
      conductionError(shape, biot, cells, fourierStep),
    );
    expect(fine).toBeLessThan(0.0003);
    expect(middle! / coarse!).toBeLessThan(0.4);
    expect(fine! / middle!).toBeLessThan(0.4);
  });
});

test('the finish moves by less than 0.05 % on doubling cells and halving steps', () => {
  const hours = FINISH_GRIDS.map(({ cells, longestStepS, stepShare }) =>
    finishHours(cells, longestStepS, stepShare),
  );
  for (let grid = 1; grid < hours.length; grid++)
    for (const level of [0, 1, 2] as const)
      expect(Math.abs(hours[grid]![level] / hours[grid - 1]![level] - 1)).toBeLessThan(0.0005);
});

test('the step is of second order: halved, it leaves about a quarter of the error', () => {
  const solver = new PieceSolver(12, () => 0);
  const around = { gasC: 121, wallC: 120, humidityRatio: 0.045, convectionWm2K: 7.5, pressurePa: 101325 };
  // A film that does not dry out within the 4 h: no kink in the way.
  const coreC = (stepS: number): number => {
    solver.begin({
      ...PIECE,
      juiceToSurfaceShare: 0,
      filmStartKgM2: 50,
      filmCapKgM2: 100,
    });
    for (let timeS = 0; timeS < 4 * 3600; timeS += stepS) solver.step(stepS, around, BARE);
    return solver.coreC;
  };
  const exact = coreC(2.5);
  const errors = [240, 120, 60, 30].map((stepS) => Math.abs(coreC(stepS) - exact));
  expect(errors[0]).toBeLessThan(0.005);
  for (let i = 1; i < errors.length; i++) {
    expect(errors[i - 1]! / errors[i]!).toBeGreaterThan(3);
    expect(errors[i - 1]! / errors[i]!).toBeLessThan(5);
  }
});

test('docs/models/meat.md shows these tables', () => {
  const page = readFileSync(new URL('../docs/models/meat.md', import.meta.url), 'utf8');
  expect(page).toContain(refinementTables());
});
