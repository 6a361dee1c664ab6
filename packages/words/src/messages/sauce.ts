import type { Quantity } from '@pitwright/model';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

interface OfInput {
  readonly input: string;
}
interface Named {
  readonly name: string;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
/** A computed pH is good to ±0.2 and never shown finer than one decimal. */
const phText = (ph: number, print: Printer): string => print.number(ph, 1);

/** What the sauce room cannot compute when it is asked for a figure by name. */
const calcProblems = {
  'sauce.more-evaporated-than-water': (p: OfInput & { water: Quantity }, print: Printer) =>
    `${p.input}: the batch holds only ${print.quantity(p.water)} of water, drive off less than that`,
  'sauce.more-evaporated-than-mass': (p: OfInput & { mass: Quantity }, print: Printer) =>
    `${p.input}: there are only ${print.quantity(p.mass)} in the pot, drive off less than that`,
  'sauce.not-in-the-mix': (p: OfInput & { text: string }) =>
    `${p.input}: ${p.text} is no line of the mix, name one that is`,
  'sauce.concentration-unread': (p: OfInput & { text: string }) =>
    `${p.input}: ${p.text} is no concentration, write it as 0.1 mol/L or 0.5 g/100 mL`,
  'sauce.never-boils': (p: OfInput) =>
    `${p.input}: what reaches the pot does not make up for what its wall loses, so it never boils; give more power`,
  'sauce.surface-boils': (p: OfInput) =>
    `${p.input}: water boils there at this pressure, give a lower temperature or ask for boil-off-rate`,
  'sauce.spice-over-batch': (p: OfInput & { mass: Quantity }, print: Printer) =>
    `${p.input}: the spice is part of the batch of ${print.quantity(p.mass)}, give a smaller mass or a larger batch`,
  'sauce.glaze-already-set': (p: OfInput) =>
    `${p.input}: this is over the solids at which it counts as set, give less or raise set-solids`,
};

/** What is wrong with a formula, and what would be right. */
const formulaProblems = {
  'sauce.unknown-ingredient': (p: Named) =>
    `${p.name} is not in the catalogue. Pick another word, or add it from its label.`,
  'sauce.unknown-ingredient-near': (p: Named & { near: string }) =>
    `${p.name} is not in the catalogue. Did you mean ${p.near}? Else add it from its label.`,
  'sauce.negative-amount': (p: Named & { amount: Quantity }, print: Printer) =>
    `${p.name}: ${print.quantity(p.amount)} is less than nothing. Write how much goes in.`,
  'sauce.amount-not-a-number': (p: Named) =>
    `${p.name}: the amount is not a number. Write it as 120 g or 1/2 cup.`,
  'sauce.density-missing': (p: Named & { amount: Quantity }, print: Printer) =>
    `${p.name}: nobody knows what ${print.quantity(p.amount)} of it weighs. Weigh it once, or give its density.`,
  'sauce.no-lines': (p: Named) => `${p.name} has no lines yet. Add one ingredient with its amount.`,
  'sauce.no-mass': (p: Named) => `${p.name} weighs nothing. Give at least one line an amount.`,
  'sauce.no-cures': () =>
    'Curing salt is not worked out here. A little too much poisons, a little too little does not protect, and it moves a hundred times slower than salt. Use a published cure table, weighed to 0.1 g, never by spoon.',
  'sauce.boils-dry': (p: { evaporated: Quantity; water: Quantity }, print: Printer) =>
    `${print.quantity(p.evaporated)} cannot boil off: there are only ${print.quantity(p.water)} of water in it. Boil off less, or start with more liquid.`,
  'sauce.pan-overflows': (p: { volume: Quantity; holds: Quantity }, print: Printer) =>
    `${print.quantity(p.volume)} do not fit this pan. It takes ${print.quantity(p.holds)} with room for foam: use a larger pan, or cook it in parts.`,
};

/** What was taken because nobody said, and what to mind at the stove. */
const atTheStove = {
  'sauce.pan-assumed': (p: { diameter: Quantity }, print: Printer) =>
    `No pan is named, so one of ${print.quantity(p.diameter)} across was taken.`,
  'sauce.flame-assumed': () =>
    'No power is named, so the flame is taken as turned down until it just simmers.',
  'sauce.no-room-for-foam': (p: { volume: Quantity }, print: Printer) =>
    `${print.quantity(p.volume)} fill this pan more than two thirds: it will foam over. Use a larger one, or watch it.`,
  'sauce.may-never-get-there': (p: { never: number }) =>
    `In ${percent(p.never)} of the cases this flame never gets it there. Take the lid off, a wider pan, or more power.`,
  'sauce.never-thickens': () =>
    'There is nothing in it that thickens by boiling down. Boil it for a taste, and use a little xanthan or starch for body.',
  'sauce.would-be-candy': () =>
    'To be that thick it would be over 70 % solids: candy. Stop earlier, and add a thickener.',
  'sauce.bottom-catches': (p: { gentle: Quantity; share: number; stir: Quantity }, print: Printer) =>
    `The bottom catches near the end. Turn it down to ${percent(p.share)} for the last ten minutes and stir every ${print.quantity(p.stir)}.`,
  'sauce.bottom-burns': (p: { gentle: Quantity; share: number; stir: Quantity }, print: Printer) =>
    `It burns on at this power once it is thick. Turn it down to ${percent(p.share)} before that and stir every ${print.quantity(p.stir)}.`,
};

/** How long it keeps: cold, whatever its pH. */
const keepingWords = {
  'sauce.keep-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}: two to four weeks in a clean jar in the fridge.`,
  'sauce.keep-fairly-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}: one to two weeks in a clean jar in the fridge.`,
  'sauce.keep-not-sour': (p: { ph: number }, print: Printer) =>
    `About pH ${phText(p.ph, print)}, not sour enough to keep: treat it like any cooked dish, 3 to 4 days in the fridge.`,
  'sauce.keep-ph-unknown': () =>
    'Its acidity is not known: treat it like any cooked dish, 3 to 4 days in the fridge.',
  'sauce.keep-fresh-in-it': (p: Named) => `${p.name} is in it: 3 to 4 days in the fridge.`,
  'sauce.keep-cold': () =>
    'Keep it cold. This is an estimate, and no estimate makes a jar safe for the shelf: for that use a tested procedure.',
};

export const sauceMessages = messages({
  ...calcProblems,
  ...formulaProblems,
  ...atTheStove,
  ...keepingWords,
});
