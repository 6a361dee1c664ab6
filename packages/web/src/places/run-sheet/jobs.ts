import type { CookPlan, PlacedTask, Task } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';

/** A job with where it lies. */
export interface Job {
  readonly task: Task;
  readonly placed: PlacedTask;
}

/** Jobs in the order of the days; `byHand` leaves out what happens by itself. */
export function jobsOf(plan: CookPlan): readonly Job[] {
  const tasks = new Map(plan.tasks.map((task): [string, Task] => [task.id, task]));
  return plan.placed.flatMap((placed) => {
    const task = tasks.get(placed.taskId);
    return task ? [{ task, placed }] : [];
  });
}

/** Place of each job in the list of all, from 1: said where a drawing has no room for its words. */
export const numbersOf = (plan: CookPlan): ReadonlyMap<string, number> =>
  new Map(jobsOf(plan).map(({ task }, index) => [task.id, index + 1]));

export const isByHand = ({ placed }: Job): boolean => placed.handIds.length > 0;

export const msOf = (instant: string): number => Date.parse(instant);
export const secondsOf = (instant: string): number => msOf(instant) / 1000;

/** Jobs of the night this close together are one waking. */
const ONE_WAKING_MS = 45 * 60_000;

/** When somebody gets up: the first job of each waking. */
export function wakingsOf(plan: CookPlan): readonly string[] {
  const wakings: string[] = [];
  let awakeUntil = -Infinity;
  for (const { placed } of jobsOf(plan).filter(isByHand)) {
    if (!placed.inNight) continue;
    if (msOf(placed.startAt) > awakeUntil + ONE_WAKING_MS) wakings.push(placed.startAt);
    awakeUntil = Math.max(awakeUntil, msOf(placed.endAt));
  }
  return wakings;
}

const LEAST_FREE_MS = 3_600_000;

/** Stretches between the jobs of a hand that are long enough for something else, awake. */
export function freeHours(
  cook: Cook,
  plan: CookPlan,
  asleep: readonly { readonly fromS: number; readonly toS: number }[],
): readonly { readonly fromAt: string; readonly toAt: string }[] {
  const hand = cook.hands[0]?.id;
  const busy = [
    ...jobsOf(plan)
      .filter(({ placed }) => hand !== undefined && placed.handIds.includes(hand))
      .map(({ placed }) => ({ from: msOf(placed.startAt), to: msOf(placed.endAt) })),
    ...asleep.map(({ fromS, toS }) => ({ from: fromS * 1000, to: toS * 1000 })),
  ].sort((a, b) => a.from - b.from);
  const last = msOf(plan.table.at);
  const free: { fromAt: string; toAt: string }[] = [];
  const first = jobsOf(plan).find(({ placed }) => hand !== undefined && placed.handIds.includes(hand));
  let edge = first ? msOf(first.placed.startAt) : last;
  for (const { from, to } of busy) {
    if (from > last) break;
    if (from - edge >= LEAST_FREE_MS)
      free.push({ fromAt: new Date(edge).toISOString(), toAt: new Date(from).toISOString() });
    edge = Math.max(edge, to);
  }
  return free;
}
