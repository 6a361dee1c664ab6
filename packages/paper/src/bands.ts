import type { BandChartData, BandPiece } from '@pitwright/draw';
import type { InstantRange, PlannedPiece } from '@pitwright/engine';
import type { Range } from '@pitwright/model';
import { biteName, type Printer } from '@pitwright/words';
import { type PlanReport, pieceOf } from './report.ts';
import { pieceMass, pieceName } from './task-words.ts';

const epochS = (instant: string): number => Date.parse(instant) / 1000;

const rangeS = (range: InstantRange): Range => ({
  p10: range.p10 ? epochS(range.p10) : Infinity,
  p50: range.p50 ? epochS(range.p50) : Infinity,
  p90: range.p90 ? epochS(range.p90) : Infinity,
  neverShare: range.neverShare,
});

function bandPiece(planned: PlannedPiece, report: PlanReport, print: Printer): BandPiece {
  const piece = pieceOf(report.cook, planned.pieceId);
  const mass = pieceMass(piece, print);
  return {
    letter: piece.letter,
    name: pieceName(piece, print),
    ...(mass && { remark: mass }),
    bite: biteName(planned.bite),
    onS: epochS(planned.onAt),
    stages: planned.stages.map((stage, i) => {
      const place = piece.stages[i]?.in;
      return {
        kind: stage.kind,
        ...(place && place !== 'pit' && { place }),
        start:
          i === 0
            ? {
                p10: epochS(planned.onAt),
                p50: epochS(planned.onAt),
                p90: epochS(planned.onAt),
                neverShare: 0,
              }
            : rangeS(stage.start),
      };
    }),
    ready: rangeS(planned.ready),
  };
}

/** Hours of the night in which no job lies, drawn folded. */
function quietStretches(report: PlanReport): { fromS: number; toS: number }[] {
  const { plan } = report;
  const starts = [...plan.pieces.map((piece) => epochS(piece.onAt))].sort((a, b) => a - b);
  const first = starts[0] ?? epochS(plan.table.at);
  const edges = plan.placed
    .filter((placed) => placed.handIds.length > 0)
    .map((placed) => epochS(placed.startAt))
    .filter((atS) => atS > first)
    .sort((a, b) => a - b);
  const LONG_S = 3 * 3600;
  return [first, ...edges].flatMap((atS, i, all) => {
    const next = all[i + 1];
    return next !== undefined && next - atS > LONG_S ? [{ fromS: atS + 1800, toS: next - 1800 }] : [];
  });
}

/** The bands of the whole cook, ending at the table. */
export const bandData = (report: PlanReport, print: Printer): BandChartData => ({
  pieces: report.plan.pieces.map((planned) => bandPiece(planned, report, print)),
  tableS: epochS(report.plan.table.at),
  untilS: epochS(report.plan.table.until),
  quiet: quietStretches(report),
});
