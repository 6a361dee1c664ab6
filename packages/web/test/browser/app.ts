import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type RunningServer, startServer } from '@pitwright/server';
import type { Browser, BrowserContext, Page } from 'playwright-core';

export const WEB_DIR = fileURLToPath(new URL('../../dist', import.meta.url));
/** Files of the test that a person looks at; not committed. */
export const OUT_DIR = fileURLToPath(new URL('../../../../out', import.meta.url));

export type LightName = 'paper' | 'lamp' | 'sun';

export interface App {
  readonly url: string;
  /** Ends the server, as a power cut in the house would; what the page holds goes on. */
  stop(): Promise<void>;
  /** The same server on the same port and data again. */
  startAgain(): Promise<void>;
  remove(): Promise<void>;
}

/** The built app behind its own server, on an empty data folder and any free port. */
export async function startApp(): Promise<App> {
  if (!existsSync(join(WEB_DIR, 'index.html')))
    throw new Error('the browser tests need the built app: npm run build');
  const dataDir = mkdtempSync(join(tmpdir(), 'pitwright-web-'));
  let server: RunningServer | undefined = await startServer({ port: 0, dataDir, webDir: WEB_DIR });
  const { url } = server;
  const stop = async () => {
    await server?.close();
    server = undefined;
  };
  return {
    url,
    stop,
    async startAgain() {
      server = await startServer({ port: Number(new URL(url).port), dataDir, webDir: WEB_DIR });
    },
    async remove() {
      await stop();
      rmSync(dataDir, { recursive: true, force: true });
    },
  };
}

export interface Visit {
  readonly width?: number;
  readonly height?: number;
  readonly light?: LightName;
  /** Where the device is; the cook may be elsewhere. */
  readonly zone?: string;
}

/** A new person's browser: empty, in Lisbon unless told, writing as in Britain. Errors of the page and what it logs as one fail the test that closes it. */
export async function visit(
  browser: Browser,
  visit: Visit = {},
): Promise<{ context: BrowserContext; page: Page; errors: string[] }> {
  const { width = 1280, height = 800, light = 'paper', zone = 'Europe/Lisbon' } = visit;
  const context = await browser.newContext({
    viewport: { width, height },
    locale: 'en-GB',
    timezoneId: zone,
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  await context.addInitScript((chosen) => {
    localStorage.setItem('pitwright.light', chosen);
    localStorage.setItem('pitwright.light.shown', chosen);
  }, light);
  const page = await context.newPage();
  // Two hundred days tried and the jobs laid out take many times as long on a machine that does other work as well.
  page.setDefaultTimeout(60_000);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (line) => {
    // A server that is away is told by the browser itself, and is no error of the page.
    const isOfNetwork = /^Failed to load resource|ERR_CONNECTION|ERR_INTERNET/.test(line.text());
    if (['error', 'warning'].includes(line.type()) && !isOfNetwork) errors.push(line.text());
  });
  return { context, page, errors };
}

/** Past the first-run choice, once it is on the disk. */
export async function settleIn(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByRole('link', { name: /Regatta dinner/ }).waitFor();
  const told = page.getByRole('button', { name: 'That is how I write' });
  await told.click();
  await told.waitFor({ state: 'detached' });
}

/** The cook's page with all members counted. */
export async function openCook(page: Page, url: string, id: string): Promise<void> {
  await page.goto(`${url}cook/${id}`);
  await page.locator('.drawing svg').first().waitFor();
  await page.locator('.tried').waitFor({ state: 'detached' });
}
