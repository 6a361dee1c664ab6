import type { Page } from 'playwright-core';
import { settleIn } from './app.ts';
import { app } from './served.ts';

/** The demo's glaze, worked out. */
export async function openBench(page: Page): Promise<void> {
  await settleIn(page, app.url);
  await page.goto(`${app.url}cook/regatta-dinner/bench`);
  await page.locator('.balance svg').waitFor();
}

export const answerOn = (page: Page): Promise<string> => page.locator('h1.answer').textContent().then(String);

/** What stands in the grams of the formula's line. */
export const gramsOf = (page: Page, line: RegExp): Promise<string | null> =>
  page.getByRole('row', { name: line }).locator('.line-grams').textContent();
