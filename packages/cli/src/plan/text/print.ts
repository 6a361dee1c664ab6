import { generalNotices, type PlanReport } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { buyingText } from './buying.ts';
import { daysText } from './days.ts';
import { formulasText } from './formulas.ts';
import { headText } from './head.ts';
import { heading } from './layout.ts';
import { noticeText } from './notices.ts';
import { piecesText } from './pieces.ts';
import { fitText, togetherText } from './together.ts';

/** The whole plan as a cook reads it: the answer first, then what proves it, then the two days to follow. */
export function planText(report: PlanReport, print: Printer): string {
  const general = generalNotices(report.notices);
  const lines = [
    ...headText(report, print),
    ...fitText(report, print),
    ...piecesText(report, print),
    ...togetherText(report, print),
    ...buyingText(report, print),
    ...formulasText(report, print),
    ...daysText(report, print),
    ...(general.length > 0
      ? [
          ...heading(say({ id: 'plan.section.cautions' }, print)),
          ...general.flatMap((said) => noticeText(said, print)),
        ]
      : []),
  ];
  return `${lines.join('\n')}\n`;
}
