import type { BuyLine } from '@pitwright/engine';
import { findIngredient } from '@pitwright/engine/sauce';
import { capital, type Printer } from '@pitwright/words';
import type { Words } from '../../words.tsx';

/** A line of the list by its trade or catalogue name. */
export const lineName = ({ what, section, items }: BuyLine, text: Words['text'], print: Printer): string => {
  if (section === 'butcher') return capital(print.cut(what, items ?? 1));
  if (section === 'fire') return text('web.guests.buy.fire', { what });
  return findIngredient(what)?.name ?? what.replaceAll('_', ' ');
};

/** Nothing of it has to be bought. */
export const isAtHome = ({ needKg, haveKg }: BuyLine): boolean =>
  needKg !== undefined && haveKg >= needKg - 1e-9;

/** Lines of one cut stand together. */
export function joined(lines: readonly BuyLine[]): readonly BuyLine[] {
  const byWhat = new Map<string, BuyLine>();
  for (const line of lines) {
    const so = byWhat.get(line.what);
    byWhat.set(line.what, so ? sum(so, line) : line);
  }
  return [...byWhat.values()];
}

const added = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined && b === undefined ? undefined : (a ?? 0) + (b ?? 0);

function sum(a: BuyLine, b: BuyLine): BuyLine {
  const total = {
    items: added(a.items, b.items),
    needKg: added(a.needKg, b.needKg),
    buyKg: added(a.buyKg, b.buyKg),
    packs: added(a.packs, b.packs),
    cost: added(a.cost, b.cost),
  };
  const known = Object.fromEntries(Object.entries(total).filter(([, value]) => value !== undefined));
  return { ...a, ...known };
}
