// What holds a piece back, hour by hour, must follow the ledger of the member shown. Evidence: law.
import { quantity } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';
import { explainPiece, tellingMoments } from './explain.ts';
import { pieceInside } from './inside.ts';

const cook = exampleCook('pork-shoulder', [
  { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 80, '°C') } },
  { kind: 'foil', until: { by: 'core', temperature: quantity('temperature', 93, '°C') } },
  { kind: 'hold', until: { by: 'clock', after: quantity('time', 2, 'h') }, in: 'box' },
]);
const forecast = forecastCook(cook, { members: 16, seed: 2 });
const inside = pieceInside(cook, forecast, 'a');

describe('why a shoulder is where it is', () => {
  test('cold, it warms', () => expect(explainPiece(inside, 3600).id).toBe('explain.warms'));

  test('in its stall, juice takes most of the heat, and the end is told', () => {
    const { stall } = inside;
    expect(stall).toBeDefined();
    const said = explainPiece(inside, (stall!.fromS + stall!.toS) / 2);
    expect(said.id).toBe('explain.stall');
    expect(said.params!.until).toEqual({ kind: 'time', si: stall!.toS });
    expect((said.params!.dries as { si: number }).si).toBeGreaterThan(0.5);
  });

  test('in foil nothing dries', () => {
    const said = explainPiece(inside, inside.stages[1]!.endS - 1800);
    expect(said.id).toBe('explain.wrapped');
    expect((said.params!.dries as { si: number }).si).toBeLessThan(0.1);
  });

  test('in the box the surface evens out or falls', () => {
    expect(explainPiece(inside, inside.stages[1]!.endS + 5400).id).toBe('explain.rests');
  });
});

test('the moments told lie in order between meat-on and the table, one in each stage before it', () => {
  const tableS = inside.stages[1]!.endS + 1800;
  const moments = tellingMoments(inside, tableS);
  expect(moments).toEqual([...moments].sort((a, b) => a - b));
  expect(moments[0]).toBeGreaterThan(0);
  expect(moments.at(-1)).toBeLessThanOrEqual(tableS);
  let fromS = 0;
  for (const { endS } of inside.stages) {
    expect(moments.some((atS) => atS >= fromS && atS <= endS)).toBe(true);
    fromS = endS;
  }
});
