import { explainPiece, type PieceInside, pieceInside, tellingMoments } from '@pitwright/engine';
import type { Quantity, Said } from '@pitwright/model';
import { type PlanReport, pieceName } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { closerOf, zonesSaid } from '../closer.ts';
import { eaterText } from '../eater.ts';
import { COLUMNS, type Column, heading, paragraph, row } from './layout.ts';

const WHY: readonly Column[] = [{ width: 12 }, { width: 11 }, { width: COLUMNS - 27 }];
const LEDGER: readonly Column[] = [
  { width: 12 },
  { width: 11 },
  { width: 10, align: 'right' },
  { width: 12, align: 'right' },
  { width: 12, align: 'right' },
];

/** What was said of one moment, and when that is. */
interface Told {
  readonly at: string;
  readonly elapsedS: number;
  readonly said: Said;
}

function toldOf(inside: PieceInside, onAt: string, tableS: number): Told[] {
  return tellingMoments(inside, tableS).map((elapsedS) => ({
    at: new Date(Date.parse(onAt) + elapsedS * 1000).toISOString(),
    elapsedS,
    said: explainPiece(inside, elapsedS, onAt),
  }));
}

const clock = (at: string, print: Printer): string => `${print.shortWeekday(at)} ${print.aboutClock(at)}`;

/** Heat into one item at the moments on the heat, parted into what dries and what warms. */
function ledgerText(told: readonly Told[], print: Printer): string[] {
  const watts = (value: number): string => say({ id: 'draw.watts', params: { watts: value } }, print);
  const rows = told.flatMap(({ at, elapsedS, said }) => {
    const into = said.params?.watts;
    const dries = (said.params?.dries as Quantity | undefined)?.si;
    if (typeof into !== 'number' || dries === undefined) return [];
    const cells = [into, into * dries, into * (1 - dries)].map(watts);
    return row([clock(at, print), print.elapsedS(elapsedS), ...cells], LEDGER);
  });
  if (rows.length === 0) return [];
  const head = ['time', 'in', 'into', 'dries', 'warms'].map((name) =>
    say({ id: name === 'in' ? 'plan.stage.head-in' : `draw.head-${name}` }, print),
  );
  return [...heading(say({ id: 'plan.section.ledger' }, print)), ...row(head, LEDGER), ...rows];
}

/**
 * Why one piece is where it is: what holds it back at each part of its day and when that ends, what would narrow its
 * range, what its muscles do, what the eater gets; then the ledger of its heat.
 */
export function whyText(
  report: PlanReport,
  asked: string,
  print: Printer,
): { readonly text: string } | { readonly problem: Said } {
  const { cook, plan, forecast } = report;
  const piece = cook.pieces.find((one) => one.letter === asked.toUpperCase() || one.id === asked);
  const planned = plan.pieces.find((one) => one.pieceId === piece?.id);
  const foreseen = forecast.pieces.find((one) => one.pieceId === piece?.id);
  if (!piece || !planned || !foreseen)
    return {
      problem: {
        id: 'plan.no-such-piece',
        params: { asked, letters: cook.pieces.map((one) => one.letter).join(', ') },
      },
    };
  const tell = (said: Said): string => say(said, print);
  const tableS = (Date.parse(plan.table.at) - Date.parse(planned.onAt)) / 1000;
  const told = toldOf(pieceInside(cook, forecast, piece.id), planned.onAt, tableS);
  const lines = told.flatMap(({ at, elapsedS, said }) =>
    row([clock(at, print), print.elapsedS(elapsedS), tell(said)], WHY),
  );
  const closer = closerOf(report, [piece.id]).get(piece.id)!;
  const { sensitivity } = closer;
  const further = [
    ...zonesSaid(closer, planned.onAt).map(tell),
    ...(sensitivity.said ? [tell(sensitivity.said)] : []),
    eaterText(report, foreseen, print),
  ].filter(Boolean);
  const params = { letter: piece.letter, name: pieceName(piece, print) };
  return {
    text: `${[
      ...heading(tell({ id: 'plan.section.why', params })).slice(1),
      ...lines,
      ...further.flatMap((words) => ['', ...paragraph(words)]),
      ...ledgerText(told, print),
      '',
      ...paragraph(tell({ id: 'plan.why.member' })),
    ].join('\n')}\n`,
  };
}
