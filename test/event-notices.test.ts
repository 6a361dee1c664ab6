/** What is said when something has happened: nothing where all is well, its level and words where it is not. */
import {
  comeUpNotices,
  coolingNotices,
  keptWarmNotices,
  leftoverNotices,
  type Notice,
  pitNotices,
  servingNotices,
} from '@pitwright/engine';
import { METRIC, say, US } from '@pitwright/words';
import { describe, expect, it } from 'vitest';

const C = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const H = 3600;
const brief = (notices: readonly Notice[]) => notices.map((n) => `${n.level} ${n.id.replace('safety.', '')}`);

describe('at the table', () => {
  const serving = { rules: 'home-us', product: 'whole-cut', errorK: 1, guestsAtRisk: false } as const;

  it('is quiet at the minimum, the error taken off', () => {
    expect(servingNotices({ ...serving, coldestC: C(145) + 1 })).toEqual([]);
    expect(brief(servingNotices({ ...serving, coldestC: C(145) }))).toEqual(['stop under-min']);
  });

  it('takes the printed table at home only, and not for guests at risk or what is cut into', () => {
    const held = { ...serving, coldestC: C(141), errorK: 0, heldS: 12 * 60 };
    expect(brief(servingNotices(held))).toEqual(['information time-temp', 'caution low-dry']);
    expect(brief(servingNotices({ ...held, heldS: 8 * 60 }))).toEqual(['stop under-min']);
    expect(brief(servingNotices({ ...held, guestsAtRisk: true }))).toEqual(['stop under-min']);
    expect(brief(servingNotices({ ...held, rules: 'uk' }))).toEqual(['stop under-min']);
    expect(brief(servingNotices({ ...held, product: 'tenderised' }))).toEqual(['stop under-min']);
    // A bird never by the table of meat.
    expect(brief(servingNotices({ ...held, product: 'poultry' }))).toEqual(['stop under-min']);
  });
});

it('says of slow warming what its verdict is', () => {
  const slow = {
    centreS: 8 * H,
    hasEarlyProbe: false,
    earlierS: 0,
    earlierWasLethal: false,
    isNonIntact: false,
  };
  expect(comeUpNotices({ ...slow, centreS: 5 * H })).toEqual([]);
  expect(brief(comeUpNotices({ ...slow, surfaceS: H }))).toEqual(['information come-up-outside-hot']);
  expect(brief(comeUpNotices({ ...slow, surfaceS: H, hasEarlyProbe: true }))).toEqual([
    'caution come-up-probe',
  ]);
  expect(brief(comeUpNotices({ ...slow, isNonIntact: true }))).toEqual(['stop come-up']);
});

it('stops a dead fire only over meat that is not hot inside', () => {
  expect(pitNotices(C(190), 0.9 * H, C(100))).toEqual([]);
  expect(pitNotices(C(190), 2 * H, C(150))).toEqual([]);
  expect(brief(pitNotices(C(190), 2 * H, C(100)))).toEqual(['stop pit-dead']);
});

it('watches what is kept warm and what is out', () => {
  expect(keptWarmNotices('home-us', 5 * H, { coldestC: C(141) })).toEqual([]);
  expect(brief(keptWarmNotices('home-us', 5 * H, { coldestC: C(135) }))).toEqual(['caution hold-low']);
  expect(brief(keptWarmNotices('cater-us', H, { coldestC: C(130) }))).toEqual(['stop hold-low']);
  expect(brief(keptWarmNotices('home-us', 3 * H, { coldestC: C(120) }))).toEqual(['stop out-too-long']);
  expect(brief(keptWarmNotices('home-us', 1.5 * H, { airC: C(95) }))).toEqual(['stop out-too-long']);
  expect(keptWarmNotices('home-us', 1.5 * H, { airC: C(80) })).toEqual([]);
});

it('puts the cooling rule before the model', () => {
  const curve = (...points: [number, number][]) => ({
    timesS: points.map(([h]) => h * H),
    temperaturesC: points.map(([, f]) => C(f)),
  });
  expect(coolingNotices('food-code', curve([0, 135], [1, 70], [4, 41]), { matrix: 'pork' })).toEqual([]);
  expect(brief(coolingNotices('food-code', curve([0, 135], [1.8, 90]), {}))).toEqual(['caution slow-cool']);
  expect(brief(coolingNotices('food-code', curve([0, 135], [5, 70], [9, 41]), { matrix: 'pork' }))).toEqual([
    'stop cooled-too-slowly',
    'caution spore-model',
  ]);
});

it('ages leftovers', () => {
  expect(leftoverNotices(C(38), 96 * H)).toEqual([]);
  expect(brief(leftoverNotices(C(38), 97 * H))).toEqual(['stop leftover-age']);
  expect(brief(leftoverNotices(C(50), H))).toEqual(['stop leftover-age']);
});

it('has words for each, in both systems, with a source', () => {
  const all = [
    ...servingNotices({
      rules: 'home-us',
      product: 'whole-cut',
      coldestC: 61,
      errorK: 0,
      heldS: 1200,
      guestsAtRisk: false,
    }),
    ...servingNotices({ rules: 'uk', product: 'poultry', coldestC: 61, errorK: 0, guestsAtRisk: false }),
    ...comeUpNotices({
      centreS: 8 * H,
      surfaceS: H,
      hasEarlyProbe: false,
      earlierS: 0,
      earlierWasLethal: false,
      isNonIntact: false,
    }),
    ...comeUpNotices({
      centreS: 8 * H,
      surfaceS: H,
      hasEarlyProbe: true,
      earlierS: 0,
      earlierWasLethal: false,
      isNonIntact: false,
    }),
    ...comeUpNotices({
      centreS: 8 * H,
      hasEarlyProbe: false,
      earlierS: 0,
      earlierWasLethal: false,
      isNonIntact: true,
    }),
    ...pitNotices(80, 2 * H, 40),
    ...keptWarmNotices('home-us', 3 * H, {}),
    ...coolingNotices('food-code', { timesS: [0, 1.8 * H], temperaturesC: [57, 35] }, { matrix: 'beef' }),
    ...coolingNotices('food-code', { timesS: [0, 3 * H], temperaturesC: [57, 35] }, {}),
    ...leftoverNotices(3, 99 * H),
  ];
  expect(all.length).toBeGreaterThanOrEqual(11);
  for (const n of all) {
    expect(n.source).not.toBe('');
    for (const settings of [METRIC, US]) expect(say(n, settings)).toMatch(/^[^{}]+[.]$/);
  }
});
