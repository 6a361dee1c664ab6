// The published description of the API is the one the code answers by. Evidence: conformity.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openapiText } from '../src/openapi.ts';

test('openapi.json is current (npm run openapi --workspace @pitwright/server writes it)', async () => {
  expect(await openapiText()).toBe(readFileSync(new URL('../openapi.json', import.meta.url), 'utf8'));
});

test('every route says what it takes and that a Problem is its refusal', async () => {
  const { openapi, paths } = JSON.parse(await openapiText());
  expect(openapi).toBe('3.1.0');
  expect(Object.keys(paths).sort()).toEqual(['/api/about', '/api/entries', '/api/live']);
  for (const operation of [paths['/api/entries'].get, paths['/api/entries'].post])
    expect(operation.responses['4XX'].content['application/json'].schema.$ref).toBe(
      '#/components/schemas/Problem',
    );
});
