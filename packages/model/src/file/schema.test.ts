import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { anyCookFile } from './any-file.testing.ts';
import { cookFileSchema, cookFileSchemaText } from './schema.ts';

const ROOT = new URL('../../../../', import.meta.url);
const isValid = new Ajv2020({ allowUnionTypes: true }).compile(cookFileSchema());

test('the published schema is current (npx tsx packages/model/schema/generate.ts)', () => {
  const published = readFileSync(new URL('packages/model/schema/cook-file.schema.json', ROOT), 'utf8');
  expect(published).toBe(cookFileSchemaText());
});

test('every example passes it', () => {
  for (const file of readdirSync(new URL('examples/', ROOT)).filter((name) =>
    name.endsWith('.pitwright.yaml'),
  ))
    expect(isValid(parse(readFileSync(new URL(`examples/${file}`, ROOT), 'utf8'))), file).toBe(true);
});

test('every file that the reader takes passes it', () => {
  fc.assert(
    fc.property(anyCookFile, (file) => {
      expect(isValid(JSON.parse(JSON.stringify(file))), JSON.stringify(isValid.errors)).toBe(true);
    }),
  );
});

test.each([
  'unknown-key',
  'unknown-kind',
  'newer-version',
  'no-version',
  'no-value',
  'list-for-value',
  'value-for-part',
  'no-pieces',
  'no-unit',
  'unknown-cut',
  'neither-yes-nor-no',
  'time-without-date',
  'recipe-with-an-hour',
  'pit-of-a-cook',
])('it refuses the broken file %s', (name) => {
  const text = readFileSync(new URL(`validation/broken-files/${name}.pitwright.yaml`, ROOT), 'utf8');
  expect(isValid(parse(text))).toBe(false);
});
