/** Times of the app in Chromium, from the hand to what the eye gets. Shown, never asserted. */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { openCook, settleIn, startApp, visit } from '../packages/web/test/browser/app.ts';
import { findChromium, INSTALL_COMMAND } from '../scripts/chromium.js';
import { ensureBuilt } from '../scripts/prepare.js';
import { launchChromium } from '../test/chromium.ts';

interface Line {
  readonly what: string;
  readonly ms: number;
  readonly barMs?: number;
}

const COOK = 'two-racks-on-a-kettle';
const PRESSES = 5;
/** Slow 4G as the browsers' own tools have it: 1.6 Mbit/s down, 750 kbit/s up, 150 ms there and back. */
const SLOW_4G = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const CPU_SLOWER = 4;

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** From a press of a key until so many members are told, and until the whole range stands; the last is one frame. */
interface Follow {
  readonly firstMs: number;
  readonly previewMs: number;
  readonly fullMs: number;
  readonly frameMs: number;
}

/**
 * One arrow key on the wrap, watched in the page itself. Each press goes the same way, so that no answer is a
 * remembered one.
 */
async function follow(page: Page): Promise<Follow> {
  const wrap = page.getByRole('slider', { name: /in foil begins/ });
  await wrap.focus();
  await page.evaluate(() => {
    const marks: Record<string, number> = {};
    Object.assign(window, { benchMarks: marks });
    addEventListener(
      'keydown',
      () => {
        marks.press = performance.now();
        requestAnimationFrame(() => requestAnimationFrame(() => (marks.frame ??= performance.now())));
        const watch = new MutationObserver(() => {
          const tried = document.querySelector('.tried')?.textContent;
          const now = performance.now();
          if (tried?.startsWith('16 ')) marks.first ??= now;
          if (tried?.startsWith('40 ')) {
            marks.preview ??= now;
            // Both answers came between two looks at the page.
            marks.first ??= now;
          }
          if (tried || marks.preview === undefined) return;
          marks.full ??= now;
          watch.disconnect();
        });
        watch.observe(document.body, { subtree: true, childList: true, characterData: true });
      },
      { capture: true, once: true },
    );
  });
  await page.keyboard.press('ArrowLeft');
  await page.waitForFunction(() => 'full' in (window as unknown as { benchMarks: object }).benchMarks);
  const marks = await page.evaluate(
    () => (window as unknown as { benchMarks: Record<string, number> }).benchMarks,
  );
  const since = (name: string): number => (marks[name] ?? Number.NaN) - marks.press!;
  return {
    firstMs: since('first'),
    previewMs: since('preview'),
    fullMs: since('full'),
    frameMs: since('frame'),
  };
}

async function throttled(page: Page): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: CPU_SLOWER });
  return session;
}

/** From asking for an address until the selector stands there and a frame was drawn, as the page's own clock has it. */
async function loadMs(page: Page, url: string, selector: string): Promise<number> {
  await page.goto(url, { waitUntil: 'commit' });
  await page.locator(selector).first().waitFor({ state: 'attached', timeout: 60_000 });
  return page.evaluate(
    () => new Promise<number>((done) => requestAnimationFrame(() => done(performance.now()))),
  );
}

async function presses(page: Page, on: string, bars: { preview: number }): Promise<Line[]> {
  const all: Follow[] = [];
  for (let press = 0; press < PRESSES; press++) all.push(await follow(page));
  const of = (key: keyof Follow): number => middle(all.map((one) => one[key]));
  return [
    { what: `reference: the same press, two frames of the page alone, ${on}`, ms: of('frameMs') },
    { what: `a stage moved, 16 members drawn, ${on}`, ms: of('firstMs'), barMs: bars.preview },
    { what: `a stage moved, 40 members drawn, ${on}`, ms: of('previewMs'), barMs: bars.preview },
    {
      what: `a stage moved, whole range and other ways drawn (with the pause of the hand), ${on}`,
      ms: of('fullMs'),
    },
  ];
}

function print(lines: readonly Line[], log: (line: string) => void): void {
  const width = Math.max(...lines.map(({ what }) => what.length));
  log(`${'in Chromium'.padEnd(width)}  wall ms   bar ms`);
  for (const { what, ms, barMs } of lines)
    log(`${what.padEnd(width)} ${ms.toFixed(0).padStart(8)} ${(barMs?.toFixed(0) ?? '').padStart(8)}`);
}

/** The tiny demo under a hand that moves its wrap, on a laptop and on a phone's processor. */
async function dragLines(browser: Browser, url: string): Promise<Line[]> {
  const laptop = await visit(browser);
  await settleIn(laptop.page, url);
  const openedMs = await loadMs(laptop.page, `${url}cook/${COOK}`, '.bands svg');
  await openCook(laptop.page, url, COOK);
  const onLaptop = await presses(laptop.page, 'laptop', { preview: 100 });
  await laptop.context.close();

  const phone = await visit(browser, { width: 390, height: 844 });
  await settleIn(phone.page, url);
  await openCook(phone.page, url, COOK);
  await phone.page.getByRole('button', { name: 'Close up' }).click();
  await throttled(phone.page);
  const onPhone = await presses(phone.page, 'phone', { preview: 300 });
  await phone.context.close();
  return [
    { what: 'a cook opened, first bands drawn (16 members), laptop', ms: openedMs },
    ...onLaptop,
    ...onPhone,
  ];
}

/** A first load over a slow line, on a phone's processor. */
async function loadLines(browser: Browser, url: string): Promise<Line[]> {
  const lines: Line[] = [];
  for (const [what, address, selector, barMs] of [
    ['reference: a picture of 0.5 kB from the same server, slow 4G', 'mark.svg', 'svg', undefined],
    ['first load until a new cook can be begun, slow 4G', '', '.shelf-new button', 3000],
    ['first load until the demo stands on the shelf, slow 4G', '', '.shelf-row', undefined],
  ] as const) {
    const slow = await visit(browser, { width: 390, height: 844 });
    const session = await throttled(slow.page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', SLOW_4G);
    const ms = await loadMs(slow.page, `${url}${address}`, selector);
    lines.push({ what, ms, ...(barMs && { barMs }) });
    await slow.context.close();
  }
  return lines;
}

/** One part of the app's times. */
export async function benchWeb(part: 'drag' | 'load', log: (line: string) => void): Promise<void> {
  if (!findChromium()) return log(`No Chromium here, so the app is not timed: ${INSTALL_COMMAND}`);
  // What stands in the sources is timed, never an older build.
  ensureBuilt();
  const app = await startApp();
  const browser = await launchChromium();
  try {
    print(await (part === 'drag' ? dragLines : loadLines)(browser, app.url), log);
    log(
      `Phone and slow 4G: the page's own thread ${CPU_SLOWER} times slower; the browser does not slow the workers with it.`,
    );
  } finally {
    await browser.close();
    await app.remove();
  }
}
