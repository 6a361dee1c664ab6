import { type EpochS, epochS, FIVE_MINUTES_S, roundToFive } from './clock.ts';
import {
  allReadyS,
  and,
  type Contender,
  countOf,
  meanWaitS,
  onTimeFlags,
  rangeOf,
  type TableS,
} from './on-time.ts';

export interface Starts {
  /** In the order of the contenders. */
  readonly onS: readonly EpochS[];
  /** Share of the members with all pieces on time. */
  readonly chance: number;
  readonly reachesAsked: boolean;
  /** Whether the order asked between pieces is kept. */
  readonly keepsOrder: boolean;
  /** Best chance with the order kept, where it was given up for the chance asked. */
  readonly chanceInOrder?: number;
}

interface Candidate {
  readonly onS: EpochS;
  readonly flags: Uint8Array;
  readonly waitS: number;
}

/** How far starts `onS` break the order asked between pieces [s]; 0 keeps it. */
export type OrderBreach = (onS: readonly EpochS[]) => number;

/** Price of the night that starts `onS` bring: lower is better; the same unit for all of one cook. */
export type NightPrice = (onS: readonly EpochS[]) => number;

/**
 * The start of every piece, on five minutes, so that the share of members in which all are on time reaches
 * `chanceAsked`; among those, least night, then least waiting after ready. A piece with `onAt` stays there.
 *
 * The share of one ensemble is used to choose and to judge, so the chosen share is flattered by about half a member's
 * standard error (1–2 % at 200 members); the printed figure is rounded to 5 %.
 * Method: coordinate ascent on the joint count to the best reachable share; then single steps of five minutes, each
 * the one that saves most waiting per member lost, and exchanges between two pieces, until none helps.
 */
export function chooseStarts(
  contenders: readonly Contender[],
  table: TableS,
  chanceAsked: number,
  nightPrice: NightPrice = () => 0,
  orderBreach: OrderBreach = () => 0,
): Starts {
  const members = contenders[0]?.members ?? 0;
  if (contenders.some((contender) => contender.members !== members))
    throw new RangeError('all pieces need the same members');
  const menus = contenders.map((contender) => candidatesOf(contender, table));
  const asked = Math.ceil(chanceAsked * members - 1e-9);
  const startsAt = (at: readonly number[]): EpochS[] => at.map((k, p) => menus[p]![k]!.onS);
  const jointOf = (at: readonly number[]): number =>
    countOf(at.map((k, p) => menus[p]![k]!.flags).reduce(and, new Uint8Array(members).fill(1))) -
    BREACH_MEMBERS_PER_S * orderBreach(startsAt(at));
  const best = ascend(menus, climb(menus, members), jointOf);
  const bestCount = jointOf(best);
  const goal = Math.min(asked, bestCount);
  const chosen = settle(menus, best, goal, jointOf, nightPrice);
  return {
    onS: startsAt(chosen),
    chance: members ? Math.max(0, jointOf(chosen)) / members : 0,
    reachesAsked: bestCount >= asked,
    keepsOrder: orderBreach(startsAt(chosen)) === 0,
  };
}

/** Starts worth weighing: all those with some member on time, earliest first; at least one. */
function candidatesOf(contender: Contender, table: TableS): Candidate[] {
  const candidate = (onS: EpochS): Candidate => ({
    onS,
    flags: onTimeFlags(contender, onS, table),
    waitS: meanWaitS(contender, onS, table),
  });
  if (contender.piece.onAt) return [candidate(epochS(contender.piece.onAt))];
  const finite = allReadyS(contender).filter((readyS) => readyS < Infinity);
  if (finite.length === 0) return [candidate(roundToFive(table.atS - NO_TIME_KNOWN_S))];
  const ready = rangeOf(finite);
  const longest = finite.reduce((a, b) => Math.max(a, b), 0);
  const firstS = roundToFive(table.atS - longest - contender.rule.holdLongestS);
  const lastS = roundToFive(table.untilS - contender.rule.restLeastS);
  const menu: Candidate[] = [];
  for (let onS = firstS; onS <= lastS; onS += FIVE_MINUTES_S) {
    const next = candidate(onS);
    if (countOf(next.flags) > 0) menu.push(next);
  }
  return menu.length ? menu : [candidate(roundToFive(table.atS - ready.p50 - contender.rule.restLeastS))];
}

/** A broken order weighs more than any number of members. */
const BREACH_MEMBERS_PER_S = 10;

/** Half a day before the table, for a piece that no member ever gets ready. */
const NO_TIME_KNOWN_S = 12 * 3600;

/** Places in the menus with the largest joint count that single changes find; ties go to less waiting. */
function climb(menus: readonly (readonly Candidate[])[], members: number): number[] {
  const at = menus.map((menu) => {
    let best = 0;
    let bestCount = -1;
    menu.forEach((candidate, k) => {
      const count = countOf(candidate.flags);
      if (count >= bestCount) {
        best = k;
        bestCount = count;
      }
    });
    return best;
  });
  for (let round = 0; round < 20; round++) {
    let hasMoved = false;
    menus.forEach((menu, p) => {
      const others = at
        .map((k, q) => (q === p ? undefined : menus[q]![k]!.flags))
        .reduce<Uint8Array>((all, flags) => (flags ? and(all, flags) : all), new Uint8Array(members).fill(1));
      let bestCount = countOf(and(others, menu[at[p]!]!.flags));
      menu.forEach((candidate, k) => {
        const count = countOf(and(others, candidate.flags));
        if (count > bestCount || (count === bestCount && candidate.waitS < menu[at[p]!]!.waitS - 1)) {
          bestCount = count;
          at[p] = k;
          hasMoved = true;
        }
      });
    });
    if (!hasMoved) break;
  }
  return at;
}

/** Single and paired moves while they raise the joint count: what single changes of `climb` cannot see. */
function ascend(
  menus: readonly (readonly Candidate[])[],
  from: readonly number[],
  jointOf: (at: readonly number[]) => number,
): number[] {
  let at = [...from];
  let joint = jointOf(at);
  for (let step = 0; step < 500; step++) {
    let best: number[] | undefined;
    for (const moved of neighbours(at, menus)) {
      const count = jointOf(moved);
      if (count > joint) {
        joint = count;
        best = moved;
      }
    }
    if (!best) return at;
    at = best;
  }
  return at;
}

/** From the best reachable places towards less night and less waiting, never below `goal` members. */
function settle(
  menus: readonly (readonly Candidate[])[],
  from: readonly number[],
  goal: number,
  jointOf: (at: readonly number[]) => number,
  nightPrice: NightPrice,
): number[] {
  const starts = (at: readonly number[]): EpochS[] => at.map((k, p) => menus[p]![k]!.onS);
  const waitOf = (at: readonly number[]): number => at.reduce((sum, k, p) => sum + menus[p]![k]!.waitS, 0);
  let at = [...from];
  let night = nightPrice(starts(at));
  let wait = waitOf(at);
  let joint = jointOf(at);
  for (let step = 0; step < 2000; step++) {
    let bestMove: { at: number[]; night: number; wait: number; joint: number; worth: number } | undefined;
    for (const moved of neighbours(at, menus)) {
      const count = jointOf(moved);
      if (count < goal) continue;
      const movedNight = nightPrice(starts(moved));
      const movedWait = waitOf(moved);
      const gain = night - movedNight;
      if (gain < 0 || (gain === 0 && !(wait - movedWait > 1))) continue;
      const worth = gain > 0 ? 1e9 * gain : (wait - movedWait) / (1 + Math.max(0, joint - count));
      if (!bestMove || worth > bestMove.worth)
        bestMove = { at: moved, night: movedNight, wait: movedWait, joint: count, worth };
    }
    if (!bestMove) break;
    ({ at, night, wait, joint } = bestMove);
  }
  return at;
}

/** One piece by 5, 15 or 60 min, or one later by 5 while another goes earlier by 5 or 10. */
function neighbours(at: readonly number[], menus: readonly (readonly Candidate[])[]): number[][] {
  const moved: number[][] = [];
  const push = (changes: readonly (readonly [number, number])[]): void => {
    const next = [...at];
    for (const [p, by] of changes) {
      next[p] = next[p]! + by;
      if (next[p]! < 0 || next[p]! >= menus[p]!.length) return;
    }
    moved.push(next);
  };
  at.forEach((_, p) => {
    for (const by of [1, 3, 12, -1, -3, -12]) push([[p, by]]);
    at.forEach((__, q) => {
      if (q !== p)
        for (const back of [-1, -2])
          push([
            [p, 1],
            [q, back],
          ]);
    });
  });
  return moved;
}
