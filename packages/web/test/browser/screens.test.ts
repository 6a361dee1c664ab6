// Pictures of every place in three sizes and three lights, to be looked at: out/screens. Evidence: conformity.
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launchChromium } from '../../../../test/chromium.ts';
import { type App, type LightName, OUT_DIR, openCook, settleIn, startApp, visit } from './app.ts';

const SCREENS = join(OUT_DIR, 'screens');
const SIZES = [
  { width: 390, height: 844 },
  { width: 768, height: 1024 },
  { width: 1280, height: 800 },
] as const;
const LIGHTS: readonly LightName[] = ['paper', 'lamp', 'sun'];

let browser: Browser;
let app: App;
beforeAll(async () => {
  mkdirSync(SCREENS, { recursive: true });
  browser = await launchChromium();
  app = await startApp();
});
afterAll(async () => {
  await browser?.close();
  await app?.remove();
});

test.each(SIZES.flatMap((size) => LIGHTS.map((light) => ({ ...size, light }))))(
  '$width × $height in $light',
  async ({ width, height, light }) => {
    const { context, page, errors } = await visit(browser, { width, height, light });
    const take = async (place: string) => {
      const path = join(SCREENS, `${place}-${width}-${light}.png`);
      await page.evaluate(() => document.fonts.ready);
      await page.screenshot({ path, fullPage: true });
      expect(statSync(path).size).toBeGreaterThan(10_000);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    };
    await settleIn(page, app.url);
    await take('shelf');
    await page.goto(`${app.url}new`);
    await page.getByRole('button', { name: 'Make the plan' }).waitFor();
    await take('new-cook');
    await openCook(page, app.url, 'regatta-dinner');
    await page.locator('.inside svg').first().waitFor();
    await take('cook');
    await page.getByRole('button', { name: 'Close up' }).click();
    await take('cook-close');
    await page.getByRole('button', { name: 'Share' }).click();
    await page.getByRole('button', { name: 'Copy the link' }).waitFor();
    const link = await page.getByLabel('The link').inputValue();
    await page.goto(link);
    await page.getByRole('button', { name: 'Keep this cook' }).waitFor();
    await take('shared');
    await context.close();
    expect(errors).toEqual([]);
  },
);
