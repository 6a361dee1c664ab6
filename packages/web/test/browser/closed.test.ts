// A page that is closed the moment something was changed: the change is there when the app is opened next. Evidence: conformity.
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openCook, settleIn, visit } from './app.ts';
import { app, browser, serve } from './served.ts';

serve('test');

const TINY = 'two-racks-on-a-kettle';

let context: BrowserContext;
let page: Page;
beforeEach(async () => {
  ({ context, page } = await visit(browser));
  await settleIn(page, app.url);
});
afterEach(() => context.close());

/** Closes the page as a person does, in the middle of everything, and opens the app anew. */
async function closeAndOpen(path: string): Promise<void> {
  await page.close({ runBeforeUnload: false });
  page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.goto(`${app.url}${path}`);
}

test('keys pressed within the pause, and undone as one', async () => {
  await openCook(page, app.url, TINY);
  const table = page.getByRole('slider', { name: 'Serving hour' });
  await table.focus();
  for (let press = 0; press < 6; press++) await page.keyboard.press('ArrowRight');
  await closeAndOpen(`cook/${TINY}`);
  await page.locator('h1').filter({ hasText: '19:00' }).waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('h1').filter({ hasText: '18:30' }).waitFor();
});

test('a name that is still being written', async () => {
  await openCook(page, app.url, TINY);
  await page.getByRole('button', { name: 'Change what it is' }).click();
  await page.getByLabel('Name', { exact: true }).fill('Ribs for the crew');
  await closeAndOpen(`cook/${TINY}`);
  await page.getByText('Ribs for the crew').first().waitFor();
});

test('a guest counted at the last moment, once', async () => {
  await page.goto(`${app.url}cook/${TINY}/guests`);
  await page.getByRole('button', { name: 'One more: Adults' }).click({ noWaitAfter: true });
  await closeAndOpen(`cook/${TINY}/guests`);
  await page.getByText('5 at table').first().waitFor();
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
  await page.getByText('4 at table').first().waitFor();
  expect(await page.getByRole('button', { name: 'Nothing to undo' }).count()).toBe(1);
});
