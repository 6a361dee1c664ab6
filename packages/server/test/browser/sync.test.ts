// Two browsers and a server that is stopped and comes back: under the server's own content policy. Evidence: conformity.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium } from '../../../../test/chromium.ts';
import { bundlePage } from '../../../store/test/browser/bundle.ts';
import { type RunningServer, startServer } from '../../src/index.ts';
import type { OnPage } from './page.ts';

declare const onPage: OnPage;

let folder: string;
let browser: Browser;
let server: RunningServer;

const start = (port = 0) => startServer({ port, dataDir: join(folder, 'data'), webDir: join(folder, 'web') });

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-browsers-'));
  mkdirSync(join(folder, 'web'));
  writeFileSync(join(folder, 'web', 'page.js'), await bundlePage(new URL('./page.ts', import.meta.url)));
  writeFileSync(
    join(folder, 'web', 'index.html'),
    '<!doctype html><title>sync</title><script src="/page.js"></script>',
  );
  server = await start();
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A browser of its own: another profile, another device. */
async function openDevice(): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await page.goto(server.url);
  return page;
}

const inStep = (page: Page) =>
  page.waitForFunction(() => {
    const state = typeof onPage === 'undefined' ? undefined : onPage.state();
    return state?.phase === 'in-step' && state.waiting === 0;
  });
const away = (page: Page) => page.waitForFunction(() => onPage.state()?.phase === 'away');
const named = (page: Page, name: string) => page.waitForFunction((wanted) => onPage.name() === wanted, name);
const ids = (page: Page) => page.evaluate(() => onPage.ids());

async function idsOnServer(): Promise<readonly string[]> {
  const page = (await (await fetch(new URL('/api/entries', server.url))).json()) as {
    entries: { id: string }[];
  };
  return page.entries.map((entry) => entry.id).sort();
}

test('two browsers stay in step live, go on alone, and all three hold each entry once afterwards', async () => {
  const [deck, galley] = [await openDevice(), await openDevice()];
  await Promise.all([inStep(deck), inStep(galley)]);

  await deck.evaluate(() => onPage.create());
  await named(galley, 'Harvest');

  const port = Number(new URL(server.url).port);
  await server.close();
  await Promise.all([away(deck), away(galley)]);
  await deck.evaluate(() => onPage.rename('on deck'));
  await galley.evaluate(() => onPage.rename('in the galley'));
  await galley.evaluate(() => onPage.rename('a slip'));
  await galley.evaluate(() => onPage.undo());
  expect(await galley.evaluate(() => onPage.name())).toBe('in the galley');

  server = await start(port);
  for (const page of [deck, galley]) await page.evaluate(() => onPage.tryNow());
  await Promise.all([inStep(deck), inStep(galley)]);
  const held = await idsOnServer();
  expect(new Set(held).size).toBe(held.length);
  for (const page of [deck, galley])
    await page.waitForFunction((count) => onPage.ids().length === count, held.length);
  expect(await ids(deck)).toEqual(held);
  expect(await ids(galley)).toEqual(held);
  expect(await deck.evaluate(() => onPage.name())).toBe(await galley.evaluate(() => onPage.name()));
});
