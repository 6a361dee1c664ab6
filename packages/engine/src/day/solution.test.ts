// Meat with a solution added. Evidence: exact (mass balance), law.
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from '../forecast/cookForecast.ts';
import { exampleCook } from '../forecast/exampleCook.testing.ts';
import { findCut } from '../meat/cuts.ts';
import { withSolution } from './solution.ts';

const LOIN = findCut('pork-loin-center')!;

describe('a cut with 12 % of a solution', () => {
  const { composition } = withSolution(LOIN, 0.12);

  test('keeps the protein of its own meat, and all shares sum to what they summed to', () => {
    expect(composition.protein * 1.12).toBeCloseTo(LOIN.composition.protein, 12);
    const sum = (c: typeof composition) => Object.values(c).reduce((a, b) => a + b, 0);
    expect(sum(composition)).toBeCloseTo((sum(LOIN.composition) + 0.12) / 1.12, 12);
  });

  test('asked twice is the same one', () => {
    expect(withSolution(LOIN, 0.12).composition).toBe(composition);
    expect(withSolution(LOIN, 0.1).composition.water).toBeLessThan(composition.water);
  });

  test('outside what labels tell is refused', () => {
    expect(() => withSolution(LOIN, 0.4)).toThrow(RangeError);
    expect(() => withSolution(LOIN, NaN)).toThrow(RangeError);
  });
});

test('more water in it: it loses more of its weight, and is no sooner there', () => {
  const stages: readonly Stage[] = [
    { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 63, '°C') } },
  ];
  const foreseen = (share?: number) => {
    const cook = exampleCook('pork-loin-center', stages);
    const pieces = cook.pieces.map((piece) =>
      share === undefined ? piece : { ...piece, solution: quantity('fraction', share, '%') },
    );
    return forecastCook({ ...cook, pieces }, { members: 40, seed: 2 }).pieces[0]!;
  };
  const plain = foreseen();
  const pumped = foreseen(12);
  expect(pumped.lossKg.p50).toBeGreaterThan(plain.lossKg.p50);
  expect(pumped.ready.p50).toBeGreaterThanOrEqual(plain.ready.p50);
});
