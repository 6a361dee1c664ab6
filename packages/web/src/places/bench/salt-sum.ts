import { edibleYield, findCut } from '@pitwright/engine';
import {
  EATEN_SHARE,
  glazeG,
  type OutcomeOptions,
  rubForSurface,
  type SaltAtTable,
  type SaltSource,
  SERVING_G,
  saltAtTable,
  saltG,
} from '@pitwright/engine/sauce';
import type { Cook, Formula, Piece } from '@pitwright/model';
import type { OnMeat } from './messages.ts';
import { outcomeOf } from './remembered.ts';

const COATS = 2;
/** Of the raw mass, where no yield is told for a cut (judgement, the middle of the yields that are). */
const USUAL_YIELD = 0.5;

const servedKg = (piece: Piece): number => {
  const massKg = piece.mass?.si ?? findCut(piece.cut)?.massKg ?? 1;
  return piece.count * massKg * (edibleYield(piece.cut)?.share.p50 ?? USUAL_YIELD);
};

/** Salt per gram as it goes on; a formula that does not work out adds nothing and is said where it stands. */
function saltShare(
  formula: Formula,
  kitchen: OutcomeOptions,
): { share: number; massG: number; densityKgM3: number } | undefined {
  const outcome = outcomeOf(formula, kitchen);
  if (!outcome.ok) return undefined;
  const massG = outcome.finishedMassG;
  return { share: saltG(outcome.finished) / massG, massG, densityKgM3: outcome.after.densityKgM3 };
}

/** All the salt that the eaters get from rub, spritz, glaze and sauce. */
export function saltSum(
  cook: Cook,
  kitchen: OutcomeOptions,
  onMeat: (cook: Cook, formula: Formula) => OnMeat,
): SaltAtTable | undefined {
  const people = cook.guests.adults + cook.guests.children;
  const sources = cook.formulas.flatMap((formula): SaltSource[] => {
    const salt = saltShare(formula, kitchen);
    if (!salt) return [];
    const { surfaceM2 } = onMeat(cook, formula);
    const from = (name: SaltSource['name'], massG: number): SaltSource => ({
      name,
      saltG: salt.share * massG,
      eatenShare: EATEN_SHARE[name],
    });
    if (formula.kind === 'rub') return [from('rub', rubForSurface(surfaceM2, 'light').middle)];
    if (formula.kind === 'spritz') return [from('spritz', salt.massG)];
    if (formula.kind !== 'sauce') return [];
    return [
      from('glaze', glazeG([{ surfaceM2, coats: COATS }], salt.densityKgM3)),
      from('table', people * SERVING_G),
    ];
  });
  const edibleKg = cook.pieces.reduce((sum, piece) => sum + servedKg(piece), 0);
  return edibleKg > 0 && people > 0 && sources.length > 0
    ? saltAtTable(sources, edibleKg, people)
    : undefined;
}
