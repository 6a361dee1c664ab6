import type { Piece, Range } from '@pitwright/model';
import type { PieceForecast } from '../forecast/types.ts';
import type { EpochS } from './clock.ts';
import { heatStages, type RestRule, restRuleOf } from './rest-rules.ts';

export interface TableS {
  readonly atS: EpochS;
  readonly untilS: EpochS;
}

/** What the choice of a start needs to know of one piece (all its alike items). */
export interface Contender {
  readonly piece: Piece;
  readonly items: readonly Pick<PieceForecast, 'readyS' | 'pastBiteS' | 'stages'>[];
  readonly members: number;
  readonly rule: RestRule;
  /** Its last stage on the heat lasts until the table asks: then it can soften too far while it waits. */
  readonly waitsOnHeat: boolean;
  /** Its last stage on the heat ends by the bite itself; else by clock, temperature or bark, tender or not. */
  readonly endsByBite: boolean;
  /** Median end of its last stage on the heat [s from meat-on], where most members get there. */
  readonly heatEndS?: number;
}

export function contenderOf(
  piece: Piece,
  among: readonly Piece[],
  forecasts: readonly PieceForecast[],
): Contender {
  const items = forecasts.filter((forecast) => forecast.pieceId === piece.id);
  const members = items[0]?.readyS.length ?? 0;
  if (!(members > 0)) throw new RangeError(`piece ${piece.id} has no forecast members`);
  if (items.some((item) => item.readyS.length !== members || item.pastBiteS.length !== members))
    throw new RangeError(`piece ${piece.id}: columns of different lengths`);
  const onHeat = heatStages(piece);
  const last = onHeat.at(-1);
  const heatEndS = items[0]?.stages[onHeat.length - 1]?.endS?.p50;
  return {
    piece,
    items,
    members,
    rule: restRuleOf(piece, among),
    waitsOnHeat: last?.until.by === 'table',
    endsByBite: last?.until.by === 'bite',
    ...(heatEndS !== undefined && heatEndS < Infinity && { heatEndS }),
  };
}

export type Miss = 'late' | 'heldTooLong' | 'tooSoft' | 'never';

/** Why member `m` of a piece put on at `onS` is not on time, or undefined when it is. */
export function missOf(contender: Contender, member: number, onS: EpochS, table: TableS): Miss | undefined {
  const { rule } = contender;
  for (const item of contender.items) {
    const readyS = item.readyS[member]!;
    if (!(readyS < Infinity)) return 'never';
    const restedAtS = onS + readyS + rule.restLeastS;
    if (!(restedAtS <= table.untilS)) return 'late';
    const served = Math.max(table.atS, restedAtS);
    if (!(served - (onS + readyS) <= rule.holdLongestS)) return 'heldTooLong';
    const leavesHeatS = contender.waitsOnHeat ? served - onS - rule.restLeastS : readyS;
    if (!(item.pastBiteS[member]! >= leavesHeatS)) return 'tooSoft';
  }
  return undefined;
}

/** Member by member, 1 where the piece is on time. */
export function onTimeFlags(contender: Contender, onS: EpochS, table: TableS): Uint8Array {
  const flags = new Uint8Array(contender.members);
  for (let m = 0; m < contender.members; m++)
    flags[m] = missOf(contender, m, onS, table) === undefined ? 1 : 0;
  return flags;
}

/** Mean time that the members which get there wait between ready and the table [s]. */
export function meanWaitS(contender: Contender, onS: EpochS, table: TableS): number {
  let sum = 0;
  let count = 0;
  for (const item of contender.items)
    for (const readyS of item.readyS) {
      if (!(readyS < Infinity)) continue;
      sum += Math.max(0, table.atS - (onS + readyS));
      count++;
    }
  return count ? sum / count : 0;
}

export const countOf = (flags: Uint8Array): number => {
  let count = 0;
  for (const flag of flags) count += flag;
  return count;
};

export function and(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length);
  for (let m = 0; m < a.length; m++) both[m] = a[m]! & b[m]!;
  return both;
}

/** Point below which a share `q` of the sorted values lies, linear between them; ∞ sorts last and stays ∞. */
export function quantile(sorted: readonly number[] | Float64Array, q: number): number {
  if (sorted.length === 0) throw new RangeError('no quantile of nothing');
  const place = q * (sorted.length - 1);
  const low = sorted[Math.floor(place)]!;
  const high = sorted[Math.ceil(place)]!;
  if (low === high) return low;
  return high < Infinity ? low + (high - low) * (place - Math.floor(place)) : high;
}

/** Range of the values, ∞ counted as never; the points of a share that never arrives are ∞. */
export function rangeOf(values: readonly number[] | Float64Array): Range {
  const sorted = Float64Array.from(values).sort();
  const never = sorted.reduce((count, value) => count + (value < Infinity ? 0 : 1), 0);
  return {
    p10: quantile(sorted, 0.1),
    p50: quantile(sorted, 0.5),
    p90: quantile(sorted, 0.9),
    neverShare: never / sorted.length,
  };
}

/** When all items of a piece are ready, member by member [s from its meat-on]. */
export function allReadyS(contender: Contender): Float64Array {
  const ready = new Float64Array(contender.members);
  for (let m = 0; m < contender.members; m++) {
    let latest = 0;
    for (const item of contender.items) latest = Math.max(latest, item.readyS[m]!);
    ready[m] = latest;
  }
  return ready;
}
