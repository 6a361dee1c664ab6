import { refuse } from './problem.ts';

/** Inputs as written: key → text, in the order they stand. */
export type WrittenInputs = ReadonlyMap<string, string>;

const QUOTES: Readonly<Record<string, string>> = { '"': '"', "'": "'", '“': '”' };

/**
 * Reads `key=value; key=value`. A value may stand in quotes, which are dropped; inside them a semicolon is text.
 * @throws CalcProblem on a piece without `=`, a key that stands twice, an open quote
 */
export function readWritten(text: string): WrittenInputs {
  const inputs = new Map<string, string>();
  let at = 0;
  while (at < text.length) {
    const semicolon = text.indexOf(';', at);
    const equals = text.indexOf('=', at);
    const end = semicolon < 0 ? text.length : semicolon;
    if (equals < 0 || equals > end) {
      const piece = text.slice(at, end).trim();
      if (piece !== '') refuse('calc.no-equals', { input: piece });
      at = end + 1;
      continue;
    }
    const key = text.slice(at, equals).trim();
    if (key === '') refuse('calc.no-key', { input: text.slice(at, end).trim() });
    if (inputs.has(key)) refuse('calc.twice', { input: key });
    let from = equals + 1;
    while (text[from] === ' ' || text[from] === '\t') from++;
    const closing = QUOTES[text[from] ?? ''];
    if (closing === undefined) {
      inputs.set(key, text.slice(from, end).trim());
      at = end + 1;
      continue;
    }
    const close = text.indexOf(closing, from + 1);
    if (close < 0) refuse('calc.open-quote', { input: key });
    const next = text.indexOf(';', close + 1);
    const rest = text.slice(close + 1, next < 0 ? text.length : next).trim();
    if (rest !== '') refuse('calc.after-quote', { input: key, rest });
    inputs.set(key, text.slice(from + 1, close).trim());
    at = next < 0 ? text.length : next + 1;
  }
  return inputs;
}
