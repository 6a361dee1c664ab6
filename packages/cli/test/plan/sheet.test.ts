/** The two printed sheets: exactly two pages on A4 and on Letter, black alone, nothing cut off. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sheetHtml } from '@pitwright/paper';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { launchChromium } from '../../../../test/chromium.ts';
import { readerOf } from '../../src/plan/reader.ts';
import { EXAMPLES, exampleReport } from './examples.ts';

let browser: Browser;
let folder: string;

beforeAll(async () => {
  browser = await launchChromium();
  folder = mkdtempSync(join(tmpdir(), 'pitwright-sheet-'));
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true });
});

const pagesOf = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

async function openSheet(html: string): Promise<Page> {
  const path = join(folder, 'sheet.html');
  writeFileSync(path, html);
  const page = await browser.newPage({ viewport: { width: 794, height: 1050 } });
  await page.goto(`file://${path}`);
  return page;
}

describe.each(EXAMPLES)('%s', (name) => {
  const report = exampleReport(name);
  const html = sheetHtml(report, readerOf(report.cook, undefined));

  test('prints as two pages on A4 and on Letter', async () => {
    const page = await openSheet(html);
    for (const format of ['A4', 'Letter'] as const)
      expect(
        pagesOf(await page.pdf({ format, preferCSSPageSize: false, printBackground: true })),
        format,
      ).toBe(2);
    await page.close();
  });

  test('nothing runs over its page and no type is under 13.5 px', async () => {
    const page = await openSheet(html);
    const found = await page.evaluate(() => {
      const over = [...document.querySelectorAll('.page')].map((one) => one.scrollHeight - one.clientHeight);
      const small = [...document.querySelectorAll('body *')].filter((one) => {
        const own = [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim());
        return own && Number.parseFloat(getComputedStyle(one).fontSize) < 13.5;
      });
      return { over, small: small.map((one) => one.textContent) };
    });
    expect(found.over).toEqual([0, 0]);
    expect(found.small).toEqual([]);
    await page.close();
  });

  test('is whole in itself and names no colour', () => {
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)/);
    const hues = [...html.matchAll(/#([0-9a-f]{6}|[0-9a-f]{3})\b/gi)]
      .map((match) => match[1]!.toLowerCase())
      .map((hex) => (hex.length === 3 ? [...hex].map((digit) => digit + digit).join('') : hex))
      .filter((hex) => !(hex.slice(0, 2) === hex.slice(2, 4) && hex.slice(2, 4) === hex.slice(4, 6)));
    // The drawing's own style holds the dark green of words on a heat map, which no sheet shows.
    expect([...new Set(hues)].filter((hex) => hex !== '14201c')).toEqual([]);
  });
});
