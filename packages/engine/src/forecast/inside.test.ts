// The inside of a piece against the forecast it belongs to. Evidence: law, conformity.
import { readFileSync } from 'node:fs';
import { readCookFile } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { pieceInside } from './inside.ts';

function demo() {
  const reading = readCookFile(readFileSync('examples/regatta-dinner.pitwright.yaml', 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error('the demo must read');
  return reading.document.cook;
}

describe('the inside of a piece', () => {
  const cook = demo();
  const forecast = forecastCook(cook, { members: 16, seed: 3, pieceIds: ['d'] });
  const inside = pieceInside(cook, forecast, 'd');

  test('shows a member whose finish is the median of the forecast', () => {
    const { readyS } = forecast.pieces[0]!;
    const sorted = Array.from(readyS).sort((a, b) => a - b);
    expect(readyS[inside.member]).toBe(sorted[Math.round(0.5 * (sorted.length - 1))]);
  });

  test('reaches the bite in the middle when the forecast says so, within 1 % (fine against ensemble grid)', () => {
    const reachedS = inside.bite!.p50.timesS.at(-1)!;
    expect(Math.abs(reachedS / forecast.pieces[0]!.readyS[inside.member]! - 1)).toBeLessThan(0.01);
  });

  test('starts as cold as the piece and never passes the pit', () => {
    expect(inside.temperaturesC[0]!.at(-1)!).toBeLessThan(12);
    for (const row of inside.temperaturesC) for (const celsius of row) expect(celsius).toBeLessThan(160);
  });

  test('dries from the surface inwards only', () => {
    for (let i = 1; i < inside.frontM.length; i++)
      expect(inside.frontM[i]!).toBeGreaterThanOrEqual(inside.frontM[i - 1]! - 1e-12);
  });

  test('depths run from the surface to the middle, times forward', () => {
    expect(inside.depthShares[0]).toBe(0);
    const isRising = (values: readonly number[]) => values.every((v, i) => i === 0 || v > values[i - 1]!);
    expect(isRising(inside.depthShares)).toBe(true);
    expect(isRising(inside.timesS)).toBe(true);
  });

  test('the early member is soft in the middle before the late one', () => {
    const middle = (line: { timesS: readonly number[] }) => line.timesS.at(-1)!;
    expect(middle(inside.bite!.p10)).toBeLessThanOrEqual(middle(inside.bite!.p50));
    expect(middle(inside.bite!.p50)).toBeLessThanOrEqual(middle(inside.bite!.p90));
  });

  test('a piece that is not forecast is refused by name', () => {
    expect(() => pieceInside(cook, forecast, 'z')).toThrow(/no piece z/);
  });
});
