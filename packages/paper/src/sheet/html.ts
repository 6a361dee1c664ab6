import { type PrintSettings, printer, say } from '@pitwright/words';
import type { PlanReport } from '../report.ts';
import { fridgePage } from './fridge.ts';
import { escaped } from './markup.ts';
import { pitPage } from './pit.ts';
import { sheetStyle } from './style.ts';

function header(report: PlanReport, settings: PrintSettings, number: 1 | 2): string {
  const { cook, plan } = report;
  const print = printer(settings);
  const title = say({ id: number === 1 ? 'sheet.fridge' : 'sheet.pit', params: { name: cook.name } }, print);
  const table = say(
    {
      id: 'sheet.table',
      params: {
        at: plan.table.at,
        until: plan.table.until,
        people: cook.guests.adults + cook.guests.children,
      },
    },
    print,
  );
  const sheet = say({ id: 'sheet.number', params: { number } }, print);
  return `<header><h1>${escaped(title)}</h1><p>${escaped(table)}<br>${escaped(sheet)}</p></header>`;
}

/** One self-contained page of HTML that prints as two sheets in black, on A4 and on Letter. */
export const sheetHtml = (report: PlanReport, settings: PrintSettings): string =>
  `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escaped(report.cook.name)}</title><style>${sheetStyle()}</style></head><body>` +
  `${fridgePage(report, settings, header(report, settings, 1))}${pitPage(report, settings, header(report, settings, 2))}</body></html>\n`;
