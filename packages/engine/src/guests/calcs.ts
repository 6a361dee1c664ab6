import { quantityInput, wordInput } from '../calc/describe.ts';
import { maybeNumber, numberOf, textOf } from '../calc/given.ts';
import { refuse } from '../calc/problem.ts';
import type { CalcSpec } from '../calc/spec.ts';
import { findCut } from '../meat/cuts.ts';
import { demandOf, edibleOf, itemsNeeded, shortChance } from './portions.ts';
import { edibleYield, YIELD_CUTS } from './yields.ts';

const room = 'guests';
const page = 'guests.md';

const yieldCalc: CalcSpec = {
  name: 'yield',
  room,
  summary: 'what a piece gives off the bone, cooked, of the mass as bought; low and high hold 8 times in 10',
  inputs: [
    wordInput('cut', YIELD_CUTS),
    quantityInput('mass', 'mass', { range: [0.05, 100, 'kg'], byDefault: [1, 'kg'] }),
  ],
  outputs: [
    { name: 'edible', unit: 'kg', kind: 'mass' },
    { name: 'edible-low', unit: 'kg', kind: 'mass' },
    { name: 'edible-high', unit: 'kg', kind: 'mass' },
    { name: 'share', unit: '%', kind: 'fraction' },
  ],
  source: 'published yields where there are any, else bone and cooking loss; see the page',
  page,
  evaluate(inputs) {
    const { share } = edibleYield(textOf(inputs, 'cut'))!;
    const massKg = numberOf(inputs, 'mass');
    return {
      edible: massKg * share.p50,
      'edible-low': massKg * share.p10,
      'edible-high': massKg * share.p90,
      share: share.p50,
    };
  },
};

const portionCalc: CalcSpec = {
  name: 'portion',
  room,
  summary:
    'how much cooked meat a table eats, how many items of a cut that takes, and how often somebody goes short',
  inputs: [
    wordInput('cut', YIELD_CUTS),
    quantityInput('adults', 'number', { range: [0, 1000, '1'] }),
    quantityInput('children', 'number', { range: [0, 1000, '1'], byDefault: [0, '1'] }),
    wordInput('appetite', ['small', 'ordinary', 'big'], { byDefault: 'ordinary' }),
    quantityInput('mass', 'mass', { range: [0.05, 20, 'kg'], optional: true, remark: 'of one item' }),
    quantityInput('items', 'number', {
      range: [1, 500, '1'],
      optional: true,
      remark: 'missing: as many as it takes',
    }),
  ],
  outputs: [
    { name: 'meat', unit: 'kg', kind: 'mass' },
    { name: 'items', unit: '1', kind: 'number' },
    { name: 'edible', unit: 'kg', kind: 'mass' },
    { name: 'short', unit: '%', kind: 'fraction' },
  ],
  source: 'catering tables: 140–225 g of cooked boneless meat an adult; children half, common practice',
  page,
  evaluate(inputs) {
    const cut = textOf(inputs, 'cut');
    const guests = {
      adults: numberOf(inputs, 'adults'),
      children: numberOf(inputs, 'children'),
      appetite: textOf(inputs, 'appetite') as 'small' | 'ordinary' | 'big',
    };
    for (const name of ['adults', 'children'])
      if (!Number.isInteger(numberOf(inputs, name)))
        refuse('calc.impossible', { input: name, reason: 'guests come whole, give a whole number' });
    const massKg = maybeNumber(inputs, 'mass') ?? findCut(cut)!.massKg;
    const demand = demandOf(guests);
    const items = maybeNumber(inputs, 'items') ?? itemsNeeded(guests, { cut, massKg })!;
    const supply =
      items > 0
        ? edibleOf({ cut, count: items, mass: { kind: 'mass', si: massKg } })!
        : { meanKg: 0, sdKg: 0 };
    return { meat: demand.meanKg, items, edible: supply.meanKg, short: shortChance(supply, demand) };
  },
};

export const guestCalcs: readonly CalcSpec[] = [portionCalc, yieldCalc];
