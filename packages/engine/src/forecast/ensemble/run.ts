/** Members of one piece as columns. The whole ensemble, or any part of it, in any worker, gives the same bits. */
import type { ResolvedPiece, ResolvedPit } from '../../day/resolve.ts';
import { AFTER_HEAT_S, EATEN, type RunOutcome, WORDS_TIMED } from '../../meat/outcome.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from '../../meat/run.ts';
import { isCooking } from '../../meat/stagePlan.ts';
import { knownWord, wordPast } from '../../tender/bite.ts';
import { relativeSofteningRate } from '../../tender/dose.ts';
import { type PieceColumns, TIMED_WORDS } from '../types.ts';
import { CookDraws, PieceDraws } from './draws.ts';
import { memberOf } from './member.ts';
import type { PieceTrails } from './trails.ts';

/** How long the last stage is followed, for the time past the bite [s]. */
const TAIL_S = 12 * 3600;

export const softeningRate = (temperatureC: number): number => relativeSofteningRate(temperatureC);

/** A runner with its workspace, one for each worker. */
export const ensembleRunner = (): PieceRunner =>
  new PieceRunner({ ...ENSEMBLE_SETTINGS, tailS: TAIL_S }, softeningRate);

/** Index of the last stage on the heat; −1 where there is none. */
export function lastCookingStage(piece: ResolvedPiece): number {
  let last = -1;
  piece.stages.forEach((stage, i) => {
    if (isCooking(stage.kind) && last === i - 1) last = i;
  });
  return last;
}

/** @param trails what the piece left behind when it last ran with this seed; the bits are the same with and without */
export function pieceColumns(
  piece: ResolvedPiece,
  pit: ResolvedPit,
  seed: number,
  membersFrom: number,
  membersTo: number,
  runner: PieceRunner,
  trails?: PieceTrails,
): PieceColumns {
  const members = membersTo - membersFrom;
  const { items } = piece;
  const stages = piece.stages.length;
  const columns: PieceColumns = {
    pieceId: piece.id,
    members,
    items,
    stages,
    readyS: new Float64Array(members),
    pastBiteS: new Float64Array(members).fill(Infinity),
    wordS: new Float64Array(members * items * WORDS_TIMED),
    stageEndS: new Float64Array(members * items * stages),
    stageCoreC: new Float64Array(members * items * stages),
    stageSurfaceC: new Float64Array(members * items * stages),
    stageLossKg: new Float64Array(members * items * stages),
    stageBarkM: new Float64Array(members * items * stages),
    afterHeat: new Float64Array(members * items * AFTER_HEAT_S.length * EATEN.width),
    stallC: new Float64Array(members * items),
    from65To75S: new Float64Array(members * items),
  };
  const cookDraws = new CookDraws(seed);
  const pieceDraws = new PieceDraws(seed, piece.id, items);
  const meatKg = piece.size.massKg * (1 - piece.boneShare);
  const asked = TIMED_WORDS.indexOf(knownWord(piece.cut.tissue, piece.bite) as (typeof TIMED_WORDS)[number]);
  const tooSoft = wordPast(piece.cut.tissue, piece.bite);
  const past = tooSoft === undefined ? -1 : TIMED_WORDS.indexOf(tooSoft as (typeof TIMED_WORDS)[number]);
  const lastCooking = lastCookingStage(piece);
  for (let m = 0; m < members; m++) {
    const cook = cookDraws.of(membersFrom + m);
    for (let item = 0; item < items; item++) {
      const member = memberOf(piece, pit, cook, pieceDraws, membersFrom + m, item);
      const hardest = Math.max(...member.wordDoses.filter((dose) => dose < Infinity));
      const trail = trails?.of(membersFrom + m, item);
      const outcome = runner.run(member.meat, member.stages, {
        stretch: member.stretch,
        wordDoses: member.wordDoses,
        lastHeatStage: lastCooking,
        tailDoseH: past > 0 ? member.wordDoses[past - 1]! : hardest,
        ...(trail && { trail }),
      });
      const at = m * items + item;
      columns.wordS.set(outcome.wordS, at * WORDS_TIMED);
      columns.stageEndS.set(outcome.endS, at * stages);
      columns.stageCoreC.set(outcome.coreC, at * stages);
      columns.stageSurfaceC.set(outcome.surfaceC, at * stages);
      columns.stageBarkM.set(outcome.barkM, at * stages);
      for (let s = 0; s < stages; s++) columns.stageLossKg[at * stages + s] = outcome.lossShare[s]! * meatKg;
      const eaten = outcome.afterHeat;
      for (let i = 0; i < eaten.length; i += EATEN.width) {
        eaten[i + EATEN.lossShare] = eaten[i + EATEN.lossShare]! * meatKg;
        eaten[i + EATEN.browningH] = eaten[i + EATEN.browningH]! * member.browningFactor;
        eaten[i + EATEN.otherBrowningH] = eaten[i + EATEN.otherBrowningH]! * member.browningFactor;
      }
      columns.afterHeat.set(eaten, at * eaten.length);
      columns.stallC[at] = outcome.stallC;
      columns.from65To75S[at] = outcome.at75S < Infinity ? outcome.at75S - outcome.at65S : Infinity;
      const ready = readyS(piece, outcome, lastCooking, asked);
      if (ready > columns.readyS[m]!) columns.readyS[m] = ready;
      const pastBite = past < 0 ? Infinity : outcome.wordS[past]!;
      if (pastBite < columns.pastBiteS[m]!) columns.pastBiteS[m] = pastBite;
    }
  }
  return columns;
}

/** Its bite is reached and its stages on the heat are over. @param asked index in TIMED_WORDS, −1 raw */
function readyS(piece: ResolvedPiece, outcome: RunOutcome, lastCooking: number, asked: number): number {
  const bite = asked < 0 ? 0 : outcome.wordS[asked]!;
  if (lastCooking < 0) return bite;
  const cooked =
    piece.stages[lastCooking]!.trigger.by === 'table'
      ? lastCooking > 0
        ? outcome.endS[lastCooking - 1]!
        : 0
      : outcome.endS[lastCooking]!;
  return Math.max(bite, cooked);
}
