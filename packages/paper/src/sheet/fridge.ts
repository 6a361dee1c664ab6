import type { Said } from '@pitwright/model';
import { capital, type Printer, type PrintSettings, printer, say, writtenQuantity } from '@pitwright/words';
import { answer } from '../answer.ts';
import { shopInShort, thawSaid } from '../buying.ts';
import { kitchenNotices } from '../concerns.ts';
import type { FormulaReport, PlanReport } from '../report.ts';
import { lettersOf, taskSaid } from '../task-words.ts';
import { fitRows, linesOf } from './fit.ts';
import { element, escaped, noteLines, tickBox } from './markup.ts';
import { PAGE } from './style.ts';

const SMALL_PX = 13.5;
const BODY_PX = 15;
const BODY_LINE_PX = 19;
/** Widths of the columns of jobs [px]; what is left is for the words. */
const CLOCK_PX = 84;
const TICK_PX = 26;
const DONE_PX = 64;
const WORDS_PX = PAGE.width - 2 * PAGE.padding - CLOCK_PX - TICK_PX - DONE_PX - 12;
/** Page without header, headings, answer and foot [px]. */
const OPEN_PX = 668;
const FORMULA_LINE_PX = 18;
const FORMULA_COLUMNS = 3;

/** A formula by mass, with the spoon or jug that the file names. */
function formulaLines(
  { formula, lines, totalKg, yieldKg }: FormulaReport,
  settings: PrintSettings,
): string[] {
  const print = printer(settings);
  const line = (name: string, massKg: number, beside = ''): string =>
    `<p><span>${escaped(name)}</span>${beside ? `<span>${escaped(beside)}</span>` : ''}<span class="mass">${escaped(print.massKg(massKg))}</span></p>`;
  const weighed = (isLate: boolean): string[] =>
    lines
      .filter((one) => one.isLate === isLate)
      .map(({ name, massKg, amount }) =>
        line(name.split(',')[0]!, massKg, amount.kind === 'volume' ? writtenQuantity(amount) : ''),
      );
  const tell = (id: string): string => say({ id }, print);
  const late = weighed(true);
  return [
    `<h3>${escaped(formula.name)}</h3>`,
    ...weighed(false),
    line(tell(yieldKg === undefined ? 'plan.formula.total' : 'plan.formula.in-the-pan'), totalKg),
    ...(late.length > 0 ? [`<p>${escaped(tell('plan.formula.stir-in'))}</p>`, ...late] : []),
    ...(yieldKg === undefined ? [] : [line(tell('plan.formula.after-simmer'), yieldKg)]),
  ];
}

interface JobRow {
  readonly at: string;
  readonly words: string;
  readonly inNight: boolean;
  readonly taskId?: string;
}

/** Jobs away from the pit, in order; with their signs where there is room. */
function jobRows(report: PlanReport, print: Printer, withSigns: boolean): JobRow[] {
  return report.plan.placed.flatMap((placed) => {
    const task = report.plan.tasks.find((one) => one.id === placed.taskId);
    if (!task || task.at === 'pit') return [];
    const job = capital(say(taskSaid(task, report, print), print));
    const sign =
      withSigns && task.sign
        ? ` ${capital(say({ id: 'plan.day.when', params: { sign: say(task.sign, print) } }, print))}.`
        : '';
    return [{ at: placed.startAt, words: job + sign, inNight: placed.inNight, taskId: task.id }];
  });
}

/** One row for all jobs of one kind, with its hours, at the place of the first. */
function inOneRow(
  kind: 'out-of-fridge' | 'slice',
  report: PlanReport,
  print: Printer,
  rows: readonly JobRow[],
): JobRow[] {
  const out = report.plan.placed.flatMap((placed) => {
    const task = report.plan.tasks.find((one) => one.id === placed.taskId);
    const isPulled = task?.kind === 'slice' && task.pieceIds.some((id) => isPulledApart(report, id));
    return task?.kind === kind && !isPulled ? [{ placed, letters: lettersOf(task, report) }] : [];
  });
  const first = out[0];
  if (out.length < 2 || !first) return [...rows];
  const list = out.map(({ placed, letters }) => `${letters} ${print.clock(placed.startAt)}`).join(', ');
  const together: JobRow = {
    at: first.placed.startAt,
    words: say({ id: `sheet.${kind}`, params: { list } }, print),
    inNight: false,
  };
  const isOut = new Set(out.map(({ placed }) => placed.taskId));
  const others = rows.filter((row) => !isOut.has(row.taskId ?? ''));
  return [...others, together].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
}

const isPulledApart = ({ cook }: PlanReport, pieceId: string): boolean =>
  cook.pieces.some((piece) => piece.id === pieceId && piece.bite === 'pulls-apart');

function jobTable(report: PlanReport, print: Printer, roomPx: number): string {
  const bare = jobRows(report, print, false);
  const fridgeOnce = inOneRow('out-of-fridge', report, print, bare);
  const { rows, paddingPx } = fitRows(
    [jobRows(report, print, true), bare, fridgeOnce, inOneRow('slice', report, print, fridgeOnce)],
    ({ words }) => linesOf(words, WORDS_PX, SMALL_PX),
    roomPx,
  );
  let day = '';
  const body = rows.map(({ at, words, inNight }) => {
    const today = print.shortWeekday(at);
    const dayCell = today === day ? '' : `<span class="day">${today}</span> `;
    day = today;
    const cells = [
      element('td', 'clock', dayCell + escaped(print.clock(at))),
      element('td', 'tick', tickBox),
      element('td', '', escaped(words)),
      element('td', 'write', ''),
    ];
    return element('tr', inNight ? 'night' : '', cells.join(''));
  });
  const tell = (id: string): string => escaped(say({ id }, print));
  const head = `<tr>${element('th', '', tell('sheet.head-plan'))}<td></td>${element('th', '', tell('sheet.head-what'))}${element('th', 'write', tell('sheet.head-done'))}</tr>`;
  return `<table class="dense" style="--row:${paddingPx}px"><thead>${head}</thead><tbody>${body.join('')}</tbody></table>`;
}

/** The sheet that hangs on the fridge: the answer, what to weigh, the kitchen's jobs in order with boxes. */
export function fridgePage(report: PlanReport, settings: PrintSettings, header: string): string {
  const print = printer(settings);
  const tell = (said: Said): string => escaped(say(said, print));
  // What would help stands in the plan, not on the sheet.
  const sheetAnswer = answer(report, print).filter((said) => !said.id.startsWith('plan.chance-short'));
  const cautions = kitchenNotices(report.notices).map(tell);
  const formulas = report.formulas.flatMap((one) => formulaLines(one, settings));
  const weighPx = Math.ceil(formulas.length / FORMULA_COLUMNS + 1) * FORMULA_LINE_PX;
  const buy = `${say({ id: 'sheet.buy', params: { what: shopInShort(report, print) } }, print)} ${say(thawSaid(report, print), print)}`;
  const buyPx = linesOf(buy, PAGE.width - 2 * PAGE.padding, BODY_PX) * BODY_LINE_PX + 5;
  return element(
    'section',
    'page',
    `${header}<p>${sheetAnswer.map(tell).join(' ')}</p>` +
      `<p>${escaped(buy)}</p>` +
      `<h2>${tell({ id: 'sheet.weigh' })}</h2>${element('div', 'weigh', formulas.join(''))}` +
      `<h2>${tell({ id: 'sheet.jobs' })}</h2>${jobTable(report, print, OPEN_PX - weighPx - buyPx)}${noteLines}` +
      (cautions.length > 0
        ? `<footer>${cautions.map((caution) => element('p', '', caution)).join('')}</footer>`
        : ''),
  );
}
