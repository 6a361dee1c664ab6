// Pits and recipes on pages of their own, and what the shelf takes back. Evidence: conformity.
import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { settleIn } from './app.ts';
import { axeFinds } from './axe.ts';
import { app, page, serve, visitEach } from './served.ts';

serve('test');
visitEach();
beforeEach(() => settleIn(page, app.url));

const press = (name: string | RegExp) => page.getByRole('button', { name }).first().click();
const answer = () => page.locator('h1').textContent();

/** Saves the file that the page offers, and reads it. */
async function saved(): Promise<{ path: string; content: string }> {
  const coming = page.waitForEvent('download');
  await press('Save as a file');
  const download = await coming;
  const content = readFileSync(await download.path(), 'utf8');
  const path = join(tmpdir(), `${process.pid}-${download.suggestedFilename()}`);
  writeFileSync(path, content);
  return { path, content };
}

describe('a pit', () => {
  beforeEach(async () => {
    await press('More: Regatta dinner');
    await press('Keep its pit');
    await page.locator('.shelf-row a[href^="/pit/"]').click();
  });

  test('is told anew line by line, tells its cook, and takes it back', async () => {
    await expect.poll(answer).toMatch(/offset, held at 121\s°C at the grate/);
    await page.getByLabel('Held at').fill('130 °C');
    await page.getByLabel('Held at').press('Enter');
    await expect.poll(answer).toMatch(/held at 130\s°C/);
    await page.getByLabel('The hot end is warmer by').fill('900 °C');
    await page.getByText(/Between|between/).waitFor();
    await page.getByLabel('The hot end is warmer by').fill('15 °C');
    await page.getByLabel('Grate', { exact: true }).fill('6500 cm²');
    await page.getByLabel('Grate', { exact: true }).press('Enter');
    await expect.poll(() => page.locator('.pit-told [aria-invalid]').count()).toBe(0);
    await page.locator('label').filter({ hasText: 'on the lid' }).click();
    await expect.poll(answer).toContain('on the lid');
    await page.getByText('It has this pit as it was told then.').waitFor();
    await press('Tell it to Regatta dinner as it is now');
    await page.getByText('It has this pit as it was told then.').waitFor({ state: 'detached' });
    await press('Undo');
    await expect.poll(answer).toContain('at the grate');
    expect(await axeFinds(page)).toEqual([]);
  });

  test('is removed and brought back where it stands, and a cook begins on it', async () => {
    const name = 'Harbour offset';
    await press('Remove');
    await expect.poll(answer).toContain(`Pit removed: ${name}`);
    await press('Bring back');
    await press('Cook on it');
    await expect
      .poll(() =>
        page.getByLabel('Which pit').evaluate((pick: HTMLSelectElement) => pick.selectedOptions[0]?.text),
      )
      .toBe(name);
  });

  test('goes out as a file and comes back by it byte for byte', async () => {
    const { path, content } = await saved();
    await press('Remove');
    await page.getByRole('link', { name: 'Shelf' }).first().click();
    await page.getByLabel('Open a cook file').setInputFiles(path);
    await page.waitForURL(/\/pit\//);
    expect((await saved()).content).toBe(content);
  });
});

test.each([
  ['Keep its pit', '/pit/'],
  ['Keep as a recipe', '/recipe/'],
])('%s is one deed: one undo takes it back, one redo brings it again', async (deed, path) => {
  await press('More: Regatta dinner');
  await press(deed);
  const kept = page.locator(`.shelf-row a[href^="${path}"]`);
  await kept.waitFor();
  await page.locator('.shelf-undo button').first().click();
  await kept.waitFor({ state: 'detached' });
  await expect.poll(() => page.getByRole('button', { name: /^Undo/ }).count()).toBe(0);
  await press('Redo');
  await kept.waitFor();
});

describe('a recipe', () => {
  beforeEach(async () => {
    await press('More: Two racks on a kettle');
    await press('Keep as a recipe');
    await page.locator('.shelf-row a[href^="/recipe/"]').click();
  });

  test('says whom it feeds, follows its count, and is cooked again', async () => {
    await expect.poll(answer).toMatch(/feeds [1-9]/);
    const before = await answer();
    await press(/^One more/);
    await press(/^One more/);
    await expect.poll(answer).not.toBe(before);
    await page.getByText('Cooked otherwise than this recipe says.').waitFor();
    await press('Make Two racks on a kettle version 2');
    await page.getByText('version 2', { exact: true }).waitFor();
    expect(await answer()).toBe(before);
    expect(await axeFinds(page)).toEqual([]);
    await press('Cook it again');
    await press('Make the plan');
    await page.locator('.bands svg').first().waitFor();
    await page.goto(app.url);
    await page.locator('.shelf-row a[href^="/recipe/"]').click();
    await expect.poll(() => page.locator('.cooks-of li').count()).toBe(2);
  });

  test('shows what is mixed by weight, what it makes, and the Bench it is worked on', async () => {
    await page.goto(app.url);
    await press('More: Regatta dinner');
    await press('Keep as a recipe');
    await page.locator('.shelf-row a[href^="/recipe/"]').filter({ hasText: 'Regatta' }).click();
    const glaze = page.locator('.recipe-formula').first();
    await expect.poll(() => glaze.locator('tr').count()).toBeGreaterThan(5);
    expect(await glaze.locator('tr').last().textContent()).toMatch(/makes\d.*k?g/);
    expect(await axeFinds(page)).toEqual([]);
    await page.getByRole('link', { name: 'Rub, on the Bench' }).click();
    await page.locator('.on-meat').waitFor();
  });

  test('is duplicated and keeps the stages it is given', async () => {
    await press('Duplicate');
    await expect.poll(answer).toContain('Two racks on a kettle, again');
    const { content } = await saved();
    await page.getByLabel('Stage 2', { exact: true }).selectOption('paper');
    await expect.poll(() => page.getByLabel('Stage 2', { exact: true }).inputValue()).toBe('paper');
    expect((await saved()).content).not.toBe(content);
  });
});

test('the shelf says what undo would take back, and nothing where there is nothing', async () => {
  expect(await page.getByRole('button', { name: /^Undo/ }).count()).toBe(0);
  await press('More: Two racks on a kettle');
  await press('Remove');
  await press('Undo: Two racks on a kettle, removed');
  await page.getByRole('link', { name: /Two racks on a kettle/ }).waitFor();
  expect(await page.getByRole('button', { name: /^Undo/ }).count()).toBe(0);
});
