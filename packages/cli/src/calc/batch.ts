import { ask, printValue } from './answers.ts';
import { csvLine, parseCsv } from './csv.ts';

const COLUMNS = ['id', 'calc', 'inputs', 'output'] as const;

export interface BatchAnswers {
  readonly csv: string;
  readonly allAnswered: boolean;
}

/**
 * Answers a table of questions, one row for each, in their order.
 * @throws RangeError where a column is missing from the header
 */
export function answerBatch(text: string): BatchAnswers {
  const [header = [], ...rows] = parseCsv(text);
  const names = header.map((name) => name.trim());
  const [id, calc, inputs, output] = COLUMNS.map((column) => {
    const at = names.indexOf(column);
    if (at < 0) throw new RangeError(`the header lacks the column ${column}`);
    return at;
  }) as [number, number, number, number];
  const lines = [csvLine(['id', 'value', 'unit', 'problem'])];
  let allAnswered = true;
  for (const row of rows) {
    const field = (at: number): string => (row[at] ?? '').trim();
    const outcome = ask(field(calc), field(inputs), field(output));
    if ('problem' in outcome) {
      allAnswered = false;
      lines.push(csvLine([row[id] ?? '', '', '', outcome.problem]));
    } else {
      const { value, unit } = outcome.answer;
      lines.push(csvLine([row[id] ?? '', printValue(value), unit, '']));
    }
  }
  // Line breaks as they came: a table from a spreadsheet has CRLF, one from a shell LF.
  const lineBreak = text.includes('\r\n') ? '\r\n' : '\n';
  return { csv: lines.join(lineBreak) + lineBreak, allAnswered };
}
