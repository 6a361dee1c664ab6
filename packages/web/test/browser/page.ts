import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { LightName } from './app.ts';

export const LIGHTS: readonly LightName[] = ['paper', 'lamp', 'sun'];

/** The light key goes round until the page stands in that light. */
export async function turnTo(page: Page, light: LightName): Promise<void> {
  const shown = await page.evaluate(async (wanted) => {
    const root = document.documentElement;
    for (let turn = 0; turn < 4 && root.dataset.theme !== wanted; turn++) {
      document.querySelector<HTMLButtonElement>('.strip-light')?.click();
      await new Promise(requestAnimationFrame);
    }
    return root.dataset.theme;
  }, light);
  expect(shown).toBe(light);
}

/** Charts are laid out anew at each width: a few frames after the window changed they stand. */
export const settled = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await document.fonts.ready;
    for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
  });
