// Every place, for those who hear the page, use keys, enlarge, or hold a small screen. Evidence: published (WCAG 2.2).
import AxeBuilder from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium } from '../../../../test/chromium.ts';
import { type App, type LightName, openCook, settleIn, startApp, visit } from './app.ts';

const PLACES: readonly {
  readonly name: string;
  readonly open: (page: Page, url: string) => Promise<void>;
}[] = [
  { name: 'shelf', open: settleIn },
  {
    name: 'new cook',
    open: async (page, url) => {
      await page.goto(`${url}new`);
      await page.getByRole('button', { name: 'Make the plan' }).waitFor();
    },
  },
  {
    name: 'cook',
    open: async (page, url) => {
      await settleIn(page, url);
      await openCook(page, url, 'two-racks-on-a-kettle');
      await page.locator('.inside svg').first().waitFor();
    },
  },
  {
    name: 'bench',
    open: async (page, url) => {
      await settleIn(page, url);
      await page.goto(`${url}cook/two-racks-on-a-kettle/bench`);
      await page.locator('.simmering svg').waitFor();
    },
  },
  {
    name: 'specimen',
    open: async (page, url) => {
      await page.goto(`${url}specimen`);
      await page.locator('.specimen svg').first().waitFor();
    },
  },
];

let browser: Browser;
let app: App;
beforeAll(async () => {
  browser = await launchChromium();
  app = await startApp();
});
afterAll(async () => {
  await browser?.close();
  await app?.remove();
});

/** Texts under the floor of 13.5 px, with where they stand. */
const smallTexts = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const holder = node.parentElement;
      if (!holder || !node.textContent?.trim() || holder.closest('.vh, option, noscript, script')) continue;
      const size = Number.parseFloat(getComputedStyle(holder).fontSize);
      if (size < 13.5) found.push(`${size} px: ${node.textContent.trim().slice(0, 40)}`);
    }
    return found;
  });

describe.each(PLACES)('$name', ({ open }) => {
  test.each<LightName>(['paper', 'lamp', 'sun'])('axe finds nothing in %s', async (light) => {
    const { context, page } = await visit(browser, { light });
    await open(page, app.url);
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
      .analyze();
    const told = violations.flatMap(({ id, nodes }) =>
      nodes.slice(0, 3).map((node) => `${id}: ${node.html.slice(0, 160)}`),
    );
    await context.close();
    expect(told).toEqual([]);
  });

  test('nothing runs off the side at 390 px, nor at 200 % of 1280 px, and no text is under 13.5 px', async () => {
    for (const width of [390, 640]) {
      const { context, page } = await visit(browser, { width, height: 844 });
      await open(page, app.url);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      expect(await smallTexts(page)).toEqual([]);
      await context.close();
    }
  });

  test('every control is reached by the Tab key and shows where it is', async () => {
    const { context, page } = await visit(browser);
    await open(page, app.url);
    const controls = await page.evaluate(
      () =>
        [
          ...document.querySelectorAll<HTMLElement>(
            'a[href], button:not(:disabled), select, input, [role=slider]',
          ),
        ].filter((one) => one.tabIndex >= 0 && one.checkVisibility()).length,
    );
    const reached = new Set<string>();
    for (let press = 0; press < controls + 20; press++) {
      await page.keyboard.press('Tab');
      const here = await page.evaluate(() => {
        const active = document.activeElement as HTMLElement | null;
        if (!active || active === document.body) return undefined;
        active.dataset.reached ??= String(document.querySelectorAll('[data-reached]').length);
        const mark = getComputedStyle(active);
        const holder = active.closest('label') ? getComputedStyle(active.closest('label')!) : mark;
        return {
          key: active.dataset.reached,
          isSeen: mark.outlineStyle !== 'none' || holder.outlineStyle !== 'none',
        };
      });
      if (!here) continue;
      expect(here.isSeen).toBe(true);
      reached.add(here.key);
    }
    const groups = await page.evaluate(() => {
      const radios = [...document.querySelectorAll<HTMLInputElement>('input[type=radio]')];
      return radios.length - new Set(radios.map((radio) => radio.name)).size;
    });
    await context.close();
    // Of the radio buttons of one choice the Tab key reaches one; arrow keys go through the rest.
    expect(reached.size).toBeGreaterThanOrEqual(controls - groups);
  });
});
