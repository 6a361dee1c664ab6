// What another label would change: same chances drawn, another thickness law and softening. Evidence: common practice
// (a squared spare rack takes longer than a loin back rack), law.
import { quantity, type Range, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { exampleCook } from './exampleCook.testing.ts';
import { ifOtherCut } from './otherCut.ts';

const clock = (hours: number) => ({ by: 'clock', after: quantity('time', hours, 'h') }) as const;
const CLOCKED: readonly Stage[] = [
  { kind: 'bare', until: clock(2) },
  { kind: 'foil', until: clock(1) },
];
const few = { members: 40, seed: 3 };

test('a rack labelled loin back that is a squared spare rack takes longer, and bites firmer at the same hour', () => {
  const cook = exampleCook('loin-back-ribs', CLOCKED, { bite: 'clean-bite' });
  const [time, bite] = ifOtherCut(cook, 'a', 'st-louis-ribs', few);
  const { ready, otherReady } = time!.params as Record<'ready' | 'otherReady', Range>;
  expect(otherReady.p50).toBeGreaterThan(ready.p50);
  expect(bite!.params!.otherChance).toBeLessThan(bite!.params!.chance as number);
});

test('taken for itself it changes nothing', () => {
  const [time, bite] = ifOtherCut(exampleCook('spareribs', CLOCKED), 'a', 'spareribs', few);
  expect(time!.params!.otherReady).toEqual(time!.params!.ready);
  expect(bite!.params!.otherChance).toBe(bite!.params!.chance);
});

test('stages that wait for the bite have no bite to compare', () => {
  const waits: readonly Stage[] = [{ kind: 'foil', until: { by: 'bite', bite: 'tender' } }];
  expect(ifOtherCut(exampleCook('spareribs', waits), 'a', 'st-louis-ribs', few)).toHaveLength(1);
});

test('a piece or a cut that is not there is refused', () => {
  const cook = exampleCook('spareribs', CLOCKED);
  expect(() => ifOtherCut(cook, 'b', 'st-louis-ribs', few)).toThrow(RangeError);
  expect(() => ifOtherCut(cook, 'a', 'whale', few)).toThrow(RangeError);
});
