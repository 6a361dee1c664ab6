import type { Cook, Instant } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import { epochS, HOUR_S, instantOf } from './clock.ts';
import { allAsleep } from './hands.ts';
import { finishesInOven, nightPriceOf } from './night.ts';
import { allReadyS, contenderOf, meanWaitS, rangeOf } from './on-time.ts';
import { startsOf } from './starts-of.ts';

/** What a way of cooking comes to, before any job is placed. */
export interface Price {
  readonly chanceAllOnTime: number;
  readonly reachesAsked: boolean;
  /** Sleep lost to the fire and to starts in the night [s]. */
  readonly nightWorkS: number;
  readonly firstOnAt: Instant;
  /** Mean time between ready and table, over the pieces [s]. */
  readonly waitS: number;
}

/** Chooses the starts of a cook as `planCook` would, and prices them. */
export function priceCook(cook: Cook, forecast: CookForecast): Price {
  const contenders = cook.pieces.map((piece) => contenderOf(piece, cook.pieces, forecast.pieces));
  const starts = startsOf(cook, contenders);
  const table = { atS: epochS(cook.table.at), untilS: epochS(cook.table.until) };
  const asleep = allAsleep(cook, { fromS: table.atS - 48 * HOUR_S, toS: table.untilS });
  const ready = contenders.map((contender) => {
    const { p50 } = rangeOf(allReadyS(contender));
    return p50 < Infinity ? p50 : (contender.heatEndS ?? 12 * HOUR_S);
  });
  const wait = contenders.reduce((sum, contender, p) => sum + meanWaitS(contender, starts.onS[p]!, table), 0);
  return {
    chanceAllOnTime: starts.chance,
    reachesAsked: starts.reachesAsked,
    nightWorkS: nightPriceOf(
      cook,
      asleep,
      starts.onS.map((onS, p) => ({
        onS,
        offHeatS: finishesInOven(contenders[p]!.piece) ? ready[p]! / 2 : ready[p]!,
      })),
    ),
    firstOnAt: instantOf(Math.min(...starts.onS)),
    waitS: contenders.length ? wait / contenders.length : 0,
  };
}
