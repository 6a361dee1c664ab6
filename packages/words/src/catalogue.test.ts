/** The catalogue holds together: one home per id, every cut named, nothing claimed that the tool must never claim. */
import { CATALOGUE_CUTS } from '@pitwright/model';
import { expect, test } from 'vitest';
import { CATALOGUE, SUBJECTS } from './catalogue.ts';
import { KNOWN_CUT_NAMES } from './names/cuts.ts';
import { say } from './say.ts';
import { METRIC } from './settings.ts';

test('an id stands in one subject only', () => {
  const ids = SUBJECTS.flatMap((subject) => Object.keys(subject));
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
  expect(Object.keys(CATALOGUE).length).toBe(ids.length);
});

test('every cut of the model has a trade name on both sides', () => {
  expect(CATALOGUE_CUTS.filter((cut) => !KNOWN_CUT_NAMES.includes(cut))).toEqual([]);
});

test('an unknown id is a programmer’s mistake, not an empty line', () => {
  expect(() => say({ id: 'no.such-thing' }, METRIC)).toThrow(RangeError);
});
