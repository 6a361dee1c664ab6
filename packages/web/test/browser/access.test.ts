// Every place, for those who hear the page, use keys, enlarge, or hold a small screen. Evidence: published (WCAG 2.2).
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { visit } from './app.ts';
import { axeFinds } from './axe.ts';
import { faultsOf, NO_FAULTS } from './looks.ts';
import { LIGHTS, settled, turnTo } from './page.ts';
import { app, browser, serve } from './served.ts';
import { STATES } from './states.ts';

/** One state of each place. What a cook shows is told by the small one: it has one of everything. */
const PLACES = STATES.filter(({ isPlace }) => isPlace);

serve('file');
let page: Page;
beforeAll(async () => {
  ({ page } = await visit(browser));
});
afterAll(() => page?.context().close());

interface Stop {
  readonly key: string;
  readonly name: string;
  /** Where the control stands in the page [px]. */
  readonly left: number;
  readonly right: number;
  readonly middle: number;
  readonly isMarked: boolean;
}

/** Where the focus is: once more round the page, or out of it, gives undefined. */
const focused = (): Promise<Stop | undefined> =>
  page.evaluate(() => {
    const active = document.activeElement as HTMLElement | null;
    if (!active || active === document.body) return undefined;
    active.dataset.stop ??= String(document.querySelectorAll('[data-stop]').length);
    const shown = active.closest<HTMLElement>('label') ?? active;
    const { left, right, top, bottom } = shown.getBoundingClientRect();
    return {
      key: active.dataset.stop,
      name: active.outerHTML.slice(0, 80),
      left,
      right,
      middle: (top + bottom) / 2 + scrollY,
      isMarked: [active, shown].some((one) => getComputedStyle(one).outlineStyle !== 'none'),
    };
  });

/** Controls that the Tab key has to reach: of the radio buttons of one choice it is one. */
const controlCount = (): Promise<number> =>
  page.evaluate(() => {
    const seen = [
      ...document.querySelectorAll<HTMLElement>(
        'a[href], button:not(:disabled), select, input:not([type=file]), textarea, summary, [role=slider]',
      ),
    ].filter((one) => one.tabIndex >= 0 && one.checkVisibility({ visibilityProperty: true }));
    const radios = seen.filter((one) => one instanceof HTMLInputElement && one.type === 'radio');
    const groups = new Set(radios.map((radio) => (radio as HTMLInputElement).name));
    return seen.length - radios.length + groups.size;
  });

describe.each(PLACES)('$name', ({ open, isBrief }) => {
  test('axe finds nothing in its lights', async () => {
    await open(page, app.url);
    for (const light of isBrief ? LIGHTS.slice(0, 1) : LIGHTS) {
      await turnTo(page, light);
      expect(await axeFinds(page), light).toEqual([]);
    }
    await turnTo(page, 'paper');
  });

  test('every chart is one sentence for the ear, with its figures as a table', async () => {
    const charts = await page.evaluate(() =>
      [...document.querySelectorAll('main svg')]
        .filter((svg) => !svg.closest('[aria-hidden=true]'))
        .map((svg) => {
          const sentence = svg.getAttribute('aria-label') ?? '';
          const rows = svg.closest('.drawing')?.querySelectorAll('.vh tbody tr').length ?? 0;
          const isListed = document.querySelector('.two-days li') !== null;
          return { sentence, isImage: svg.getAttribute('role') === 'img', isTold: rows > 0 || isListed };
        }),
    );
    expect(
      charts.filter((one) => !one.isImage || !one.isTold || !/\p{L}.+\p{L}/u.test(one.sentence)),
    ).toEqual([]);
  });

  test('the Tab key reaches every control, in the order of the page, and shows where it is', async () => {
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const count = await controlCount();
    const stops: Stop[] = [];
    for (let press = 0; press < count + 30; press++) {
      await page.keyboard.press('Tab');
      const stop = await focused();
      if (!stop || stops.some(({ key }) => key === stop.key)) continue;
      stops.push(stop);
    }
    expect(stops.filter(({ isMarked }) => !isMarked)).toEqual([]);
    expect(stops.length).toBeGreaterThanOrEqual(count);
    // Round the page once from its first control: down a column, then to the head of the next, never up within one.
    const first = stops.findIndex(({ name }) => name.includes('class="skip"'));
    const inOrder = [...stops.slice(first), ...stops.slice(0, first)];
    const backwards = inOrder.filter((stop, index) => {
      const before = inOrder[index - 1];
      // What is dragged in a drawing follows the hours, not the rows.
      if (stop.name.includes('role="slider"')) return false;
      const isSameColumn = before && stop.left < before.right && before.left < stop.right;
      return isSameColumn && stop.middle < before.middle - BACK_PX;
    });
    expect(backwards.map(({ name }) => name)).toEqual([]);
  });

  test('at 200 % nothing is lost: a window half as wide, and text twice as large', async () => {
    await page.setViewportSize({ width: 640, height: 400 });
    await settled(page);
    expect(await faultsOf(page)).toEqual(NO_FAULTS);
    await page.setViewportSize({ width: 1280, height: 800 });
    await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%'));
    await settled(page);
    const cutOff = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('main *, header *')]
        .filter((one) => {
          if (!one.checkVisibility() || one.closest('.vh, svg, .skip, option, select')) return false;
          const { overflowX, overflowY } = getComputedStyle(one);
          const isClipped = overflowX === 'hidden' || overflowY === 'hidden';
          return (
            isClipped && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1)
          );
        })
        .map((one) => one.outerHTML.slice(0, 100)),
    );
    const { sideways } = await faultsOf(page);
    await page.evaluate(() => document.documentElement.style.removeProperty('font-size'));
    expect({ cutOff, sideways }).toEqual({ cutOff: [], sideways: 0 });
  });

  test('nothing moves for those who asked for less motion', async () => {
    const moving = await page.evaluate(() =>
      [...document.querySelectorAll('*')]
        .filter((one) => {
          const { transitionDuration, animationName } = getComputedStyle(one);
          return (
            animationName !== 'none' ||
            transitionDuration.split(',').some((time) => Number.parseFloat(time) > 0)
          );
        })
        .map((one) => one.outerHTML.slice(0, 100)),
    );
    expect(moving).toEqual([]);
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  });
});

/** Controls of one row are not all of one height [px]. */
const BACK_PX = 40;
