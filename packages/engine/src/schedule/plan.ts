import type { Cook, Instant, Range } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import { type EpochS, SLOT_S } from './clock.ts';
import { composePlan } from './compose.ts';
import { lettersOf, named } from './named.ts';
import { type Contender, contenderOf } from './on-time.ts';
import { placeAll, placeOrGiveUp } from './place.ts';
import { placeNear } from './place-near.ts';
import { type Problem, problemOf } from './problem.ts';
import type { Starts } from './starts.ts';
import { startsOf } from './starts-of.ts';
import { buildTasks, sceneOf } from './tasks/build.ts';
import { type DraftTask, taskId } from './tasks/draft.ts';
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
  return planWith(cook, forecast, contenders, startsOf(cook, contenders), options);
}

/** What has happened and what hands have fixed, laid over the tasks as they were drafted. */
export interface Overlay {
  readonly nowS?: EpochS;
  readonly edit?: (task: DraftTask) => DraftTask | undefined;
  /** Where tasks stood before: they stay there if they can. */
  readonly stood?: ReadonlyMap<string, EpochS>;
}

const slotsOf = (problem: Problem, stood: ReadonlyMap<string, EpochS>): Map<string, number> =>
  new Map([...stood].map(([id, atS]) => [id, Math.round((atS - problem.originS) / SLOT_S)]));

/** Plans with starts already chosen. */
export function planWith(
  cook: Cook,
  forecast: CookForecast,
  contenders: readonly Contender[],
  starts: Starts,
  options: PlanOptions,
  overlay: Overlay = {},
): CookPlan {
  const scene = sceneOf(cook, Math.min(...starts.onS));
  const drafted = buildTasks(scene, contenders, forecast, starts, options.simmers);
  const pinned = options.pinned ?? {};
  const tasks = drafted.tasks.flatMap((task) => {
    const edited = overlay.edit ? overlay.edit(task) : task;
    if (!edited) return [];
    const pin = pinned[task.id];
    return [pin && !edited.doneAt ? { ...edited, pinned: pin } : edited];
  });
  const problem = problemOf(cook, { ...drafted, tasks }, scene, overlay.nowS);
  const stood = overlay.stood && slotsOf(problem, overlay.stood);
  const placed = placeOrGiveUp(problem, (asked) => {
    const near = stood && placeNear(asked, stood);
    return near ? { placement: near, by: 'greedy' } : placeAll(asked, options.solveLp);
  });
  const plan = composePlan({
    cook,
    forecast,
    contenders,
    scene,
    drafted: { ...drafted, tasks },
    problem: placed.problem,
    placed,
    starts,
    notices: drafted.notices,
    conflicts: named(placed.conflicts, tasks, cook),
  });
  return starts.chanceInOrder === undefined
    ? plan
    : { ...plan, conflicts: [orderConflict(cook, starts.chanceInOrder, plan), ...plan.conflicts] };
}

/** Where the order asked between pieces had to give way to the chance asked. */
function orderConflict(
  cook: Cook,
  chanceInOrder: number,
  { chanceAllOnTime, members }: Pick<CookPlan, 'chanceAllOnTime' | 'members'>,
): Conflict {
  const waiting = cook.pieces.filter((piece) => piece.after?.length);
  const chance = { from: chanceInOrder, to: chanceAllOnTime, members };
  return {
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
  };
}
