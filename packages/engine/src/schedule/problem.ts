import type { Cook } from '@pitwright/model';
import { type EpochS, epochS, instantOf, recurringSpans, SLOT_S, type Span } from './clock.ts';
import { asleepSpans } from './hands.ts';
import { type DraftPlan, type DraftTask, slotDurationS, type TaskScene } from './tasks/draft.ts';
import { DEFAULT_SHELVES, grateM2 } from './tasks/footprint.ts';
import type { EquipmentKind, EquipmentNeed, TaskKind, Workplace } from './types.ts';

/** From – to in slots, the end not included. */
export interface Slots {
  readonly from: number;
  readonly to: number;
}

/** A task on the slot grid. */
export interface Job {
  readonly id: string;
  readonly at: Workplace;
  readonly duration: number;
  readonly hands: number;
  readonly needs: readonly EquipmentNeed[];
  /** First and last slot at which it may start. */
  readonly earliest: number;
  readonly latest: number;
  readonly wish?: number;
  readonly earlyWeight: number;
  readonly lateWeight: number;
  readonly isPinned: boolean;
  /** It has happened: nobody can give it up. */
  readonly isDone?: boolean;
}

/** Start of `to` lies between `min` and `max` slots after the end of `from`. */
export interface Lag {
  readonly from: string;
  readonly to: string;
  readonly min: number;
  readonly max?: number;
  /** The least lag is the time that meat or fire takes: nobody can give it up. */
  readonly isCooking?: boolean;
}

export interface Worker {
  readonly id: string;
  readonly away: readonly Slots[];
  readonly asleep: readonly Slots[];
}

/** Equipment held from the end of one job to the start of another. */
export interface Stay {
  readonly id: string;
  readonly need: EquipmentNeed;
  readonly from: string;
  readonly to: string;
}

/** What is to be placed, on a grid of one minute from `originS`: all data whole numbers. */
export interface Problem {
  readonly originS: EpochS;
  readonly length: number;
  /** The present: nothing still to do starts before it; missing: the beginning. */
  readonly now?: number;
  /** The morning on which any work begins; missing: the beginning. */
  readonly opens?: number;
  readonly jobs: readonly Job[];
  readonly lags: readonly Lag[];
  readonly workers: readonly Worker[];
  readonly stays: readonly Stay[];
  readonly capacity: Readonly<Partial<Record<EquipmentKind, number>>>;
}

/** A start slot and the hands of every job. */
export interface Placement {
  readonly start: ReadonlyMap<string, number>;
  readonly hands: ReadonlyMap<string, readonly string[]>;
}

/** A placement and who found it. */
export interface Found {
  readonly placement: Placement;
  readonly by: 'solver' | 'greedy';
  /** How far from the best the solver may still be, as a share. */
  readonly gap?: number;
}

/** Most lags are given to the second; the grid keeps a least lag and may overrun no longest one. */
const slotsUp = (seconds: number): number => Math.ceil(seconds / SLOT_S - 1e-9);
const slotsDown = (seconds: number): number => Math.floor(seconds / SLOT_S + 1e-9);

/** What ends a stage on the heat, or waits for ash to be cold: its least lag is how long that takes. */
const COOKED: ReadonlySet<TaskKind> = new Set([
  'wrap',
  'unwrap',
  'glaze',
  'to-oven',
  'to-coals',
  'take-off',
  'test-bite',
  'ash-out',
]);
/** A fire and an oven take their time as well, whatever waits for them. */
const HEATING: ReadonlySet<TaskKind> = new Set(['light-fire', 'coal-bed', 'light-oven']);

export function problemOf(
  cook: Cook,
  plan: DraftPlan,
  { horizon, opensS }: Pick<TaskScene, 'horizon' | 'opensS'>,
  nowS?: EpochS,
): Problem {
  const length = slotsUp(horizon.toS - horizon.fromS);
  const kinds = new Map(plan.tasks.map((task) => [task.id, task.kind]));
  return {
    originS: horizon.fromS,
    length,
    ...(nowS !== undefined && { now: slotsUp(Math.max(0, nowS - horizon.fromS)) }),
    opens: slotsUp(opensS - horizon.fromS),
    jobs: plan.tasks.map((task) => jobOf(task, horizon, length)),
    lags: plan.tasks.flatMap((task) =>
      task.after
        .filter((lag) => kinds.has(lag.id))
        .map((lag) => {
          const min = slotsUp(lag.minLagS);
          return {
            from: lag.id,
            to: task.id,
            min,
            ...((COOKED.has(task.kind) || HEATING.has(kinds.get(lag.id)!)) && { isCooking: true }),
            ...(lag.maxLagS !== undefined && { max: Math.max(min, slotsDown(lag.maxLagS)) }),
          };
        }),
    ),
    workers: cook.hands.map((hand) => ({
      id: hand.id,
      away: (hand.away ?? []).flatMap((away) => toSlots(recurringSpans(away, cook.zone, horizon), horizon)),
      asleep: toSlots(asleepSpans(hand, cook.zone, horizon), horizon),
    })),
    stays: plan.occupancies
      .filter((stay) => kinds.has(stay.fromTaskId) && kinds.has(stay.toTaskId))
      .map((stay) => ({ id: stay.id, need: stay.need, from: stay.fromTaskId, to: stay.toTaskId })),
    capacity: capacityOf(cook),
  };
}

export const capacityOf = (cook: Cook): Problem['capacity'] => ({
  burner: cook.kitchen.burners,
  oven: cook.kitchen.ovens,
  'fridge-shelf': cook.kitchen.fridgeShelves ?? DEFAULT_SHELVES,
  grate: grateM2(cook.pit),
});

function jobOf(task: DraftTask, horizon: Span, length: number): Job {
  const slot = (seconds: EpochS): number => (seconds - horizon.fromS) / SLOT_S;
  const duration = slotDurationS(task) / SLOT_S;
  const held = task.doneAt ?? task.pinned;
  const heldAt = held === undefined ? undefined : Math.round(slot(epochS(held)));
  const earliest = task.earliestAt === undefined ? 0 : Math.ceil(slot(epochS(task.earliestAt)) - 1e-9);
  const latest =
    task.latestAt === undefined ? length - duration : Math.floor(slot(epochS(task.latestAt)) + 1e-9);
  return {
    id: task.id,
    at: task.at,
    duration,
    hands: task.hands,
    needs: task.equipment,
    earliest: heldAt ?? Math.max(0, earliest),
    latest: heldAt ?? Math.min(length - duration, latest),
    ...(task.wishS !== undefined && { wish: Math.round(slot(task.wishS)) }),
    earlyWeight: task.earlyWeight,
    lateWeight: task.lateWeight,
    isPinned: held !== undefined,
    ...(task.doneAt && { isDone: true }),
  };
}

const toSlots = (spans: readonly Span[], horizon: Span): Slots[] =>
  spans.map((span) => ({
    from: Math.floor((span.fromS - horizon.fromS) / SLOT_S),
    to: Math.ceil((span.toS - horizon.fromS) / SLOT_S),
  }));

export const slotInstant = (problem: Problem, slot: number): string =>
  instantOf(problem.originS + slot * SLOT_S);
