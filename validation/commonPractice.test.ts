// Times beside common practice (no source). Bar: the middle lies in the range or misses its nearer end by at most 5 %;
// what misses by more is named here and in docs/models/meat.md. Kind of evidence: common practice, calibration.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { FOIL_PRACTICE, hoursUntilDone, missShare, PRACTICE } from './commonPractice.ts';

/** Early by 6 %: whole spareribs at a hot pit. */
const KNOWN_MISSES = new Set(['spareribs 135']);

describe('time on the pit', () => {
  test.each(PRACTICE)('$cut at $pitC °C within $lowH–$highH h', (practice) => {
    const share = Math.abs(missShare(hoursUntilDone(practice).p50, practice));
    if (KNOWN_MISSES.has(`${practice.cut} ${practice.pitC}`)) {
      expect(share).toBeGreaterThan(0.05);
      expect(share).toBeLessThan(0.08);
    } else expect(share).toBeLessThanOrEqual(0.05);
  });
});

describe('foil saves', () => {
  test.each(FOIL_PRACTICE)('$cut, foil $foilFrom at $pitC °C: $lowH–$highH h', (practice) => {
    const { foilFrom: _, ...bare } = practice;
    const saved = hoursUntilDone(bare).p50 - hoursUntilDone(practice).p50;
    expect(Math.abs(missShare(saved, practice))).toBeLessThanOrEqual(0.05);
  });
});

test('docs/models/meat.md names the misses', () => {
  const page = readFileSync(new URL('../docs/models/meat.md', import.meta.url), 'utf8');
  expect(page).toContain('Whole spareribs at 135 °C come out 6 % too early');
});
