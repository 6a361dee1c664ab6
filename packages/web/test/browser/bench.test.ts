// The bench as a person uses it: a recipe pasted, an amount changed, the liquid swapped, taken back. Evidence: conformity;
// the phone's page against WCAG 2.2 by axe.
import { expect, test } from 'vitest';
import { visit } from './app.ts';
import { axeFinds } from './axe.ts';
import { answerOn, gramsOf, openBench } from './bench-page.ts';
import { browser, serve } from './served.ts';

serve('file');

test('a pasted recipe asks what its ounce is before it is taken over', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await page.getByRole('button', { name: 'Paste a recipe, or add lines' }).click();
  await page
    .getByRole('textbox', { name: /Nothing is guessed/ })
    .fill(
      'Harbour sauce:\n200 g ketchup\n100 g cider vinegar\n4 oz honey\n300 g cola\nSimmer until thick, 30 min',
    );
  await page.getByRole('button', { name: 'Read it' }).click();
  const take = page.getByRole('button', { name: 'Take it as a new formula' });
  await page.getByText('4 lines, 1 question first.').waitFor();
  expect(await take.isDisabled()).toBe(true);
  // 4 oz avoirdupois are 113.4 g.
  await page.getByRole('button', { name: /^By weight, 113 g/ }).click();
  await page.getByLabel('Name of a new formula').fill('Harbour sauce');
  await take.click();
  await page.getByRole('heading', { name: 'Harbour sauce' }).waitFor();
  expect(await gramsOf(page, /^Honey/)).toBe('113');
  expect(await page.getByLabel('Note: how it is made').inputValue()).toBe('Simmer until thick, 30 min.');
  await expect.poll(() => answerOn(page)).toMatch(/^\d+ minutes/);
  await context.close();
  expect(errors).toEqual([]);
});

test('a sauce that is too thick from the fridge is told the water that loosens it', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await page
    .locator('.looks')
    .getByText(/Too thick\? Stir in [\d,]+\sg of water, and it \w+/)
    .waitFor();
  await context.close();
  expect(errors).toEqual([]);
});

test('an amount is read strictly, changes the sauce, and is taken back', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await page.getByRole('button', { name: /^Tamarind pulp/ }).click();
  const amount = page.getByLabel('Tamarind pulp: how much');
  await amount.fill('8 oz');
  await amount.press('Enter');
  await page.getByText(/8\soz by weight or by volume/).waitFor();
  expect(await amount.inputValue()).toBe('8 oz');
  expect(await gramsOf(page, /^Tamarind pulp/)).toBe('240');
  const before = await answerOn(page);
  await amount.fill('60 g');
  await amount.press('Enter');
  await expect.poll(() => gramsOf(page, /^Tamarind pulp/)).toBe('60');
  await expect.poll(() => answerOn(page)).not.toBe(before);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => gramsOf(page, /^Tamarind pulp/)).toBe('240');
  await expect.poll(() => answerOn(page)).toBe(before);
  await context.close();
  expect(errors).toEqual([]);
});

test('another liquid is brought back by the least change, taken over by one key, and a locked line stays', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  await page.getByRole('button', { name: /^Tamarind pulp/ }).click();
  await page.getByRole('button', { name: 'Lock it' }).click();
  await page.getByRole('button', { name: 'Unlock it' }).waitFor();
  await page.getByRole('radio', { name: 'Apple juice' }).check();
  await page.getByText(/It gets .*sweeter/).waitFor();
  await page.getByRole('button', { name: 'Take the swap over' }).click();
  await page.getByRole('row', { name: /^Apple juice/ }).waitFor();
  expect(Number(await gramsOf(page, /^Sugar, brown/))).toBeLessThan(260);
  expect(await gramsOf(page, /^Tamarind pulp/)).toBe('240');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('row', { name: /^Tea, black/ }).waitFor();
  expect(await gramsOf(page, /^Sugar, brown/)).toBe('260');
  await context.close();
  expect(errors).toEqual([]);
});

test('the simmer is stopped sooner by keys, as one change, or at a look', async () => {
  const { context, page, errors } = await visit(browser);
  await openBench(page);
  const grip = page.getByRole('slider', { name: 'Where it is stopped' });
  const minutes = Number(await grip.getAttribute('aria-valuenow'));
  await grip.press('ArrowLeft');
  await grip.press('ArrowLeft');
  await expect.poll(async () => Number.parseInt(await answerOn(page), 10)).toBe(minutes - 2);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(async () => Number.parseInt(await answerOn(page), 10)).toBe(minutes);
  await page.getByLabel('Or stop when, hot, it').selectOption('holds a line');
  await expect.poll(() => answerOn(page)).toMatch(/Holds a line hot/);
  await context.close();
  expect(errors).toEqual([]);
});

test('on a phone axe finds nothing, nothing runs off the side, and what is pressed is 44 px high', async () => {
  const { context, page } = await visit(browser, { width: 390, height: 844 });
  await openBench(page);
  await page.getByRole('button', { name: /^Sugar, brown/ }).click();
  await page.getByRole('button', { name: 'Paste a recipe, or add lines' }).click();
  await page
    .getByRole('textbox', { name: /Nothing is guessed/ })
    .fill('4 oz honey\n1 tsp salt\n1 tsp frobnic');
  await page.getByRole('button', { name: 'Read it' }).click();
  await page.locator('.pasted').waitFor();
  expect(await axeFinds(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  const low = await page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'main button:not(.ask), main select, main input, main textarea',
      ),
    ]
      .map((one) =>
        one instanceof HTMLInputElement && one.type === 'radio' ? one.closest<HTMLElement>('.choice')! : one,
      )
      .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 44)
      .map((one) => one.outerHTML.slice(0, 80)),
  );
  expect(low).toEqual([]);
  await context.close();
});
