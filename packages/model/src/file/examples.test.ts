import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { printCookFile } from './print.ts';
import { readCookFile } from './read.ts';

const FOLDER = new URL('../../../../examples/', import.meta.url);
const exampleFiles = readdirSync(FOLDER).filter((file) => file.endsWith('.pitwright.yaml'));
const readExample = (file: string) => {
  const text = readFileSync(new URL(file, FOLDER), 'utf8');
  const read = readCookFile(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  if (read.document.kind !== 'cook') throw new Error(`${file} is no cook`);
  return { text, read, cook: read.document.cook };
};

describe.each(exampleFiles)('%s', (file) => {
  test('is canonical: it comes back byte for byte, and nothing is lost', () => {
    const { text, read } = readExample(file);
    expect(read.said).toEqual([]);
    expect(printCookFile(read.document)).toBe(text);
  });

  test('is marked as demo', () => {
    expect(readExample(file).cook.isDemo).toBe(true);
  });
});

test('the regatta dinner is the demo as designed', () => {
  const { cook } = readExample('regatta-dinner.pitwright.yaml');
  // 13:30 in the summer time of Europe/Lisbon, UTC + 1 h.
  expect(cook.table).toMatchObject({ at: '2027-09-12T12:30:00Z', until: '2027-09-12T13:00:00Z' });
  expect(cook.guests.adults + cook.guests.children).toBe(18);
  expect(cook.hands).toHaveLength(1);
  expect(cook.pit.steel?.si).toBeCloseTo(0.006, 12);
  const counts = Object.fromEntries(cook.pieces.map((piece) => [piece.letter, [piece.cut, piece.count]]));
  expect(counts).toEqual({
    A: ['loin-back-ribs', 1],
    B: ['loin-back-ribs', 2],
    C: ['st-louis-ribs', 2],
    D: ['pork-shoulder', 1],
    E: ['chicken-leg', 8],
  });
  expect(cook.pieces.find((piece) => piece.letter === 'E')?.after).toEqual(['a', 'b', 'c']);
});

test('the two racks are written in US units throughout', () => {
  const { cook, text } = readExample('two-racks.pitwright.yaml');
  expect(text).not.toMatch(/\d (?:°C|K|g|kg|mm|cm|mL|L)\b/);
  expect(cook.rulesTold).toBe(false);
  expect(cook.pieces[0]?.mass?.si).toBeCloseTo(42 * (0.45359237 / 16), 12);
});
