import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stringify } from 'yaml';
import { anyCookFile } from './any-file.testing.ts';
import { printCookFile } from './print.ts';
import { type CookDocument, readCookFile } from './read.ts';

const read = (text: string): CookDocument => {
  const result = readCookFile(text);
  if (!result.ok) throw new Error(`${JSON.stringify(result.problems)}\n${text}`);
  return result.document;
};

/** The same data written another way: keys turned round, inside brackets, in quotes. */
function otherwise(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(otherwise);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, child]) => [key, otherwise(child)]),
  );
}
const STYLES = [
  { aliasDuplicateObjects: false, lineWidth: 0 },
  { aliasDuplicateObjects: false, lineWidth: 0, collectionStyle: 'flow' },
  { aliasDuplicateObjects: false, lineWidth: 60, defaultStringType: 'QUOTE_DOUBLE', defaultKeyType: 'PLAIN' },
  { aliasDuplicateObjects: false, lineWidth: 0, defaultStringType: 'QUOTE_SINGLE', indent: 4 },
] as const;

test('a canonical print reads as the same model and prints byte for byte the same', () => {
  fc.assert(
    fc.property(anyCookFile, (file) => {
      const document = read(stringify(file, STYLES[0]));
      const print = printCookFile(document);
      expect(read(print)).toEqual(document);
      expect(printCookFile(read(print))).toBe(print);
    }),
    { numRuns: 100 },
  );
});

test('however a file is written, its model and its canonical print are the same', () => {
  fc.assert(
    fc.property(anyCookFile, fc.constantFrom(...STYLES), (file, style) => {
      const document = read(stringify(file, STYLES[0]));
      const other = read(stringify(otherwise(file), style));
      expect(other).toEqual(document);
      expect(printCookFile(other)).toBe(printCookFile(document));
    }),
    { numRuns: 100 },
  );
});
