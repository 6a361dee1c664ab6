import type { BuyLine } from '@pitwright/engine';
import { findIngredient } from '@pitwright/engine/sauce';
import { capital, type Printer } from '@pitwright/words';
import type { Words } from '../../words.tsx';

/** A line of the list by its trade or catalogue name. */
export const lineName = (
  { what, section, items, name }: BuyLine,
  text: Words['text'],
  print: Printer,
): string => {
  if (section === 'butcher') return capital(print.cut(what, items ?? 1));
  if (section === 'fire') return text('web.guests.buy.fire', { what });
  return name ?? findIngredient(what)?.name ?? what.replaceAll('_', ' ');
};

/** Nothing of it has to be bought. */
export const isAtHome = ({ needKg, haveKg }: BuyLine): boolean =>
  needKg !== undefined && haveKg >= needKg - 1e-9;
