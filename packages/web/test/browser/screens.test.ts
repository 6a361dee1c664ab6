// Pictures of every place in its main states, in three sizes and three lights, to be looked at: out/screens; and what
// no picture may have. The least target is of WCAG 2.2, 2.5.8 (published); the rest is conformity.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type LightName, OUT_DIR, visit } from './app.ts';
import { axeFinds } from './axe.ts';
import { faultsOf, NO_FAULTS } from './looks.ts';
import { LIGHTS, settled, turnTo } from './page.ts';
import { app, browser, serve } from './served.ts';
import { STATES } from './states.ts';

const SCREENS = join(OUT_DIR, 'screens');
const SIZES = [
  { width: 1280, height: 800 },
  { width: 768, height: 1024 },
  { width: 390, height: 844 },
] as const;

serve('file');
let page: Page;
let errors: string[];
beforeAll(async () => {
  mkdirSync(SCREENS, { recursive: true });
  ({ page, errors } = await visit(browser));
});
afterAll(() => page?.context().close());

/** The lights a state is told in at one size: all, or one of them by turns. */
const lightsOf = (index: number, isBrief?: boolean): readonly LightName[] =>
  isBrief ? [LIGHTS[index % LIGHTS.length]!] : LIGHTS;

test.each(STATES.map((state, index) => ({ ...state, index })))('$name', async (state) => {
  const { name, open, leave, index, isBrief } = state;
  await page.setViewportSize(SIZES[0]);
  await open(page, app.url);
  for (const [turn, size] of SIZES.entries()) {
    await page.setViewportSize(size);
    for (const light of lightsOf(index + turn, isBrief)) {
      await turnTo(page, light);
      await settled(page);
      await page.screenshot({ path: join(SCREENS, `${name}-${size.width}-${light}.png`), fullPage: true });
      expect.soft(await faultsOf(page), `${size.width} px, ${light}`).toEqual(NO_FAULTS);
    }
  }
  await page.setViewportSize(SIZES[0]);
  await turnTo(page, 'paper');
  await leave?.(page);
  expect(errors).toEqual([]);
});

test.each(['regatta-dinner', 'two-racks-on-a-kettle'])('sheets of %s', async (cook) => {
  await page.setViewportSize(SIZES[0]);
  await page.goto(`${app.url}print.html?cook=${cook}`);
  await page.locator('html[data-ready]').waitFor();
  for (const format of ['A4', 'Letter'])
    await page.pdf({ path: join(SCREENS, `${cook}-${format}.pdf`), format, printBackground: true });
  await page.emulateMedia({ media: 'print' });
  await settled(page);
  expect(await faultsOf(page)).toEqual(NO_FAULTS);
  const cutOff = await page.evaluate(() =>
    [...document.querySelectorAll('.page')].flatMap((sheet) => {
      const edge = sheet.getBoundingClientRect();
      return [...sheet.querySelectorAll('p, td, th, h1, h2, h3, text')]
        .filter((one) => {
          const { left, right, bottom } = one.getBoundingClientRect();
          return left < edge.left || right > edge.right || bottom > edge.bottom;
        })
        .map((one) => one.textContent);
    }),
  );
  expect(cutOff).toEqual([]);
  await page.emulateMedia({ media: null });
  expect(await axeFinds(page)).toEqual([]);
  expect(errors).toEqual([]);
});
