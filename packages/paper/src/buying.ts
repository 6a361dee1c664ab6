import { type BuyLine, buyingList, joinedLines, portionsOf } from '@pitwright/engine';
import { findIngredient } from '@pitwright/engine/sauce';
import type { Said } from '@pitwright/model';
import { capital, type Printer, say } from '@pitwright/words';
import { type PlanReport, pieceOf } from './report.ts';

/** Leftovers keep so long in the cold [d]. @source USDA FSIS: 3 to 4 days */
const LEFTOVER_DAYS = 4;

/** One line for the shop. */
export interface ShopLine {
  readonly section: BuyLine['section'];
  readonly name: string;
  readonly amount: string;
}

const amountOf = (line: BuyLine, print: Printer): string => {
  if (line.needM !== undefined) return print.lengthM(line.needM);
  if (line.needKg === undefined) return '';
  return line.section === 'fire' && line.buyKg !== undefined
    ? print.massRangeKg(line.needKg, line.buyKg)
    : print.massKg(line.needKg);
};

const nameOf = (line: BuyLine, print: Printer): string => {
  if (line.section === 'fire') return say({ id: 'web.guests.buy.fire', params: { what: line.what } }, print);
  if (line.section !== 'butcher')
    return line.name ?? findIngredient(line.what)?.name ?? line.what.replaceAll('_', ' ');
  return `${line.items ?? 1} × ${print.cut(line.what, line.items ?? 1)}`;
};

const listOf = ({ cook, plan }: PlanReport) => {
  const { fireWatch } = plan;
  const litS = fireWatch ? (Date.parse(fireWatch.toAt) - Date.parse(fireWatch.fromAt)) / 1000 : 0;
  // Thawed before the first of it is trimmed, brined or rubbed.
  const handledAt = plan.placed
    .filter(({ taskId }) => /\/(skin-and-trim|cut-in-two|brine|rub)$/.test(taskId))
    .map(({ startAt }) => Date.parse(startAt));
  return buyingList(cook, litS, Math.min(Date.parse(plan.firstOnAt), ...handledAt) / 1000);
};

/** Everything to buy, by shop section; equal cuts together. */
export const shopLines = (report: PlanReport, print: Printer): ShopLine[] =>
  joinedLines(listOf(report).lines).map((line) => ({
    section: line.section,
    name: nameOf(line, print),
    amount: amountOf(line, print),
  }));

/** Until when what is bought frozen goes into the fridge, soonest first, pieces of one day together. */
export function thawSaid(report: PlanReport, print: Printer): Said {
  const byDay = new Map<string, { at: string; letters: string[] }>();
  const thaw = [...listOf(report).thaw].sort(
    (a, b) => Date.parse(a.intoFridgeAt) - Date.parse(b.intoFridgeAt),
  );
  for (const { pieceId, intoFridgeAt } of thaw) {
    const key = print.dayKey(intoFridgeAt);
    const so = byDay.get(key) ?? { at: intoFridgeAt, letters: [] };
    so.letters.push(pieceOf(report.cook, pieceId).letter);
    byDay.set(key, so);
  }
  const pieces = [...byDay.values()]
    .map(({ at, letters }) => `${print.date(at)} ${print.aboutClock(at)} (${letters.join(', ')})`)
    .join(', ');
  return { id: 'web.guests.buy.thaw', params: { pieces } };
}

/** No appetite is known finer than this. */
const tenths = (kg: number): number => Math.round(kg * 10) / 10;

/** Whether it is enough, what is left over, and what becomes of that by the clock. */
export function portionsSaid(report: PlanReport): Said[] {
  const { cook, plan } = report;
  const { edible, wanted, shortChance, leftOver, unknownPieceIds } = portionsOf(cook);
  const chill = plan.placed.find((placed) => placed.taskId.endsWith('/chill-leftovers'));
  const said: Said[] = [
    {
      id: 'plan.buy.portions',
      params: {
        gives: tenths(edible.p50),
        givesLow: tenths(edible.p10),
        givesHigh: tenths(edible.p90),
        eats: tenths(wanted.p50),
        eatsLow: tenths(wanted.p10),
        eatsHigh: tenths(wanted.p90),
        people: cook.guests.adults + cook.guests.children,
        short: shortChance,
      },
    },
  ];
  if (chill && leftOver.p50 > 0)
    said.push({
      id: 'plan.buy.left-over',
      params: {
        low: tenths(leftOver.p10),
        high: tenths(leftOver.p90),
        middle: tenths(leftOver.p50),
        coldBy: chill.endAt,
        eatBy: new Date(Date.parse(plan.table.at) + LEFTOVER_DAYS * 86_400_000).toISOString(),
      },
    });
  if (unknownPieceIds.length > 0)
    said.push({
      id: 'plan.buy.unknown',
      params: { letters: unknownPieceIds.map((id) => pieceOf(cook, id).letter).join(', ') },
    });
  return said;
}

/** Meat and what burns and wraps, in one line: the rest stands among what is weighed. */
export const shopInShort = (report: PlanReport, print: Printer): string =>
  shopLines(report, print)
    .filter(({ section }) => section === 'butcher' || section === 'fire')
    .map(({ name, amount }) => `${name}${amount ? `, ${amount}` : ''}`)
    .map((text, k) => (k === 0 ? capital(text) : text))
    .join('; ');
