// Told bites of measured cooks: the order of the words holds, and the chances beat always saying "tender" over all tests.
// Evidence: calibration. On ribs alone they do not: docs/models/measured-words.md.
import { expect, test } from 'vitest';
import type { TOLD_CLASSES } from './measured/toldWords.ts';
import { ALWAYS_TENDER, grade, mean, orderShare, rankedScore, scoredWords } from './measured/words.ts';

const scored = scoredWords(60);

test('firm < apart: told softer, foreseen softer', () => {
  const graded = (told: (typeof TOLD_CLASSES)[number]): number =>
    mean(scored.filter(({ word }) => word.told === told).map(({ chances }) => grade(chances)));
  expect(graded('firm')).toBeLessThan(graded('apart'));
  expect(graded('done')).toBeLessThan(graded('apart'));
  expect(orderShare(scored).share).toBeGreaterThan(0.5);
});

test('as chances they score better than always saying "tender"', () => {
  const model = mean(scored.map(({ word, chances }) => rankedScore(chances, word.told)));
  expect(model).toBeLessThan(mean(scored.map(({ word }) => rankedScore(ALWAYS_TENDER, word.told))));
});

test('the score is 0 when sure and right, 1 when sure and wrong by two words', () => {
  expect(rankedScore([0, 0, 1], 'apart')).toBe(0);
  expect(rankedScore([1, 0, 0], 'apart')).toBe(1);
});
