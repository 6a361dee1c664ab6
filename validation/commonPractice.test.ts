// Times beside common practice (no source). Bar: the middle lies in the range or misses its nearer end by at most 5 %;
// what lies outside is named in docs/models/meat.md. Kind of evidence: common practice, calibration.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  commonPracticeTable,
  FOIL_PRACTICE,
  foilTable,
  hoursUntilDone,
  missShare,
  PRACTICE,
} from './commonPractice.ts';

describe('time on the pit', () => {
  test.each(PRACTICE)('$cut at $pitC °C within $lowH–$highH h', (practice) => {
    expect(Math.abs(missShare(hoursUntilDone(practice).p50, practice))).toBeLessThanOrEqual(0.05);
  });
});

describe('foil saves', () => {
  test.each(FOIL_PRACTICE)('$cut, foil $foilFrom at $pitC °C: $lowH–$highH h', (practice) => {
    const { foilFrom: _, ...bare } = practice;
    const saved = hoursUntilDone(bare).p50 - hoursUntilDone(practice).p50;
    expect(Math.abs(missShare(saved, practice))).toBeLessThanOrEqual(0.05);
  });
});

test('docs/models/meat.md shows these tables', () => {
  const page = readFileSync(new URL('../docs/models/meat.md', import.meta.url), 'utf8');
  expect(page).toContain(commonPracticeTable());
  expect(page).toContain(foilTable());
});
