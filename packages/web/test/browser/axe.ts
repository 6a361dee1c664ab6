import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What axe holds against the page under WCAG 2.2 AA and its own good practice: each rule with each place, none where all is well. */
export async function axeFinds(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)}`));
}
