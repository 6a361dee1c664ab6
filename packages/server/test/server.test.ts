// The server as a client meets it: who may ask, what is kept, how it refuses. Evidence: conformity.
import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { createEntry, type Entry } from '@pitwright/model';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../src/index.ts';

let folder: string;
let server: RunningServer;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-server-'));
  const webDir = join(folder, 'web');
  mkdirSync(join(webDir, 'assets'), { recursive: true });
  writeFileSync(join(webDir, 'index.html'), '<!doctype html><title>the app</title>');
  writeFileSync(join(webDir, 'service-worker.js'), '// worker');
  writeFileSync(join(webDir, 'assets', 'app-1234.js'), '// app');
  writeFileSync(join(folder, 'secret.txt'), 'not to be served');
  server = await startServer({ port: 0, dataDir: join(folder, 'data'), webDir });
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
}

/** A plain request: `fetch` would not let a test set Host or Origin. */
function ask(
  path: string,
  { method = 'GET', headers = {} as Record<string, string>, body = '' } = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(server.url);
    const sent = request({ hostname, port, path, method, headers }, (answer) => {
      let text = '';
      answer.setEncoding('utf8');
      answer.on('data', (part) => {
        text += part;
      });
      answer.on('end', () => resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text }));
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

const JSON_TYPE = { 'content-type': 'application/json' };
const send = (body: unknown, headers: Record<string, string> = JSON_TYPE) =>
  ask('/api/entries', {
    method: 'POST',
    headers,
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });

function entry(number: number, part: Partial<Entry> = {}): Entry {
  const draft = createEntry({ kind: 'cook', id: `cook-${number}` }, { id: `cook-${number}`, name: 'Dinner' });
  return {
    id: `e-${number}`,
    device: 'phone',
    seq: number,
    clock: number,
    at: '2027-09-11T06:00:00Z',
    ...draft,
    ...part,
  };
}

describe('entries', () => {
  test('the demo is laid down in an empty store', async () => {
    const { entries } = JSON.parse((await ask('/api/entries')).text);
    expect(entries.map((each: Entry) => each.subject.id)).toContain('regatta-dinner');
    for (const each of entries) expect(each.body.document.isDemo).toBe(true);
  });

  test('what is sent is kept once, answered with a receipt, and read back as it was', async () => {
    const before = JSON.parse((await ask('/api/entries')).text).last;
    const sent = [
      entry(1),
      entry(2, { what: 'not-known-yet', by: 'hand-1' }),
      { ...entry(3), newer: 'kept' } as Entry,
    ];
    expect(JSON.parse((await send({ entries: sent })).text)).toMatchObject({ kept: 3, last: before + 3 });
    expect(JSON.parse((await send({ entries: sent })).text)).toMatchObject({ kept: 0, last: before + 3 });
    expect(JSON.parse((await ask(`/api/entries?since=${before}`)).text).entries).toEqual(sent);
    const page = JSON.parse((await ask(`/api/entries?since=${before}&limit=2`)).text);
    expect([page.entries.length, page.cursor, page.last]).toEqual([2, before + 2, before + 3]);
  });

  test.each([
    ['no JSON', '{"entries": ['],
    ['no entries', {}],
    ['an entry without an id', { entries: [{ ...entry(9), id: undefined }] }],
    ['a clock beyond all counting', { entries: [entry(9, { clock: 2 ** 53 })] }],
    ['an instant that is none', { entries: [entry(9, { at: 'this morning' })] }],
    ['one bad among good', { entries: [entry(9), { ...entry(10), seq: 0 }] }],
    ['an object’s machinery', '{"entries": [], "__proto__": {"isAdmin": true}}'],
    ['too many at once', { entries: Array.from({ length: 501 }, (_, i) => entry(1000 + i)) }],
  ])('%s is refused whole, in the one shape', async (_, body) => {
    const before = JSON.parse((await ask('/api/entries')).text).last;
    const { status, text } = await send(body);
    expect(status).toBe(400);
    expect(JSON.parse(text).problem.id).toBe('server.not-understood');
    expect(JSON.parse((await ask('/api/entries')).text).last).toBe(before);
  });

  test('a request or an entry that is too large is refused', async () => {
    const over = await send({ entries: [entry(20, { body: 'x'.repeat(5 * 1024 * 1024) })] });
    expect([over.status, JSON.parse(over.text).problem.id]).toEqual([413, 'server.too-large']);
    const large = await send({ entries: [entry(20, { body: 'x'.repeat(600_000) })] });
    expect([large.status, JSON.parse(large.text).problem.id]).toEqual([413, 'store.entry-too-large']);
  });
});

describe('who may ask', () => {
  test('a foreign host name is refused, so that no other site can point its name here', async () => {
    for (const headers of [
      { host: 'rebound.example' },
      { host: 'rebound.example:4640' },
      { host: '127.0.0.1' },
    ]) {
      const { status, text } = await ask('/api/about', { headers });
      expect([status, JSON.parse(text).problem.id]).toEqual([421, 'server.not-this-host']);
    }
    const { port } = new URL(server.url);
    expect((await ask('/api/about', { headers: { host: `localhost:${port}` } })).status).toBe(200);
  });

  test('a page of another origin is refused, also when it is opaque', async () => {
    for (const origin of ['https://other.example', 'null', 'http://127.0.0.1:1', 'not an origin']) {
      const { status, text } = await send({ entries: [] }, { ...JSON_TYPE, origin });
      expect([status, JSON.parse(text).problem.id]).toEqual([403, 'server.not-this-origin']);
    }
    expect((await send({ entries: [] }, { ...JSON_TYPE, origin: new URL(server.url).origin })).status).toBe(
      200,
    );
  });

  test('another site may link to the app but not read what is kept', async () => {
    const headers = { 'sec-fetch-site': 'cross-site', accept: 'text/html' };
    expect((await ask('/', { headers })).status).toBe(200);
    expect((await ask('/api/entries', { headers })).status).toBe(403);
  });

  test('forms of other sites, which send plain text unasked, are not understood', async () => {
    for (const type of [
      'text/plain',
      'application/x-www-form-urlencoded',
      'multipart/form-data; boundary=x',
    ]) {
      const { status, text } = await send('{"entries":[]}', { 'content-type': type });
      expect([status, JSON.parse(text).problem.id]).toEqual([415, 'server.only-json']);
    }
  });

  test('it listens on loopback alone', async () => {
    const outside = Object.values(networkInterfaces())
      .flat()
      .filter((each) => each && !each.internal && each.family === 'IPv4')
      .map((each) => each?.address ?? '');
    const { port } = new URL(server.url);
    for (const hostname of outside)
      await expect(
        new Promise((resolve, reject) => request({ hostname, port }, resolve).on('error', reject).end()),
      ).rejects.toMatchObject({ code: 'ECONNREFUSED' });
    expect(new URL(server.url).hostname).toBe('127.0.0.1');
  });
});

describe('the web app', () => {
  const page = { accept: 'text/html' };

  test('an address of the app that is no file gets its page; other addresses get nothing', async () => {
    expect((await ask('/cook/dinner', { headers: page })).text).toContain('the app');
    for (const path of ['/assets/none.js', '/api/none']) {
      const { status, text } = await ask(path);
      expect([status, JSON.parse(text).problem.id]).toEqual([404, 'server.nothing-here']);
    }
    expect((await ask('/api/none', { headers: page })).status).toBe(404);
  });

  test('nothing outside its folder is served', async () => {
    for (const path of [
      '/../secret.txt',
      '/..%2fsecret.txt',
      '/%2e%2e/secret.txt',
      '/assets/..%5c..%5c..%5csecret.txt',
    ])
      expect((await ask(path)).text).not.toContain('not to be served');
  });

  test('files named by their contents may be kept, all others are asked for anew', async () => {
    expect((await ask('/assets/app-1234.js')).headers['cache-control']).toContain('immutable');
    for (const path of ['/', '/service-worker.js'])
      expect((await ask(path)).headers['cache-control']).toBe('no-cache');
  });

  test('its content policy lets nothing in from elsewhere and nothing inline', async () => {
    const { headers } = await ask('/', { headers: page });
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
    expect(policy).toContain("worker-src 'self'");
    expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
    expect(headers['x-content-type-options']).toBe('nosniff');
  });
});

describe('the data folder', () => {
  test('it and its files are for its owner alone', () => {
    expect(statSync(join(folder, 'data')).mode & 0o777).toBe(0o700);
    for (const name of ['pitwright.db', 'pitwright.db-wal'])
      expect(statSync(join(folder, 'data', name)).mode & 0o777).toBe(0o600);
  });

  test('a folder of other things that others may read is refused and left alone', async () => {
    const shared = join(folder, 'shared');
    mkdirSync(shared, { mode: 0o755 });
    writeFileSync(join(shared, 'letter.txt'), 'mine');
    await expect(startServer({ port: 0, dataDir: shared })).rejects.toMatchObject({
      said: { id: 'server.folder-shared' },
    });
    expect(statSync(shared).mode & 0o777).toBe(0o755);
  });

  test('a folder that cannot be made is said', async () => {
    await expect(startServer({ port: 0, dataDir: join(folder, 'secret.txt', 'data') })).rejects.toMatchObject(
      {
        said: { id: 'server.folder-not-made' },
      },
    );
  });
});

test('a port that is taken is said, and the second store is closed again', async () => {
  const port = Number(new URL(server.url).port);
  await expect(startServer({ port, dataDir: join(folder, 'second') })).rejects.toMatchObject({
    said: { id: 'server.port-taken', params: { port } },
  });
});

test('the demo is laid down once: not again in a store that holds anything', async () => {
  const dataDir = join(folder, 'again');
  const counts: number[] = [];
  for (let round = 0; round < 2; round++) {
    const again = await startServer({ port: 0, dataDir });
    counts.push(((await (await fetch(`${again.url}api/entries`)).json()) as { last: number }).last);
    await again.close();
  }
  expect(counts[0]).toBeGreaterThan(0);
  expect(counts[1]).toBe(counts[0]);
});
