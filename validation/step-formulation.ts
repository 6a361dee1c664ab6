/**
 * The run sheet as a second program, minute by minute: x = 1 where a job starts at that minute in those hands. Slow and
 * plain, an oracle for small kitchens; shares no code with the planner.
 */
import type { SolveLp } from '@pitwright/engine';
import type { Sheet } from './check-schedule.ts';

export interface StepJob {
  readonly id: string;
  readonly duration: number;
  readonly earliest: number;
  readonly latest: number;
  readonly handsNeeded: 0 | 1;
  readonly needs: Sheet['jobs'][number]['needs'];
  readonly wish?: number;
  readonly earlyWeight: number;
  readonly lateWeight: number;
}
export type StepKitchen = Omit<Sheet, 'jobs'> & {
  readonly jobs: readonly StepJob[];
  readonly length: number;
};

/** Least weighted distance to the wishes, or undefined when nothing fits. */
export function stepOptimum(kitchen: StepKitchen, solveLp: SolveLp): number | undefined {
  const rows: string[] = [];
  const names: string[] = [];
  const cost: string[] = [];
  const row = (terms: readonly string[], relation: string, value: number): void => {
    if (terms.length) rows.push(` c${rows.length}: ${terms.join('\n  ')} ${relation} ${value}`);
    else if (relation === '=' ? value !== 0 : relation === '<=' ? value < 0 : value > 0)
      rows.push(` c${rows.length}: + 0 one ${relation} ${value}`);
  };
  const hands = (job: StepJob): readonly number[] => (job.handsNeeded ? kitchen.hands.map((_, w) => w) : [0]);
  const name = (j: number, t: number, w: number): string => `x${j}_${t}_${w}`;
  const starts = (j: number, from: number, to: number): string[] => {
    const job = kitchen.jobs[j]!;
    const found: string[] = [];
    for (let t = Math.max(from, job.earliest); t <= Math.min(to, job.latest); t++)
      for (const w of hands(job)) found.push(`+ ${name(j, t, w)}`);
    return found;
  };
  kitchen.jobs.forEach((job, j) => {
    for (let t = job.earliest; t <= job.latest; t++)
      for (const w of hands(job)) {
        names.push(name(j, t, w));
        const off =
          job.wish === undefined
            ? 0
            : t < job.wish
              ? job.earlyWeight * (job.wish - t)
              : job.lateWeight * (t - job.wish);
        if (off > 0) cost.push(`+ ${off} ${name(j, t, w)}`);
        const isAway =
          job.handsNeeded === 1 &&
          kitchen.hands[w]!.away.some((span) => t < span.to && span.from < t + job.duration);
        if (isAway) row([`+ ${name(j, t, w)}`], '=', 0);
      }
    row(starts(j, job.earliest, job.latest), '=', 1);
  });
  const number = new Map(kitchen.jobs.map((job, j) => [job.id, j]));
  for (const lag of kitchen.lags) {
    const a = number.get(lag.from)!;
    const b = number.get(lag.to)!;
    const d = kitchen.jobs[a]!.duration;
    // b may have started by t only if a had started by t − d − min; and must have by t + d + max.
    for (let t = 0; t < kitchen.length; t++) {
      row([...starts(b, 0, t), ...minus(starts(a, 0, t - d - lag.min))], '<=', 0);
      if (lag.max !== undefined) row([...starts(a, 0, t), ...minus(starts(b, 0, t + d + lag.max))], '<=', 0);
    }
  }
  kitchen.hands.forEach((_, w) => {
    for (let t = 0; t < kitchen.length; t++)
      row(
        kitchen.jobs.flatMap((job, j) => {
          if (!job.handsNeeded) return [];
          const found: string[] = [];
          for (let s = Math.max(job.earliest, t - job.duration + 1); s <= Math.min(job.latest, t); s++)
            found.push(`+ ${name(j, s, w)}`);
          return found;
        }),
        '<=',
        1,
      );
  });
  for (const [kind, most] of Object.entries(kitchen.capacity)) {
    if (most === undefined) continue;
    for (let t = 0; t < kitchen.length; t++)
      row(
        [
          ...kitchen.jobs.flatMap((job, j) =>
            job.needs
              .filter((need) => need.kind === kind)
              .flatMap((need) => scaled(starts(j, t - job.duration + 1, t), need.amount)),
          ),
          ...kitchen.stays
            .filter((stay) => stay.need.kind === kind)
            .flatMap((stay) => {
              const a = number.get(stay.from)!;
              const b = number.get(stay.to)!;
              const held = [...starts(a, 0, t - kitchen.jobs[a]!.duration), ...minus(starts(b, 0, t))];
              return scaled(held, stay.need.amount);
            }),
        ],
        '<=',
        most,
      );
  }
  const text = [
    'Minimize',
    ` obj: ${cost.join('\n  ') || '0 one'}`,
    'Subject To',
    ...rows,
    'Bounds',
    ' 1 <= one <= 1',
    'Binaries',
    ...names.map((each) => ` ${each}`),
    'End',
  ].join('\n');
  const solution = solveLp(text, { gap: 0, nodes: 100_000 });
  if (solution.status === 'infeasible') return undefined;
  if (solution.status !== 'optimal') throw new Error(`the oracle ended ${solution.status}`);
  return solution.objective;
}

const minus = (terms: readonly string[]): string[] => terms.map((term) => term.replace('+', '-'));
const scaled = (terms: readonly string[], by: number): string[] =>
  terms.map((term) => term.replace(/^([+-]) /, `$1 ${by} `));
