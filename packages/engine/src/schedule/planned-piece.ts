import { isWaiting, type Piece } from '@pitwright/model';
import { type EpochS, FIVE_MINUTES_S, instantOf, roundToFive, SLOT_S } from './clock.ts';
import { allReadyS, and, type Contender, countOf, missOf, onTimeFlags, rangeOf } from './on-time.ts';
import type { PlanParts } from './plan-parts.ts';
import { stageNames, type TaskScene, taskId } from './tasks/draft.ts';
import type { InstantRange, PlannedPiece, PlannedStage } from './types.ts';

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

/** The piece from the pit to the table: its hours, its chances, its stages. */
export function plannedPiece(
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
    const sign = tasks.find((task) => task.id === endTask)?.sign;
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
      ...(sign && { sign }),
    };
  });
}
