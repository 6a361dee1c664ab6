// Unlike faces of a rack. Evidence: law; conformity (bone side 30 to 50 % of the open side).
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from '../forecast/cookForecast.ts';
import { exampleCook } from '../forecast/exampleCook.ts';
import { catalogueOfCuts, findCut } from './cuts.ts';
import { hasMembrane, withMembrane } from './faces.ts';

const BARE: readonly Stage[] = [{ kind: 'bare', until: { by: 'clock', after: quantity('time', 3, 'h') } }];

describe('the membrane', () => {
  test('told on or off brackets what is untold, and the bone side dries 30 to 50 % of the open side', () => {
    const rack = findCut('loin-back-ribs')!;
    const boneSide = (share: number): number => 2 * share - 1;
    expect(boneSide(withMembrane(rack, true).evaporatingShare)).toBeCloseTo(0.3, 9);
    expect(boneSide(rack.evaporatingShare)).toBeCloseTo(0.4, 9);
    expect(boneSide(withMembrane(rack, false).evaporatingShare)).toBeCloseTo(0.5, 9);
  });

  test('left on warms the rack sooner, in every try: less dries, so less heat is spent', () => {
    const of = (membrane: boolean) => {
      const cook = exampleCook('loin-back-ribs', BARE, { bite: 'firm', membrane });
      return forecastCook(cook, { members: 40, seed: 2 }).pieces[0]!;
    };
    const on = of(true).columns.stageCoreC;
    const off = of(false).columns.stageCoreC;
    on.forEach((coreC, row) => {
      expect(coreC).toBeGreaterThan(off[row]!);
    });
  });

  test('means nothing on a cut without one, and that is said', () => {
    for (const cut of catalogueOfCuts()) if (!hasMembrane(cut)) expect(withMembrane(cut, true)).toBe(cut);
    const { notUsed } = forecastCook(exampleCook('brisket-flat', BARE, { membrane: false }), {
      members: 1,
      seed: 1,
    });
    expect(notUsed).toEqual([{ id: 'day.membrane-not-used', params: { letter: 'A' } }]);
  });
});
