import type { Quantity } from '@pitwright/model';
import { listed } from '../figures/number.ts';
import { spokenIngredient } from '../names/ingredients.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const WHEN: Readonly<Record<string, string>> = {
  late: ', stirred in after the simmer',
  start: ', from the start',
};
const whenText = (when: string): string => WHEN[when] ?? '';

/** Other ways to make a formula. */
const variants = {
  'bench.variant': () => 'Made',
  'bench.variant.as-written': () => 'as written',
  'bench.variant.new': () => 'Another way to make it',
  'bench.variant.edit': () => 'Rename or take out',
  'bench.variant.name': () => 'Name of this way',
  'bench.variant.name-hint': () => 'hotter',
  'bench.variant.add': () => 'Add it',
  'bench.variant.no-name': () => 'Give it a name that says what is different, like hotter.',
  'bench.variant.name-twice': (p: { name: string }) =>
    `There is a way called ${p.name}. Give it another name.`,
  'bench.variant.remove': (p: { name: string }) => `Take “${p.name}” out`,
  'bench.variant.with': (p: { name: string }) => `with ${spokenIngredient(p.name)}`,
  'bench.variant.empty': (p: { name: string }) =>
    `Nothing is different in “${p.name}” yet. Change, add or take out lines, swap, drag the simmer: it is kept here, and the formula stays as written.`,
  'bench.variant.changes': (p: { changes: string }) => `Different: ${listed(p.changes.split('|'))}.`,
  'bench.variant.adds': (p: { name: string; amount: string; when: string }) =>
    `${p.amount} ${spokenIngredient(p.name)} added${whenText(p.when)}`,
  'bench.variant.leaves-out': (p: { name: string }) => `no ${spokenIngredient(p.name)}`,
  'bench.variant.puts': (p: { name: string; for: string; amount: string; when: string }) =>
    `${p.amount === '' ? '' : `${p.amount} `}${spokenIngredient(p.name)} for ${spokenIngredient(p.for)}${whenText(p.when)}`,
  'bench.variant.amount': (p: { name: string; amount: string; before: string; when: string }) =>
    `${p.amount === '' ? '' : `${p.amount} `}${spokenIngredient(p.name)}${p.before === '' ? '' : ` (written: ${p.before})`}${whenText(p.when)}`,
  'bench.variant.boils-off': (p: { mass: Quantity }, print: Printer) =>
    `${print.quantity(p.mass)} of water boils off`,
  'bench.variant.against': (p: { changes: string; minutes: number }) =>
    `${p.changes === '' ? 'By the tongue few will tell it from the formula as written' : `Against the formula as written it is ${p.changes}`}${
      p.minutes === 0 ? '.' : `, ready ${Math.abs(p.minutes)} min ${p.minutes < 0 ? 'sooner' : 'later'}.`
    }`,
  'bench.variant.of-line': (p: { names: string }) =>
    `Made another way it is changed: ${listed(p.names.split('|'))}.`,
  'bench.swap.as-variant': () => 'Keep it as another way',
};

const ASKED: Readonly<Record<string, readonly [much: string, little: string, more: string, most: string]>> = {
  sweet: ['clearly less sweet', 'a little less sweet', 'a little sweeter', 'clearly sweeter'],
  sour: ['clearly less sour', 'a little less sour', 'a little sourer', 'clearly sourer'],
  salt: ['clearly less salty', 'a little less salty', 'a little saltier', 'clearly saltier'],
  heat: ['clearly milder', 'a little milder', 'a little hotter', 'clearly hotter'],
};
const asked = (taste: string, steps: number): string => {
  if (steps === 0) return 'as it is';
  const place = steps < -2 ? 0 : steps < 0 ? 1 : steps <= 2 ? 2 : 3;
  return ASKED[taste]?.[place] ?? taste;
};

/** The other way round: what is wanted, and what gets there. */
const aims = {
  'bench.aim': () => 'Say how you want it',
  'bench.aim.step': (p: { taste: string; steps: number }) => asked(p.taste, p.steps),
  'bench.aim.brushed': () => 'brushed on, it',
  'bench.aim.as-it-is': () => 'as it is',
  'bench.aim.with': () => 'From',
  'bench.aim.with-name': (p: { what: string }) =>
    p.what === 'own' ? 'what is in it' : 'sugar, vinegar, salt, cayenne and tomato paste too',
  'bench.aim.get-there': () => 'To get there:',
  'bench.aim.take': () => 'Make it so',
  'bench.aim.name': () => 'as I want it',
};

/** Lines that go in after the simmer, and lines that are added. */
const lines = {
  'bench.late': () => 'after the simmer',
  'bench.stirred-in': () => 'stirred in after',
  'bench.goes-in': () => 'Goes in',
  'bench.goes-in.start': () => 'from the start',
  'bench.goes-in.late': () => 'after the simmer',
  'bench.only-boils': () => 'only boils away',
  'bench.matters.water': () =>
    'Half of it or half as much again tastes the same. It only boils shorter or longer.',
  'bench.add-line': () => 'Add a line',
  'bench.add-line.find': () => 'Find it by a word',
  'bench.add-line.what': () => 'What it is',
  'bench.add-line.how-much': () => 'How much',
  'bench.add-line.use': () => 'Put it in',
  'bench.find.nothing': (p: { words: string }) =>
    `Nothing is called “${p.words}”. Try a plainer word, or copy its label down as one of your own.`,
};

const LAWS: Readonly<Record<string, string>> = { us: 'American', eu: 'British or European' };
const SUGARS: Readonly<Record<string, string>> = {
  '': 'not told',
  sucrose: 'sugar',
  inverted: 'syrup or honey',
};
const BODIES: Readonly<Record<string, string>> = {
  '': 'not told',
  liquid: 'runs like water',
  sauce: 'thick like ketchup',
  paste: 'thick like tomato paste',
  powder: 'a dry powder',
};
const READ: Readonly<Record<string, string>> = {
  no: 'nobody read them',
  none: 'read: none named',
  some: 'read: these',
};
const UNKNOWN: Readonly<Record<string, string>> = {
  fatG: 'fat',
  carbohydrateG: 'carbohydrate',
  sugarsG: 'sugars',
  fibreG: 'fibre',
  proteinG: 'protein',
  sodiumMg: 'salt',
  energyKcal: 'energy',
  ph: 'pH',
  density: 'what a spoon of it weighs',
  'sugar-split': 'which sugars',
  acids: 'acids',
  body: 'how thick it is',
  allergens: 'allergens',
};

/** Ingredients of one's own, by their labels. */
const own = {
  'bench.own': () => 'Ingredients of your own',
  'bench.own.title': () => 'Ingredients of your own, by their labels',
  'bench.own.hint': () =>
    'Copy down what the label says, and leave out what it does not: that stays unknown, and is never counted as nothing.',
  'bench.own.edit': () => 'Mend',
  'bench.own.use': () => 'Put some in',
  'bench.own.remove': () => 'Take out',
  'bench.own.another': () => 'Another label',
  'bench.own.leave': () => 'Close',
  'bench.own.keep': () => 'Keep this label',
  'bench.own.in-use': (p: { name: string; formulas: string }) =>
    `${p.name} is in ${listed(p.formulas.split('|'))}. Take that line out first.`,
  'bench.own.no-name': () => 'Give it the name that you will look for.',
  'bench.own.name-twice': (p: { name: string }) =>
    `There is a label for ${p.name}. Mend that one, or give this another name.`,
  'bench.own.volume-nothing': () =>
    'A serving of nothing weighs nothing. Write it like 2 tbsp, or leave it empty.',
  'bench.own.which-allergens': () => 'Which? Write them like milk, celery, or say that none is named.',
  'bench.own.name': () => 'Name',
  'bench.own.law': () => 'The label is',
  'bench.own.law-name': (p: { law: string }) => LAWS[p.law] ?? p.law,
  'bench.own.per': () => 'Figures are for',
  'bench.own.perVolume': () => 'that is, by spoon',
  'bench.own.kcal': () => 'Energy, kcal',
  'bench.own.fat': () => 'Fat, g',
  'bench.own.carbohydrate': () => 'Carbohydrate, g',
  'bench.own.sugars': () => 'of it sugars, g',
  'bench.own.fibre': () => 'Fibre, g',
  'bench.own.protein': () => 'Protein, g',
  'bench.own.sodium': () => 'Sodium, mg',
  'bench.own.salt': () => 'Salt, g',
  'bench.own.alcohol': () => 'Alcohol, g',
  'bench.own.ph': () => 'pH, where you know it',
  'bench.own.sugar-kind': () => 'Sweetened with',
  'bench.own.sugar-kind-name': (p: { kind: string }) => SUGARS[p.kind] ?? p.kind,
  'bench.own.body': () => 'Cold, it is',
  'bench.own.body-name': (p: { body: string }) => BODIES[p.body] ?? p.body,
  'bench.own.allergens-read': () => 'Allergens on the label',
  'bench.own.allergens-read-name': (p: { read: string }) => READ[p.read] ?? p.read,
  'bench.own.allergens': () => 'Which, with commas between',
  'bench.own.leaves-water': (p: { mass: number }, print: Printer) =>
    `In 100 g its figures leave ${print.number(p.mass)} g of water.`,
  'bench.own.sugars-span': (p: { low: number; high: number }, print: Printer) =>
    `Sugars ${print.number(p.low, 1)}–${print.number(p.high, 1)} g, as labels are rounded.`,
  'bench.own.unknown': (p: { items: string }) =>
    p.items === ''
      ? 'Nothing is left unknown.'
      : `Stays unknown: ${listed(p.items.split('|').map((item) => UNKNOWN[item] ?? item))}.`,
};

/** Of the bench: variants, lines that go in late, ingredients of one's own. */
export const benchWaysMessages = messages({ ...variants, ...aims, ...lines, ...own });
