/** One piece by itself, many members: the figures that calc piece answers. */
import { BITES, type Bite } from '@pitwright/model';
import type { ResolvedPiece, ResolvedPit } from '../../day/resolve.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../../meat/run.ts';
import { biteWord } from '../../tender/bite.ts';
import { softenedShare } from '../../tender/dose.ts';
import { CookDraws, PieceDraws } from '../ensemble/draws.ts';
import { memberOf } from '../ensemble/member.ts';
import { softeningRate } from '../ensemble/run.ts';

/** Length members; ∞ = never within 48 h. */
export interface PieceFigures {
  readonly elapsedS: Float64Array;
  readonly reachS: Float64Array;
  /** At the end of the last stage; NaN where that never comes. */
  readonly coreC: Float64Array;
  /** Of the raw mass with its bone [1]; NaN where the end never comes. */
  readonly lossShare: Float64Array;
  readonly stallC: Float64Array;
  readonly from65To75S: Float64Array;
  /** Index in BITES at the end; NaN where that never comes. */
  readonly bite: Float64Array;
}

const CALC_MEMBERS = 400;
const CALC_SEED = 20270912;

let runner: PieceRunner | undefined;

/** @param reachC centre temperature whose first passing is wanted [°C] */
export function pieceFigures(
  piece: ResolvedPiece,
  pit: ResolvedPit,
  reachC: number | undefined,
  members = CALC_MEMBERS,
  seed = CALC_SEED,
): PieceFigures {
  runner ??= new PieceRunner(ENSEMBLE_SETTINGS, softeningRate);
  const column = (): Float64Array => new Float64Array(members);
  const figures: PieceFigures = {
    elapsedS: column(),
    reachS: column(),
    coreC: column(),
    lossShare: column(),
    stallC: column(),
    from65To75S: column(),
    bite: column(),
  };
  const cookDraws = new CookDraws(seed);
  const pieceDraws = new PieceDraws(seed, piece.id, 1);
  const last = piece.stages.length - 1;
  for (let m = 0; m < members; m++) {
    const member = memberOf(piece, pit, cookDraws.of(m), pieceDraws, m, 0);
    const outcome = runner.run(member.meat, member.stages, {
      stretch: member.stretch,
      wordDoses: member.wordDoses,
      ...(reachC !== undefined && { reachC }),
    });
    const ended = outcome.endS[last]! < Infinity;
    figures.elapsedS[m] = outcome.endS[last]!;
    figures.reachS[m] = outcome.reachS;
    figures.coreC[m] = ended ? outcome.coreC[last]! : NaN;
    figures.lossShare[m] = ended ? outcome.lossShare[last]! * (1 - piece.boneShare) : NaN;
    figures.stallC[m] = outcome.stallC;
    figures.from65To75S[m] = outcome.at75S < Infinity ? outcome.at75S - outcome.at65S : Infinity;
    const hottestC = outcome.wordS[0]! < Infinity ? 60 : 0;
    figures.bite[m] = ended
      ? BITES.indexOf(
          biteWord(piece.cut.tissue, softenedShare(member.k95PerH, outcome.doseH[last]!), hottestC),
        )
      : NaN;
  }
  return figures;
}

/** The word in the middle of the members that get there. */
export function medianBite(figures: PieceFigures): Bite | undefined {
  const sorted = figures.bite.filter((word) => !Number.isNaN(word)).sort();
  return sorted.length > 0 ? BITES[sorted[sorted.length >> 1]!] : undefined;
}
