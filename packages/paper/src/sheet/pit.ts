import { bandChart, toSvg } from '@pitwright/draw';
import type { PlacedTask, PlannedPiece, Task } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import { chartVoice, type PrintSettings, printer, say } from '@pitwright/words';
import { bandData } from '../bands.ts';
import type { PlanReport } from '../report.ts';
import { shortTaskSaid } from '../task-words.ts';
import { fitRows, linesOf } from './fit.ts';
import { element, escaped, noteLines, tickBox } from './markup.ts';
import { PAGE } from './style.ts';

/** Page without header, rail of the bands, heading, lines for notes and the rules of the foot [px]. */
const OPEN_PX = 784;
const LANE_PX = 25;
/** Widths of the columns of words and of the two of the foot [px]. */
const WHEN_PX = 186;
const WHAT_PX = 184;
const FOOT_PX = 339;
const FOOT_LINE_PX = 16.2;

/** One walk to the pit: what is done on it, and what tells that it is time. */
interface WalkRow {
  readonly at: string;
  readonly jobs: readonly string[];
  readonly signs: readonly string[];
  readonly inNight: boolean;
}

/** Rounds are made when one passes; their signs are known. */
const ROUNDS: readonly string[] = ['look', 'spritz'];

/** Jobs at the pit, one row a walk. */
function walkRows(report: PlanReport, settings: PrintSettings): WalkRow[] {
  const { plan } = report;
  const print = printer(settings);
  const groups = new Map<string, { placed: PlacedTask; task: Task }[]>();
  for (const placed of plan.placed) {
    const task = plan.tasks.find((one) => one.id === placed.taskId);
    if (task?.at !== 'pit') continue;
    const key = placed.walk === undefined ? placed.taskId : `walk ${placed.walk}`;
    groups.set(key, [...(groups.get(key) ?? []), { placed, task }]);
  }
  return [...groups.values()].map((group) => ({
    at: group[0]!.placed.startAt,
    jobs: group.map(({ task }) => say(shortTaskSaid(task, report, print), print)),
    signs: [
      ...new Set(
        group.flatMap(({ task }) =>
          task.sign && !ROUNDS.includes(task.kind) ? [say(task.sign, print)] : [],
        ),
      ),
    ],
    inNight: group.some(({ placed }) => placed.inNight),
  }));
}

const signLines = ({ signs }: WalkRow): number => linesOf(signs.join('; '), WHEN_PX, 13.5);
const jobLines = ({ jobs }: WalkRow): number => linesOf(jobs.join(' '), WHAT_PX, 15);
const withFirstSign = (row: WalkRow): WalkRow => ({ ...row, signs: row.signs.slice(0, 1) });

/**
 * The same walks with fewer and fewer signs: all of them, the first of each walk, then one after the other without
 * those that take a line of their own. The early ones go first: what tells the bite matters most.
 */
function withFewerSigns(rows: readonly WalkRow[]): (readonly WalkRow[])[] {
  const first = rows.map(withFirstSign);
  const costly = first.filter((row) => signLines(row) > jobLines(row));
  const without = costly.map((_, last) =>
    first.map((row) => (costly.indexOf(row) <= last && costly.includes(row) ? { ...row, signs: [] } : row)),
  );
  return [rows, first, ...without, rows.map((row) => ({ ...row, signs: [] }))];
}

function walkTable(all: readonly WalkRow[], roomPx: number, settings: PrintSettings): string {
  const { rows, paddingPx } = fitRows(
    withFewerSigns(all),
    (row) => Math.max(signLines(row), jobLines(row)),
    roomPx,
  );
  const print = printer(settings);
  const unit = settings.units === 'us' ? '°F' : '°C';
  const tell = (said: Said): string => escaped(say(said, print));
  const head = [
    element('th', '', tell({ id: 'sheet.head-plan' })),
    element('th', '', tell({ id: 'sheet.head-when' })),
    element('td', '', ''),
    element('th', '', tell({ id: 'sheet.head-what' })),
    element('th', 'write', tell({ id: 'sheet.head-done' })),
    element('th', 'write', tell({ id: 'sheet.head-grate', params: { unit } })),
    element('th', 'write', tell({ id: 'sheet.head-middle', params: { unit } })),
  ].join('');
  let day = '';
  const body = rows.map((row) => {
    const today = print.shortWeekday(row.at);
    const clock = `${today === day ? '' : `<span class="day">${today}</span> `}${escaped(print.clock(row.at))}`;
    day = today;
    const cells = [
      element('td', 'clock', clock),
      element('td', 'when', escaped(row.signs.join('; '))),
      element('td', 'tick', tickBox),
      element('td', '', escaped(row.jobs.join(' '))),
      ...Array.from({ length: 3 }, () => element('td', 'write', '')),
    ];
    return element('tr', row.inNight ? 'night' : '', cells.join(''));
  });
  return `<table class="walks" style="--row:${paddingPx}px"><thead><tr>${head}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

function readySaid({ letter, ready }: PlannedPiece): Said {
  if (ready.p10 && ready.p90)
    return { id: 'sheet.ready-piece', params: { letter, from: ready.p10, to: ready.p90 } };
  return ready.p10
    ? { id: 'sheet.ready-open', params: { letter, from: ready.p10 } }
    : { id: 'sheet.ready-never', params: { letter } };
}

/** The sheet that hangs by the pit: bands, the walks in order with boxes to fill, what to do with a dead fire. */
export function pitPage(report: PlanReport, settings: PrintSettings, header: string): string {
  const print = printer(settings);
  const tell = (said: Said): string => escaped(say(said, print));
  const bands = bandChart(
    bandData(report, print),
    { width: PAGE.width - 2 * PAGE.padding, ink: 'black', id: 'pit' },
    chartVoice(settings),
  );
  const fireOut = `<b>${tell({ id: 'sheet.fire-out' })}:</b> ${tell({ id: 'sheet.fire-out-deed' })}`;
  const pieces = report.plan.pieces.map((piece) => tell(readySaid(piece))).join(', ');
  const ready = `<b>${tell({ id: 'sheet.ready' })}:</b> ${pieces}. ${tell({ id: 'sheet.eight-in-ten' })} ${tell({ id: 'sheet.signs-first' })}`;
  const footLines = Math.max(...[fireOut, ready].map((words) => linesOf(words, FOOT_PX, 13.5)));
  const roomPx = OPEN_PX - report.plan.pieces.length * LANE_PX - footLines * FOOT_LINE_PX;
  return element(
    'section',
    'page',
    `${header}${toSvg(bands)}${walkTable(walkRows(report, settings), roomPx, settings)}${noteLines}` +
      `<footer><p>${fireOut}</p><p>${ready}</p></footer>`,
  );
}
