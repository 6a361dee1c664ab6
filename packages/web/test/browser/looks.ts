import type { Page } from 'playwright-core';

/** What a page in front of a reader must not have, each told by where it is. */
export interface Faults {
  /** Texts under the floor, as drawn [px]. */
  readonly small: readonly string[];
  /** Words of one drawing that stand on each other. */
  readonly overlapping: readonly string[];
  /** Words of a drawing that run out of the window. */
  readonly cut: readonly string[];
  /** Controls under 24 × 24 px (WCAG 2.2, 2.5.8), those within a sentence excepted. */
  readonly tight: readonly string[];
  /** How far the page is wider than its window [px]. */
  readonly sideways: number;
}

export const NO_FAULTS: Faults = { small: [], overlapping: [], cut: [], tight: [], sideways: 0 };

export const faultsOf = (page: Page): Promise<Faults> =>
  page.evaluate(() => {
    const LEAST_TEXT_PX = 13.5;
    const LEAST_TARGET_PX = 24;
    /** Above and below the ink a line of text has room of its own, as a share of its height. */
    const LEADING = 0.16;
    const ROUNDING_PX = 0.6;
    const isSeen = (one: Element): boolean =>
      one.checkVisibility({ visibilityProperty: true }) && !one.closest('.vh');
    const words = (one: Element): string => one.textContent?.trim().replace(/\s+/g, ' ').slice(0, 40) ?? '';

    const small: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const holder = node.parentElement;
      if (!holder || !node.textContent?.trim() || !isSeen(holder)) continue;
      if (holder.closest('option, noscript, script, style')) continue;
      const drawing = holder.closest('svg');
      const drawnWidth = drawing?.viewBox.baseVal.width;
      const scale = drawing && drawnWidth ? drawing.getBoundingClientRect().width / drawnWidth : 1;
      const size = Number.parseFloat(getComputedStyle(holder).fontSize) * scale;
      if (size < LEAST_TEXT_PX - 0.01) small.push(`${size.toFixed(1)} px: ${words(holder)}`);
    }

    const overlapping: string[] = [];
    const cut: string[] = [];
    for (const drawing of document.querySelectorAll('svg')) {
      if (!isSeen(drawing)) continue;
      const boxes = [...drawing.querySelectorAll('text')]
        .filter((text) => isSeen(text) && text.textContent?.trim())
        .map((text) => {
          const { left, right, top, bottom, height } = text.getBoundingClientRect();
          const name = words(text);
          if (left < -ROUNDING_PX || right > innerWidth + ROUNDING_PX) cut.push(name);
          return { left, right, top: top + height * LEADING, bottom: bottom - height * LEADING, name };
        });
      for (const [index, a] of boxes.entries())
        for (const b of boxes.slice(index + 1))
          if (
            Math.min(a.right, b.right) - Math.max(a.left, b.left) > ROUNDING_PX &&
            Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > ROUNDING_PX
          )
            overlapping.push(`${a.name} | ${b.name}`);
    }

    const tight: string[] = [];
    const controls = 'a[href], button, select, input, textarea, summary, [role=slider]';
    for (const one of document.querySelectorAll<HTMLElement>(controls)) {
      // A skip link waits above the page until it has the focus.
      if (!isSeen(one) || one.matches('.skip, [hidden]')) continue;
      // Within a sentence a control is as high as its line.
      if (getComputedStyle(one).display === 'inline' || one.matches('.ask')) continue;
      const target = one.matches('input') ? (one.closest('label') ?? one) : one;
      const { width, height } = target.getBoundingClientRect();
      if (Math.min(width, height) < LEAST_TARGET_PX - 0.1)
        tight.push(`${width.toFixed(0)} × ${height.toFixed(0)}: ${one.outerHTML.slice(0, 90)}`);
    }

    const sideways = Math.max(0, document.documentElement.scrollWidth - innerWidth);
    return { small, overlapping, cut, tight, sideways };
  });
