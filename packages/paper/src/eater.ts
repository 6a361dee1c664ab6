import {
  type CookForecast,
  type CookPlan,
  eaterAt,
  edibleYield,
  findCut,
  type PlannedStage,
  type SaltFrom,
  saltForecast,
} from '@pitwright/engine';
import { EATEN_SHARE, glazeG, rubForSurface, saltFromBrineKg, slabSurfaceM2 } from '@pitwright/engine/sauce';
import type { Cook, Piece, Range } from '@pitwright/model';
import type { EaterReport, FormulaReport } from './report.ts';

/** Coats of the glaze, and how far a hand is off them (common practice, no source). */
const COATS = { low: 1, high: 2.5 } as const;
/** A spritz drips more or less (judgement). */
const SPRAYED = { low: 0.6, high: 1.5 } as const;
/** Of the raw mass, where no yield is told for a cut (judgement, the middle of the yields that are). */
const USUAL_YIELD: Range = { p10: 0.42, p50: 0.5, p90: 0.6, neverShare: 0 };

const scaled = ({ p10, p50, p90, neverShare }: Range, by: number): Range => ({
  p10: p10 * by,
  p50: p50 * by,
  p90: p90 * by,
  neverShare,
});

const sprays = (piece: Piece, stages: readonly PlannedStage[]): number =>
  piece.stages.reduce((kg, { spritz }, i) => {
    const { startAt, endAt } = stages[i] ?? {};
    if (!spritz || !startAt || !endAt) return kg;
    const times = Math.floor((Date.parse(endAt) - Date.parse(startAt)) / 1000 / spritz.every.si);
    const each = spritz.amount.kind === 'mass' ? spritz.amount.si : 1000 * spritz.amount.si;
    return kg + times * each;
  }, 0);

/** Of the salt that a brine has brought in: juice that drips carries some out, and cuts differ (judgement). */
const BRINED = { low: 0.65, high: 1.05 } as const;

/** How long the plan has the piece in a brine: from the job that puts it in to the next that handles it [s]. */
function brinedS({ tasks, placed }: CookPlan, pieceId: string, formulaId: string): number {
  const kinds = new Map(tasks.map((task) => [task.id, task]));
  const jobs = placed.filter(({ taskId }) => kinds.get(taskId)?.pieceIds.includes(pieceId));
  const into = jobs.find(({ taskId }) => {
    const task = kinds.get(taskId)!;
    return task.kind === 'brine' && task.formulaId === formulaId;
  });
  if (!into) return 0;
  const inAt = Date.parse(into.endAt);
  const outAt = Math.min(...jobs.map(({ startAt }) => Date.parse(startAt)).filter((at) => at >= inAt));
  return outAt < Infinity ? (outAt - inAt) / 1000 : 0;
}

/** What the brine of this formula brings into one item [g]; its pieces share it. */
function fromBrine(
  cook: Cook,
  plan: CookPlan,
  piece: Piece,
  { formula, totalKg, yieldKg, saltShare = 0, waterShare = 0 }: FormulaReport,
  thicknessM: number,
): SaltFrom[] {
  const inIt = cook.pieces.filter(({ id }) => !formula.for || formula.for.includes(id));
  const meatKg = inIt.reduce((sum, one) => sum + one.count * massOf(one), 0);
  const brineKg = yieldKg ?? totalKg;
  const brine = { saltKg: saltShare * brineKg, waterKg: waterShare * brineKg };
  const timeS = brinedS(plan, piece.id, formula.id);
  const takenKg = saltFromBrineKg(brine, meatKg, thicknessM, timeS);
  const ownG = (1000 * takenKg * massOf(piece)) / meatKg;
  return [{ part: 'brine', lowG: BRINED.low * ownG, highG: BRINED.high * ownG }];
}

const massOf = (piece: Piece): number => piece.mass?.si ?? findCut(piece.cut)?.massKg ?? 1;

/** Salt that the formulas bring onto one item [g], as spans. */
function saltSources(
  cook: Cook,
  plan: CookPlan,
  piece: Piece,
  formulas: readonly FormulaReport[],
  stages: readonly PlannedStage[],
): SaltFrom[] {
  const massKg = massOf(piece);
  const cut = findCut(piece.cut);
  const thicknessM = piece.thickness?.si ?? 2 * (cut?.halfThicknessM ?? 0.02);
  const surfaceM2 = slabSurfaceM2(massKg, thicknessM);
  const own = piece.solution ? [solutionSalt(massKg, piece.solution.si)] : [];
  const onIt = formulas.flatMap((report): SaltFrom[] => {
    const { formula, saltShare, densityKgM3 } = report;
    if (saltShare === undefined || (formula.for && !formula.for.includes(piece.id))) return [];
    const from = (
      part: keyof typeof EATEN_SHARE & SaltFrom['part'],
      lowG: number,
      highG: number,
    ): SaltFrom => ({
      part,
      lowG: lowG * saltShare * EATEN_SHARE[part],
      highG: highG * saltShare * EATEN_SHARE[part],
    });
    if (formula.kind === 'rub') {
      const { low, high } = rubForSurface(surfaceM2, 'light');
      return [from('rub', low, high)];
    }
    if (formula.kind === 'brine') return fromBrine(cook, plan, piece, report, thicknessM);
    if (formula.kind === 'spritz') {
      const sprayedG = 1000 * sprays(piece, stages);
      return [from('spritz', SPRAYED.low * sprayedG, SPRAYED.high * sprayedG)];
    }
    if (formula.kind !== 'sauce' || !piece.stages.some(({ kind }) => kind === 'glazed')) return [];
    const glaze = (coats: number): number => glazeG([{ surfaceM2, coats }], densityKgM3 ?? 1000);
    return [from('glaze', glaze(COATS.low), glaze(COATS.high))];
  });
  return [...own, ...onIt];
}

/** Salt in a solution that a seller adds [1]. @source from memory: enhanced pork of 10–12 % tells 250–400 mg sodium in 100 g */
const SOLUTION_SALT = { low: 0.04, high: 0.08 } as const;

function solutionSalt(massKg: number, share: number): SaltFrom {
  const solutionG = (1000 * massKg * share) / (1 + share);
  return { part: 'solution', lowG: SOLUTION_SALT.low * solutionG, highG: SOLUTION_SALT.high * solutionG };
}

/** What the eater gets of every piece, as the plan puts it on the table. */
export function eatersOf(
  cook: Cook,
  forecast: CookForecast,
  plan: CookPlan,
  formulas: readonly FormulaReport[],
): EaterReport[] {
  return forecast.pieces.flatMap(({ pieceId, columns }): EaterReport[] => {
    const piece = cook.pieces.find((one) => one.id === pieceId);
    const planned = plan.pieces.find((one) => one.pieceId === pieceId);
    if (!piece || !planned) return [];
    const elapsedS = (Date.parse(plan.table.at) - Date.parse(planned.onAt)) / 1000;
    const atTable = eaterAt(cook, columns, elapsedS);
    const edibleKg = scaled(edibleYield(piece.cut)?.share ?? USUAL_YIELD, massOf(piece));
    const salt = saltForecast(saltSources(cook, plan, piece, formulas, planned.stages), edibleKg);
    return [{ pieceId, ...(atTable && { atTable }), ...(salt && { salt }) }];
  });
}
