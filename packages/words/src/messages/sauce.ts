import type { Quantity } from '@pitwright/model';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

interface OfInput {
  readonly input: string;
}

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

export const sauceMessages = messages({ ...calcProblems });
