import { type Cook, isWaiting, type Piece, type Said } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import {
  ceilToFive,
  type EpochS,
  epochS,
  FIVE_MINUTES_S,
  instantOf,
  overlapS,
  roundToFive,
  SLOT_S,
  type Span,
} from './clock.ts';
import { isSleepless, watchAsleepS } from './night.ts';
import { allReadyS, and, type Contender, countOf, missOf, onTimeFlags, rangeOf } from './on-time.ts';
import { capacityOf, type Found, type Problem, slotInstant } from './problem.ts';
import { familyOf } from './rest-rules.ts';
import { slackOf } from './slack.ts';
import type { Starts } from './starts.ts';
import type { DraftPlan, DraftTask, TaskScene } from './tasks/draft.ts';
import { stageNames, taskId } from './tasks/draft.ts';
import { fireRuleOf, lightId } from './tasks/fire.ts';
import type {
  Alternative,
  Conflict,
  CookPlan,
  EquipmentUse,
  FireWatch,
  InstantRange,
  MovedTask,
  PlacedTask,
  PlannedPiece,
  PlannedStage,
  Task,
  Walk,
} from './types.ts';
import { walksOf } from './walks.ts';

export interface PlanParts {
  readonly cook: Cook;
  readonly forecast: CookForecast;
  readonly contenders: readonly Contender[];
  readonly scene: TaskScene;
  readonly drafted: DraftPlan;
  readonly problem: Problem;
  readonly placed: Found;
  readonly starts: Starts;
  readonly conflicts?: readonly Conflict[];
  readonly wouldReach?: readonly Alternative[];
  readonly alternatives?: readonly Alternative[];
  readonly moved?: readonly MovedTask[];
  readonly notices?: readonly Said[];
}

/** The public record of a placed cook: instants, ranges, chances, walks, use of equipment, the night's price. */
export function composePlan(parts: PlanParts): CookPlan {
  const { cook, forecast, contenders, scene, problem, drafted, placed } = parts;
  const { placement } = placed;
  const startS = (id: string): EpochS => problem.originS + placement.start.get(id)! * SLOT_S;
  const onS = contenders.map(({ piece }) => startS(taskId(piece.id, 'meat-on')));
  const firstOnS = Math.min(...onS);
  const table = scene.tableS;
  const flags = contenders.map((contender, p) => onTimeFlags(contender, onS[p]!, table));
  const members = contenders[0]?.members ?? 0;
  const together = flags.reduce(and, new Uint8Array(members).fill(1));
  const alone = flags.map((own) => countOf(own) / members);
  const tightest = alone.length ? alone.indexOf(Math.min(...alone)) : -1;
  const walks = walksOf(problem, placement);
  const watch = fireWatch(parts, startS);
  const placedTasks = placedOf(parts, walks, firstOnS);
  const watchFromS = watch && isSleepless(cook) ? epochS(watch.fromAt) : Infinity;
  const jobNightS = placedTasks
    // Who watches a fire that lets nobody sleep is awake for its jobs anyway.
    .filter((task) => task.inNight && epochS(task.startAt) < watchFromS)
    .reduce((sum, task) => sum + asleepS(parts, task), 0);
  const hasLight = placement.start.has(lightId);
  return {
    cookId: cook.id,
    zone: cook.zone,
    table: { at: cook.table.at, until: cook.table.until },
    firstOnAt: instantOf(firstOnS),
    ...(hasLight && { lightAt: slotInstant(problem, placement.start.get(lightId)!) }),
    seed: forecast.seed,
    members,
    chanceAsked: cook.chanceAsked,
    chanceAllOnTime: members ? countOf(together) / members : 0,
    ...(tightest >= 0 && { tightest: { pieceId: contenders[tightest]!.piece.id, chance: alone[tightest]! } }),
    pieces: contenders.map((contender, p) =>
      plannedPiece(parts, contender, onS[p]!, firstOnS, alone[p]!, flags, p),
    ),
    tasks: drafted.tasks.map(publicTask),
    placed: placedTasks,
    occupancies: drafted.occupancies,
    equipmentUse: equipmentUse(parts, startS),
    walks: walks.map((walk, k) => publicWalk(problem, walk, k)),
    promptsInLastHours: promptsOf(parts, walks, onS),
    ...(watch && { fireWatch: watch }),
    nightWorkS: jobNightS + (watch?.asleepS ?? 0),
    handWorkS: problem.jobs.reduce((sum, job) => sum + job.hands * job.duration * SLOT_S, 0),
    notices: parts.notices ?? [],
    conflicts: parts.conflicts ?? [],
    wouldReach: parts.wouldReach ?? [],
    alternatives: parts.alternatives ?? [],
    moved: parts.moved ?? [],
    solved: { by: placed.by, ...(placed.gap !== undefined && { gap: placed.gap }) },
  };
}

function publicTask({ wishS: _, earlyWeight: __, lateWeight: ___, ...task }: DraftTask): Task {
  return task;
}

const publicWalk = (
  problem: Problem,
  walk: { from: number; to: number; jobIds: readonly string[]; hands: readonly string[] },
  k: number,
): Walk => ({
  number: k + 1,
  startAt: slotInstant(problem, walk.from),
  endAt: slotInstant(problem, walk.to),
  taskIds: walk.jobIds,
  handIds: walk.hands,
});

function placedOf(parts: PlanParts, walks: ReturnType<typeof walksOf>, firstOnS: EpochS): PlacedTask[] {
  const { problem, placed } = parts;
  const slack = slackOf(problem, placed.placement);
  const walkOf = new Map(walks.flatMap((walk, k) => walk.jobIds.map((id) => [id, k + 1] as const)));
  return problem.jobs
    .map((job): PlacedTask => {
      const start = placed.placement.start.get(job.id)!;
      const handIds = placed.placement.hands.get(job.id) ?? [];
      const room = slack.get(job.id);
      const walk = walkOf.get(job.id);
      return {
        taskId: job.id,
        handIds,
        startAt: slotInstant(problem, start),
        endAt: slotInstant(problem, start + job.duration),
        elapsedS: problem.originS + start * SLOT_S - firstOnS,
        ...(room && {
          canStart: { from: slotInstant(problem, room.from), to: slotInstant(problem, room.to) },
        }),
        ...(walk !== undefined && { walk }),
        inNight: problem.workers.some(
          (worker) =>
            handIds.includes(worker.id) &&
            worker.asleep.some((span) => span.from < start + job.duration && start < span.to),
        ),
      };
    })
    .sort((a, b) => epochS(a.startAt) - epochS(b.startAt) || epochS(a.endAt) - epochS(b.endAt));
}

function asleepS(parts: PlanParts, task: PlacedTask): number {
  const span: Span = { fromS: epochS(task.startAt), toS: epochS(task.endAt) };
  const { problem } = parts;
  return problem.workers
    .filter((worker) => task.handIds.includes(worker.id))
    .flatMap((worker) => worker.asleep)
    .reduce(
      (sum, asleep) =>
        sum +
        overlapS(span, {
          fromS: problem.originS + asleep.from * SLOT_S,
          toS: problem.originS + asleep.to * SLOT_S,
        }),
      0,
    );
}

function fireWatch(parts: PlanParts, startS: (id: string) => EpochS): FireWatch | undefined {
  const { cook, drafted, problem, scene } = parts;
  const { reachS } = fireRuleOf(cook.pit);
  const light = problem.jobs.find((job) => job.id === lightId);
  if (reachS === undefined || !light) return undefined;
  const ends = drafted.tasks
    .filter((task) => (task.kind === 'take-off' && task.at === 'pit') || task.kind === 'to-oven')
    .map((task) => startS(task.id));
  const lit: Span = { fromS: startS(lightId), toS: Math.max(...ends) };
  return {
    fromAt: instantOf(lit.fromS),
    toAt: instantOf(ceilToFive(lit.toS)),
    reachS,
    asleepS: watchAsleepS(cook, lit, scene.asleep),
  };
}

function equipmentUse(parts: PlanParts, startS: (id: string) => EpochS): EquipmentUse[] {
  const { problem } = parts;
  const capacity = capacityOf(parts.cook);
  const duration = new Map(problem.jobs.map((job) => [job.id, job.duration * SLOT_S]));
  const uses: EquipmentUse[] = [];
  for (const job of problem.jobs)
    for (const need of job.needs)
      uses.push({
        ...need,
        capacity: capacity[need.kind] ?? need.amount,
        fromAt: instantOf(startS(job.id)),
        toAt: instantOf(startS(job.id) + duration.get(job.id)!),
        taskId: job.id,
      });
  for (const stay of problem.stays)
    uses.push({
      ...stay.need,
      capacity: capacity[stay.need.kind] ?? stay.need.amount,
      fromAt: instantOf(startS(stay.from) + duration.get(stay.from)!),
      toAt: instantOf(startS(stay.to)),
      occupancyId: stay.id,
    });
  return uses.sort((a, b) => epochS(a.fromAt) - epochS(b.fromAt));
}

/** Walks from the first rack on to the table: how often the day is broken. */
function promptsOf(parts: PlanParts, walks: ReturnType<typeof walksOf>, onS: readonly EpochS[]): number {
  const racks = parts.contenders.flatMap(({ piece }, p) => (familyOf(piece.cut) === 'rack' ? [onS[p]!] : []));
  const fromS = racks.length ? Math.min(...racks) : Math.min(...onS);
  const { originS } = parts.problem;
  return walks.filter(
    (walk) => originS + walk.to * SLOT_S > fromS && originS + walk.from * SLOT_S <= parts.scene.tableS.atS,
  ).length;
}

const instantOrNone = (seconds: number): string | undefined =>
  seconds < Infinity ? instantOf(roundToFive(seconds)) : undefined;

function instants(
  onS: EpochS,
  range: { p10: number; p50: number; p90: number; neverShare: number },
): InstantRange {
  const p10 = instantOrNone(onS + range.p10);
  const p50 = instantOrNone(onS + range.p50);
  const p90 = instantOrNone(onS + range.p90);
  return { ...(p10 && { p10 }), ...(p50 && { p50 }), ...(p90 && { p90 }), neverShare: range.neverShare };
}

function plannedPiece(
  parts: PlanParts,
  contender: Contender,
  onS: EpochS,
  firstOnS: EpochS,
  chanceOnTime: number,
  flags: readonly Uint8Array[],
  p: number,
): PlannedPiece {
  const { scene, cook } = parts;
  const { piece, rule, members } = contender;
  const misses = { late: 0, heldTooLong: 0, tooSoft: 0, never: 0 };
  for (let m = 0; m < members; m++) {
    const miss = missOf(contender, m, onS, scene.tableS);
    if (miss) misses[miss] += 1 / members;
  }
  const ready = allReadyS(contender);
  const waits = Array.from(ready)
    .filter((s) => s < Infinity)
    .map((s) => Math.max(0, scene.tableS.atS - onS - s));
  const latest = latestOnS(contender, onS, flags, p, scene.tableS, cook.chanceAsked);
  return {
    pieceId: piece.id,
    letter: piece.letter,
    count: piece.count,
    bite: piece.bite,
    ...(piece.place && { place: piece.place }),
    onAt: instantOf(onS),
    onAtPinned: piece.onAt !== undefined,
    elapsedOnS: onS - firstOnS,
    ...(latest !== undefined && { latestOnAt: instantOf(latest) }),
    ready: instants(onS, rangeOf(ready)),
    waitS: { ...(waits.length ? rangeOf(waits) : { p10: 0, p50: 0, p90: 0 }), neverShare: misses.never },
    restLeastS: rule.restLeastS,
    holdLongestS: rule.holdLongestS,
    chanceOnTime,
    misses,
    stages: plannedStages(parts, contender, onS, firstOnS),
  };
}

/** Latest start at which the joint chance is still the one asked, the others staying. */
function latestOnS(
  contender: Contender,
  onS: EpochS,
  flags: readonly Uint8Array[],
  p: number,
  table: TaskScene['tableS'],
  asked: number,
): EpochS | undefined {
  const others = flags.filter((_, q) => q !== p).reduce(and, new Uint8Array(contender.members).fill(1));
  let latest: EpochS | undefined;
  for (let s = onS; s <= table.untilS; s += FIVE_MINUTES_S) {
    if (countOf(and(others, onTimeFlags(contender, s, table))) < asked * contender.members - 1e-9) break;
    latest = s;
  }
  return latest;
}

/** From the pit to wait `k`: the rests that come between [s]. */
const restBeforeS = (piece: Piece, k: number, restLeastS: number): number =>
  piece.stages
    .slice(0, k)
    .filter((stage) => stage.kind === 'rest')
    .reduce((sum, { until }) => sum + (until.by === 'clock' ? until.after.si : restLeastS), 0);

const FINITE = { p10: 0, p50: 0, p90: 0, neverShare: 0 };

function plannedStages(
  parts: PlanParts,
  contender: Contender,
  onS: EpochS,
  firstOnS: EpochS,
): PlannedStage[] {
  const { piece } = contender;
  const forecast = parts.forecast.pieces.find((f) => f.pieceId === piece.id)!;
  const start = parts.placed.placement.start;
  const origin = parts.problem.originS;
  const tasks = parts.drafted.tasks;
  const names = stageNames(piece.stages);
  return piece.stages.map((stage, k): PlannedStage => {
    const foreseen = forecast.stages[k];
    const change = tasks.find(
      (task) =>
        task.pieceIds[0] === piece.id && task.id.startsWith(`${piece.id}/${names[k]}/`) && !task.round,
    );
    const isWait = isWaiting(stage.kind);
    const startsWith =
      k === 0 ? taskId(piece.id, 'meat-on') : isWait ? taskId(piece.id, 'take-off') : change?.id;
    const slot = startsWith === undefined ? undefined : start.get(startsWith);
    const restedS = isWait && slot !== undefined ? restBeforeS(piece, k, contender.rule.restLeastS) : 0;
    const startS = slot === undefined ? onS + (foreseen?.startS.p50 ?? 0) : origin + slot * SLOT_S + restedS;
    const next = piece.stages[k + 1];
    const endTask = next
      ? isWaiting(next.kind)
        ? taskId(piece.id, 'take-off')
        : tasks.find((task) => task.id.startsWith(`${piece.id}/${names[k + 1]}/`))?.id
      : taskId(piece.id, isWait ? 'slice' : 'take-off');
    const endSlot = endTask === undefined ? undefined : start.get(endTask);
    const endS =
      isWait && next && slot !== undefined
        ? origin + slot * SLOT_S + restBeforeS(piece, k + 1, contender.rule.restLeastS)
        : endSlot === undefined
          ? undefined
          : origin + endSlot * SLOT_S;
    // The first begins with the job that puts the piece on, to the minute; the later ones are aims.
    const fromS = k === 0 ? onS : roundToFive(startS);
    return {
      kind: stage.kind,
      startAt: instantOf(fromS),
      ...(endS !== undefined && { endAt: instantOf(endS) }),
      elapsedStartS: fromS - firstOnS,
      start: instants(onS, foreseen?.startS ?? FINITE),
      end: instants(onS, foreseen?.endS ?? FINITE),
      coreC: foreseen?.coreC ?? FINITE,
      surfaceC: foreseen?.surfaceC ?? FINITE,
      ...(tasks.find((task) => task.id === endTask)?.sign && {
        sign: tasks.find((task) => task.id === endTask)!.sign!,
      }),
    };
  });
}
