// The cook's wall clock holds whatever the zone of the device it is read on. Evidence: conformity.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openCook, settleIn, visit } from './app.ts';
import { app, browser, serve } from './served.ts';

serve('file');

/** All hours that stand on the page. */
const hoursOn = async (page: Page): Promise<string[]> =>
  page
    .locator('main')
    .evaluate((main) =>
      [...main.querySelectorAll('*')]
        .flatMap((one) => [...one.childNodes])
        .flatMap((node) =>
          node.nodeType === Node.TEXT_NODE ? (node.textContent?.match(/\b\d{1,2}:\d{2}\b/g) ?? []) : [],
        ),
    );

test('hours are the cook’s own, also in a browser in UTC or New York', async () => {
  const seen: string[][] = [];
  for (const zone of ['Europe/Lisbon', 'UTC', 'America/New_York']) {
    const { context, page, errors } = await visit(browser, { zone });
    await settleIn(page, app.url);
    const row = page.locator('.shelf-row').filter({ hasText: 'Regatta dinner' });
    expect(await row.textContent()).toContain('12 September, 13:30');
    const hours = await hoursOn(page);
    await openCook(page, app.url, 'regatta-dinner');
    expect(await page.locator('h1').textContent()).toContain('13:30');
    hours.push(...(await hoursOn(page)));
    await page.goto(`${app.url}cook/regatta-dinner/run-sheet`);
    await page.locator('.drawing svg').first().waitFor();
    await page.locator('.tried').waitFor({ state: 'detached' });
    hours.push(...(await hoursOn(page)));
    seen.push(hours);
    await context.close();
    expect(errors).toEqual([]);
  }
  expect(seen[0]!.length).toBeGreaterThan(20);
  for (const other of seen) expect(other).toEqual(seen[0]);
});
