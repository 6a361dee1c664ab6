import type { Said } from '@pitwright/model';
import { HOUR_S, SLOT_S } from './clock.ts';
import type { Job, Lag, Problem } from './problem.ts';
import type { Demand, DemandKind, EquipmentKind } from './types.ts';

/** A demand that can be eased by degrees. */
export interface Droppable extends Demand {
  /** The problem with the demand eased by `amount` of its own unit. */
  readonly easedBy: (problem: Problem, amount: number) => Problem;
  /** Easing that leaves nothing of it. */
  readonly all: number;
  /** Smallest step of easing that means something. */
  readonly step: number;
  /** More than this nobody would give; missing: there is no such bound. */
  readonly mostTaken?: number;
  /** Kind of the amount, for the words: minutes, pairs of hands, or pieces and m² of equipment. */
  readonly unit: 'minutes' | 'hands' | 'equipment';
}

/** A clock bent by more than this is another dinner [slots]. @source common practice, no source */
const MOST_OFF_THE_CLOCK = (3 * HOUR_S) / SLOT_S;
/** Helpers that somebody may find among the guests. @source common practice, no source */
const MOST_HELPERS = 3;

/**
 * Everything of a problem that somebody could give up. Lengths of jobs, the order of the work and the morning on which
 * it begins are no demands: no rub goes on before it is mixed, and nobody cooks before the shop opens.
 */
export const demandsOf = (problem: Problem): Droppable[] => [
  ...problem.lags.flatMap((lag, k) => lagDemands(lag, k, problem.length)),
  ...problem.jobs.flatMap((job) => (job.isDone ? [] : jobDemands(job, problem))),
  ...(Object.keys(problem.capacity) as EquipmentKind[]).map((kind) => capacityDemand(problem, kind)),
  ...problem.workers.flatMap((worker) => worker.away.map((_, k) => awayDemand(worker.id, k, problem))),
  handsDemand(problem),
];

/** The problem with only these demands kept. */
export const keepingOnly = (
  problem: Problem,
  all: readonly Droppable[],
  kept: ReadonlySet<Droppable>,
): Problem =>
  all.filter((demand) => !kept.has(demand)).reduce((p, demand) => demand.easedBy(p, demand.all), problem);

type Easing = Pick<Droppable, 'easedBy' | 'all' | 'step' | 'mostTaken' | 'unit'>;

const demand = (
  id: string,
  kind: DemandKind,
  taskIds: readonly string[],
  params: NonNullable<Said['params']>,
  easing: Easing,
): Droppable => ({ id, kind, taskIds, said: { id: `demand.${kind}`, params }, ...easing });

const minutesOf = (slots: number): number => (slots * SLOT_S) / 60;

function lagDemands(lag: Lag, k: number, length: number): Droppable[] {
  const edit =
    (change: (lag: Lag, amount: number) => Lag) =>
    (problem: Problem, amount: number): Problem => ({
      ...problem,
      lags: problem.lags.map((l, j) => (j === k ? change(l, amount) : l)),
    });
  const taskIds = [lag.from, lag.to];
  const found: Droppable[] = [];
  if (lag.min > 0 && !lag.isCooking)
    found.push(
      demand(
        `least:${lag.from} → ${lag.to}`,
        'lag',
        taskIds,
        { which: 'least', after: lag.from, task: lag.to, minutes: minutesOf(lag.min) },
        {
          easedBy: edit((l, by) => ({ ...l, min: Math.max(0, l.min - by) })),
          all: lag.min,
          step: 5,
          unit: 'minutes',
        },
      ),
    );
  if (lag.max !== undefined)
    found.push(
      demand(
        `most:${lag.from} → ${lag.to}`,
        'lag',
        taskIds,
        { which: 'most', after: lag.from, task: lag.to, minutes: minutesOf(lag.max) },
        {
          easedBy: edit((l, by) => ({ ...l, max: l.max! + by })),
          all: 2 * length,
          step: 5,
          mostTaken: MOST_OFF_THE_CLOCK,
          unit: 'minutes',
        },
      ),
    );
  return found;
}

function jobDemands(job: Job, { length, now = 0, opens = 0 }: Problem): Droppable[] {
  const begins = Math.max(now, opens);
  const edit =
    (change: (job: Job, amount: number) => Partial<Job>) =>
    (problem: Problem, amount: number): Problem => ({
      ...problem,
      jobs: problem.jobs.map((j) => (j.id === job.id ? { ...j, ...change(j, amount) } : j)),
    });
  const widest = length - job.duration;
  const earlier = (j: Job, by: number): Partial<Job> => ({ earliest: Math.max(begins, j.earliest - by) });
  const later = (j: Job, by: number): Partial<Job> => ({ latest: Math.min(widest, j.latest + by) });
  const easing = (change: (job: Job, amount: number) => Partial<Job>): Easing => ({
    easedBy: edit(change),
    all: length,
    step: 5,
    mostTaken: MOST_OFF_THE_CLOCK,
    unit: 'minutes',
  });
  if (job.isPinned)
    return [
      demand(
        `pinned:${job.id}`,
        'pinned',
        [job.id],
        { task: job.id },
        { ...easing((j, by) => ({ ...earlier(j, by), ...later(j, by) })), mostTaken: length },
      ),
    ];
  const isStart = job.id.endsWith('/meat-on');
  const isTable = job.id.endsWith('/slice') || job.id.endsWith('/serve');
  const bound = (which: 'earliest' | 'latest', change: typeof earlier): Droppable =>
    demand(
      `${which}:${job.id}`,
      isStart ? 'chance' : isTable ? 'table' : which,
      [job.id],
      { task: job.id, which },
      easing(change),
    );
  return [
    ...(job.earliest > begins ? [bound('earliest', earlier)] : []),
    ...(job.latest < widest ? [bound('latest', later)] : []),
  ];
}

function capacityDemand(problem: Problem, kind: EquipmentKind): Droppable {
  const users = [
    ...problem.jobs.filter((job) => job.needs.some((need) => need.kind === kind)).map((job) => job.id),
    ...problem.stays.filter((stay) => stay.need.kind === kind).map((stay) => stay.id),
  ];
  const amounts = [
    ...problem.jobs.flatMap((job) => job.needs),
    ...problem.stays.map((stay) => stay.need),
  ].filter((need) => need.kind === kind);
  const capacity = problem.capacity[kind]!;
  const step = kind === 'grate' ? 0.01 : kind === 'fridge-shelf' ? 0.25 : 1;
  // Whole steps: a third of an oven is no oven.
  const all = Math.ceil(amounts.reduce((sum, need) => sum + need.amount, 0) / step) * step;
  return demand(
    `capacity:${kind}`,
    'capacity',
    users,
    { kind, amount: capacity },
    {
      easedBy: (p, by) => ({ ...p, capacity: { ...p.capacity, [kind]: capacity + by } }),
      all,
      step,
      unit: 'equipment',
    },
  );
}

function awayDemand(workerId: string, k: number, problem: Problem): Droppable {
  const span = problem.workers.find((worker) => worker.id === workerId)!.away[k]!;
  return demand(
    `away:${workerId}:${k}`,
    'hand-away',
    [],
    { hand: workerId },
    {
      // Coming back sooner, to the point of not leaving at all.
      easedBy: (p, by) => ({
        ...p,
        workers: p.workers.map((worker) =>
          worker.id === workerId
            ? {
                ...worker,
                away: worker.away.flatMap((away) =>
                  away.from !== span.from
                    ? [away]
                    : away.to - by > away.from
                      ? [{ ...away, to: away.to - by }]
                      : [],
                ),
              }
            : worker,
        ),
      }),
      all: span.to - span.from,
      step: 5,
      unit: 'minutes',
    },
  );
}

/** One more pair of hands is one step; as many as jobs leaves nothing of it. */
const handsDemand = (problem: Problem): Droppable =>
  demand(
    'hands',
    'hand-busy',
    [],
    { count: problem.workers.length },
    {
      easedBy: (p, by) => ({
        ...p,
        workers: [
          ...p.workers,
          ...Array.from({ length: by }, (_, k) => ({ id: `helper ${k + 1}`, away: [], asleep: [] })),
        ],
      }),
      all: Math.min(8, problem.jobs.length),
      step: 1,
      mostTaken: MOST_HELPERS,
      unit: 'hands',
    },
  );
