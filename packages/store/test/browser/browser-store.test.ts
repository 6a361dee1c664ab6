// The contract of every store, on IndexedDB in Chromium, and what only a browser can show. Evidence: conformity.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium, launchKillable } from '../../../../test/chromium.ts';
import { CONTRACT } from '../contract.ts';
import { bundlePage, ORIGIN, servePage } from './bundle.ts';
import type { OnPage } from './page.ts';

declare const onPage: OnPage;

let script: string;
beforeAll(async () => {
  script = (await bundlePage(new URL('./page.ts', import.meta.url))).replaceAll('</script', '<\\/script');
});

async function openPage(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${ORIGIN}/`);
  return page;
}

describe('in one browser', () => {
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    browser = await launchChromium();
    context = await browser.newContext();
    await servePage(context, script);
    page = await openPage(context);
  });
  afterAll(() => browser.close());

  test('the page carries the whole contract', async () => {
    expect(await page.evaluate(() => onPage.claims)).toEqual(CONTRACT.map(({ name }) => name));
  });

  test.each(CONTRACT.map(({ name }, index) => ({ name, index })))('IndexedDB $name', async ({ index }) => {
    expect(await page.evaluate((claim) => onPage.holds(claim), index)).toBeUndefined();
  });

  test('a tab hears of what another tab wrote', async () => {
    const [listening, telling] = [await openPage(context), await openPage(context)];
    const heard = listening.evaluate(() => onPage.hearsOtherTab());
    await listening.waitForFunction(() => document.title === 'listening');
    await telling.evaluate(() => onPage.tellOtherTab());
    await heard;
  });
});

test('a browser without room says so, keeps what it had, and still opens', async () => {
  const browser = await launchChromium();
  const context = await browser.newContext();
  await servePage(context, script);
  const page = await openPage(context);
  const protocol = await context.newCDPSession(page);
  await protocol.send('Storage.overrideQuotaForOrigin', { origin: ORIGIN, quotaSize: 2_000_000 });
  const refused = await page.evaluate(() => onPage.fill(400));
  expect(refused.fault).toBe('store.quota');
  expect(refused.held).toBeGreaterThan(3);
  await page.reload();
  expect(await page.evaluate(() => onPage.fill(0))).toEqual({ held: refused.held });
  expect(await page.evaluate(() => onPage.fill(1))).toEqual(refused);
  await browser.close();
});

test('a browser killed five times while it writes loses no acknowledged entry', async () => {
  const profile = mkdtempSync(join(tmpdir(), 'pitwright-profile-'));
  let acknowledged = 0;
  try {
    for (let round = 1; round <= 5; round++) {
      const { context, kill } = await launchKillable(profile);
      await servePage(context, script);
      const page = await openPage(context);
      const held = await page.evaluate(() => onPage.heldSeqs());
      expect(held).toEqual(Array.from({ length: held.length }, (_, i) => i + 1));
      expect(held.length).toBeGreaterThanOrEqual(acknowledged);
      const before = acknowledged;
      const enough = new Promise<void>((resolve) => {
        const acknowledge = (seq: number) => {
          acknowledged = seq;
          if (seq >= before + 10 + round) resolve();
        };
        void page
          .exposeFunction('acknowledge', acknowledge)
          .then(() =>
            page.evaluate(() =>
              onPage.writeOn((window as unknown as { acknowledge(seq: number): Promise<void> }).acknowledge),
            ),
          )
          // The call ends with the browser.
          .catch(() => undefined);
      });
      await enough;
      await kill();
    }
    const { context, kill } = await launchKillable(profile);
    await servePage(context, script);
    const held = await (await openPage(context)).evaluate(() => onPage.heldSeqs());
    expect(held.length).toBeGreaterThanOrEqual(acknowledged);
    await kill();
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
});
