// Which rack is this, at the pit: three looks, the answer with its reasons, and the plan that follows. Evidence: conformity.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { OUT_DIR, openCook, settleIn, visit } from './app.ts';
import { app, browser, serve } from './served.ts';

serve('file');
beforeAll(() => {
  mkdirSync(join(OUT_DIR, 'screens'), { recursive: true });
});

test('a rack that was labelled wrongly is taken for what it is', async () => {
  const { context, page, errors } = await visit(browser, { width: 390, height: 844 });
  await settleIn(page, app.url);
  await openCook(page, app.url, 'regatta-dinner');
  await page.getByRole('button', { name: /^A, / }).click();
  const part = page.locator('.which-rack');
  await part.getByRole('button', { name: /^Is it a loin rib rack\?/ }).click();
  await part.getByLabel('Bones', { exact: true }).selectOption('12');
  await part.getByLabel('The bones along the rack').selectOption('flat');
  await part.getByLabel('The long edge away from the backbone').selectOption('squared');
  await part.getByText(/squared belly rib rack: \d+\s%/).waitFor();
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 844 });
    await part.screenshot({ path: join(OUT_DIR, 'screens', `which-rack-${width}.png`) });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
  await part.getByRole('button', { name: 'Take it as a squared belly rib rack' }).click();
  await part.getByRole('button', { name: /^Is it a squared belly rib rack\?/ }).waitFor();
  await context.close();
  expect(errors).toEqual([]);
});
