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

/** How far all starts may give around the chosen ones without losing the chance [s]. */
export interface StartGives {
  readonly earlierS: number;
  readonly laterS: number;
}

export interface Starts {
  /** In the order of the contenders. */
  readonly onS: readonly EpochS[];
  /** Share of the members with all pieces on time. */
  readonly chance: number;
  readonly reachesAsked: boolean;
  /** Members of all together, and with a tenth of the weight of each piece alone: what was made largest. */
  readonly score: number;
  /** Whether the order asked between pieces is kept. */
  readonly keepsOrder: boolean;
  /** Room that the placing of the work may use. */
  readonly gives: StartGives;
  /** Best chance with the order kept, where it was given up for the chance asked. */
  readonly chanceInOrder?: number;
}

interface Candidate {
  readonly onS: EpochS;
  readonly flags: Uint8Array;
  /** Members on time. */
  readonly count: number;
  readonly waitS: number;
}

const GIVES: readonly StartGives[] = [
  { earlierS: 10 * 60, laterS: 5 * 60 },
  { earlierS: 5 * 60, laterS: 5 * 60 },
  { earlierS: 5 * 60, laterS: 0 },
];
/** Members that the widest room may cost, of a hundred. */
const GIVES_MAY_COST = 0.02;

/** The widest room in which even the worst corner keeps nearly the same members on time. */
function givesOf(
  contenders: readonly Contender[],
  onS: readonly EpochS[],
  table: TableS,
  count: number,
): StartGives {
  const members = contenders[0]?.members ?? 0;
  const inAllCorners = (gives: StartGives): number =>
    countOf(
      contenders
        .flatMap((contender, p) =>
          [onS[p]! - gives.earlierS, onS[p]! + gives.laterS].map((s) => onTimeFlags(contender, s, table)),
        )
        .reduce(and, new Uint8Array(members).fill(1)),
    );
  return GIVES.find((gives) => inAllCorners(gives) >= count - GIVES_MAY_COST * members) ?? GIVES.at(-1)!;
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
  // A piece that hardly ever gets there must not make the others' starts a matter of indifference.
  const scoreOf = (at: readonly number[]): number =>
    jointOf(at) + ALONE_WEIGHT * at.reduce((sum, k, p) => sum + menus[p]![k]!.count, 0);
  const best = ascend(menus, climb(menus, scoreOf), scoreOf);
  const bestCount = jointOf(best);
  const chosen =
    bestCount >= asked
      ? settle(menus, best, asked, jointOf, nightPrice)
      : settle(menus, best, scoreOf(best) - 1e-9, scoreOf, nightPrice);
  return {
    onS: startsAt(chosen),
    chance: members ? Math.max(0, jointOf(chosen)) / members : 0,
    reachesAsked: bestCount >= asked,
    score: scoreOf(chosen),
    gives: givesOf(contenders, startsAt(chosen), table, jointOf(chosen)),
    keepsOrder: orderBreach(startsAt(chosen)) === 0,
  };
}

/** Starts worth weighing: all those with some member on time, earliest first; at least one. */
function candidatesOf(contender: Contender, table: TableS): Candidate[] {
  const candidate = (onS: EpochS): Candidate => {
    const flags = onTimeFlags(contender, onS, table);
    return { onS, flags, count: countOf(flags), waitS: meanWaitS(contender, onS, table) };
  };
  if (contender.piece.onAt) return [candidate(epochS(contender.piece.onAt))];
  const finite = allReadyS(contender).filter((readyS) => readyS < Infinity);
  if (finite.length === 0) {
    const lastsS =
      contender.heatEndS === undefined ? NO_TIME_KNOWN_S : contender.heatEndS + contender.rule.restLeastS;
    const menu: Candidate[] = [];
    for (let onS = roundToFive(table.atS - lastsS); onS <= table.untilS - lastsS; onS += FIVE_MINUTES_S)
      menu.push(candidate(onS));
    return menu;
  }
  const ready = rangeOf(finite);
  const longest = finite.reduce((a, b) => Math.max(a, b), 0);
  const firstS = roundToFive(table.atS - longest - contender.rule.holdLongestS);
  const lastS = roundToFive(table.untilS - contender.rule.restLeastS);
  const menu: Candidate[] = [];
  for (let onS = firstS; onS <= lastS; onS += FIVE_MINUTES_S) {
    const next = candidate(onS);
    if (next.count > 0) menu.push(next);
  }
  return menu.length ? menu : [candidate(roundToFive(table.atS - ready.p50 - contender.rule.restLeastS))];
}

/** Members of one piece alone against members of all together, where the chance asked is out of reach. */
const ALONE_WEIGHT = 0.1;

/** A broken order weighs more than any number of members. */
const BREACH_MEMBERS_PER_S = 10;

/** Half a day before the table, for a piece that no member ever gets ready and no stage ends. */
const NO_TIME_KNOWN_S = 12 * 3600;

/** Places in the menus with the largest score that single changes find; ties go to less waiting. */
function climb(
  menus: readonly (readonly Candidate[])[],
  scoreOf: (at: readonly number[]) => number,
): number[] {
  const at = menus.map((menu) =>
    menu.reduce((best, candidate, k) => (candidate.count >= menu[best]!.count ? k : best), 0),
  );
  let best = scoreOf(at);
  for (let round = 0; round < 20; round++) {
    let hasMoved = false;
    menus.forEach((menu, p) => {
      for (let k = 0; k < menu.length; k++) {
        const before = at[p]!;
        at[p] = k;
        const score = scoreOf(at);
        if (score > best || (score === best && menu[k]!.waitS < menu[before]!.waitS - 1)) {
          best = score;
          hasMoved = true;
        } else at[p] = before;
      }
    });
    if (!hasMoved) break;
  }
  return at;
}

/** Single and paired moves while they raise the score: what single changes of `climb` cannot see. */
function ascend(
  menus: readonly (readonly Candidate[])[],
  from: readonly number[],
  scoreOf: (at: readonly number[]) => number,
): number[] {
  let at = [...from];
  let score = scoreOf(at);
  for (let step = 0; step < 500; step++) {
    let best: number[] | undefined;
    for (const moved of neighbours(at, menus)) {
      const reached = scoreOf(moved);
      if (reached > score) {
        score = reached;
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
