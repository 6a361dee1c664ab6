import type { PlannedPiece } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import { type PlanReport, pieceName, pieceOf } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { closerOf, zonesSaid } from '../closer.ts';
import { eaterText } from '../eater.ts';
import { type Told, type Why, whyOf } from '../why.ts';
import { COLUMNS, type Column, heading, paragraph, row } from './layout.ts';

const WHY: readonly Column[] = [{ width: 12 }, { width: 11 }, { width: COLUMNS - 27 }];
const figures = (count: number, width: number): Column[] =>
  Array.from({ length: count }, () => ({ width, align: 'right' }));
const LEDGER: readonly Column[] = [{ width: 12 }, { width: 11 }, ...figures(7, 8)];
const INSIDE: readonly Column[] = [{ width: 12 }, { width: 11 }, ...figures(5, 10)];

const clock = (at: string, print: Printer): string => `${print.shortWeekday(at)} ${print.aboutClock(at)}`;

const head = (names: readonly string[], print: Printer): string[] =>
  names.map((name) => say({ id: name === 'in' ? 'plan.stage.head-in' : `draw.head-${name}` }, print));

/** What arrives at one item at the moments told, by which way, and what it is spent on; in the end all of it. */
function ledgerText({ told, totalsJ }: Why, print: Printer): string[] {
  const watts = (value: number): string => say({ id: 'draw.watts', params: { watts: value } }, print);
  const energy = (value: number): string => say({ id: 'draw.energy', params: { joules: value } }, print);
  const notParted = say({ id: 'draw.not-parted' }, print);
  const cells = (heat: Told['heat'], figure: (value: number) => string, isStill: boolean): string[] => [
    figure(heat.convection + heat.radiation + heat.still),
    isStill ? notParted : figure(heat.convection),
    isStill ? notParted : figure(heat.radiation),
    heat.still === 0 ? '' : figure(heat.still),
    figure(heat.evaporation),
    figure(heat.warming + heat.juice),
    figure(heat.juice),
  ];
  const names = ['time', 'in', 'into', 'convection', 'radiation', 'still', 'dries', 'warms', 'with-juice'];
  return [
    ...heading(say({ id: 'plan.section.ledger' }, print)),
    ...row(head(names, print), LEDGER),
    ...told.flatMap(({ at, elapsedS, heat }) =>
      row([clock(at, print), print.elapsedS(elapsedS), ...cells(heat, watts, heat.still !== 0)], LEDGER),
    ),
    ...row([say({ id: 'plan.why.in-all' }, print), '', ...cells(totalsJ, energy, false)], LEDGER),
  ];
}

/** Its temperatures from face to face at the moments told, and how deep it is dry. */
function insideText({ told, top, bottom }: Why, print: Printer): string[] {
  const isHalf = bottom === 'middle';
  const names = isHalf
    ? ['time', 'in', 'surface', 'half', 'middle', 'dry']
    : ['time', 'in', top, 'middle', bottom, `dry-${top}`, `dry-${bottom}`];
  return [
    ...heading(say({ id: 'plan.section.inside' }, print)),
    ...row(head(names, print), INSIDE),
    ...told.flatMap(({ at, elapsedS, inside: { topC, betweenC, bottomC, dryM, otherDryM } }) => {
      const dry = [dryM, ...(otherDryM === undefined ? [] : [otherDryM])];
      const cells = [...[topC, betweenC, bottomC].map(print.temperatureC), ...dry.map(print.lengthM)];
      return row([clock(at, print), print.elapsedS(elapsedS), ...cells], INSIDE);
    }),
  ];
}

/**
 * Why one piece is where it is: what holds it back at each part of its day and when that ends, what would narrow its
 * range, what its muscles do, what the eater gets; then the ledger of its heat and its inside.
 */
export function whyText(report: PlanReport, planned: PlannedPiece, print: Printer): string {
  const { cook, plan, forecast } = report;
  const piece = pieceOf(cook, planned.pieceId);
  const foreseen = forecast.pieces.find((one) => one.pieceId === piece.id)!;
  const tell = (said: Said): string => say(said, print);
  const tableS = (Date.parse(plan.table.at) - Date.parse(planned.onAt)) / 1000;
  const why = whyOf(cook, forecast, piece.id, planned.onAt, tableS);
  const lines = why.told.flatMap(({ at, elapsedS, said }) =>
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
  return `${[
    ...heading(tell({ id: 'plan.section.why', params })).slice(1),
    ...lines,
    ...further.flatMap((words) => ['', ...paragraph(words)]),
    ...ledgerText(why, print),
    ...insideText(why, print),
    '',
    ...paragraph(tell({ id: 'plan.why.member' })),
  ].join('\n')}\n`;
}
