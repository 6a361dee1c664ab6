// Told bites of measured cooks: with the probe the three words come in order and the chances beat always saying "tender",
// racks too; before the cook they beat it over all tests, not on racks (docs/models/measured-words.md). Evidence: calibration.
import { expect, test } from 'vitest';
import type { TOLD_CLASSES } from './measured/toldWords.ts';
import {
  ALWAYS_TENDER,
  grade,
  isRack,
  mean,
  orderShare,
  rankedScore,
  type ScoredWord,
  scoredWords,
} from './measured/words.ts';

const { plan, probe } = scoredWords(120);
const graded = (rows: readonly ScoredWord[], told: (typeof TOLD_CLASSES)[number]): number =>
  mean(rows.filter(({ word }) => word.told === told).map(({ chances }) => grade(chances)));
const score = (rows: readonly ScoredWord[]): number =>
  mean(rows.map(({ word, chances }) => rankedScore(chances, word.told)));
const tender = (rows: readonly ScoredWord[]): number =>
  mean(rows.map(({ word }) => rankedScore(ALWAYS_TENDER, word.told)));

test('with the probe: firm < done < apart', () => {
  expect(graded(probe, 'firm')).toBeLessThan(graded(probe, 'done'));
  expect(graded(probe, 'done')).toBeLessThan(graded(probe, 'apart'));
  expect(orderShare(probe).share).toBeGreaterThan(0.7);
});

test('before the cook: firm < apart, done < apart', () => {
  expect(graded(plan, 'firm')).toBeLessThan(graded(plan, 'apart'));
  expect(graded(plan, 'done')).toBeLessThan(graded(plan, 'apart'));
  expect(orderShare(plan).share).toBeGreaterThan(0.5);
});

test('as chances they score better than always saying "tender"', () => {
  expect(score(plan)).toBeLessThan(tender(plan));
  expect(score(probe)).toBeLessThan(tender(probe));
  expect(score(probe.filter(isRack))).toBeLessThan(tender(probe.filter(isRack)));
});

test('the score is 0 when sure and right, 1 when sure and wrong by two words', () => {
  expect(rankedScore([0, 0, 1], 'apart')).toBe(0);
  expect(rankedScore([1, 0, 0], 'apart')).toBe(1);
});
