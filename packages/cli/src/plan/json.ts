import type { Alternative, InstantRange, PlannedPiece, PlannedStage } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import {
  answer,
  generalNotices,
  noticesOf,
  noticesOfFormula,
  type PlanReport,
  pieceName,
  pieceOf,
  taskSaid,
} from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { type Closer, closerOf } from './closer.ts';
import { eatersJson } from './eater.ts';
import { finite, rangeJson } from './range-json.ts';
import type { PlanJson } from './schema.ts';
import { whyOf } from './why.ts';

type SaidJson = PlanJson['answer'][number];

/** Shares summed member by member may pass 1 by a rounding. */
const shareOf = (value: number): number => Math.min(1, Math.max(0, value));

const instantsJson = ({ p10, p50, p90, neverShare }: InstantRange) => ({
  p10: p10 ?? null,
  p50: p50 ?? null,
  p90: p90 ?? null,
  neverShare,
});

const saidJson = (one: Said, print: Printer): SaidJson => ({
  id: one.id,
  params: { ...one.params },
  level: one.level ?? null,
  source: one.source ?? null,
  text: say(one, print),
});

/** The why of one piece as the published form of the plan has it. */
export function whyJson(
  { cook, forecast, plan }: PlanReport,
  { pieceId, onAt }: PlannedPiece,
  print: Printer,
): PlanJson['pieces'][number]['why'] {
  const tableS = (Date.parse(plan.table.at) - Date.parse(onAt)) / 1000;
  const { top, bottom, told, totalsJ } = whyOf(cook, forecast, pieceId, onAt, tableS);
  return {
    top,
    bottom,
    moments: told.map(({ at, elapsedS, said, heat, inside: { otherDryM, ...inside } }) => ({
      at,
      elapsedS,
      said: saidJson(said, print),
      heatW: heat,
      ...inside,
      otherDryM: otherDryM ?? null,
    })),
    heatJ: totalsJ,
  };
}

/** The plan of a cook as the published form has it. */
export function planJson(report: PlanReport, print: Printer): PlanJson {
  const { cook, plan, forecast } = report;
  const said = (one: Said): SaidJson => saidJson(one, print);
  const letterOf = (id: string): string =>
    cook.pieces.find((piece) => piece.id === id || piece.letter === id)?.letter ?? id;
  const stageJson = (stage: PlannedStage) => ({
    kind: stage.kind,
    startAt: stage.startAt,
    endAt: stage.endAt ?? null,
    elapsedStartS: stage.elapsedStartS,
    start: instantsJson(stage.start),
    end: instantsJson(stage.end),
    coreC: rangeJson(stage.coreC),
    surfaceC: rangeJson(stage.surfaceC),
    sign: stage.sign ? said(stage.sign) : null,
  });
  const closer = closerOf(report);
  const measuringJson = ({ sensitivity }: Closer) => ({
    widthS: finite(sensitivity.widthS),
    narrowings: sensitivity.narrowings.map(({ measure, widthS }) => ({ measure, widthS: finite(widthS) })),
    said: sensitivity.said ? said(sensitivity.said) : null,
  });
  const zonesJson = ({ zones }: Closer) =>
    zones
      ? {
          decides: zones.decides ?? null,
          zones: zones.zones.map(({ zone, massKg, offHeatS, readyS, coreC, biteChance }) => ({
            zone,
            massKg,
            offHeatS: rangeJson(offHeatS),
            readyS: rangeJson(readyS),
            coreC: rangeJson(coreC),
            biteChance: shareOf(biteChance),
          })),
          said: zones.said.map(said),
        }
      : null;
  const pieceJson = (planned: PlannedPiece) => {
    const piece = pieceOf(cook, planned.pieceId);
    const foreseen = forecast.pieces.find((one) => one.pieceId === planned.pieceId)!;
    return {
      id: piece.id,
      letter: piece.letter,
      name: pieceName(piece, print),
      cut: piece.cut,
      count: piece.count,
      massKg: piece.mass?.si ?? null,
      bite: planned.bite,
      onAt: planned.onAt,
      onAtPinned: planned.onAtPinned,
      elapsedOnS: planned.elapsedOnS,
      latestOnAt: planned.latestOnAt ?? null,
      ready: instantsJson(planned.ready),
      waitS: rangeJson(planned.waitS),
      chanceOnTime: planned.chanceOnTime,
      misses: {
        late: shareOf(planned.misses.late),
        heldTooLong: shareOf(planned.misses.heldTooLong),
        tooSoft: shareOf(planned.misses.tooSoft),
        never: shareOf(planned.misses.never),
      },
      stages: planned.stages.map(stageJson),
      lossKg: rangeJson(foreseen.lossKg),
      biteChances: Object.fromEntries(
        Object.entries(foreseen.biteChances).map(([bite, chance]) => [bite, shareOf(chance)]),
      ),
      eater: eatersJson(report, foreseen),
      measuring: measuringJson(closer.get(piece.id)!),
      zones: zonesJson(closer.get(piece.id)!),
      why: whyJson(report, planned, print),
      notices: [...foreseen.notices, ...noticesOf(report.notices, piece.id)].map(said),
    };
  };
  const alternativeJson = (one: Alternative) => ({
    id: one.id,
    said: said(one.said),
    buys: one.buys.map(said),
    costs: one.costs.map(said),
    chanceAllOnTime: one.chanceAllOnTime ?? null,
    nightWorkS: one.nightWorkS ?? null,
    walks: one.walks ?? null,
    firstOnAt: one.firstOnAt ?? null,
    isAdvised: one.isAdvised,
  });
  return {
    kind: 'plan',
    version: 1,
    cook: {
      id: cook.id,
      name: cook.name,
      isDemo: cook.isDemo,
      zone: cook.zone,
      rules: cook.rules,
      rulesTold: cook.rulesTold,
      tableAt: plan.table.at,
      tableUntil: plan.table.until,
      adults: cook.guests.adults,
      children: cook.guests.children,
    },
    answer: answer(report, print).map(said),
    chance: {
      asked: plan.chanceAsked,
      allOnTime: plan.chanceAllOnTime,
      members: plan.members,
      seed: plan.seed,
      tightest: plan.tightest
        ? { letter: letterOf(plan.tightest.pieceId), chance: plan.tightest.chance }
        : null,
    },
    firstOnAt: plan.firstOnAt,
    lightAt: plan.lightAt ?? null,
    pieces: plan.pieces.map(pieceJson),
    formulas: report.formulas.map((one) => ({
      id: one.formula.id,
      name: one.formula.name,
      kind: one.formula.kind,
      for: one.formula.for?.map(letterOf) ?? null,
      lines: one.lines.map(({ ingredientId, name, massKg, isLate }) => ({
        ingredient: ingredientId,
        name,
        massKg,
        late: isLate,
      })),
      totalKg: one.totalKg,
      yieldKg: one.yieldKg ?? null,
      yieldM3: one.yieldM3 ?? null,
      simmerS: one.simmerS ? rangeJson(one.simmerS) : null,
      said: one.said.map(said),
      notices: noticesOfFormula(report.notices, one.formula.id).map(said),
    })),
    jobs: plan.placed.map((placed) => {
      const task = plan.tasks.find((one) => one.id === placed.taskId)!;
      return {
        id: task.id,
        kind: task.kind,
        at: task.at,
        pieces: task.pieceIds.map(letterOf),
        formula: task.formulaId ?? null,
        startAt: placed.startAt,
        endAt: placed.endAt,
        toTableS: (Date.parse(plan.table.at) - Date.parse(placed.startAt)) / 1000,
        elapsedS: placed.elapsedS,
        canStart: placed.canStart ? { ...placed.canStart } : null,
        hands: [...placed.handIds],
        walk: placed.walk ?? null,
        inNight: placed.inNight,
        sign: task.sign ? said(task.sign) : null,
        text: say(taskSaid(task, report, print), print),
      };
    }),
    fireWatch: plan.fireWatch ? { ...plan.fireWatch } : null,
    nightWorkS: plan.nightWorkS,
    handWorkS: plan.handWorkS,
    walks: plan.walks.length,
    conflicts: plan.conflicts.map((conflict) => ({
      demands: conflict.demands.map(({ id, kind, said: what }) => ({ id, kind, said: said(what) })),
      wayOut: conflict.wayOut.map(({ demandId, buys }) => ({ demandId, buys: said(buys) })),
      giveUpId: conflict.giveUpId,
    })),
    wouldReach: plan.wouldReach.map(alternativeJson),
    alternatives: plan.alternatives.map(alternativeJson),
    notUsed: forecast.notUsed.map(said),
    notices: generalNotices(report.notices).map(said),
  };
}
