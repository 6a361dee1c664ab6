// Two cooks' plans side by side. Evidence: conformity.
import { beforeEach, expect, test } from 'vitest';
import { openCook, settleIn } from './app.ts';
import { axeFinds } from './axe.ts';
import { app, page, serve, visitEach } from './served.ts';

serve('test');
visitEach();
beforeEach(() => settleIn(page, app.url));

const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
const rowsOf = (title: string) =>
  page
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: title }) })
    .locator('tbody tr');

test('a cook and its copy an hour later: what was told and what comes of it, tables in one line', async () => {
  await press('More: Two racks on a kettle');
  await press('Duplicate');
  await page.getByRole('link', { name: 'Two racks on a kettle, again' }).click();
  await page.waitForURL(/\/cook\//);
  await openCook(page, app.url, new URL(page.url()).pathname.split('/').at(-1)!);
  const table = page.getByRole('slider', { name: 'Serving hour' });
  await table.focus();
  for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowRight');
  await page.locator('h1').filter({ hasText: '19:30' }).waitFor();
  // At once, within the pause after the last key: what stands there is kept.
  await page.getByRole('link', { name: 'Shelf' }).first().click();
  await press('More: Two racks on a kettle');
  await press('Lay beside another');
  await page.locator('.two-strips svg').nth(1).waitFor();
  await page.locator('.tried').first().waitFor({ state: 'detached' });
  // An hour later told; so long before the table, all is as it was.
  expect(await rowsOf('Told otherwise').allTextContents()).toEqual([
    expect.stringMatching(/On the table18:30.19:00.*19:30.20:00/),
  ]);
  await page.getByText('The same comes of both.').waitFor();
  // One axis: the double rule of the table stands at one place in both.
  const tableLines = await page
    .locator('.two-strips .drawing svg')
    .evaluateAll((drawings) =>
      drawings.map((drawing) =>
        Math.max(
          ...[...drawing.querySelectorAll('text')]
            .filter((t) => /table/.test(t.textContent ?? ''))
            .map((t) => Number(t.getAttribute('x'))),
        ),
      ),
    );
  expect(tableLines[0]).toBeGreaterThan(0);
  expect(tableLines[1]).toBeCloseTo(tableLines[0]!, 1);
});

test('two of one name are told apart by no more than it takes', async () => {
  for (let copy = 0; copy < 2; copy++) {
    await press('More: Brisket on the high plain');
    await press('Duplicate');
    await expect
      .poll(() => page.getByRole('link', { name: 'Brisket on the high plain, again' }).count())
      .toBe(copy + 1);
    await press('More: Brisket on the high plain');
  }
  const copies = page.locator('.shelf-row').filter({ hasText: 'Brisket on the high plain, again' });
  for (const line of await copies.locator('.shelf-what').allTextContents())
    expect(line).toMatch(/, changed .+ \d\d:\d\d$/);
  const original = page.locator('.shelf-row').filter({ hasText: /^Brisket on the high plain(?!, again)/ });
  expect(await original.locator('.shelf-what').textContent()).not.toContain('changed');
  // A day apart, the day is enough.
  await copies.first().getByRole('link').click();
  await page.getByRole('link', { name: 'Guests' }).first().click();
  await page.getByRole('button', { name: 'One more: Adults' }).click();
  await page.goto(`${app.url}side-by-side`);
  await expect
    .poll(() => page.locator('.two-choice option').allTextContents())
    .toEqual(
      expect.arrayContaining([
        expect.stringMatching(/again, .*10 at table$/),
        expect.stringMatching(/again, .*11 at table$/),
      ]),
    );
});

test('any two are chosen, each is told with its own meat, and axe finds nothing', async () => {
  await page.goto(`${app.url}side-by-side?a=two-racks-on-a-kettle&b=regatta-dinner`);
  await page.locator('.two-strips svg').nth(1).waitFor();
  await expect.poll(() => rowsOf('What comes of it').count()).toBeGreaterThan(5);
  await expect.poll(() => page.locator('h1').textContent()).toMatch(/\d+.% of days/);
  expect(await axeFinds(page)).toEqual([]);
  await page.getByLabel('beside').selectOption({ label: 'Brisket on the high plain' });
  await page.waitForURL(/b=(?!regatta)/);
  await expect
    .poll(() => page.locator('.two-strips h2').nth(1).textContent())
    .toBe('Brisket on the high plain');
});
