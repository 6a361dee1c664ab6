import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Cook } from '../nouns.ts';
import { printCookFile } from './print.ts';
import { readCookFile } from './read.ts';
import { withoutPrivate } from './share.ts';

const DEMO = readFileSync(
  new URL('../../../../examples/regatta-dinner.pitwright.yaml', import.meta.url),
  'utf8',
);
function demo(): Cook {
  const read = readCookFile(DEMO);
  if (!read.ok || read.document.kind !== 'cook') throw new Error('the demo is a cook');
  const { cook } = read.document;
  return {
    ...cook,
    place: { ...cook.place, longitude: -8.6312 },
    hands: [
      { id: 'rosalind', name: 'Rosalind' },
      { id: 'tobias', name: 'Tobias' },
    ],
  };
}

test('a shared copy holds no coordinates, no allergies and no names', () => {
  const text = printCookFile({ kind: 'cook', cook: withoutPrivate(demo()).cook });
  for (const secret of [
    'latitude',
    '41\n',
    '8.6312',
    'allerg',
    'sesame',
    'Rosalind',
    'rosalind',
    'Tobias',
    'tobias',
  ])
    expect(text).not.toContain(secret);
});

test('what the plan needs stays: pieces, formulas, pit, altitude, hours, heads', () => {
  const [cook, { cook: shared }] = [demo(), withoutPrivate(demo())];
  expect(shared).toMatchObject({
    pieces: cook.pieces,
    formulas: cook.formulas,
    pit: cook.pit,
    table: cook.table,
    place: { altitude: cook.place!.altitude },
    guests: { adults: 16, children: 2 },
  });
  const read = readCookFile(printCookFile({ kind: 'cook', cook: shared }));
  expect(read.ok && read.document).toEqual({ kind: 'cook', cook: shared });
});

test('what is ticked stays in, and nothing else', () => {
  const { cook } = withoutPrivate(demo(), ['allergies']);
  expect(cook.guests.allergies).toEqual(['sesame']);
  expect(cook.place?.latitude).toBeUndefined();
  expect(withoutPrivate(demo(), ['coordinates', 'allergies', 'names']).cook).toEqual(demo());
});

test('notes are counted, for no program can judge them', () => {
  const notes = DEMO.match(/^\s+note:|^note:/gm)!.length;
  expect(withoutPrivate(demo()).said).toEqual([{ id: 'file.notes-shared', params: { count: notes } }]);
});
