import type { CookPlan } from '@pitwright/engine';
import {
  type Cook,
  type CutId,
  isWaiting,
  type Piece,
  type Quantity,
  quantity,
  type Stage,
  type StageKind,
} from '@pitwright/model';

/** Times are moved in steps of five minutes. */
export const STEP_MS = 5 * 60_000;
const LEAST_STAGE_MS = STEP_MS;

export const toStep = (ms: number): number => Math.round(ms / STEP_MS) * STEP_MS;
const instant = (ms: number): string => new Date(ms).toISOString().replace('.000Z', 'Z');

/** What is told; a figure that is undefined is told no longer. */
export type Telling<T> = { readonly [Key in keyof T]?: T[Key] | undefined };
export type Tell<T> = (told: Telling<T>) => void;

export function withTold<T extends object>(record: T, told: Telling<T>): T {
  const next = Object.entries({ ...record, ...told }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(next) as T;
}

/** A cook, or the recipe that it is made from: the same pieces, without a day, a pit or a kitchen. */
export type OfPieces = Pick<Cook, 'pieces'> & Partial<Pick<Cook, 'pit' | 'kitchen'>>;

/** What is told of one piece. */
export const setPiece = <T extends OfPieces>(cook: T, pieceId: string, told: Telling<Piece>): T => ({
  ...cook,
  pieces: cook.pieces.map((piece) => (piece.id === pieceId ? withTold(piece, told) : piece)),
});

/** Doubt of a difference between two places of one grate, read with one probe [K]. @source judgement */
const PLACE_SD_K = 1;

/**
 * The air as a probe at the grate beside the piece has it. In the middle that is the pit's temperature; at an end of the
 * grate, how far that end is from it.
 */
export function setAtGrate(cook: Cook, pieceId: string, at: Quantity<'temperature'>): Cook {
  const place = cook.pieces.find((piece) => piece.id === pieceId)?.place ?? 'middle';
  const pit = { ...cook.pit, gauge: 'grate' as const };
  if (place === 'middle') return { ...cook, pit: { ...pit, temperature: at } };
  const warmerK = at.si - cook.pit.temperature.si;
  const apart: Quantity<'difference'> = {
    kind: 'difference',
    si: Math.max(0, place === 'hot' ? warmerK : -warmerK),
    writtenIn: 'K',
    sd: PLACE_SD_K,
  };
  return { ...cook, pit: place === 'hot' ? { ...pit, hotEnd: apart } : { ...pit, coolEnd: apart } };
}

/** The piece goes on at this instant, set by hand. */
export const moveStart = (cook: Cook, pieceId: string, atMs: number): Cook =>
  setPiece(cook, pieceId, { onAt: instant(toStep(atMs)) });

/** The plan chooses the start again. */
export const freeStart = (cook: Cook, pieceId: string): Cook => setPiece(cook, pieceId, { onAt: undefined });

export const setStages = <T extends OfPieces>(cook: T, pieceId: string, stages: readonly Stage[]): T =>
  setPiece(cook, pieceId, { stages });

/** The piece is another cut than its label said; what was measured of it stays. */
export const setCut = (cook: Cook, pieceId: string, cut: CutId): Cook => setPiece(cook, pieceId, { cut });

const isWrapped = (kind: StageKind): boolean => kind === 'foil' || kind === 'paper';

/** The stage as another kind: what that kind does not know is left out, so that the cook still reads as a file. */
export function asKind(stage: Stage, kind: StageKind): Stage {
  const { liquid, wrap: _ofTheOldKind, spritz, direct, at, pit, until, in: place, ...kept } = stage;
  // Neither where it is warm nor how warm it is there suits what is to get cold, nor the other way round.
  const isAsCold = (kind === 'chill') === (stage.kind === 'chill');
  const keepsPlace = isAsCold && (place === 'oven' || isWaiting(kind) === isWaiting(stage.kind));
  return {
    ...kept,
    kind,
    ...(place && keepsPlace && { in: place }),
    until:
      until.by === 'table' && !isWaiting(kind) ? { by: 'clock', after: quantity('time', 60, 'min') } : until,
    ...(liquid && isWrapped(kind) && { liquid }),
    ...(spritz && !isWrapped(kind) && !isWaiting(kind) && { spritz }),
    ...(direct && !isWaiting(kind) && { direct }),
    ...(at && isWaiting(kind) && isAsCold && { at }),
    ...(pit && !isWaiting(kind) && { pit }),
  };
}

/** A stage by the clock, with what else it has kept. */
const byClock = (stage: Stage, durationMs: number): Stage => ({
  ...stage,
  until: {
    by: 'clock',
    after: quantity('time', Math.round(Math.max(LEAST_STAGE_MS, durationMs) / 60_000), 'min'),
  },
});

/** The end of a stage is set to this instant: from now on the clock ends it, counted from its planned beginning. */
export function moveStageEnd(cook: Cook, plan: CookPlan, pieceId: string, index: number, atMs: number): Cook {
  const piece = cook.pieces.find((one) => one.id === pieceId);
  const startAt = plan.pieces.find((one) => one.pieceId === pieceId)?.stages[index]?.startAt;
  const stage = piece?.stages[index];
  if (!piece || !stage || !startAt) return cook;
  const stages = piece.stages.with(index, byClock(stage, toStep(atMs) - Date.parse(startAt)));
  return setStages(cook, pieceId, stages);
}

/** The serving hour moves, and its window with it. */
export function moveTable(cook: Cook, atMs: number): Cook {
  const at = toStep(atMs);
  const window = Date.parse(cook.table.until) - Date.parse(cook.table.at);
  return { ...cook, table: { at: instant(at), until: instant(at + window) } };
}
