// The ensemble: same bits for a seed, shared chance, honest ranges. Evidence: law.
import { type Cook, type Piece, quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { assembleForecast, biteChancesAt, forecastCook, forecastMembers } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';

const clock = (hours: number) => ({ by: 'clock', after: quantity('time', hours, 'h') }) as const;
const untilCore = (celsius: number) =>
  ({ by: 'core', temperature: quantity('temperature', celsius, '°C') }) as const;
const RACK: readonly Stage[] = [
  { kind: 'bare', until: clock(2) },
  { kind: 'foil', until: clock(1) },
  { kind: 'glazed', until: clock(0.5) },
  { kind: 'rest', until: { by: 'table' } },
];
const BRISKET: readonly Stage[] = [{ kind: 'bare', until: untilCore(93) }];

const spread = (ready: { p10: number; p90: number }): number => Math.log(ready.p90 / ready.p10);

describe('members', () => {
  const cook = exampleCook('loin-back-ribs', RACK, { count: 2, bite: 'clean-bite' });
  const whole = forecastCook(cook, { members: 80, seed: 5 });

  test('are the same whatever the split', () => {
    const job = { jobId: 'x', seed: 5, cook };
    const parts = [
      [53, 80],
      [0, 7],
      [7, 53],
    ].map(([membersFrom, membersTo]) =>
      forecastMembers({ ...job, membersFrom: membersFrom!, membersTo: membersTo! }),
    );
    expect(assembleForecast(cook, 5, parts).pieces[0]!.columns).toEqual(whole.pieces[0]!.columns);
  });

  test('of a preview are the first of the plan', () => {
    const few = forecastCook(cook, { members: 16, seed: 5 });
    expect([...few.pieces[0]!.readyS]).toEqual([...whole.pieces[0]!.readyS.slice(0, 16)]);
  });

  test('another seed draws others', () => {
    expect(forecastCook(cook, { members: 16, seed: 6 }).pieces[0]!.readyS).not.toEqual(
      whole.pieces[0]!.readyS.slice(0, 16),
    );
  });

  test('a letter is ready when all of its items are: two racks are never before one', () => {
    const one = forecastCook(exampleCook('loin-back-ribs', RACK, { count: 1, bite: 'clean-bite' }), {
      members: 80,
      seed: 5,
    });
    whole.pieces[0]!.readyS.forEach((readyS, m) => {
      expect(readyS).toBeGreaterThanOrEqual(one.pieces[0]!.readyS[m]!);
    });
  });

  test('chances of the words sum to one, and shift to softer ones with time', () => {
    const soft = (hours: number): number => {
      const chances = biteChancesAt(whole.pieces[0]!.columns, hours * 3600);
      expect(Object.values(chances).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 9);
      return 1 - (chances.raw ?? 0) - (chances.firm ?? 0);
    };
    expect(soft(1)).toBeLessThanOrEqual(soft(3));
    expect(soft(3)).toBeLessThanOrEqual(soft(4));
  });
});

describe('ranges', () => {
  const brisket = (told: Partial<Piece>, cook: Partial<Cook['pit']> = {}) => {
    const base = exampleCook('brisket-whole', BRISKET, { bite: 'firm', ...told });
    return forecastCook({ ...base, pit: { ...base.pit, ...cook } }, { members: 120, seed: 9 }).pieces[0]!;
  };
  const mass = { mass: quantity('mass', 6, 'kg') };
  /** Sampling error of a spread of 120 members, three sigma. */
  const SAMPLING = 0.1;

  test('a ruler does not widen them, a gauge beside the meat does not widen them', () => {
    const byMass = spread(brisket(mass).ready);
    expect(spread(brisket({ ...mass, thickness: quantity('length', 88, 'mm') }).ready)).toBeLessThan(
      byMass + SAMPLING,
    );
    expect(spread(brisket(mass, { gauge: 'set-point' }).ready)).toBeGreaterThan(byMass - SAMPLING);
  });

  test('at a set-point of 107 °C a share never gets there, and it is told', () => {
    const { ready, columns } = brisket(mass, {
      temperature: quantity('temperature', 107, '°C'),
      gauge: 'set-point',
    });
    const never = columns.readyS.filter((s) => s === Infinity).length / columns.members;
    expect(ready.neverShare).toBe(never);
    expect(never).toBeGreaterThan(0);
    expect(never).toBeLessThan(0.3);
  });

  test('a stage that ends by its bite ends with that bite', () => {
    const cook = exampleCook(
      'pork-shoulder',
      [
        { kind: 'bare', until: { by: 'bark' } },
        { kind: 'foil', until: { by: 'bite', bite: 'pulls-apart' } },
        { kind: 'hold', until: { by: 'table' }, in: 'box' },
      ],
      { bite: 'pulls-apart' },
    );
    const piece = forecastCook(cook, { members: 40, seed: 4 }).pieces[0]!;
    expect(piece.biteChances).toEqual({ 'pulls-apart': expect.closeTo(1, 9) });
    expect(piece.stages.map((stage) => stage.endS === undefined)).toEqual([false, false, true]);
  });
});

test('what was asked and is not used is said', () => {
  const cook = { ...exampleCook('brisket-whole', BRISKET), weather: { words: 'windy' } };
  expect(forecastCook(cook, { members: 1, seed: 1 }).notUsed).toEqual([{ id: 'day.weather-not-used' }]);
});
