import type { Cook, Instant, Piece } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import { ceilToFive, type EpochS, epochS, FIVE_MINUTES_S, instantOf } from './clock.ts';
import { and, type Contender, contenderOf, countOf, onTimeFlags } from './on-time.ts';
import { type PlanOptions, planWith } from './plan.ts';
import type { Starts } from './starts.ts';
import { startsOf } from './starts-of.ts';
import { type DraftTask, taskId } from './tasks/draft.ts';
import type { CookPlan, MovedTask, TaskKind } from './types.ts';

export interface ReplanOptions extends PlanOptions {
  /** The present. */
  readonly now: Instant;
  /** What has been done, by task id, as it happened. */
  readonly done?: Readonly<Record<string, { readonly startAt: Instant; readonly endAt: Instant }>>;
}

/** Starts move again only when keeping them costs more than this share of the chance. */
const WORTH_MOVING = 0.05;
/** A job moved by less is not said. */
const NOTICED_S = FIVE_MINUTES_S;
/** Weight of five minutes away from where a job stood. */
const STAYS_WEIGHT = 3;
/** Work that is not made up for once its time has passed. */
const MISSED: ReadonlySet<TaskKind> = new Set(['look', 'spritz', 'test-bite', 'mix-spritz']);

/**
 * The plan from now on: what is done stays done, the rest stays as near to where it stood as it can, and what moved is
 * listed. A changed cook (fewer guests, other cuts, a later hour) is planned the same way.
 */
export function replanCook(
  previous: CookPlan,
  cook: Cook,
  forecast: CookForecast,
  options: ReplanOptions,
): CookPlan {
  const nowS = epochS(options.now);
  const done = options.done ?? {};
  const stood = new Map(previous.placed.map((task) => [task.taskId, epochS(task.startAt)]));
  const fixed = { ...cook, pieces: cook.pieces.map((piece) => withOnAt(piece, done, options.pinned)) };
  const contenders = fixed.pieces.map((piece) => contenderOf(piece, fixed.pieces, forecast.pieces));
  const starts = keptStarts(fixed, contenders, stood, nowS);
  const plan = planWith(fixed, forecast, contenders, starts, options, {
    nowS,
    edit: (task) => edited(task, done, stood, nowS),
    stood: new Map([...stood].filter(([id]) => !options.pinned?.[id] && !done[id])),
  });
  return { ...plan, moved: movedBetween(previous, plan, done) };
}

function withOnAt(
  piece: Piece,
  done: NonNullable<ReplanOptions['done']>,
  pinned: PlanOptions['pinned'],
): Piece {
  const id = taskId(piece.id, 'meat-on');
  const onAt = done[id]?.startAt ?? pinned?.[id];
  return onAt ? { ...piece, onAt } : piece;
}

/** The starts that stood, unless the chance has fallen by them; never before now. */
function keptStarts(
  cook: Cook,
  contenders: readonly Contender[],
  stood: ReadonlyMap<string, EpochS>,
  nowS: EpochS,
): Starts {
  const chosen = startsOf(cook, contenders);
  const notBefore = (contender: Contender, onS: EpochS): EpochS =>
    contender.piece.onAt ? onS : Math.max(onS, ceilToFive(nowS));
  const kept = contenders.map((contender, p) =>
    notBefore(
      contender,
      contender.piece.onAt
        ? chosen.onS[p]!
        : (stood.get(taskId(contender.piece.id, 'meat-on')) ?? chosen.onS[p]!),
    ),
  );
  const fresh = contenders.map((contender, p) => notBefore(contender, chosen.onS[p]!));
  const members = contenders[0]?.members ?? 0;
  const chanceOf = (onS: readonly EpochS[]): number => {
    const table = { atS: epochS(cook.table.at), untilS: epochS(cook.table.until) };
    const flags = contenders.map((contender, p) => onTimeFlags(contender, onS[p]!, table));
    return members ? countOf(flags.reduce(and, new Uint8Array(members).fill(1))) / members : 0;
  };
  const stays = chanceOf(kept) >= Math.min(cook.chanceAsked, chanceOf(fresh)) - WORTH_MOVING;
  const onS = stays ? kept : fresh;
  return { ...chosen, onS, chance: chanceOf(onS) };
}

function edited(
  task: DraftTask,
  done: NonNullable<ReplanOptions['done']>,
  stood: ReadonlyMap<string, EpochS>,
  nowS: EpochS,
): DraftTask | undefined {
  const happened = done[task.id];
  if (happened) {
    const lastedS = Math.max(60, epochS(happened.endAt) - epochS(happened.startAt));
    const { latestAt: _, earliestAt: __, ...rest } = task;
    return {
      ...rest,
      doneAt: happened.startAt,
      durationS: { p10: lastedS, p50: lastedS, p90: lastedS, neverShare: 0 },
      // It has happened whoever did it, and binds what comes after it, not what came before.
      hands: 0,
      equipment: [],
      after: [],
    };
  }
  const latestS = task.latestAt === undefined ? undefined : epochS(task.latestAt);
  if (latestS !== undefined && latestS < nowS && MISSED.has(task.kind)) return undefined;
  const { latestAt, ...rest } = task;
  const earliestS = Math.max(nowS, task.earliestAt === undefined ? nowS : epochS(task.earliestAt));
  const wishS = stood.get(task.id);
  return {
    ...rest,
    earliestAt: instantOf(earliestS),
    // A limit that has passed becomes: as soon as can be.
    ...(latestAt !== undefined && latestS! >= earliestS && { latestAt }),
    ...(wishS !== undefined && {
      wishS: Math.max(wishS, nowS),
      earlyWeight: Math.max(task.earlyWeight, STAYS_WEIGHT),
      lateWeight: Math.max(task.lateWeight, STAYS_WEIGHT),
    }),
  };
}

function movedBetween(
  previous: CookPlan,
  plan: CookPlan,
  done: NonNullable<ReplanOptions['done']>,
): MovedTask[] {
  const before = new Map(previous.placed.map((task) => [task.taskId, task.startAt]));
  const after = new Map(plan.placed.map((task) => [task.taskId, task.startAt]));
  const moved: MovedTask[] = [];
  for (const [taskId, toAt] of after) {
    const fromAt = before.get(taskId);
    if (done[taskId]) continue;
    if (fromAt === undefined) moved.push({ taskId, toAt });
    else if (Math.abs(epochS(toAt) - epochS(fromAt)) >= NOTICED_S) moved.push({ taskId, fromAt, toAt });
  }
  for (const [taskId, fromAt] of before)
    if (!after.has(taskId) && !done[taskId]) moved.push({ taskId, fromAt });
  return moved;
}
