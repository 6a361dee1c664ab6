import { ceilToFive, type EpochS, epochS, instantOf, overlapS, SLOT_S, type Span } from './clock.ts';
import { isSleepless, watchAsleepS } from './night.ts';
import { and, countOf, onTimeFlags } from './on-time.ts';
import type { PlanParts } from './plan-parts.ts';
import { plannedPiece } from './planned-piece.ts';
import { capacityOf, type Problem, slotInstant } from './problem.ts';
import { familyOf } from './rest-rules.ts';
import { slackOf } from './slack.ts';
import { type DraftTask, taskId } from './tasks/draft.ts';
import { fireRuleOf, lightId } from './tasks/fire.ts';
import type { CookPlan, EquipmentUse, FireWatch, PlacedTask, Task, Walk } from './types.ts';
import { walksOf } from './walks.ts';

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
