/** What is sprayed on a piece during a stage: as told, else as a rack is sprayed that a spritz is mixed for. */
import { type Cook, type Piece, quantity, type Spritz, type Stage } from '@pitwright/model';
import { findCut } from '../meat/cuts.ts';

/** @source common practice, no source: every 45 to 60 min once the crust is dry, a few sprays to a side of a rack */
const RACK_SPRITZ: Spritz = {
  amount: quantity('volume', 15, 'mL'),
  every: quantity('time', 50, 'min'),
};

const isMixedFor = (cook: Cook, pieceId: string): boolean =>
  cook.formulas.some(({ kind, for: pieces }) => kind === 'spritz' && (!pieces || pieces.includes(pieceId)));

const isRackOfRibs = ({ cut }: Piece): boolean => findCut(cut)?.tissue.endsWith('ribs') ?? false;

/** Missing: none. Of a big cut or a bird it must be told, for nobody sprays those by a rhythm of their own. */
export function spritzOf(cook: Cook, piece: Piece, stage: Stage): Spritz | undefined {
  if (stage.spritz) return stage.spritz;
  if (stage.kind !== 'bare' || (stage.in && stage.in !== 'pit')) return undefined;
  return isRackOfRibs(piece) && isMixedFor(cook, piece.id) ? RACK_SPRITZ : undefined;
}

/** A spritz is mixed for this piece, and no stage of it is sprayed. */
export const isSpritzUntold = (cook: Cook, piece: Piece): boolean =>
  cook.formulas.some(({ kind, for: pieces }) => kind === 'spritz' && pieces?.includes(piece.id)) &&
  piece.stages.every((stage) => spritzOf(cook, piece, stage) === undefined);
