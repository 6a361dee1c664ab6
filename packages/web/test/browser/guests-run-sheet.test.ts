// Those who eat and the work of the days, done in Chromium against the built app. Evidence: conformity.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { settleIn, type Visit, visit } from './app.ts';
import { axeFinds } from './axe.ts';
import { app, browser, serve } from './served.ts';

const COOK = 'two-racks-on-a-kettle';
const PHONE: Visit = { width: 390, height: 844 };

let page: Page;
let errors: string[];

serve('test');
afterEach(async () => {
  await page.context().close();
  expect(errors).toEqual([]);
});

async function open(place: 'guests' | 'run-sheet', how: Visit = {}): Promise<void> {
  ({ page, errors } = await visit(browser, how));
  await settleIn(page, app.url);
  await page.goto(`${app.url}cook/${COOK}/${place}`);
  await page.locator('.drawing svg').first().waitFor();
  await page.locator('.tried').waitFor({ state: 'detached' });
}

const answer = (): Promise<string> => page.locator('h1').textContent().then(String);

/** Keys, lists and lines to tick that are under 44 px high. */
const smallTargets = (): Promise<readonly string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'main button:not(.ask), main select, main summary, main a, main label:is(.tick, .tick-line)',
      ),
    ]
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 43.5)
      .map((one) => `${one.getBoundingClientRect().height} px: ${one.outerHTML.slice(0, 120)}`),
  );

describe('guests', () => {
  test('five more come: somebody goes short more often, one more rack mends it, undo takes both back', async () => {
    await open('guests');
    const before = await answer();
    await page.getByRole('button', { name: 'Five more come' }).click();
    await expect.poll(answer).not.toBe(before);
    const crowded = await answer();
    expect(Number.parseInt(crowded, 10)).toBeGreaterThan(Number.parseInt(before, 10) || 0);
    await page.locator('.side-by-side button').last().click();
    await expect.poll(answer).not.toBe(crowded);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(answer).toBe(crowded);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(answer).toBe(before);
  });

  test('five more, pressed twice at once, are ten more: two changes, two undos', async () => {
    await open('guests');
    const count = page.locator('.who li').first().locator('output');
    const adults = Number(await count.textContent());
    await page.getByRole('button', { name: 'Five more come' }).evaluate((key: HTMLElement) => {
      key.click();
      key.click();
    });
    await expect.poll(() => count.textContent()).toBe(String(adults + 10));
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => count.textContent()).toBe(String(adults + 5));
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => count.textContent()).toBe(String(adults));
  });

  test('taps in quick succession all count, and so do undos', async () => {
    await open('guests');
    const count = page.locator('.who li').first().locator('output');
    const adults = Number(await count.textContent());
    const tap = (name: string, times: number) =>
      page
        .getByRole('button', { name })
        .first()
        .evaluate((key: HTMLElement, n) => {
          for (let i = 0; i < n; i++) key.click();
        }, times);
    await tap('One more: Adults', 4);
    await expect.poll(() => count.textContent()).toBe(String(adults + 4));
    await page
      .getByText(`${adults + 4} at table`)
      .first()
      .waitFor();
    await tap('Undo', 4);
    await expect.poll(() => count.textContent()).toBe(String(adults));
  });

  test('the shop has only another cut: the list and the sentence follow', async () => {
    await open('guests');
    await page.getByText('The shop has only …').click();
    await page.getByLabel('It has', { exact: true }).selectOption('st-louis-ribs');
    await page.getByRole('button', { name: 'Take these' }).click();
    await page
      .locator('h1')
      .filter({ hasText: /squared belly rib rack/ })
      .waitFor();
    await page
      .locator('.buying li')
      .filter({ hasText: /squared belly rib rack/i })
      .waitFor();
  });

  test('what is bought stays ticked, what the larder holds leaves the list', async () => {
    await open('guests');
    const first = page.locator('.buying input[type=checkbox]').first();
    await first.click();
    await expect.poll(() => first.isChecked()).toBe(true);
    await page.getByText('At home, packs, prices').click();
    const home = page.getByLabel(/^Salt.*: at home$/).first();
    await home.fill('500 g');
    await home.press('Enter');
    await page.getByRole('heading', { name: 'The larder has' }).waitFor();
    await page.reload();
    await page.getByRole('heading', { name: 'The larder has' }).waitFor();
    expect(await first.isChecked()).toBe(true);
  });

  test('at phone size axe finds nothing, nothing runs off the side, and a thumb hits everything', async () => {
    await open('guests', PHONE);
    expect(await axeFinds(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await smallTargets()).toEqual([]);
  });
});

describe('run sheet', () => {
  const rub = () => page.getByRole('slider', { name: /^Rub/ }).first();

  test('a job is moved by keys, stays where it was put, and undo lets it go', async () => {
    await open('run-sheet');
    await rub().focus();
    const was = await rub().getAttribute('aria-valuetext');
    for (let press = 0; press < 3; press++) await page.keyboard.press('ArrowLeft');
    await page
      .getByText(/You set it to/)
      .first()
      .waitFor();
    await page.locator('.tried').waitFor({ state: 'detached' });
    const moved = await rub().getAttribute('aria-valuetext');
    expect(moved).not.toBe(was);
    await page.reload();
    await page.locator('.drawing svg').first().waitFor();
    await page.locator('.tried').waitFor({ state: 'detached' });
    expect(await rub().getAttribute('aria-valuetext')).toBe(moved);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => rub().getAttribute('aria-valuetext')).toBe(was);
  });

  test('a job is dragged along time', async () => {
    await open('run-sheet');
    const was = await rub().getAttribute('aria-valuetext');
    const box = (await rub().boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 - 30, box.y + box.height / 2, { steps: 5 });
    await page.mouse.up();
    await page
      .getByText(/You set it to/)
      .first()
      .waitFor();
    await page.locator('.tried').waitFor({ state: 'detached' });
    expect(await rub().getAttribute('aria-valuetext')).not.toBe(was);
  });

  test('the days go into a calendar, each job of the hands once', async () => {
    await open('run-sheet');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Into the calendar' }).click();
    const words = readFileSync((await (await download).path())!, 'utf8');
    expect(words.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
    expect(words.match(/BEGIN:VEVENT/g)?.length).toBeGreaterThan(5);
  });

  test('at phone size the list is moved by its own keys; axe finds nothing and nothing runs off the side', async () => {
    await open('run-sheet', PHONE);
    const line = page
      .locator('.job-list li')
      .filter({ hasText: /^[\d:]+\s*Rub/ })
      .first();
    await line.getByRole('button').first().click();
    expect(await axeFinds(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    expect(await smallTargets()).toEqual([]);
    await line.getByRole('button', { name: /5 minutes earlier/ }).click();
    await line.getByText(/You set it to/).waitFor();
  });
});
