/**
 * Judges a finished run sheet from its plain figures. Shares no code with the planner and imports nothing of it: a
 * schedule that both call right was found wrong by neither.
 */
export interface SheetJob {
  readonly id: string;
  readonly start: number;
  readonly duration: number;
  readonly earliest: number;
  readonly latest: number;
  readonly handsNeeded: number;
  readonly handIds: readonly string[];
  readonly needs: readonly { readonly kind: string; readonly amount: number }[];
}

export interface Sheet {
  readonly jobs: readonly SheetJob[];
  readonly lags: readonly {
    readonly from: string;
    readonly to: string;
    readonly min: number;
    readonly max?: number;
  }[];
  readonly stays: readonly {
    readonly id: string;
    readonly from: string;
    readonly to: string;
    readonly need: { readonly kind: string; readonly amount: number };
  }[];
  readonly hands: readonly {
    readonly id: string;
    readonly away: readonly { readonly from: number; readonly to: number }[];
  }[];
  readonly capacity: Readonly<Record<string, number | undefined>>;
}

/** Everything that is wrong with it, in words; empty when it holds. */
export function faultsOf(sheet: Sheet): string[] {
  return [...windowFaults(sheet), ...lagFaults(sheet), ...handFaults(sheet), ...capacityFaults(sheet)];
}

function windowFaults({ jobs }: Sheet): string[] {
  return jobs.flatMap((job) => {
    if (!Number.isInteger(job.start)) return [`${job.id} starts at ${job.start}`];
    if (job.start < job.earliest) return [`${job.id} starts at ${job.start}, before ${job.earliest}`];
    if (job.start > job.latest) return [`${job.id} starts at ${job.start}, after ${job.latest}`];
    return [];
  });
}

function lagFaults({ jobs, lags }: Sheet): string[] {
  const at = new Map(jobs.map((job) => [job.id, job]));
  return lags.flatMap((lag) => {
    const before = at.get(lag.from);
    const after = at.get(lag.to);
    if (!before || !after) return [`lag ${lag.from} → ${lag.to} names no job`];
    const gap = after.start - (before.start + before.duration);
    if (gap < lag.min) return [`${lag.to} starts ${gap} after ${lag.from}, least is ${lag.min}`];
    if (lag.max !== undefined && gap > lag.max)
      return [`${lag.to} starts ${gap} after ${lag.from}, most is ${lag.max}`];
    return [];
  });
}

function handFaults({ jobs, hands }: Sheet): string[] {
  const faults: string[] = [];
  for (const job of jobs) {
    if (new Set(job.handIds).size !== job.handsNeeded)
      faults.push(`${job.id} has ${job.handIds.length} hands, needs ${job.handsNeeded}`);
    for (const id of job.handIds) {
      const hand = hands.find((one) => one.id === id);
      if (!hand) faults.push(`${job.id} is done by nobody called ${id}`);
      else if (hand.away.some((span) => job.start < span.to && span.from < job.start + job.duration))
        faults.push(`${id} does ${job.id} while away`);
    }
  }
  for (const hand of hands) {
    const minutes = new Map<number, string>();
    for (const job of jobs.filter((one) => one.handIds.includes(hand.id)))
      for (let minute = job.start; minute < job.start + job.duration; minute++) {
        const other = minutes.get(minute);
        if (other !== undefined) {
          faults.push(`${hand.id} does ${other} and ${job.id} at ${minute}`);
          break;
        }
        minutes.set(minute, job.id);
      }
  }
  return faults;
}

function capacityFaults({ jobs, stays, capacity }: Sheet): string[] {
  const at = new Map(jobs.map((job) => [job.id, job]));
  const use = new Map<string, { from: number; to: number; amount: number }[]>();
  const hold = (kind: string, from: number, to: number, amount: number): void => {
    use.set(kind, [...(use.get(kind) ?? []), { from, to, amount }]);
  };
  for (const job of jobs)
    for (const need of job.needs) hold(need.kind, job.start, job.start + job.duration, need.amount);
  for (const stay of stays) {
    const from = at.get(stay.from)!;
    hold(stay.need.kind, from.start + from.duration, at.get(stay.to)!.start, stay.need.amount);
  }
  const faults: string[] = [];
  for (const [kind, spans] of use) {
    const most = capacity[kind];
    if (most === undefined) continue;
    for (const { from } of spans) {
      const load = spans.reduce(
        (sum, span) => sum + (span.from <= from && from < span.to ? span.amount : 0),
        0,
      );
      if (load > most + 1e-6) faults.push(`${load} of ${kind} used at ${from}, there are ${most}`);
    }
  }
  return faults;
}
