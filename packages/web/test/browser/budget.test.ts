// Bytes before the first place shows: at most 250 kB gzip, fonts counted, workers not. Evidence: conformity.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { visit, WEB_DIR } from './app.ts';
import { app, browser, serve } from './served.ts';

const MOST_BYTES = 250_000;
/** Already packed: sent as they are. */
const PACKED = /\.(woff2|png)$/;

serve('file');

test('what the page asks for until the shelf stands weighs at most 250 kB gzip', async () => {
  const { context, page } = await visit(browser);
  const asked: string[] = [];
  page.on('request', (request) => {
    const { origin, pathname } = new URL(request.url());
    if (origin === new URL(app.url).origin && !pathname.startsWith('/api/')) asked.push(pathname);
  });
  const unpacked: string[] = [];
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    const { 'content-encoding': packed, 'content-length': length } = response.headers();
    if (/\.(js|css)$/.test(pathname) && !packed && Number(length) >= 1024) unpacked.push(pathname);
  });
  await page.goto(app.url, { waitUntil: 'commit' });
  await page.getByRole('button', { name: 'A new cook' }).waitFor();
  await page.evaluate(() => document.fonts.ready);
  const untilShown = [...new Set(asked)].filter((path) => path !== '/service-worker.js');
  await context.close();
  const sizes = untilShown.map((path) => {
    const content = readFileSync(join(WEB_DIR, path === '/' ? 'index.html' : path));
    return { path, bytes: PACKED.test(path) ? content.length : gzipSync(content).length };
  });
  const total = sizes.reduce((sum, { bytes }) => sum + bytes, 0);
  // Over the line as well, not only by the book.
  expect(unpacked).toEqual([]);
  expect(sizes.some(({ path }) => path.endsWith('.woff2'))).toBe(true);
  expect({ total, sizes }).toSatisfy((weighed: { total: number }) => weighed.total <= MOST_BYTES);
});
