// Chilling as a stage: the two-stage rule beside it, and the meat that follows it. Evidence: published rule (FDA Food
// Code 3-501.14: 57 to 21 °C in 2 h, to 5 °C in 6 h in all); law.
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from '../../forecast/cookForecast.ts';
import { exampleCook } from '../../forecast/exampleCook.testing.ts';
import { planCook } from '../../schedule/plan.ts';
import { standingNotices } from '../standingNotices.ts';

const cooked: Stage = { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 74, '°C') } };
const toC = (celsius: number, place: 'fridge' | 'ice-bath'): Stage => ({
  kind: 'chill',
  until: { by: 'core', temperature: quantity('temperature', celsius, '°C') },
  in: place,
});
const chillNotices = (cook: ReturnType<typeof exampleCook>) =>
  standingNotices(cook).filter(({ id }) => id.startsWith('safety.chill-'));

describe('a stage of chilling', () => {
  test('a whole shoulder in the fridge is told too slow; breasts in ice water keep the rule', () => {
    const [slow] = chillNotices(exampleCook('pork-shoulder', [cooked, toC(5, 'fridge')]));
    expect(slow).toMatchObject({ id: 'safety.chill-slow', level: 'caution' });
    expect((slow!.params!.first as { si: number }).si).toBeGreaterThan(2 * 3600);
    const [kept] = chillNotices(exampleCook('chicken-breast', [cooked, toC(5, 'ice-bath')]));
    expect(kept).toMatchObject({ id: 'safety.chill-kept', level: 'information' });
    expect((kept!.params!.both as { si: number }).si).toBeLessThan(6 * 3600);
  });

  test('none is told where nothing is chilled', () =>
    expect(chillNotices(exampleCook('pork-shoulder', [cooked]))).toEqual([]));

  test('the middle falls to what was asked, sooner in ice water', () => {
    const endS = (place: 'fridge' | 'ice-bath'): number => {
      const cook = exampleCook('chicken-breast', [cooked, toC(10, place)]);
      const [piece] = forecastCook(cook, { members: 8, seed: 3 }).pieces;
      expect(piece!.stages[1]!.coreC.p50).toBeCloseTo(10, 0);
      return piece!.stages[1]!.endS!.p50;
    };
    expect(endS('ice-bath')).toBeLessThan(endS('fridge'));
  });

  test('a chilled piece may wait for a table the next day', () => {
    const cook = exampleCook('chicken-breast', [
      cooked,
      { kind: 'chill', until: { by: 'table' }, in: 'fridge' },
    ]);
    const onAt = new Date(Date.parse(cook.table.at) - 26 * 3_600_000).toISOString().replace('.000Z', 'Z');
    const early = { ...cook, pieces: cook.pieces.map((piece) => ({ ...piece, onAt })) };
    const plan = planCook(early, forecastCook(early, { members: 20, seed: 1 }));
    expect(plan.pieces[0]!.misses.heldTooLong).toBe(0);
    expect(plan.pieces[0]!.stages[1]!.kind).toBe('chill');
  });
});
