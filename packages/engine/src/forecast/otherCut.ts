/** What changes where the label was wrong: the same piece foreseen as another cut, with the same chances drawn. */
import { BITES, type Cook, type CutId, type Piece, type Said } from '@pitwright/model';
import { findCut } from '../meat/cuts.ts';
import { pieceSize } from '../meat/size.ts';
import { forecastCook } from './cookForecast.ts';
import type { PieceForecast } from './types.ts';

const MEMBERS = 80;

function thicknessM(piece: Piece, cutId: CutId): number {
  const cut = findCut(cutId);
  if (!cut) throw new RangeError(`cut must be in the catalogue, got ${cutId}`);
  return 2 * pieceSize(cut, piece.mass?.si, piece.thickness?.si).halfThicknessM;
}

/**
 * Times to the bite and chances of the bite of one piece as it is labelled and as another cut.
 *
 * @param asCut what the piece is taken for now; its mass, thickness and stages stay as told
 * @returns one statement on thickness and time; one on the bite where no stage waits for it
 * @throws RangeError on a piece the cook has not, or a cut the catalogue has not
 */
export function ifOtherCut(
  cook: Cook,
  pieceId: string,
  asCut: CutId,
  { members = MEMBERS, seed = 1 }: { readonly members?: number; readonly seed?: number } = {},
): Said[] {
  const piece = cook.pieces.find((one) => one.id === pieceId);
  if (!piece) throw new RangeError(`the cook has no piece ${pieceId}`);
  const foresee = (cut: CutId): PieceForecast => {
    const pieces = cook.pieces.map((one) => (one === piece ? { ...one, cut } : one));
    return forecastCook({ ...cook, pieces }, { members, seed, pieceIds: [pieceId] }).pieces[0]!;
  };
  const told = foresee(piece.cut);
  const other = foresee(asCut);
  const cuts = { cut: piece.cut, other: asCut };
  const said: Said[] = [
    {
      id: 'cuts.other.time',
      params: {
        ...cuts,
        bite: piece.bite,
        thickness: { kind: 'length', si: thicknessM(piece, piece.cut) },
        otherThickness: { kind: 'length', si: thicknessM(piece, asCut) },
        ready: told.ready,
        otherReady: other.ready,
      },
      source: 'cuts.md',
    },
  ];
  if (piece.stages.every((stage) => stage.until.by !== 'bite'))
    said.push({
      id: 'cuts.other.bite',
      params: {
        ...cuts,
        bite: piece.bite,
        chance: reached(told, piece),
        otherChance: reached(other, piece),
        members,
      },
      source: 'cuts.md',
    });
  return said;
}

/** Share of members whose bite is at least the one asked when the last stage on the heat ends. */
function reached(forecast: PieceForecast, piece: Piece): number {
  const asked = BITES.indexOf(piece.bite);
  return BITES.reduce((sum, bite, i) => sum + (i >= asked ? (forecast.biteChances[bite] ?? 0) : 0), 0);
}
