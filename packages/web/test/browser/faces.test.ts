// A piece, its stages and the cuts as a person edits them; what would narrow its range, its muscles, what the eater gets.
// Evidence: conformity.
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { settleIn, visit } from './app.ts';
import { app, browser, serve } from './served.ts';

serve('file');

async function opened(cookId: string, size: { width: number; height: number }) {
  const visited = await visit(browser, size);
  await settleIn(visited.page, app.url);
  // The piece stands once its first days are tried; the jobs may still be laid out.
  await visited.page.goto(`${app.url}cook/${cookId}`);
  await visited.page.locator('.what-it-is').waitFor();
  return visited;
}
const noWiderThan = async (page: Page, width: number) =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);

describe('the opened piece', () => {
  test('says which measurement would narrow its range, and takes it there', async () => {
    const { context, page, errors } = await opened('regatta-dinner', { width: 390, height: 844 });
    const narrow = page.locator('.narrow');
    await narrow.getByText(/would narrow its range most, from .+ to/).waitFor();
    await narrow.getByLabel('Its thickest place is').fill('11 what');
    await narrow.getByText(/Write it with its unit/).waitFor();
    await narrow.getByLabel('Its thickest place is').fill('115 mm');
    await narrow.getByLabel('Its thickest place is').press('Enter');
    await page
      .locator('.what-it-is')
      .getByText(/(115\smm|1[12](\.5)?\scm)\sthick/)
      .waitFor();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await page.locator('.what-it-is').getByText(/thick/).waitFor({ state: 'detached' });
    await noWiderThan(page, 390);
    await context.close();
    expect(errors).toEqual([]);
  });

  test('tells bark, colour, juiciness and salt in chances, alone and beside another set of stages', async () => {
    const { context, page, errors } = await opened('regatta-dinner', { width: 1280, height: 800 });
    const gets = page.locator('.opened-parts .gets');
    for (const axis of ['Bark', 'Colour', 'Juiciness', 'Salt'])
      await gets.getByRole('heading', { name: axis }).waitFor();
    expect(await gets.getByText(/%\sof its raw weight left/).count()).toBe(1);
    await page.getByRole('button', { name: /Longer or shorter/ }).click();
    await page.locator('.sets .gets').nth(1).waitFor();
    for (const set of [0, 1]) {
      const words = await page.locator('.sets .gets').nth(set).textContent();
      expect(words).toMatch(/Bark[\s\S]+Juiciness/);
    }
    await context.close();
    expect(errors).toEqual([]);
  });

  test('over the coals, tells how dark the side towards them gets', async () => {
    const { context, page, errors } = await visit(browser, { width: 390, height: 844 });
    await settleIn(page, app.url);
    const written = readFileSync('examples/two-racks.pitwright.yaml', 'utf8')
      .replace('name: Two racks on a kettle', 'name: Racks over coals')
      .replace(
        'until: bark\n',
        'until: bark\n        direct:\n          side: bone\n          distance: 12 in\n',
      );
    await page.getByLabel('Open a cook file').setInputFiles({
      name: 'over-coals.pitwright.yaml',
      mimeType: 'application/yaml',
      buffer: Buffer.from(written),
    });
    await page.waitForURL(/cook\/racks-over-coals/);
    await page
      .locator('.opened-parts .gets')
      .getByText(/Its bone side, over the coals, is darker: bark, .+black-brown/)
      .waitFor();
    await noWiderThan(page, 390);
    await context.close();
    expect(errors).toEqual([]);
  });

  test('of a brisket, tells its muscles by the hour and shows the map of one', async () => {
    const { context, page, errors } = await opened('brisket-on-the-high-plain', { width: 1280, height: 800 });
    await page
      .locator('.muscles')
      .getByText(/The flat is ready \d\d:\d\d/)
      .waitFor();
    const map = page.locator('.inside-drawn svg[role=img]');
    await map.waitFor();
    const whole = await map.getAttribute('aria-label');
    await page.locator('.inside-head label').filter({ hasText: 'flat' }).click();
    await expect.poll(() => map.getAttribute('aria-label'), { timeout: 20_000 }).not.toBe(whole);
    await page.getByRole('button', { name: 'Where its heat comes from and goes' }).click();
    await page.locator('.inside').getByText('dries it').first().waitFor();
    await context.close();
    expect(errors).toEqual([]);
  });
});

describe('what a person can change', () => {
  test('is all that can be measured of a piece, and all that a stage can be', async () => {
    const { context, page, errors } = await opened('two-racks-on-a-kettle', { width: 390, height: 844 });
    await page.getByRole('button', { name: 'Change what it is' }).click();
    const fields = page.locator('.piece-fields');
    for (const [label, written] of [
      ['One weighs', '1.3 kg'],
      ['Its thickest place is', '24 mm'],
      ['In its middle as it goes on', '4 °C'],
      ['Solution added, on its label', '8 %'],
    ] as const) {
      await fields.getByLabel(label).fill(written);
      await fields.getByLabel(label).press('Enter');
    }
    await fields.getByLabel('Membrane').selectOption('no');
    const line = page.locator('.what-it-is > p');
    await expect
      .poll(() => line.textContent(), { timeout: 20_000 })
      .toMatch(/1\.3\skg.*24\smm thick.*membrane off.*8\s% solution added.*at 4\s°C/);

    await page.getByRole('button', { name: 'More of stage 1' }).click();
    await page.getByRole('button', { name: 'Spritz it' }).click();
    const more = page.locator('.stage-more');
    await more.getByLabel('every').fill('30 min');
    await more.getByLabel('every').press('Enter');
    await page.getByRole('button', { name: 'More of stage 1' }).click();
    await page
      .locator('.stage-told')
      .getByText(/spritz 15\smL every 30\smin/)
      .waitFor();
    await page
      .locator('.two-days, .next-jobs')
      .getByText(/Spritz A/)
      .first()
      .waitFor({ state: 'attached' });
    await noWiderThan(page, 390);

    await page.getByRole('button', { name: 'More of stage 1' }).click();
    await more.getByRole('button', { name: 'Lay it over the coals' }).click();
    expect(await more.getByLabel('To the coals lies').locator('option').allTextContents()).toEqual([
      'the meat side',
      'the bone side',
    ]);
    await more.getByLabel('From the coals to the meat').fill('60 cm');
    await more.getByLabel('From the coals to the meat').press('Enter');
    await more.getByLabel('Turned over every').fill('20 min');
    await more.getByLabel('Turned over every').press('Enter');
    await noWiderThan(page, 390);
    await page.getByRole('button', { name: 'More of stage 1' }).click();
    await page
      .locator('.stage-told')
      .getByText(/over the coals at 0\.6\sm, the bone side to them/)
      .waitFor();
    await page.getByText(/go by the thermometer in the coldest part, never by colour/).waitFor();

    await page.getByRole('button', { name: 'Another stage' }).click();
    const last = page.locator('.stages select').filter({ hasText: 'chill' }).last();
    await last.selectOption('chill');
    await page.getByText(/its middle takes .+ from 57\s°C to 21\s°C/).waitFor();
    await context.close();
    expect(errors).toEqual([]);
  });
});

describe('the list of cuts', () => {
  test('finds any cut of the catalogue by a few letters, and the day is read as it is written', async () => {
    const { context, page, errors } = await visit(browser, { width: 390, height: 844 });
    await settleIn(page, app.url);
    await page.goto(`${app.url}new`);
    const cut = page.getByRole('combobox', { name: 'Cut' });
    await cut.click();
    expect(await page.getByRole('listbox').getByRole('option').count()).toBe(38);
    expect(await page.getByRole('group', { name: 'Lamb' }).getByRole('option').count()).toBe(4);
    await cut.fill('wing');
    expect(await page.getByRole('listbox').getByRole('option').count()).toBe(1);
    await cut.press('Enter');
    await expect.poll(() => page.locator('h1').textContent()).toMatch(/chicken wings/i);
    await page.getByRole('button', { name: /^Usually .+ thick, \d+ % bone$/ }).click();
    await page
      .getByRole('dialog')
      .getByText(/Bone: .*USDA.*Thickness: /)
      .waitFor();
    await page.keyboard.press('Escape');
    await page.getByLabel('Day', { exact: true }).fill('12 sept 2027');
    await page.getByLabel('Day', { exact: true }).press('Enter');
    expect(await page.getByLabel('Day', { exact: true }).inputValue()).toBe('Sunday 12 September 2027');
    await page.getByRole('button', { name: 'A day later' }).click();
    expect(await page.getByLabel('Day', { exact: true }).inputValue()).toBe('Monday 13 September 2027');
    await page.getByLabel('Day', { exact: true }).fill('31 June');
    await page.getByText(/Write a day, such as/).waitFor();
    await noWiderThan(page, 390);
    await context.close();
    expect(errors).toEqual([]);
  });
});

test('a cut that the list has not is told by its sides, and sides that cannot be are refused', async () => {
  const { context, page, errors } = await opened('brisket-on-the-high-plain', { width: 390, height: 844 });
  await page.getByRole('button', { name: 'Change what it is' }).click();
  const fields = page.locator('.piece-fields');
  await fields.getByRole('button', { name: 'Not in the list? Tell its sides' }).click();
  const write = async (label: string, written: string) => {
    await fields.getByLabel(label).fill(written);
    await fields.getByLabel(label).press('Enter');
  };
  await write('Its length', '400 mm');
  await write('Its width', '500 mm');
  await fields.getByText('The length is the longest side').waitFor();
  await write('Its width', '250 mm');
  await fields.getByLabel('Fat, by eye').selectOption('marbled');
  await noWiderThan(page, 390);
  await context.close();
  expect(errors).toEqual([]);
});
