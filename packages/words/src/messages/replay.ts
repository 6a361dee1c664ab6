import { messages } from './message.ts';

interface Named {
  readonly kind: string;
  readonly id: string;
  readonly name: string;
  readonly changedAt: string;
  /** Entries of its log. */
  readonly log: number;
}

const entries = (count: number): string => (count === 1 ? '1 entry' : `${count} entries`);
const inLog = (p: Named): string => (p.log > 0 ? `, ${entries(p.log)} in its log` : '');

/** What `replay` and `backup` print. */
export const replayMessages = messages({
  'replay.kept': (p: Named) => `${p.kind} ${p.name} (${p.id}), last changed ${p.changedAt}${inLog(p)}`,
  'replay.removed': (p: Named) => `${p.kind} ${p.name} (${p.id}), removed ${p.changedAt}${inLog(p)}`,
  'replay.not-applied': (p: { readonly count: number }) =>
    `${entries(p.count)} of kinds that this version does not know, kept and not applied`,
  'replay.no-file': (p: { readonly path: string }) => `${p.path} cannot be read.`,
  'replay.no-entry': (p: { readonly line: number; readonly where: string; readonly wanted: string }) =>
    `line ${p.line} is no entry: ${p.where}: ${p.wanted}`,
  'replay.more-problems': (p: { readonly count: number }) => `and ${p.count} more lines that are no entries`,
  'replay.no-instant': (p: { readonly written: string }) =>
    `${p.written} is no instant. Write it in UTC, as 2027-09-12T11:00:00Z.`,
  'backup.nothing-kept': (p: { readonly folder: string }) =>
    `Nothing is kept in ${p.folder}. Name the folder with --data.`,
  'backup.there-already': (p: { readonly path: string }) => `${p.path} is there already and was left alone.`,
  'backup.not-written': (p: { readonly folder: string; readonly why: string }) =>
    `The backup could not be written to ${p.folder}: ${p.why}`,
  'backup.written': (p: { readonly count: number; readonly stem: string }) =>
    `${entries(p.count)} copied and read back:\n  ${p.stem}.db     to put in the place of pitwright.db, with the server stopped\n  ${p.stem}.jsonl  the entries, one a line, for replay`,
});
