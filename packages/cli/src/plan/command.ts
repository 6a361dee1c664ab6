import { readFile, writeFile } from 'node:fs/promises';
import type { PlannedPiece } from '@pitwright/engine';
import { type Cook, readCookFile, type Said } from '@pitwright/model';
import { gatherReport, type PlanReport, sheetHtml } from '@pitwright/paper';
import { METRIC, printer, say } from '@pitwright/words';
import { planCalendar } from './calendar.ts';
import { forecastWithProgress } from './forecast.ts';
import { planJson, whyJson } from './json.ts';
import { type PlanOptions, readOptions } from './options.ts';
import { readerOf } from './reader.ts';
import { loadSolver } from './solver.ts';
import { planText } from './text/print.ts';
import { whyText } from './text/why.ts';

export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

type Reading = { readonly cook: Cook } | { readonly problems: readonly string[] };

const tell = (said: Said): string => say(said, METRIC);

async function readCook(path: string): Promise<Reading> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch {
    return { problems: [tell({ id: 'plan.no-file', params: { path } })] };
  }
  const reading = readCookFile(text);
  if (!reading.ok)
    return {
      problems: reading.problems.map(({ line, column, ...problem }) =>
        tell({ id: 'plan.problem-at', params: { path, line, column, problem: tell(problem) } }),
      ),
    };
  const { document } = reading;
  if (document.kind !== 'cook')
    return { problems: [tell({ id: 'plan.not-a-cook', params: { path, kind: document.kind } })] };
  return { cook: document.cook };
}

const json = (value: object): string => `${JSON.stringify(value, null, 2)}\n`;

/** The piece of this letter or id; what to say where there is none. */
function askedPiece({ cook, plan }: PlanReport, asked: string): PlannedPiece | Said {
  const piece = cook.pieces.find((one) => one.letter === asked.toUpperCase() || one.id === asked);
  const planned = plan.pieces.find((one) => one.pieceId === piece?.id);
  const letters = cook.pieces.map((one) => one.letter).join(', ');
  return planned ?? { id: 'plan.no-such-piece', params: { asked, letters } };
}

async function present(report: PlanReport, options: PlanOptions, streams: Streams): Promise<number> {
  const settings = readerOf(report.cook, options.units);
  const print = printer(settings);
  if (options.sheetPath) {
    await writeFile(options.sheetPath, sheetHtml(report, settings));
    streams.err(`${tell({ id: 'plan.written', params: { path: options.sheetPath } })}\n`);
  }
  if (options.calendarPath) {
    await writeFile(options.calendarPath, planCalendar(report, print, new Date().toISOString()));
    streams.err(`${tell({ id: 'plan.written-calendar', params: { path: options.calendarPath } })}\n`);
  }
  if (options.why !== undefined) {
    const asked = askedPiece(report, options.why);
    if ('id' in asked) {
      streams.err(`${tell(asked)}\n`);
      return 2;
    }
    streams.out(options.wantsJson ? json(whyJson(report, asked, print)) : whyText(report, asked, print));
  } else if (options.wantsJson) streams.out(json(planJson(report, print)));
  else streams.out(planText(report, print));
  return 0;
}

/**
 * `plan FILE [--json] [--units us|metric] [--sheet OUT.html] [--ics OUT.ics] [--why PIECE]`
 * @returns 0, or 2 where the file or the command line is wrong
 */
export async function runPlan(words: readonly string[], streams: Streams): Promise<number> {
  const options = readOptions(words);
  if ('id' in options) {
    streams.err(`${tell(options)}\n`);
    return 2;
  }
  const reading = await readCook(options.path);
  if ('problems' in reading) {
    for (const problem of reading.problems) streams.err(`${problem}\n`);
    return 2;
  }
  const forecast = await forecastWithProgress(reading.cook, options, (line) => streams.err(`${line}\n`));
  return present(gatherReport(reading.cook, forecast, await loadSolver()), options, streams);
}
