// Instants as the plan writes and reads them. Evidence: exact (Temporal).
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { expect, test } from 'vitest';
import { epochS, instantOf } from './clock.ts';

test('what is written is what Temporal writes, and is read back', () => {
  fc.assert(
    fc.property(fc.integer({ min: -2e9, max: 2e11 }), (seconds) => {
      const written = instantOf(seconds);
      expect(written).toBe(Temporal.Instant.fromEpochMilliseconds(seconds * 1000).toString());
      expect(epochS(written)).toBe(seconds);
    }),
    { seed: 5 },
  );
});

test('days and hours that no clock shows are refused', () => {
  for (const text of [
    '2027-02-30T12:00:00Z',
    '2027-13-01T12:00:00Z',
    '2027-06-19T24:00:00Z',
    '2027-06-19 noon',
  ])
    expect(() => epochS(text), text).toThrow(RangeError);
});
