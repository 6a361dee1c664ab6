import type { PlacedTask, Task } from '@pitwright/engine';
import { type PlanReport, signOf, taskSaid } from '@pitwright/paper';
import { capital, type Printer, say } from '@pitwright/words';
import { type Column, heading, paragraph, row } from './layout.ts';

const LIST: readonly Column[] = [
  { width: 8 },
  { width: 9, align: 'right' },
  { width: 11, align: 'right' },
  { width: 50 },
  { width: 8, align: 'right' },
];

/** One line of the two days: a job with its clock, or the table itself. */
export interface DayLine {
  readonly at: string;
  readonly placed?: PlacedTask;
  readonly task?: Task;
}

/** Jobs of the cook by day of the cook's wall, in order, the table among them. */
function daysOf({ plan }: PlanReport, print: Printer): { day: string; lines: DayLine[] }[] {
  const jobs = plan.placed
    .map(
      (placed): DayLine => ({
        at: placed.startAt,
        placed,
        task: plan.tasks.find((task) => task.id === placed.taskId)!,
      }),
    )
    .filter((line) => line.task?.kind !== 'serve');
  const lines = [...jobs, { at: plan.table.at }].sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const days: { day: string; lines: DayLine[] }[] = [];
  for (const line of lines) {
    const key = print.dayKey(line.at);
    const last = days[days.length - 1];
    if (last && print.dayKey(last.lines[0]!.at) === key) last.lines.push(line);
    else days.push({ day: print.date(line.at), lines: [line] });
  }
  return days;
}

function lineText(line: DayLine, report: PlanReport, print: Printer): string[] {
  const { plan } = report;
  const toTableS = (Date.parse(plan.table.at) - Date.parse(line.at)) / 1000;
  const toTable =
    toTableS > 0
      ? print.exactDurationS(toTableS)
      : toTableS < 0
        ? say({ id: 'plan.day.after-table', params: { after: -toTableS } }, print)
        : '';
  if (!line.placed || !line.task) {
    const table = say(
      { id: 'plan.day.table', params: { at: plan.table.at, until: plan.table.until } },
      print,
    );
    return row([print.clock(line.at), '', '', `══ ${table} ══`, ''], LIST);
  }
  const { elapsedS } = line.placed;
  const lasts = (Date.parse(line.placed.endAt) - Date.parse(line.placed.startAt)) / 1000;
  const sign = signOf(line.task);
  const job = say(taskSaid(line.task, report, print), print);
  const words = sign
    ? `${job} ${capital(say({ id: 'plan.day.when', params: { sign: say(sign, print) } }, print))}.`
    : job;
  return row(
    [
      print.clock(line.at),
      toTable,
      elapsedS >= 0 && toTableS > 0 ? print.elapsedS(elapsedS) : '',
      words,
      print.exactDurationS(lasts),
    ],
    LIST,
  );
}

/** How often the fire wants a look, and until when. */
function watchText({ plan }: PlanReport, print: Printer): string[] {
  const { fromAt, toAt, reachS } = plan.fireWatch!;
  const said = { id: 'plan.day.watch', params: { from: fromAt, to: toAt, reach: reachS } };
  return row(['', '', '', say(said, print), ''], LIST);
}

/** The lines of a day; where the fire burns, its watch stands from the hour it is lit, or at the head of the day. */
function withWatch(report: PlanReport, lines: readonly DayLine[], print: Printer): string[] {
  const watch = report.plan.fireWatch;
  const texts = lines.map((line) => lineText(line, report, print));
  const burnsOn = watch && lines.some((line) => line.at >= watch.fromAt && line.at < watch.toAt);
  if (!watch || !burnsOn) return texts.flat();
  const lit = lines.findIndex((line) => line.at >= watch.fromAt && line.task?.kind === 'light-fire') + 1;
  return [...texts.slice(0, lit).flat(), ...watchText(report, print), ...texts.slice(lit).flat()];
}

/** The two days as one ordered list, each line with its clock, what is left to the table and what has passed. */
export function daysText(report: PlanReport, print: Printer): string[] {
  const head = ['clock', 'to-table', 'in', 'job', 'takes'].map((name) =>
    say({ id: `plan.day.head-${name}` }, print),
  );
  return [
    ...daysOf(report, print).flatMap(({ day, lines }) => [
      ...heading(day),
      ...row(head, LIST),
      ...withWatch(report, lines, print),
    ]),
    '',
    ...paragraph(say({ id: 'plan.day.note' }, print)),
  ];
}
