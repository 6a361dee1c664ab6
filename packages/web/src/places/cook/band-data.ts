import { type BandChartData, type BandPiece, type BandStage, sure } from '@pitwright/draw';
import type { CookPlan, InstantRange, PlannedPiece } from '@pitwright/engine';
import type { Cook, Range } from '@pitwright/model';
import { biteName, capital, type Printer } from '@pitwright/words';
import { nightsOf, quietOf } from './fold.ts';

export const secondsOf = (instant: string): number => Date.parse(instant) / 1000;

/** A missing point is one that never comes. */
export const rangeOf = (range: InstantRange): Range => ({
  p10: range.p10 === undefined ? Infinity : secondsOf(range.p10),
  p50: range.p50 === undefined ? Infinity : secondsOf(range.p50),
  p90: range.p90 === undefined ? Infinity : secondsOf(range.p90),
  neverShare: range.neverShare,
});

const moved = (range: Range, byS: number): Range => ({
  ...range,
  p10: range.p10 + byS,
  p50: range.p50 + byS,
  p90: range.p90 + byS,
});

export const pieceName = (piece: Cook['pieces'][number], print: Printer): string =>
  piece.name ?? capital(print.cut(piece.cut, piece.count));

/** One planned piece as its band. `was` is the same piece before the last change. */
export function bandOf(cook: Cook, planned: PlannedPiece, print: Printer, was?: PlannedPiece): BandPiece {
  const piece = cook.pieces.find((one) => one.id === planned.pieceId)!;
  const onS = secondsOf(planned.onAt);
  const stages = planned.stages.map(
    (stage, index): BandStage => ({
      kind: stage.kind,
      start: index === 0 ? sure(onS) : rangeOf(stage.start),
    }),
  );
  const mass = piece.mass ? print.quantity(piece.mass) : '';
  return {
    letter: piece.letter,
    name: pieceName(piece, print),
    remark: piece.count > 1 ? `${piece.count} × ${mass}` : mass,
    bite: biteName(piece.bite),
    onS,
    stages,
    ready: rangeOf(planned.ready),
    ...(was ? { was: { onS: secondsOf(was.onAt), ready: rangeOf(was.ready) } } : {}),
  };
}

/**
 * A piece as it follows the hand before anything is computed: a moved start carries all of it, a moved edge stands
 * where the hand is.
 */
function following(planned: PlannedPiece, before: Cook, draft: Cook): PlannedPiece {
  const was = before.pieces.find((one) => one.id === planned.pieceId);
  const is = draft.pieces.find((one) => one.id === planned.pieceId);
  if (!was || !is?.onAt || is.onAt === planned.onAt || is.onAt === was.onAt) return planned;
  const byS = secondsOf(is.onAt) - secondsOf(planned.onAt);
  const shift = (instant: string | undefined) =>
    instant === undefined ? undefined : new Date((secondsOf(instant) + byS) * 1000).toISOString();
  const shiftRange = (range: InstantRange): InstantRange => {
    const all = moved(rangeOf(range), byS);
    const text = (s: number) => (Number.isFinite(s) ? { at: new Date(s * 1000).toISOString() } : {});
    const [p10, p50, p90] = [text(all.p10), text(all.p50), text(all.p90)];
    return {
      neverShare: range.neverShare,
      ...('at' in p10 ? { p10: p10.at } : {}),
      ...('at' in p50 ? { p50: p50.at } : {}),
      ...('at' in p90 ? { p90: p90.at } : {}),
    };
  };
  return {
    ...planned,
    onAt: is.onAt,
    ready: shiftRange(planned.ready),
    stages: planned.stages.map((stage) => ({
      ...stage,
      startAt: shift(stage.startAt)!,
      ...(stage.endAt ? { endAt: shift(stage.endAt)! } : {}),
      start: shiftRange(stage.start),
      end: shiftRange(stage.end),
    })),
  };
}

/** The plan as it follows the hand; the same plan where nothing of it moves before the answer. */
export function planFollowing(plan: CookPlan, before: Cook, draft: Cook): CookPlan {
  const pieces = plan.pieces.map((piece) => following(piece, before, draft));
  return pieces.every((piece, index) => piece === plan.pieces[index]) ? plan : { ...plan, pieces };
}

export interface BandsInput {
  readonly cook: Cook;
  readonly plan: CookPlan;
  readonly before?: CookPlan | undefined;
  readonly print: Printer;
  readonly nowS?: number | undefined;
  /** Close up on this piece: the axis begins a little before it goes on, and nothing is folded. */
  readonly closeUpOn?: string | undefined;
}

const LEAD_S = 1800;

/** All pieces of a cook as the data of the band chart; the axis begins with the first job of the two days. */
export function bandsOf({ cook, plan, before, print, nowS, closeUpOn }: BandsInput): BandChartData {
  const pieces = cook.pieces.flatMap((piece) => {
    const planned = plan.pieces.find((one) => one.pieceId === piece.id);
    const was = before?.pieces.find((one) => one.pieceId === piece.id);
    const hasMoved = was && planned && (was.onAt !== planned.onAt || was.ready.p50 !== planned.ready.p50);
    return planned ? [bandOf(cook, planned, print, hasMoved ? was : undefined)] : [];
  });
  const tableS = secondsOf(cook.table.at);
  const untilS = secondsOf(cook.table.until);
  const close = closeUpOn ? pieces.find((_, index) => cook.pieces[index]?.id === closeUpOn) : undefined;
  const firstWork = plan.placed
    .filter((placed) => placed.handIds.length > 0)
    .reduce((first, placed) => Math.min(first, secondsOf(placed.startAt)), Infinity);
  const firstOn = Math.min(...pieces.map((piece) => piece.onS));
  const fromS = close ? close.onS - LEAD_S : Math.min(firstWork, firstOn, tableS - 3600) - LEAD_S;
  return {
    pieces,
    tableS,
    untilS,
    fromS,
    ...(nowS !== undefined && nowS > fromS && nowS < untilS ? { nowS } : {}),
    nights: nightsOf(cook, fromS, untilS + 7200),
    quiet: close ? [] : quietOf(cook, plan, fromS, untilS),
  };
}
