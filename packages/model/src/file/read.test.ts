/** The reader of the cook file beyond its corpus of broken files (validation/broken-files). */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { quantity } from '../units/quantity.ts';
import { printCookFile } from './print.ts';
import { type CookDocument, readCookFile } from './read.ts';

const SMALL = readFileSync(new URL('../../../../examples/two-racks.pitwright.yaml', import.meta.url), 'utf8');
const documentOf = (text: string): CookDocument => {
  const read = readCookFile(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.document;
};
const cookOf = (text: string) => {
  const document = documentOf(text);
  if (document.kind !== 'cook') throw new Error('no cook');
  return document.cook;
};
const problemIds = (text: string): string[] => {
  const read = readCookFile(text);
  return read.ok ? [] : read.problems.map(({ id }) => id);
};
const inLisbon = (at: string): string =>
  SMALL.replace('CST6CDT', 'Europe/Lisbon').replace('2027-06-19 18:30', at);

describe('comments', () => {
  test('are not kept, and the loss is said', () => {
    const read = readCookFile(SMALL.replace('pit:\n', '# borrowed\npit: # from the club\n'));
    expect(read.ok && read.said).toEqual([{ id: 'file.comments-lost', params: { count: 2, line: 26 } }]);
    expect(read.ok && printCookFile(read.document)).toBe(SMALL);
  });

  test('a note is no comment, even with a # in it', () => {
    const read = readCookFile(
      SMALL.replace('demo: yes\n', 'demo: yes\nnote: |-\n  rack #2\n  # not a comment\n'),
    );
    expect(read.ok && read.said).toEqual([]);
    expect(read.ok && read.document.kind === 'cook' && read.document.cook.note).toBe(
      'rack #2\n# not a comment',
    );
  });
});

// Clock changes of Europe/Lisbon in 2027: 28 March 01:00 → 02:00 and 31 October 02:00 → 01:00 (IANA time zone data).
describe('the nights of the clock change', () => {
  test.each([
    ['2027-10-31 00:59', '2027-10-30T23:59:00Z'],
    ['2027-10-31 01:00 +01:00', '2027-10-31T00:00:00Z'],
    ['2027-10-31 01:30 +01:00', '2027-10-31T00:30:00Z'],
    ['2027-10-31 01:30 +00:00', '2027-10-31T01:30:00Z'],
    ['2027-10-31 02:00', '2027-10-31T02:00:00Z'],
    ['2027-03-28 00:59', '2027-03-28T00:59:00Z'],
    ['2027-03-28 02:00', '2027-03-28T01:00:00Z'],
  ])('%s is %s, and prints as it was written', (at, instant) => {
    const cook = cookOf(inLisbon(at));
    expect(cook.table.at).toBe(instant);
    expect(printCookFile({ kind: 'cook', cook })).toContain(`at: ${at}\n`);
  });

  test.each([
    ['2027-10-31 01:00', 'file.time-twice'],
    ['2027-10-31 01:59', 'file.time-twice'],
    ['2027-10-31 01:30 +02:00', 'file.time-offset'],
    ['2027-03-28 01:00', 'file.time-skipped'],
    ['2027-03-28 01:59', 'file.time-skipped'],
    ['2027-03-28 01:30 +00:00', 'file.time-skipped'],
  ])('%s is refused: %s', (at, id) => {
    expect(problemIds(inLisbon(at))).toEqual([id]);
  });
});

test('a serving window keeps the unit it was written in', () => {
  const text = SMALL.replace('window: 30 min', 'window: 1 h 30 min');
  expect(cookOf(text).table).toMatchObject({ at: '2027-06-19T23:30:00Z', until: '2027-06-20T01:00:00Z' });
  expect(printCookFile(documentOf(text))).toBe(text);
});

test('a byte-order mark and the line ends of another system change nothing', () => {
  expect(documentOf(`\ufeff${SMALL}`)).toEqual(documentOf(SMALL));
  expect(documentOf(SMALL.replaceAll('\n', '\r\n'))).toEqual(documentOf(SMALL));
});

test('two pieces that share their stages in memory are written out twice, without an anchor', () => {
  const cook = cookOf(SMALL);
  const [first] = cook.pieces;
  const twin = { ...first!, id: 'b', letter: 'B' };
  const text = printCookFile({ kind: 'cook', cook: { ...cook, pieces: [first!, twin] } });
  expect(text).not.toMatch(/[&*]a/);
  expect(cookOf(text).pieces[1]?.stages).toEqual(first!.stages);
});

test('a piece named in memory that does not exist is a programmer’s mistake', () => {
  const cook = cookOf(SMALL);
  const formulas = [{ ...cook.formulas[0]!, for: ['z'] }];
  expect(() => printCookFile({ kind: 'cook', cook: { ...cook, formulas } })).toThrow(RangeError);
});

describe('a recipe and a pit alone', () => {
  const cook = cookOf(SMALL);

  test('a pit goes out of a cook and comes back the same', () => {
    const text = printCookFile({ kind: 'pit', pit: cook.pit });
    expect(text).toBe(
      'kind: pit\nversion: 1\nname: Kettle\ntype: kettle\nfuel: charcoal and hickory\ntemperature: 250 °F\ngauge: lid\n',
    );
    expect(documentOf(text)).toEqual({ kind: 'pit', pit: cook.pit });
  });

  test('a recipe with a variant of its sauce goes out and comes back the same', () => {
    const recipe = {
      id: 'two-racks',
      name: 'Two racks',
      version: 3,
      isDemo: true,
      pieces: cook.pieces,
      formulas: cook.formulas.map((formula) => ({
        ...formula,
        variants: [
          {
            id: 'hotter',
            name: 'Hotter',
            changes: [{ ingredient: 'cayenne', amount: quantity('mass', 2, 'g') }],
            note: 'For some.',
          },
        ],
        variant: 'hotter',
      })),
    };
    const text = printCookFile({ kind: 'recipe', recipe });
    expect(text).toContain('recipe-version: 3\n');
    expect(documentOf(text)).toEqual({ kind: 'recipe', recipe });
  });

  test('a recipe holds no hour', () => {
    const pieces = [{ ...cook.pieces[0]!, onAt: '2027-06-19T12:00:00Z' }];
    const recipe = { id: 'racks', name: 'Racks', version: 1, isDemo: false, pieces, formulas: [] };
    expect(printCookFile({ kind: 'recipe', recipe })).not.toMatch(/^ +on:/m);
  });

  test('a cook names the recipe it came from', () => {
    const text = SMALL.replace(
      'zone: CST6CDT\nchance: 90 %\n',
      'zone: CST6CDT\nchance: 90 %\n\nrecipe:\n  id: two-racks\n  version: 3\n',
    );
    expect(cookOf(text).recipe).toEqual({ id: 'two-racks', version: 3 });
  });
});

test('every problem is found in one reading, however deep it lies', () => {
  const text = SMALL.replace('mass: 2 lb 10 oz', 'mass: 2')
    .replace('bite: tender', 'bite: soft')
    .replace('for: 15 min', 'for: 15')
    .replace('amount: 1/2 cup', 'amount: 7 oz')
    .replace('gauge: lid', 'gauge: dome');
  expect(problemIds(text)).toEqual([
    'file.unknown-word',
    'quantity.unit-missing',
    'file.unknown-word',
    'quantity.unit-missing',
    'quantity.ounce',
  ]);
});

test.each([
  ['docs/models/cook-file.md', ['file.comments-lost']],
  ['README.md', []],
])('the example of %s is a cook file', (path, said) => {
  const page = readFileSync(new URL(`../../../../${path}`, import.meta.url), 'utf8');
  const example = /```yaml\n([\s\S]*?)```/.exec(page)![1]!;
  const read = readCookFile(example);
  expect(read.ok ? read.said.map(({ id }) => id) : read.problems).toEqual(said);
});
