import type { Cook } from '@pitwright/model';
import { type EpochS, epochS, FIVE_MINUTES_S, HOUR_S, type Span } from './clock.ts';
import { allAsleep } from './hands.ts';
import { finishesInOven, nightPriceOf } from './night.ts';
import { allReadyS, type Contender, rangeOf } from './on-time.ts';
import { chooseStarts, type Starts } from './starts.ts';

/** The order asked between pieces is given up for no less than this share. */
const WORTH_THE_ORDER = 0.1;

/** Starts for the chance asked, with the night and the order between pieces priced. */
export function startsOf(
  cook: Cook,
  contenders: readonly Contender[],
  chanceAsked = cook.chanceAsked,
): Starts {
  const table = { atS: epochS(cook.table.at), untilS: epochS(cook.table.until) };
  const nights: Span = { fromS: table.atS - 48 * HOUR_S, toS: table.untilS };
  const asleep = allAsleep(cook, nights);
  const readyS = contenders.map((contender) => medianOr(contender, 12 * HOUR_S));
  const onFire = contenders.map(({ piece }) => !finishesInOven(piece));
  const nightPrice = (onS: readonly EpochS[]): number =>
    nightPriceOf(
      cook,
      asleep,
      onS.map((s, p) => ({ onS: s, offHeatS: onFire[p] ? readyS[p]! : readyS[p]! / 2 })),
    );
  const breach = (onS: readonly EpochS[]): number => orderBreachS(contenders, onS, readyS);
  const inOrder = chooseStarts(contenders, table, chanceAsked, nightPrice, breach);
  if (inOrder.reachesAsked || !contenders.some(({ piece }) => piece.after?.length)) return inOrder;
  // The chance asked comes before the order asked, where it gains by it: what the order costs is said as a conflict.
  const free = chooseStarts(contenders, table, chanceAsked, nightPrice);
  return free.chance >= inOrder.chance + WORTH_THE_ORDER
    ? { ...free, keepsOrder: breach(free.onS) === 0, chanceInOrder: inOrder.chance }
    : inOrder;
}

const medianOr = (contender: Contender, otherwiseS: number): number => {
  const { p50 } = rangeOf(allReadyS(contender));
  return p50 < Infinity ? p50 : otherwiseS;
};

/** A piece that waits for others goes on when their median is off the pit. */
function orderBreachS(
  contenders: readonly Contender[],
  onS: readonly EpochS[],
  readyS: readonly number[],
): number {
  let breach = 0;
  contenders.forEach(({ piece }, p) => {
    for (const id of piece.after ?? []) {
      const q = contenders.findIndex((other) => other.piece.id === id);
      if (q >= 0) breach += Math.max(0, onS[q]! + readyS[q]! + FIVE_MINUTES_S - onS[p]!);
    }
  });
  return breach;
}
