// The inside of a piece against the forecast it belongs to. Evidence: law, conformity.
import { readFileSync } from 'node:fs';
import { quantity, readCookFile } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { acrossFaces } from './across.ts';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';
import { HEAT_IN, HEAT_OUT, type HeatColumn, heatAtW, heatTotalsJ } from './heatColumns.ts';
import { type PieceInside, pieceInside } from './inside.ts';

function demo() {
  const reading = readCookFile(readFileSync('examples/regatta-dinner.pitwright.yaml', 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error('the demo must read');
  return reading.document.cook;
}

const total = (figures: Readonly<Record<HeatColumn, number>>, columns: readonly HeatColumn[]): number =>
  columns.reduce((sum, column) => sum + figures[column], 0);

/** What arrives against what is spent, at each entry and in all. */
function expectClosed(inside: PieceInside): void {
  for (const atS of inside.timesS) {
    const heat = heatAtW(inside, atS);
    expect(Math.abs(total(heat, HEAT_IN) - total(heat, HEAT_OUT))).toBeLessThan(1e-6);
  }
  const all = heatTotalsJ(inside, Infinity);
  expect(total(all, HEAT_IN)).toBeGreaterThan(1e5);
  expect(Math.abs(total(all, HEAT_IN) / total(all, HEAT_OUT) - 1)).toBeLessThan(1e-9);
}

describe('the inside of a piece', () => {
  const cook = demo();
  const forecast = forecastCook(cook, { members: 16, seed: 3, pieceIds: ['d'] });
  const inside = pieceInside(cook, forecast, 'd');

  test('shows a member that finishes about the median, its wrap nearer the usual hour than most', () => {
    const { columns, readyS, stages } = forecast.pieces[0]!;
    const rank = [...readyS].sort((a, b) => a - b).indexOf(readyS[inside.member]!);
    expect(Math.abs(rank - 7.5)).toBeLessThan(2);
    const wrapS = (member: number): number => columns.stageEndS[member * columns.stages]!;
    const off = (member: number): number => Math.abs(wrapS(member) - stages[0]!.endS!.p50);
    const nearer = Array.from(readyS.keys()).filter((member) => off(member) < off(inside.member));
    expect(nearer.length).toBeLessThan(8);
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

describe('the ledger of a shoulder with like faces', () => {
  const untilCore = (celsius: number) =>
    ({ by: 'core', temperature: quantity('temperature', celsius, '°C') }) as const;
  const cook = exampleCook('pork-shoulder', [
    { kind: 'bare', until: untilCore(74) },
    { kind: 'foil', until: untilCore(93) },
    { kind: 'hold', until: { by: 'clock', after: quantity('time', 2, 'h') }, in: 'box' },
  ]);
  const inside = pieceInside(cook, forecastCook(cook, { members: 16, seed: 2 }), 'a');
  const [bareEndS, foilEndS] = inside.stages.map(({ endS }) => endS) as [number, number];

  test('closes', () => expectClosed(inside));

  test('bare it dries most of the heat away; in foil radiation nearly ends and juice runs off', () => {
    const bare = heatAtW(inside, 0.7 * bareEndS);
    expect(bare.evaporation).toBeGreaterThan(0.5 * total(bare, HEAT_IN));
    const foil = heatAtW(inside, 0.5 * (bareEndS + foilEndS));
    expect(foil.radiation).toBeLessThan(0.2 * foil.convection);
    expect(foil.juice).toBeGreaterThan(foil.evaporation);
  });

  test('in the box the two ways are not parted, and heat leaves it', () => {
    const box = heatAtW(inside, foilEndS + 3600);
    expect(box.convection).toBe(0);
    expect(box.radiation).toBe(0);
    expect(box.still).toBeLessThan(0);
  });
});

describe('the inside of a rack, open face and bone side', () => {
  const cook = exampleCook(
    'loin-back-ribs',
    [{ kind: 'bare', until: { by: 'clock', after: quantity('time', 4, 'h') } }],
    { membrane: true },
  );
  const inside = pieceInside(cook, forecastCook(cook, { members: 16, seed: 5 }), 'a');
  const across = acrossFaces(inside);

  test('its ledger closes', () => expectClosed(inside));

  test('is told from face to face: depths rise to the bone side, the middles of both halves meet', () => {
    expect(inside.otherSide!.side).toBe('bone-side');
    expect(across.bottom).toBe('bone-side');
    expect(across.thicknessM).toBeCloseTo(2 * inside.halfThicknessM, 12);
    expect(across.depthShares[0]).toBe(0);
    expect(across.depthShares.at(-1)).toBe(1);
    for (let i = 1; i < across.depthShares.length; i++)
      expect(across.depthShares[i]!).toBeGreaterThan(across.depthShares[i - 1]!);
    const half = inside.depthShares.length;
    for (const row of across.temperaturesC) {
      expect(row.length).toBe(across.depthShares.length);
      expect(Math.abs(row[half]! - row[half - 1]!)).toBeLessThan(2);
    }
  });

  test('the bone side under its membrane dries less deep than the open face', () => {
    expect(across.otherFrontM!.at(-1)!).toBeLessThan(across.frontM.at(-1)!);
    expect(across.otherFrontM!.at(-1)!).toBeGreaterThan(0);
  });

  test('both halves reach the bite in the middle at nearly one time', () => {
    const { p50: open } = inside.bite!;
    const { p50: other } = inside.otherSide!.bite!;
    expect(Math.abs(open.timesS.at(-1)! / other.timesS.at(-1)! - 1)).toBeLessThan(0.01);
  });
});

test('a piece with like faces ends at its middle', () => {
  const cook = exampleCook('chuck-roast', [
    { kind: 'bare', until: { by: 'clock', after: quantity('time', 3, 'h') } },
  ]);
  const inside = pieceInside(cook, forecastCook(cook, { members: 8, seed: 5 }), 'a');
  expect(inside.otherSide).toBeUndefined();
  expect(acrossFaces(inside)).toMatchObject({ bottom: 'middle', thicknessM: inside.halfThicknessM });
});
