import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { launchChromium } from '../../../../test/chromium.ts';
import { type App, startApp, visit } from './app.ts';

/** The browser of the test file that called `serve`. */
export let browser: Browser;
/** The app that its tests visit. */
export let app: App;
/** The page of the test that runs, where the file called `visitEach`. */
export let page: Page;

/** One browser for the file; the app for the whole file, or a new one for each test, where what one keeps must not be there for the next. */
export function serve(appFor: 'file' | 'test'): void {
  const start = async () => {
    app = await startApp();
  };
  const remove = () => app?.remove();
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser?.close());
  if (appFor === 'file') {
    beforeAll(start);
    afterAll(remove);
  } else {
    beforeEach(start);
    afterEach(remove);
  }
}

/** A new person's page for each test, closed after it; an error of the page fails the test. After `serve`. */
export function visitEach(): void {
  let errors: readonly string[] = [];
  beforeEach(async () => {
    ({ page, errors } = await visit(browser));
  });
  afterEach(async () => {
    await page?.context().close();
    expect(errors).toEqual([]);
  });
}
