import { readFile } from 'node:fs/promises';
import { type Entry, type Kept, reduce, type Said, type State } from '@pitwright/model';
import { entrySchema } from '@pitwright/store/wire';
import { METRIC, say } from '@pitwright/words';
import type { Streams } from '../calc/command.ts';

/** A file of another kind is wrong on every line. */
const PROBLEMS_SHOWN = 10;

/** Prints what an entry file amounts to. @returns the exit status: 1 where a line is no entry */
export async function replay(
  path: string,
  options: { readonly json?: boolean; readonly until?: string },
  streams: Streams,
): Promise<number> {
  const tell = (said: Said) => `${say(said, METRIC)}\n`;
  const untilMs = options.until === undefined ? Number.POSITIVE_INFINITY : Date.parse(options.until);
  if (Number.isNaN(untilMs)) {
    streams.err(tell({ id: 'replay.no-instant', params: { written: options.until ?? '' } }));
    return 1;
  }
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch {
    streams.err(tell({ id: 'replay.no-file', params: { path } }));
    return 1;
  }
  const { entries, problems } = readEntryLines(text);
  for (const problem of problems.slice(0, PROBLEMS_SHOWN)) streams.err(tell(problem));
  if (problems.length > PROBLEMS_SHOWN)
    streams.err(tell({ id: 'replay.more-problems', params: { count: problems.length - PROBLEMS_SHOWN } }));
  if (problems.length > 0) return 1;
  const state = reduce(entries.filter((entry) => !(Date.parse(entry.at) > untilMs)));
  streams.out(
    options.json ? `${JSON.stringify(stateJson(state), null, 2)}\n` : summary(state).map(tell).join(''),
  );
  return 0;
}

/** Entries of a text with one a line, and what is wrong with which line. */
function readEntryLines(text: string): {
  readonly entries: readonly Entry[];
  readonly problems: readonly Said[];
} {
  const entries: Entry[] = [];
  const problems: Said[] = [];
  for (const [index, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const problem = (where: string, wanted: string): Said => ({
      id: 'replay.no-entry',
      params: { line: index + 1, where, wanted },
    });
    try {
      const read = entrySchema.safeParse(JSON.parse(line));
      const issue = read.error?.issues[0];
      if (read.success) entries.push(read.data as Entry);
      else problems.push(problem(issue?.path.join('.') || 'entry', issue?.message ?? 'unknown'));
    } catch (cause) {
      problems.push(problem('text', cause instanceof Error ? cause.message : String(cause)));
    }
  }
  return { entries, problems };
}

/** The state as JSON carries it: collections as objects by id. */
function stateJson(state: State) {
  return Object.fromEntries(
    Object.entries(state).map(([name, held]) => [
      name,
      held instanceof Map ? Object.fromEntries(held) : held,
    ]),
  );
}

function summary(state: State): readonly Said[] {
  const named = (kind: string, kept: Kept<unknown>, entries = 0): Said => {
    const name = (kept.document as { readonly name?: unknown }).name;
    return {
      id: kept.isRemoved ? 'replay.removed' : 'replay.kept',
      params: {
        kind,
        id: kept.id,
        name: typeof name === 'string' ? name : kept.id,
        changedAt: kept.changedAt,
        log: entries,
      },
    };
  };
  return [
    ...[...state.cooks.values()].map((kept) => named('cook', kept, state.logs.get(kept.id)?.length ?? 0)),
    ...[...state.recipes.values()].map((kept) => named('recipe', kept)),
    ...[...state.pits.values()].map((kept) => named('pit', kept)),
    ...[...state.settings.values()].map((kept) => named('setting', kept)),
    ...(state.notApplied.length > 0
      ? [{ id: 'replay.not-applied', params: { count: state.notApplied.length } }]
      : []),
  ];
}
