// The app without its server, and again with it. Evidence: conformity.
import { expect, test } from 'vitest';
import { openCook, settleIn, visit } from './app.ts';
import { app, browser, serve } from './served.ts';

serve('file');

test('with the server gone the page opens again, foresees, prints, and keeps what is written', async () => {
  const { context, page } = await visit(browser);
  await settleIn(page, app.url);
  await page.evaluate(() => navigator.serviceWorker.ready);
  // A first load that the copy answers.
  await page.reload();
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await page.getByText('in step').waitFor();
  await app.stop();
  await page.getByText('server away').waitFor();

  await openCook(page, app.url, 'two-racks-on-a-kettle');
  const wrapped = page.getByLabel('Stage 3, how much');
  await wrapped.fill('25 min');
  await wrapped.press('Enter');
  await page.getByRole('button', { name: 'Undo' }).waitFor();
  await page.reload();
  await expect.poll(() => page.getByLabel('Stage 3, how much').inputValue()).toBe('25 min');
  await page.goto(`${app.url}print.html?cook=two-racks-on-a-kettle`);
  await page.locator('html[data-ready]').waitFor();

  // What was written meanwhile goes to the server when it is back, without a hand.
  await page.goto(`${app.url}cook/two-racks-on-a-kettle`);
  await page.getByText('server away, 1 waiting').waitFor();
  await app.startAgain();
  await page.getByText('in step').waitFor();
  const other = await visit(browser);
  await settleIn(other.page, app.url);
  await openCook(other.page, app.url, 'two-racks-on-a-kettle');
  await expect.poll(() => other.page.getByLabel('Stage 3, how much').inputValue()).toBe('25 min');
  await other.context.close();
  await context.close();
});
