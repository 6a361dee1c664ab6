import type { Cook, Instant, Range } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import {
  commonSpans,
  type EpochS,
  epochS,
  FIVE_MINUTES_S,
  HOUR_S,
  recurringSpans,
  type Span,
} from './clock.ts';
import { composePlan } from './compose.ts';
import { allAsleep } from './hands.ts';
import { lettersOf, named } from './named.ts';
import { finishesInOven, nightPriceOf } from './night.ts';
import { allReadyS, type Contender, contenderOf, rangeOf } from './on-time.ts';
import { placeAll, placeOrGiveUp } from './place.ts';
import { problemOf } from './problem.ts';
import { chooseStarts, type Starts } from './starts.ts';
import { buildTasks, sceneOf } from './tasks/build.ts';
import { taskId } from './tasks/draft.ts';
import type { Conflict, CookPlan, Demand, SolveLp } from './types.ts';

export interface PlanOptions {
  /** Missing: placed greedily, without a proven gap. */
  readonly solveLp?: SolveLp;
  /** Foreseen length of each sauce's simmer, by formula id [s]. */
  readonly simmers?: Readonly<Record<string, Range>>;
  /** Starts set by hand, by task id. */
  readonly pinned?: Readonly<Record<string, Instant>>;
}

/**
 * The whole plan of a cook: every piece's start for the chance asked, then all the work of two days on hands and
 * equipment, backwards from the table.
 */
export function planCook(cook: Cook, forecast: CookForecast, options: PlanOptions = {}): CookPlan {
  const contenders = cook.pieces.map((piece) => contenderOf(piece, cook.pieces, forecast.pieces));
  const starts = startsOf(cook, contenders);
  const scene = sceneOf(cook, Math.min(...starts.onS));
  const drafted = buildTasks(scene, contenders, forecast, starts, options.simmers);
  const pinned = options.pinned ?? {};
  const tasks = drafted.tasks.map((task) => (pinned[task.id] ? { ...task, pinned: pinned[task.id]! } : task));
  const problem = problemOf(cook, { ...drafted, tasks }, scene.horizon);
  const placed = placeOrGiveUp(problem, (asked) => placeAll(asked, options.solveLp));
  return composePlan({
    cook,
    forecast,
    contenders,
    scene,
    drafted: { ...drafted, tasks },
    problem: placed.problem,
    placed,
    starts,
    conflicts: [
      ...orderConflict(cook, starts, contenders[0]?.members ?? 0),
      ...named(placed.conflicts, tasks, cook),
    ],
  });
}

/** Where the order asked between pieces had to give way to the chance asked. */
function orderConflict(cook: Cook, starts: Starts, members: number): Conflict[] {
  if (starts.chanceInOrder === undefined) return [];
  const waiting = cook.pieces.filter((piece) => piece.after?.length);
  const chance = { from: starts.chanceInOrder, to: starts.chance, members };
  return [
    {
      demands: [
        {
          id: 'chance',
          kind: 'chance',
          taskIds: [],
          said: { id: 'demand.asked-chance', params: { share: cook.chanceAsked, members } },
        },
        ...waiting.map(
          (piece): Demand => ({
            id: `order:${piece.id}`,
            kind: 'lag',
            taskIds: [taskId(piece.id, 'meat-on')],
            said: {
              id: 'demand.order',
              params: { piece: piece.letter, after: lettersOf(cook, piece.after!) },
            },
          }),
        ),
      ],
      wayOut: [
        { demandId: 'chance', buys: { id: 'way-out.asked-chance', params: chance } },
        ...waiting.map((piece) => ({
          demandId: `order:${piece.id}`,
          buys: { id: 'way-out.order', params: chance },
        })),
      ],
      giveUpId: `order:${waiting[0]!.id}`,
    },
  ];
}

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
  // The chance asked comes before the order asked: what the order would cost is said as a conflict.
  const free = chooseStarts(contenders, table, chanceAsked, nightPrice);
  return free.score > inOrder.score
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
