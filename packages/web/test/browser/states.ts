import type { Page } from 'playwright-core';
import { openCook, settleIn } from './app.ts';

/** A place in one of its states. A state that writes something down takes it back in `leave`. */
export interface State {
  readonly name: string;
  /** The state in which its place is looked at by those who hear it, use keys or enlarge. */
  readonly isPlace?: boolean;
  /** Told in one light at each size, another at each: its parts stand in every light elsewhere. */
  readonly isBrief?: boolean;
  readonly open: (page: Page, url: string) => Promise<void>;
  readonly leave?: (page: Page) => Promise<void>;
}

const BIG = 'regatta-dinner';
const TINY = 'two-racks-on-a-kettle';
const HIGH = 'brisket-on-the-high-plain';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const undo = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
};

async function openBench(page: Page, url: string): Promise<void> {
  await page.goto(`${url}cook/${BIG}/bench`);
  await page.locator('.balance svg').waitFor();
  await page.locator('.simmering svg').waitFor();
}

async function write(page: Page, label: string | RegExp, written: string): Promise<void> {
  const field = page.getByLabel(label).first();
  await field.fill(written);
  await field.press('Enter');
}

/** What a cook has of a pit or a recipe, kept on the shelf and opened there. */
async function openKept(page: Page, url: string, kept: { cook: RegExp; deed: string; path: string }) {
  await page.goto(url);
  await press(page, kept.cook);
  await press(page, kept.deed);
  await page.locator(`.shelf-row a[href^="${kept.path}"]`).first().click();
  await page.locator('h1.answer').waitFor();
}

async function openWithStrip(page: Page, url: string, cook: string, place: string): Promise<void> {
  await page.goto(`${url}cook/${cook}/${place}`);
  await page.locator('.drawing svg').first().waitFor();
  await page.locator('.tried').waitFor({ state: 'detached' });
}

/** Every place in its main states. The first of them settles in, and the others follow in the same browser. */
export const STATES: readonly State[] = [
  {
    name: 'first-run',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(url);
      await page.getByRole('link', { name: /Regatta dinner/ }).waitFor();
    },
  },
  { name: 'shelf', isPlace: true, open: settleIn },
  {
    name: 'shelf-deeds',
    open: async (page, url) => {
      await page.goto(url);
      await press(page, /^More: Regatta dinner/);
      await press(page, 'A new pit');
    },
  },
  {
    name: 'new-cook',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(`${url}new`);
      await page.getByRole('button', { name: 'Make the plan' }).waitFor();
    },
  },
  {
    name: 'cook-tiny',
    isPlace: true,
    open: async (page, url) => {
      await openCook(page, url, TINY);
      await page.locator('.inside svg').first().waitFor();
    },
  },
  {
    name: 'cook-ledger',
    open: async (page, url) => {
      await openCook(page, url, TINY);
      await page.locator('.inside svg').first().waitFor();
      await page.locator('.tried').waitFor({ state: 'detached' });
      await press(page, 'Where its heat comes from and goes');
      await page.locator('.inside svg .ledger-radiation').first().waitFor();
    },
  },
  {
    name: 'cook',
    open: async (page, url) => {
      await openCook(page, url, BIG);
      await page.locator('.inside svg').first().waitFor();
    },
  },
  {
    name: 'cook-asked',
    open: async (page) => {
      await page.locator('h1 .ask').first().click();
      await page.locator('dialog[open]').waitFor();
    },
    leave: async (page) => {
      await page.locator('dialog[open] .key').click();
    },
  },
  { name: 'cook-close', open: (page) => press(page, 'Close up') },
  {
    name: 'cook-compare',
    open: async (page) => {
      await press(page, 'Both days');
      await press(page, /^A, /);
      await press(page, /^Longer or shorter/);
      await page.locator('.set .bites').nth(1).waitFor();
      await page.locator('.inside svg').first().waitFor();
    },
  },
  {
    name: 'cook-share',
    open: async (page) => {
      await press(page, 'Share');
      await page.getByRole('button', { name: 'Copy the link' }).waitFor();
    },
  },
  {
    name: 'shared',
    isPlace: true,
    open: async (page, url) => {
      await openCook(page, url, TINY);
      await press(page, 'Share');
      await page.getByRole('button', { name: 'Copy the link' }).waitFor();
      await page.goto(await page.getByLabel('The link').inputValue());
      await page.getByRole('button', { name: 'Keep this cook' }).waitFor();
    },
  },
  {
    name: 'shared-unread',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(`${url}shared#nothing-that-can-be-read`);
      await page.locator('.shared .notice').waitFor();
    },
  },
  {
    name: 'guests',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(`${url}cook/${BIG}/guests`);
      await page.locator('.enough svg').first().waitFor();
      await page.locator('.buying li').first().waitFor();
    },
  },
  {
    name: 'guests-details',
    open: async (page) => {
      for (const one of await page.locator('main details > summary').all()) await one.click();
    },
  },
  {
    name: 'run-sheet',
    open: (page, url) => openWithStrip(page, url, BIG, 'run-sheet'),
  },
  {
    name: 'run-sheet-job',
    open: async (page) => {
      await page.locator('.job-list li button').nth(4).click();
    },
  },
  { name: 'run-sheet-tiny', isPlace: true, open: (page, url) => openWithStrip(page, url, TINY, 'run-sheet') },
  { name: 'bench', isPlace: true, open: openBench },
  {
    name: 'bench-swap',
    open: async (page) => {
      await page.locator('.swap-choose select').first().selectOption({ index: 1 });
      await page.locator('.balance .choice label').nth(1).click();
      await page.locator('.swap-said').waitFor();
    },
  },
  {
    name: 'bench-paste',
    open: async (page, url) => {
      await openBench(page, url);
      await page.locator('.line-key').nth(1).click();
      await press(page, 'Paste a recipe, or add lines');
      await page
        .getByRole('textbox', { name: /Nothing is guessed/ })
        .fill('4 oz honey\n1 tsp salt\n1 tsp frobnic');
      await press(page, 'Read it');
      await page.locator('.pasted').waitFor();
    },
  },
  {
    name: 'bench-rub',
    open: async (page, url) => {
      await page.goto(`${url}cook/${BIG}/bench`);
      await page.locator('.bench-top .choice label').nth(1).click();
      await page.locator('.on-meat').waitFor();
    },
  },
  {
    name: 'gone',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(`${url}cook/nowhere`);
      await page.getByRole('heading', { level: 1 }).waitFor();
    },
  },
  {
    name: 'specimen',
    isPlace: true,
    open: async (page, url) => {
      await page.goto(`${url}specimen`);
      await page.locator('.specimen svg').first().waitFor();
    },
  },
  {
    name: 'guests-nobody',
    open: async (page, url) => {
      await page.goto(`${url}cook/${TINY}/guests`);
      await page.locator('.enough svg').first().waitFor();
      for (let guest = 0; guest < 4; guest++) await press(page, /^One fewer/);
    },
    leave: async (page) => {
      for (let guest = 0; guest < 4; guest++) await undo(page);
      await page.getByText('4 at table').first().waitFor();
    },
  },
  {
    name: 'pit',
    isPlace: true,
    isBrief: true,
    open: (page, url) =>
      openKept(page, url, { cook: /^More: Regatta dinner/, deed: 'Keep its pit', path: '/pit/' }),
  },
  {
    name: 'recipe',
    isPlace: true,
    isBrief: true,
    open: (page, url) =>
      openKept(page, url, { cook: /^More: Two racks/, deed: 'Keep as a recipe', path: '/recipe/' }),
  },
  {
    name: 'side-by-side',
    isPlace: true,
    isBrief: true,
    open: async (page, url) => {
      await page.goto(`${url}side-by-side?a=${TINY}&b=${BIG}`);
      await page.locator('.two-strips svg').nth(1).waitFor();
      await page.locator('.tried').first().waitFor({ state: 'detached' });
    },
  },
  {
    name: 'cook-chill',
    isBrief: true,
    open: async (page, url) => {
      await openCook(page, url, TINY);
      await press(page, 'More of stage 1');
      await press(page, 'Another stage');
      await page.locator('.stages select').filter({ hasText: 'chill' }).last().selectOption('chill');
      await page.getByText(/its middle takes .+ from 57\s°C to 21\s°C/).waitFor();
    },
  },
  {
    name: 'cook-own-sides',
    isBrief: true,
    open: async (page, url) => {
      await page.goto(`${url}cook/${HIGH}`);
      await press(page, 'Change what it is');
      await press(page, 'Not in the list? Tell its sides');
      await write(page, 'Its length', '400 mm');
      await write(page, 'Its width', '250 mm');
      await page.getByLabel('Fat, by eye').waitFor();
      await page.locator('.inside svg').first().waitFor();
    },
  },
  {
    name: 'bench-own',
    isBrief: true,
    open: async (page, url) => {
      await openBench(page, url);
      await press(page, 'Add a line');
      await press(page, 'Ingredients of your own');
      await page.getByRole('button', { name: 'Keep this label' }).click();
      await page.locator('.label-form .field-error').first().waitFor();
    },
  },
  {
    name: 'bench-variant',
    isBrief: true,
    open: async (page, url) => {
      await openBench(page, url);
      await press(page, 'Another way to make it');
      await page.getByLabel('Name of this way').fill('hotter');
      await press(page, 'Add it');
      await press(page, /^Chile, chipotle/);
      await write(page, /: how much$/, '24 g');
      await page.getByText(/Against the formula as written/).waitFor();
      await press(page, 'Rename or take out');
    },
  },
];
