/** What a cook should know of a piece before it goes on, read from the members. */
import type { Range, Said } from '@pitwright/model';
import type { ResolvedPiece } from '../day/resolve.ts';
import { isCooking } from '../meat/stagePlan.ts';
import { rangeOf } from './ensemble/range.ts';
import type { PieceColumns } from './types.ts';

/** From 65 to 75 °C in more than this, for half of the members, is a stall that a cook notices [s]; under 5 K an hour. */
const STALL_FROM_S = 2 * 3600;
/** A rarer share is not counted by so few members. */
const NEVER_FROM_SHARE = 0.025;

/** A stall to be expected, and a share that never gets there with what would end it. */
export function pieceNotices(piece: ResolvedPiece, columns: PieceColumns): Said[] {
  const said: Said[] = [];
  const passes = rangeOf(columns.from65To75S);
  const stallC = columns.stallC.filter((c) => !Number.isNaN(c));
  if (passes.p50 >= STALL_FROM_S && passes.p10 < Infinity && stallC.length > 0) {
    const at = rangeOf(stallC);
    said.push({
      id: 'forecast.stall',
      level: 'information',
      params: { lowC: at.p10, highC: at.p90, soonS: passes.p10, ...lateOf(passes) },
      source: 'meat.md',
    });
  }
  const neverShare = columns.readyS.filter((s) => s === Infinity).length / columns.members;
  if (neverShare >= NEVER_FROM_SHARE)
    said.push({
      id: isWrapped(piece) ? 'forecast.never-wrapped' : 'forecast.never-bare',
      level: 'caution',
      params: { share: neverShare, members: columns.members },
      source: 'meat.md',
    });
  return said;
}

/** Open where the late end never passes. */
const lateOf = (passes: Range): { lateS?: number } => (passes.p90 < Infinity ? { lateS: passes.p90 } : {});

const isWrapped = (piece: ResolvedPiece): boolean =>
  piece.stages.some((stage) => isCooking(stage.kind) && stage.cover.kind === 'foil');
