import type { Problem } from './problem.ts';
import type { EquipmentKind } from './types.ts';
import type { Network } from './windows.ts';

/** Something that holds a resource from a job's start (+ offset) to a job's start (+ offset), in slots. */
export interface Activity {
  readonly id: string;
  readonly amount: number;
  readonly startJob: number;
  readonly startOffset: number;
  readonly endJob: number;
  readonly endOffset: number;
}

export interface Resource {
  readonly kind: EquipmentKind;
  readonly capacity: number;
  readonly activities: readonly Activity[];
}

/** Every kind of equipment with what holds it; kinds that nobody counts are left out. */
export function resourcesOf(problem: Problem, network: Network): Resource[] {
  const byKind = new Map<EquipmentKind, Activity[]>();
  const add = (kind: EquipmentKind, activity: Activity): void => {
    if (problem.capacity[kind] === undefined || !(activity.amount > 0)) return;
    byKind.set(kind, [...(byKind.get(kind) ?? []), activity]);
  };
  problem.jobs.forEach((job, k) => {
    for (const need of job.needs)
      add(need.kind, {
        id: job.id,
        amount: need.amount,
        startJob: k,
        startOffset: 0,
        endJob: k,
        endOffset: job.duration,
      });
  });
  for (const stay of problem.stays) {
    const from = network.index.get(stay.from)!;
    const to = network.index.get(stay.to)!;
    add(stay.need.kind, {
      id: stay.id,
      amount: stay.need.amount,
      startJob: from,
      startOffset: network.duration[from]!,
      endJob: to,
      endOffset: 0,
    });
  }
  return [...byKind].map(([kind, activities]) => ({ kind, capacity: problem.capacity[kind]!, activities }));
}

/** Rounding slack on capacities: areas are sums of decimals. */
export const CAPACITY_EPSILON = 1e-9;

/** A smallest-first set of activities that together overload the resource at some moment, if any. */
export function overloaded(
  activities: readonly Activity[],
  capacity: number,
  startOf: (activity: Activity) => number,
  endOf: (activity: Activity) => number,
): readonly Activity[] | undefined {
  let all = 0;
  for (const { amount } of activities) all += amount;
  if (all <= capacity) return undefined;
  const starts = activities.map(startOf);
  const ends = activities.map(endOf);
  for (const moment of starts) {
    let load = 0;
    for (let i = 0; i < starts.length; i++)
      if (starts[i]! <= moment && moment < ends[i]!) load += activities[i]!.amount;
    if (load <= capacity + CAPACITY_EPSILON) continue;
    const active = activities.filter((_, i) => starts[i]! <= moment && moment < ends[i]!);
    const clash: Activity[] = [];
    let sum = 0;
    for (const a of active.sort((x, y) => y.amount - x.amount)) {
      clash.push(a);
      sum += a.amount;
      if (sum > capacity + CAPACITY_EPSILON) return clash;
    }
  }
  return undefined;
}
