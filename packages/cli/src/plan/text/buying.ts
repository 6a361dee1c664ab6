import { type PlanReport, portionsSaid, shopLines, thawSaid } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { type Column, heading, paragraph, row } from './layout.ts';

const LINES: readonly Column[] = [{ width: 52 }, { width: 14, align: 'right' }];

/** Whether it is enough, and the list for the shop by its sections. */
export function buyingText(report: PlanReport, print: Printer): string[] {
  const lines = shopLines(report, print);
  const sections = [...new Set(lines.map(({ section }) => section))];
  return [
    ...heading(say({ id: 'plan.section.buy' }, print)),
    ...paragraph(
      portionsSaid(report)
        .map((said) => say(said, print))
        .join(' '),
    ),
    ...sections.flatMap((section) => [
      say({ id: 'web.guests.buy.section', params: { section } }, print),
      ...lines
        .filter((line) => line.section === section)
        .flatMap(({ name, amount }) => row([name, amount], LINES, 3)),
    ]),
    ...paragraph(say(thawSaid(report, print), print)),
  ];
}
