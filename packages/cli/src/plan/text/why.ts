import { explainPiece, pieceInside, tellingMoments } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import { type PlanReport, pieceName } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { COLUMNS, type Column, heading, paragraph, row } from './layout.ts';

const WHY: readonly Column[] = [{ width: 12 }, { width: 11 }, { width: COLUMNS - 27 }];
/** The heat ledger of one piece in words: what holds it back at each part of its day, and when that ends. */
export function whyText(
  report: PlanReport,
  asked: string,
  print: Printer,
): { readonly text: string } | { readonly problem: Said } {
  const { cook, plan, forecast } = report;
  const piece = cook.pieces.find((one) => one.letter === asked.toUpperCase() || one.id === asked);
  const planned = plan.pieces.find((one) => one.pieceId === piece?.id);
  if (!piece || !planned)
    return {
      problem: {
        id: 'plan.no-such-piece',
        params: { asked, letters: cook.pieces.map((one) => one.letter).join(', ') },
      },
    };
  const inside = pieceInside(cook, forecast, piece.id);
  const tableS = (Date.parse(plan.table.at) - Date.parse(planned.onAt)) / 1000;
  const lines = tellingMoments(inside, tableS).flatMap((elapsedS) => {
    const at = new Date(Date.parse(planned.onAt) + elapsedS * 1000).toISOString();
    const clock = `${print.shortWeekday(at)} ${print.aboutClock(at)}`;
    return row([clock, print.elapsedS(elapsedS), say(explainPiece(inside, elapsedS), print)], WHY);
  });
  const params = { letter: piece.letter, name: pieceName(piece, print) };
  return {
    text: `${[
      ...heading(say({ id: 'plan.section.why', params }, print)).slice(1),
      ...lines,
      '',
      ...paragraph(say({ id: 'plan.why.member' }, print)),
    ].join('\n')}\n`,
  };
}
