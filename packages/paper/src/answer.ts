import type { Said } from '@pitwright/model';
import { type Printer, say } from '@pitwright/words';
import { type PlanReport, pieceOf } from './report.ts';
import { pieceName, taskSaid } from './task-words.ts';

/** The answer in one sentence: will it all be ready, how sure, what to do first. */
export function answer(report: PlanReport, print: Printer): Said[] {
  const { cook, plan } = report;
  const first = plan.placed.find((placed) => placed.handIds.length > 0) ?? plan.placed[0];
  const firstTask = plan.tasks.find((task) => task.id === first?.taskId);
  const said: Said[] = [
    {
      id: 'plan.chance',
      params: {
        share: plan.chanceAllOnTime,
        members: plan.members,
        pieces: plan.pieces.length,
        letter: plan.pieces[0]?.letter ?? '',
        until: plan.table.until,
      },
    },
  ];
  if (plan.tightest && plan.pieces.length > 1) {
    const piece = pieceOf(cook, plan.tightest.pieceId);
    said.push({
      id: 'plan.tightest',
      params: {
        letter: piece.letter,
        name: pieceName(piece, print),
        share: plan.tightest.chance,
        members: plan.members,
      },
    });
  }
  if (plan.chanceAllOnTime < plan.chanceAsked) {
    const isReached = plan.wouldReach.some((way) => (way.chanceAllOnTime ?? 0) >= plan.chanceAsked);
    const isNearer = plan.wouldReach.length > 0;
    said.push({
      id: isReached ? 'plan.chance-short-ways' : isNearer ? 'plan.chance-short-nearer' : 'plan.chance-short',
      params: { share: plan.chanceAllOnTime, asked: plan.chanceAsked, members: plan.members },
    });
  }
  if (first && firstTask)
    said.push({
      id: 'plan.first-job',
      params: { at: first.startAt, job: say(taskSaid(firstTask, report, print), print) },
    });
  const firstOn = plan.pieces.find((piece) => piece.onAt === plan.firstOnAt);
  if (firstOn)
    said.push({
      id: 'plan.first-meat',
      params: {
        letter: firstOn.letter,
        name: pieceName(pieceOf(cook, firstOn.pieceId), print),
        at: firstOn.onAt,
      },
    });
  return said;
}
