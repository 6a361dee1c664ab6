import {
  type CookForecast,
  forecastCook,
  PREVIEW_MEMBERS,
  planCook,
  replanCook,
  type SolveLp,
  standingNotices,
  withAlternatives,
} from '@pitwright/engine';
import { type SauceOutcome, saltG, sauceOutcome, THICKNESS_WORDS } from '@pitwright/engine/sauce';
import { type Cook, type Formula, madeFormula, type Range, type Said } from '@pitwright/model';
import { eatersOf } from './eater.ts';
import type { FormulaReport, PlanReport } from './report.ts';

const ZERO_CELSIUS_K = 273.15;

/** What the bench says of a finished sauce, in the order in which it is met: stove, look, keeping, allergens. */
function saidOf(outcome: SauceOutcome): Said[] {
  return [...outcome.notices, ...outcome.keeping.said];
}

const looksOf = ({ looks, looksThinner, looksThicker }: SauceOutcome) => ({
  pot: THICKNESS_WORDS[looks.pot.thickness],
  fridge: THICKNESS_WORDS[looks.fridge.thickness],
  thin: THICKNESS_WORDS[looksThinner.fridge.thickness],
  thick: THICKNESS_WORDS[looksThicker.fridge.thickness],
});

/** A formula by mass; where it cannot be computed, its problems stand in its place. */
function formulaReport(formula: Formula, cook: Cook): FormulaReport {
  const outcome = sauceOutcome(formula, {
    ...(cook.place?.altitude && { altitudeM: cook.place.altitude.si }),
    ...(cook.labels && { labels: cook.labels }),
    ...(cook.weather?.air && { airC: cook.weather.air.si - ZERO_CELSIUS_K }),
  });
  if (!outcome.ok) return { formula, lines: [], totalKg: 0, said: outcome.problems };
  return {
    formula,
    lines: outcome.lines.map(({ line, ingredient, massG, isLate }) => ({
      ingredientId: line.ingredient,
      name: ingredient.name,
      massKg: massG / 1000,
      amount: line.amount,
      isLate,
    })),
    totalKg: outcome.rawMassG / 1000,
    saltShare: saltG(outcome.finished) / outcome.finishedMassG,
    waterShare: outcome.finished.waterG / outcome.finishedMassG,
    densityKgM3: outcome.after.densityKgM3,
    ...(outcome.waterOffG > 0 && {
      yieldKg: outcome.finishedMassG / 1000,
      takeOffKg: (outcome.finishedMassG - outcome.lateMassG) / 1000,
      yieldM3: outcome.finishedVolumeMl / 1e6,
    }),
    ...(outcome.simmerS && { simmerS: outcome.simmerS, jars: outcome.jars.full, looks: looksOf(outcome) }),
    said: formula.kind === 'sauce' ? saidOf(outcome) : [],
  };
}

/** Foreseen lengths of the simmers, by formula id, for the run sheet. */
const simmersOf = (formulas: readonly FormulaReport[]): Record<string, Range> =>
  Object.fromEntries(formulas.flatMap(({ formula, simmerS }) => (simmerS ? [[formula.id, simmerS]] : [])));

/** What the cook's formulas become. They depend on its altitude and its air, on nothing of its meat. */
export const formulaReports = (cook: Cook): readonly FormulaReport[] =>
  cook.formulas.map((formula) => formulaReport(madeFormula(formula), cook));

/** A plan as its forecast tells it, before any pin and without other ways. */
function bareReport(
  cook: Cook,
  forecast: CookForecast,
  formulas: readonly FormulaReport[],
  solveLp?: SolveLp,
): PlanReport {
  const plan = planCook(cook, forecast, { simmers: simmersOf(formulas), ...(solveLp && { solveLp }) });
  return {
    cook,
    forecast,
    plan,
    formulas,
    eaters: eatersOf(cook, forecast, plan, formulas),
    notices: standingNotices(cook),
  };
}

/**
 * What follows a hand that still moves something: the plan alone, for other ways would be foreseen for nothing.
 * @param formulas what `formulaReports` told of the same formulas, altitude and air
 */
export const previewReport = (
  cook: Cook,
  forecast: CookForecast,
  formulas: readonly FormulaReport[],
): PlanReport => pinnedReport(bareReport(cook, forecast, formulas), cook);

/** Everything that the plan of a cook prints, from its forecast; other ways are foreseen with a preview's members. */
export function gatherReport(cook: Cook, forecast: CookForecast, solveLp?: SolveLp): PlanReport {
  const report = bareReport(cook, forecast, formulaReports(cook), solveLp);
  const members = Math.min(PREVIEW_MEMBERS, forecast.members);
  const plan = withAlternatives(report.plan, cook, forecast, {
    members,
    foresee: (other, pieceIds) => forecastCook(other, { members, seed: forecast.seed, pieceIds }),
  });
  return pinnedReport({ ...report, plan }, cook);
}

/** Before every plan: nothing of it has begun. */
const BEFORE_ALL = '1970-01-01T00:00:00Z';

/**
 * The same days with the jobs that `cook.pinned` names where hands put them, and everything else as near as it can be
 * to where it stood.
 */
export function pinnedReport(report: PlanReport, cook: Cook): PlanReport {
  const { pinned } = cook;
  if (!pinned || Object.keys(pinned).length === 0) return { ...report, cook };
  const { wouldReach, alternatives } = report.plan;
  const plan = replanCook(report.plan, cook, report.forecast, {
    now: BEFORE_ALL,
    pinned,
    simmers: simmersOf(report.formulas),
  });
  const eaters = eatersOf(cook, report.forecast, plan, report.formulas);
  return { ...report, cook, eaters, plan: { ...plan, wouldReach, alternatives } };
}
