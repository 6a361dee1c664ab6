/** From a cook to what each piece will do: jobs of members, and their reading. */
import { BITES, type Bite, type Cook, type Range } from '@pitwright/model';
import { type ResolvedPiece, resolveCook } from '../day/resolve.ts';
import type { PieceRunner } from '../meat/run.ts';
import { eaterOffHeat } from './eater.ts';
import { rangeOf } from './ensemble/range.ts';
import { ensembleRunner, lastCookingStage, pieceColumns } from './ensemble/run.ts';
import type { PieceTrails } from './ensemble/trails.ts';
import { pieceNotices } from './pieceNotices.ts';
import {
  type CookForecast,
  type ForecastJob,
  type ForecastPart,
  type PieceColumns,
  type PieceForecast,
  type StageForecast,
  TIMED_WORDS,
} from './types.ts';

export const PLAN_MEMBERS = 200;
export const PREVIEW_MEMBERS = 40;

/**
 * Runs the members of one job.
 *
 * @param runner the worker's own; missing: a new one
 * @param trailsOf what a piece left behind when it last ran with this seed, by its id; missing: nothing
 */
export function forecastMembers(
  job: ForecastJob,
  runner: PieceRunner = ensembleRunner(),
  trailsOf?: (pieceId: string) => PieceTrails | undefined,
): ForecastPart {
  const { pit, pieces } = resolveCook(job.cook);
  return {
    jobId: job.jobId,
    membersFrom: job.membersFrom,
    membersTo: job.membersTo,
    columns: pieces
      .filter((piece) => !job.pieceIds || job.pieceIds.includes(piece.id))
      .map((piece) =>
        pieceColumns(piece, pit, job.seed, job.membersFrom, job.membersTo, runner, trailsOf?.(piece.id)),
      ),
  };
}

/** Puts the parts of one forecast together, in the order of their members, and reads ranges and chances. */
export function assembleForecast(cook: Cook, seed: number, parts: readonly ForecastPart[]): CookForecast {
  const resolved = resolveCook(cook);
  const inOrder = [...parts].sort((a, b) => a.membersFrom - b.membersFrom);
  const pieces = resolved.pieces.flatMap((piece) => {
    const columns = inOrder.flatMap((part) => part.columns.filter((c) => c.pieceId === piece.id));
    return columns.length > 0 ? [readPiece(piece, joinColumns(columns))] : [];
  });
  return {
    seed,
    members: pieces[0]?.members ?? 0,
    pieces,
    notUsed: resolved.notUsed,
  };
}

/** The whole forecast at once, on this thread. */
export function forecastCook(
  cook: Cook,
  options: {
    readonly members: number;
    readonly seed: number;
    readonly pieceIds?: readonly string[];
  },
): CookForecast {
  const { members, seed, pieceIds } = options;
  const part = forecastMembers({
    jobId: 'whole',
    seed,
    membersFrom: 0,
    membersTo: members,
    cook,
    ...(pieceIds && { pieceIds }),
  });
  return assembleForecast(cook, seed, [part]);
}

function joined(arrays: readonly Float64Array[]): Float64Array {
  const whole = new Float64Array(arrays.reduce((sum, array) => sum + array.length, 0));
  let at = 0;
  for (const array of arrays) {
    whole.set(array, at);
    at += array.length;
  }
  return whole;
}

function joinColumns(parts: readonly PieceColumns[]): PieceColumns {
  const first = parts[0]!;
  if (parts.length === 1) return first;
  const join = (pick: (columns: PieceColumns) => Float64Array): Float64Array => joined(parts.map(pick));
  return {
    pieceId: first.pieceId,
    members: parts.reduce((sum, part) => sum + part.members, 0),
    items: first.items,
    stages: first.stages,
    readyS: join((c) => c.readyS),
    pastBiteS: join((c) => c.pastBiteS),
    wordS: join((c) => c.wordS),
    stageEndS: join((c) => c.stageEndS),
    stageCoreC: join((c) => c.stageCoreC),
    stageSurfaceC: join((c) => c.stageSurfaceC),
    stageLossKg: join((c) => c.stageLossKg),
    stageBarkM: join((c) => c.stageBarkM),
    afterHeat: join((c) => c.afterHeat),
    stallC: join((c) => c.stallC),
    from65To75S: join((c) => c.from65To75S),
  };
}

/** One stage's figure of every item of every member. */
function stageColumn(columns: PieceColumns, values: Float64Array, stage: number): Float64Array {
  const rows = columns.members * columns.items;
  const picked = new Float64Array(rows);
  for (let row = 0; row < rows; row++) picked[row] = values[row * columns.stages + stage]!;
  return picked;
}

/** Members that never get to the end of a stage have no temperature there. */
function reachedRange(values: Float64Array, endS: Float64Array): Range {
  const reached = values.filter((_, row) => endS[row]! < Infinity);
  if (reached.length === 0) return { p10: Infinity, p50: Infinity, p90: Infinity, neverShare: 1 };
  return { ...rangeOf(reached), neverShare: 1 - reached.length / values.length };
}

function readPiece(piece: ResolvedPiece, columns: PieceColumns): PieceForecast {
  const starts = new Float64Array(columns.members * columns.items);
  let startS = rangeOf(starts);
  const stages: StageForecast[] = piece.stages.map((stage, s) => {
    const endS = stageColumn(columns, columns.stageEndS, s);
    const forecast: StageForecast = {
      kind: stage.kind,
      startS,
      ...(stage.trigger.by !== 'table' && { endS: rangeOf(endS) }),
      coreC: reachedRange(stageColumn(columns, columns.stageCoreC, s), endS),
      surfaceC: reachedRange(stageColumn(columns, columns.stageSurfaceC, s), endS),
    };
    startS = rangeOf(endS);
    return forecast;
  });
  const lastCooking = Math.max(0, lastCookingStage(piece));
  const endS = stageColumn(columns, columns.stageEndS, lastCooking);
  const eater = eaterOffHeat(piece, columns);
  const stall = columns.stallC.filter((c) => !Number.isNaN(c));
  return {
    pieceId: piece.id,
    members: columns.members,
    readyS: columns.readyS,
    pastBiteS: columns.pastBiteS,
    ready: rangeOf(columns.readyS),
    stages,
    biteChances: biteChances(columns, (row) => endS[row]!),
    lossKg: reachedRange(stageColumn(columns, columns.stageLossKg, lastCooking), endS),
    ...(stall.length > 0 && { stallCoreC: rangeOf(stall) }),
    ...(eater && { eater }),
    columns,
    notices: pieceNotices(piece, columns),
  };
}

function biteChances(
  columns: PieceColumns,
  elapsedS: (row: number) => number,
): Partial<Record<Bite, number>> {
  const counts: Partial<Record<Bite, number>> = {};
  const rows = columns.members * columns.items;
  for (let row = 0; row < rows; row++) {
    const atS = elapsedS(row);
    let word: Bite = 'raw';
    TIMED_WORDS.forEach((timed, w) => {
      if (columns.wordS[row * TIMED_WORDS.length + w]! <= atS) word = timed;
    });
    counts[word] = (counts[word] ?? 0) + 1 / rows;
  }
  return Object.fromEntries(BITES.flatMap((bite) => (counts[bite] ? [[bite, counts[bite]]] : [])));
}

/**
 * Chance of each word at one moment, its stages as told and the last one going on; sums to 1.
 *
 * @param elapsedS from the piece's own meat-on, or one for each member
 */
export const biteChancesAt = (
  columns: PieceColumns,
  elapsedS: number | Float64Array,
): Readonly<Partial<Record<Bite, number>>> =>
  biteChances(columns, (row) =>
    typeof elapsedS === 'number' ? elapsedS : elapsedS[Math.floor(row / columns.items)]!,
  );
