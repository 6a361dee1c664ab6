// Another way to make a sauce, a line stirred in late, an ingredient of one's own, by hand on the bench. Evidence:
// conformity; the phone's page against WCAG 2.2 by axe.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { visit } from './app.ts';
import { axeFinds } from './axe.ts';
import { answerOn, gramsOf, openBench } from './bench-page.ts';
import { app, browser, serve } from './served.ts';

serve('test');

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();

async function setAmount(page: Page, line: RegExp, amount: string): Promise<void> {
  await press(page, line);
  const field = page.getByLabel(/: how much$/);
  await field.fill(amount);
  await field.press('Enter');
}

test('another way is named, changed beside the formula as written, compared with it, kept and put back', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  const written = await answerOn(page);
  await press(page, 'Another way to make it');
  await press(page, 'Add it');
  await page.getByText('Give it a name that says what is different').waitFor();
  await page.getByLabel('Name of this way').fill('hotter');
  await press(page, 'Add it');
  await page.getByText(/Nothing is different in “hotter” yet/).waitFor();
  await setAmount(page, /^Chile, chipotle/, '24 g');
  await page.getByText('Different: 24 g chipotle chile (written: 4 g).').waitFor();
  await page.getByText(/Against the formula as written it is .*hotter/).waitFor();
  await page.getByText(/Dashed: as written\./).waitFor();
  // The switch: as written and back.
  const made = page.getByRole('group', { name: 'Made' });
  await made.getByRole('radio', { name: 'as written' }).click();
  await expect.poll(() => gramsOf(page, /^Chile, chipotle/)).toBe('4');
  await expect.poll(() => answerOn(page)).toBe(written);
  await made.getByRole('radio', { name: 'hotter', exact: true }).click();
  await expect.poll(() => gramsOf(page, /^Chile, chipotle/)).toBe('24');
  // It is kept.
  await page.goto(`${app.url}cook/regatta-dinner/bench`);
  await page.locator('.balance svg').waitFor();
  expect(await gramsOf(page, /^Chile, chipotle/)).toBe('24');
  await press(page, 'Rename or take out');
  await press(page, 'Take “hotter” out');
  await expect.poll(() => gramsOf(page, /^Chile, chipotle/)).toBe('4');
  await context.close();
  expect(errors).toEqual([]);
});

test('a swap is kept as another way, and the formula as written stays', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await page.getByRole('radio', { name: 'Apple juice' }).check();
  await page.getByText(/To bring it back/).waitFor();
  await press(page, 'Keep it as another way');
  const made = page.getByRole('group', { name: 'Made' });
  await made.getByRole('radio', { name: 'with apple juice' }).waitFor();
  await page.getByRole('row', { name: /^Apple juice/ }).waitFor();
  await made.getByRole('radio', { name: 'as written' }).click();
  await page.getByRole('row', { name: /^Tea, black/ }).waitFor();
  expect(await gramsOf(page, /^Sugar, brown/)).toBe('260');
  await context.close();
  expect(errors).toEqual([]);
});

test('vinegar is stirred in after the simmer: the answer, the sums and the job say so', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await press(page, /^Vinegar/);
  await page.getByRole('group', { name: 'Goes in' }).getByRole('radio', { name: 'after the simmer' }).click();
  await expect.poll(() => answerOn(page)).toMatch(/then stir in 120\smL apple cider vinegar/);
  expect(await page.getByRole('row', { name: /^stirred in after/ }).textContent()).toContain('121');
  await page.goto(`${app.url}cook/regatta-dinner/run-sheet`);
  await page
    .getByText(/Take it off, then stir in 120\smL apple cider vinegar/)
    .first()
    .waitFor({ state: 'attached' });
  await context.close();
  expect(errors).toEqual([]);
});

test('a label is copied down, asked about where it does not agree, put into the sauce, mended, and kept while used', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await press(page, 'Ingredients of your own');
  const write = (label: string, value: string) => page.getByLabel(label, { exact: true }).fill(value);
  await write('Name', 'Harbour relish');
  await write('Carbohydrate, g', '9');
  await write('of it sugars, g', '12');
  await press(page, 'Keep this label');
  await page.getByText(/there is more sugar than carbohydrate/).waitFor();
  await page.getByText(/the label’s fat is missing/).waitFor();
  await write('of it sugars, g', '8');
  await write('Fat, g', '0.2');
  await write('Protein, g', '1');
  await write('Salt, g', '1.9');
  await page.getByText(/Stays unknown: fibre, energy, pH, acids/).waitFor();
  await press(page, 'Keep this label');
  await press(page, /^Put some in/);
  await page.getByLabel('How much', { exact: true }).fill('2 tbsp');
  await press(page, 'Put it in');
  await page.getByText(/nobody knows what .* of it weighs/).waitFor();
  await page.getByLabel('How much', { exact: true }).fill('40 g');
  await press(page, 'Put it in');
  await page.getByRole('row', { name: /^Harbour relish/ }).waitFor();
  await page
    .locator('.bench-more')
    .getByText(/Not known before the label is read: Harbour relish/)
    .waitFor();
  // Mended: a spoon of it weighs something now.
  await press(page, 'Ingredients of your own');
  await press(page, /^Mend/);
  await write('that is, by spoon', '6 tbsp');
  await press(page, 'Keep this label');
  await press(page, /^Take out.*Harbour relish/);
  await page.getByText(/Harbour relish is in Tamarind and black-tea glaze/).waitFor();
  await setAmount(page, /^Harbour relish/, '3 tbsp');
  // 6 tbsp weigh 100 g.
  await expect.poll(() => gramsOf(page, /^Harbour relish/)).toBe('50');
  await context.close();
  expect(errors).toEqual([]);
});

test('a sauce is asked to be less sour and thicker, and made so by the least change', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await press(page, 'Say how you want it');
  await page.getByLabel('brushed on, it').selectOption('runs');
  await page.getByText('It is thicker than that before it simmers.').waitFor();
  await page.getByLabel('brushed on, it').selectOption('spreads');
  await page.getByLabel('sour', { exact: true }).selectOption('clearly less sour');
  await page.getByText(/^To get there: /).waitFor();
  await page.getByText(/Dashed: as you want it\./).waitFor();
  await press(page, 'Make it so');
  await expect.poll(() => page.locator('.looks').textContent()).toMatch(/Brushed on at 60\s°C it spreads/);
  await press(page, 'Undo');
  await expect
    .poll(() => page.locator('.looks').textContent())
    .toMatch(/Brushed on at 60\s°C it holds a line/);
  expect(await gramsOf(page, /^Sugar, brown/)).toBe('260');
  await context.close();
  expect(errors).toEqual([]);
});

test('on a phone axe finds nothing in the switch, the line that goes in late and the label', async () => {
  const { context, page } = await visit(browser, { width: 390, height: 844 });
  await openBench(page);
  await press(page, 'Another way to make it');
  await page.getByLabel('Name of this way').fill('sharper');
  await press(page, 'Add it');
  await page.getByText(/Nothing is different in “sharper” yet/).waitFor();
  await press(page, 'Rename or take out');
  await press(page, /^Vinegar/);
  await page.getByRole('group', { name: 'Goes in' }).getByRole('radio', { name: 'after the simmer' }).click();
  await page.getByText(/Different: .*after the simmer/).waitFor();
  await press(page, 'Add a line');
  await press(page, 'Say how you want it');
  await press(page, 'Ingredients of your own');
  await press(page, 'Keep this label');
  expect(await axeFinds(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await context.close();
});
