import { type CookDocument, printCookFile, readCookFile } from '@pitwright/model';
import { type PrintSettings, say } from '@pitwright/words';

/** A file as read: what it holds and what was lost, or every sentence that would mend it. */
export type FileReading =
  | { readonly ok: true; readonly document: CookDocument; readonly remarks: readonly string[] }
  | { readonly ok: false; readonly problems: readonly { line: number; column: number; words: string }[] };

export function readFile(content: string, settings: PrintSettings): FileReading {
  const reading = readCookFile(content);
  if (!reading.ok)
    return {
      ok: false,
      problems: reading.problems.map((problem) => ({
        line: problem.line,
        column: problem.column,
        words: say(problem, settings),
      })),
    };
  return { ok: true, document: reading.document, remarks: reading.said.map((said) => say(said, settings)) };
}

export const printFile = printCookFile;
