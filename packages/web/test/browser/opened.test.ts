// What a person opened stays open, in focus and in its place while answers come; and the jobs are laid out at last
// however fast keys are pressed, also where a worker fell over. Evidence: conformity.
import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { openCook, settleIn } from './app.ts';
import { app, page, serve, visitEach } from './served.ts';

serve('test');
visitEach();
beforeEach(() => settleIn(page, app.url));

const TINY = 'two-racks-on-a-kettle';
const BIG = 'regatta-dinner';
const HIGH = 'brisket-on-the-high-plain';

const standing = (on: Page): Promise<void> => on.locator('.tried').waitFor({ state: 'detached' });
const key = (name: string | RegExp): Locator => page.getByRole('button', { name });
const LEDGER = 'Where its heat comes from and goes';

/** A mark that is gone where the element is made anew. */
const mark = (one: Locator): Promise<void> =>
  one.evaluate((element) => {
    element.setAttribute('data-seen', '');
  });
const isMarked = (one: Locator): Promise<boolean> =>
  one.evaluate((element) => element.hasAttribute('data-seen'));
const topOf = (one: Locator): Promise<number> =>
  one.evaluate((element) => element.getBoundingClientRect().top);
const isInFocus = (one: Locator): Promise<boolean> =>
  one.evaluate((element) => element === document.activeElement);

describe('opened at once', () => {
  test.each([
    { cook: TINY, size: { width: 1280, height: 800 } },
    { cook: BIG, size: { width: 390, height: 844 } },
  ])('$cook, $size.width px', async ({ cook, size }) => {
    await page.setViewportSize(size);
    await page.goto(`${app.url}cook/${cook}`);
    const opened = [
      key('Share'),
      key(/^Change what it is/),
      key('More of stage 1'),
      key(/^Longer or shorter/),
      ...(cook === TINY ? [key(/Look at the rack$/)] : []),
    ];
    for (const one of opened) await one.click();
    const days = page.locator('.two-days details');
    const firstDay = days.first();
    const wasOpen = await firstDay.evaluate((day: HTMLDetailsElement) => day.open);
    await firstDay.locator('summary').click();
    const ledger = key(LEDGER);
    await ledger.click();
    await mark(ledger);
    const topAtFirst = await topOf(ledger);
    await standing(page);
    expect(await isMarked(ledger)).toBe(true);
    expect(await isInFocus(ledger)).toBe(true);
    expect(Math.abs((await topOf(ledger)) - topAtFirst)).toBeLessThan(3);
    expect(await ledger.getAttribute('aria-expanded')).toBe('true');
    await page.locator('.inside .ledger-radiation').first().waitFor();
    expect(await key('Share').getAttribute('aria-expanded')).toBe('true');
    expect(await page.locator('.piece-fields').count()).toBe(1);
    expect(await key('More of stage 1').getAttribute('aria-expanded')).toBe('true');
    expect(await page.locator('.compare .set').count()).toBe(2);
    if (cook === TINY) expect(await page.locator('.which-rack select').count()).toBe(3);
    expect(await firstDay.evaluate((day: HTMLDetailsElement) => day.open)).toBe(!wasOpen);
  });
});

test('a figure that is asked goes on telling what it rests on, with the newest count', async () => {
  await page.goto(`${app.url}cook/${BIG}`);
  await page.locator('.opened .bites .ask').first().click();
  const sheet = page.getByRole('dialog');
  await sheet.getByText('How sure').waitFor();
  await standing(page);
  await sheet.getByText('200').first().waitFor();
  await sheet.getByRole('button', { name: 'Close' }).click();
  await sheet.waitFor({ state: 'detached' });
});

test('a figure that is asked stays when an answer takes it off the page', async () => {
  await openCook(page, app.url, TINY);
  const figures = page.locator('.stage-heat .ask');
  const count = await figures.count();
  await figures.last().click();
  // What stands behind the sheet cannot be pressed by a hand; whatever changes the cook ends in the same answer.
  await key('Leave out stage 4').dispatchEvent('click');
  await expect.poll(() => figures.count()).toBeLessThan(count);
  await page.getByRole('dialog').getByText('How sure').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
});

test('another set of stages stays beside while the serving hour is moved', async () => {
  await openCook(page, app.url, TINY);
  await key(/^Longer or shorter/).click();
  const set = page.locator('.compare .set').nth(1);
  await set.getByText('on time').waitFor();
  await key(/^One more: in foil|^More: in foil/)
    .first()
    .click();
  await mark(set);
  const hour = page.getByRole('slider', { name: 'Serving hour' });
  await hour.focus();
  for (let press = 0; press < 3; press++) await page.keyboard.press('ArrowRight');
  await page.locator('h1').filter({ hasText: '18:45' }).waitFor();
  await standing(page);
  expect(await isMarked(set)).toBe(true);
  expect(await isInFocus(hour)).toBe(true);
});

test('a measurement is written down where it was asked for, and its line keeps the hand', async () => {
  await openCook(page, app.url, BIG);
  const line = page.locator('.narrow input').first();
  await line.waitFor();
  await mark(line);
  const measured = (await line.getAttribute('placeholder'))!.replace(/^\D+/, '').replaceAll('\u00a0', ' ');
  await line.fill(measured);
  await line.press('Enter');
  await standing(page);
  await page.locator('.inside .again').waitFor({ state: 'detached' });
  expect(await isMarked(line)).toBe(true);
  expect(await isInFocus(line)).toBe(true);
  expect(await line.inputValue()).toBe(measured);
});

test('the choice of a muscle keeps its focus, and what was seen stays until the new look stands', async () => {
  await openCook(page, app.url, HIGH);
  await key(LEDGER).click();
  const choice = page.locator('.inside-head input[type=radio]');
  await choice.first().focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => isInFocus(choice.nth(1))).toBe(true);
  expect(await page.locator('.inside.waiting').count()).toBe(0);
  await page.locator('.inside .again').waitFor({ state: 'detached' });
  expect(await isInFocus(choice.nth(1))).toBe(true);
  expect(await key(LEDGER).getAttribute('aria-expanded')).toBe('true');
});

const jobs = (on: Page): Promise<string[]> => on.locator('.two-days li').allTextContents();

test('keys pressed fast while the jobs are being laid out: they are laid out at last, as from scratch', async () => {
  await page.goto(`${app.url}cook/${BIG}`);
  const isLayingOut = page.locator('.tried').filter({ hasText: 'laying out the jobs' });
  const grip = page.getByRole('slider', { name: 'Serving hour' });
  for (let round = 0; round < 3; round++) {
    await isLayingOut.waitFor();
    await grip.focus();
    for (let press = 0; press < 8; press++)
      await page.keyboard.press(round === 1 ? 'ArrowLeft' : 'ArrowRight');
  }
  await isLayingOut.waitFor();
  await standing(page);
  expect(await page.locator('.unsettled').count()).toBe(0);
  const laid = await jobs(page);
  expect(laid.length).toBeGreaterThan(30);
  await page.reload();
  await page.locator('.drawing svg').first().waitFor();
  await standing(page);
  expect(await jobs(page)).toEqual(laid);
});

describe('a worker that lays out the jobs and falls over', () => {
  /** The first `count` of them cannot be started. */
  const felling = (count: number) =>
    page.addInitScript((most) => {
      const Whole = window.Worker;
      let felled = 0;
      window.Worker = class extends Whole {
        constructor(address: string | URL, options?: WorkerOptions) {
          const isFelled = /whole\.worker/.test(String(address)) && felled++ < most;
          super(isFelled ? new URL('/nowhere.js', location.href) : address, options);
        }
      };
    }, count);

  test('is followed by another', async () => {
    await felling(1);
    await openCook(page, app.url, TINY);
    expect(await page.locator('.unsettled').count()).toBe(0);
  });

  test('twice: the jobs stand as first laid out and say so; the next change has them laid out', async () => {
    await felling(2);
    await openCook(page, app.url, TINY);
    await page.locator('.unsettled').waitFor();
    await page.getByRole('slider', { name: 'Serving hour' }).press('ArrowRight');
    await page.locator('.unsettled').waitFor({ state: 'detached' });
    await standing(page);
    expect(await page.locator('.unsettled').count()).toBe(0);
  });
});
