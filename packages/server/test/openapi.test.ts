// The published description of the API is the one the code answers by. Evidence: conformity.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../src/index.ts';
import { openapiText } from '../src/openapi.ts';

interface Answered {
  readonly content?: Readonly<Record<string, { readonly schema: object }>>;
}
interface Operation {
  readonly operationId: string;
  readonly responses: Readonly<Record<string, Answered>>;
}
interface Document {
  readonly openapi: string;
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: object;
}

let folder: string;
let server: RunningServer;
let document: Document;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-openapi-'));
  server = await startServer({ port: 0, dataDir: folder });
  document = (await (await fetch(`${server.url}api/openapi.json`)).json()) as Document;
});
afterAll(async () => {
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** What the document says of an answer with this status: `4XX` stands for all of them. */
function described(path: string, method: string, status: number, type: string) {
  const { responses } = document.paths[path]![method]!;
  const schema = (responses[status] ?? responses[`${Math.floor(status / 100)}XX`])?.content?.[type]?.schema;
  if (!schema) throw new Error(`${method} ${path} does not say what a ${status} is as ${type}`);
  // Dates are told by a pattern beside their format.
  return new Ajv2020({ strict: false, validateFormats: false }).compile({
    ...schema,
    components: document.components,
  });
}

test('openapi.json is current (npm run openapi --workspace @pitwright/server writes it)', async () => {
  expect(await openapiText()).toBe(readFileSync(new URL('../openapi.json', import.meta.url), 'utf8'));
});

test('the document is OpenAPI 3.1, has every route, and a Problem for each of their refusals', () => {
  expect(document.openapi).toBe('3.1.0');
  expect(Object.keys(document.paths).sort()).toEqual(['/api/about', '/api/entries', '/api/live']);
  const refusals = Object.values(document.paths)
    .flatMap((path) => Object.values(path))
    .flatMap(({ responses }) => [responses['4XX'], responses['5XX']])
    .map((answer) => answer?.content?.['application/json']?.schema);
  expect(refusals).toHaveLength(8);
  for (const schema of refusals) expect(schema).toEqual({ $ref: '#/components/schemas/Problem' });
});

const ENTRY = {
  id: 'e-1',
  device: 'phone',
  seq: 1,
  clock: 1,
  at: '2027-09-11T06:00:00Z',
  subject: { kind: 'cook', id: 'dinner' },
  what: 'create',
  schema: 1,
  body: { document: { id: 'dinner', name: 'Dinner' } },
};
const send = (body: unknown): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body),
});

test.each<[path: string, query: string, status: number, init: RequestInit]>([
  ['/api/about', '', 200, {}],
  ['/api/about', '', 403, { headers: { origin: 'https://other.example' } }],
  ['/api/entries', '', 200, {}],
  ['/api/entries', '?since=-1', 400, {}],
  ['/api/entries', '', 200, send({ entries: [ENTRY] })],
  ['/api/entries', '', 400, send({ entries: [{ ...ENTRY, seq: 0 }] })],
  ['/api/entries', '', 413, send({ entries: [{ ...ENTRY, body: 'x'.repeat(600_000) }] })],
  ['/api/live', '?since=-1', 400, {}],
])('%s%s answers %d in the form that the document tells', async (path, query, status, init) => {
  const answer = await fetch(new URL(`${path}${query}`, server.url), init);
  expect(answer.status).toBe(status);
  const [type] = answer.headers.get('content-type')!.split(';');
  const holds = described(path, (init.method ?? 'get').toLowerCase(), status, type!);
  const body: unknown = await answer.json();
  expect(holds(body), JSON.stringify(holds.errors)).toBe(true);
  // The form refuses what is none.
  expect(holds({})).toBe(false);
});

test('the stream is an event stream, its events Pages', async () => {
  const leave = new AbortController();
  const answer = await fetch(new URL('/api/live', server.url), { signal: leave.signal });
  const [type] = answer.headers.get('content-type')!.split(';');
  expect(described('/api/live', 'get', 200, type!)('event: entries')).toBe(true);
  let text = '';
  for await (const part of answer.body!.pipeThrough(new TextDecoderStream())) {
    text += part;
    if (/^data: .*\n\n/m.test(text)) break;
  }
  leave.abort();
  const isPage = described('/api/entries', 'get', 200, 'application/json');
  expect(isPage(JSON.parse(/^data: (.*)$/m.exec(text)![1]!)), JSON.stringify(isPage.errors)).toBe(true);
});
