import type { CookPlan } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { Sheet } from './check-schedule.ts';

const minutes = (instant: string): number => Date.parse(instant) / 60_000;

/** A finished plan as the independent checker reads it: minutes since 1970, only what the public record says. */
export function sheetOfPlan(plan: CookPlan, cook: Cook): Sheet {
  const placed = new Map(plan.placed.map((one) => [one.taskId, one]));
  return {
    jobs: plan.tasks.map((task) => {
      const at = placed.get(task.id)!;
      return {
        id: task.id,
        start: minutes(at.startAt),
        duration: minutes(at.endAt) - minutes(at.startAt),
        earliest: task.earliestAt ? minutes(task.earliestAt) : -Infinity,
        latest: task.latestAt ? minutes(task.latestAt) : Infinity,
        handsNeeded: task.hands,
        handIds: at.handIds,
        needs: task.equipment,
      };
    }),
    lags: plan.tasks.flatMap((task) =>
      task.after
        .filter((lag) => placed.has(lag.id))
        .map((lag) => ({
          from: lag.id,
          to: task.id,
          min: lag.minLagS / 60,
          ...(lag.maxLagS !== undefined && { max: lag.maxLagS / 60 }),
        })),
    ),
    stays: plan.occupancies
      .filter((stay) => placed.has(stay.fromTaskId) && placed.has(stay.toTaskId))
      .map((stay) => ({ id: stay.id, from: stay.fromTaskId, to: stay.toTaskId, need: stay.need })),
    hands: cook.hands.map((hand) => ({
      id: hand.id,
      away: (hand.away ?? []).map((span) => ({ from: minutes(span.from), to: minutes(span.to) })),
    })),
    capacity: Object.fromEntries(plan.equipmentUse.map((use) => [use.kind, use.capacity])),
  };
}
