/** Text in a terminal: everything stays within this many columns. */
export const COLUMNS = 94;

/** Columns a text takes; combining marks and double-wide characters do not occur in what is printed. */
const widthOf = (text: string): number => [...text].length;

/** A figure and its unit, which no line break may part. */
const FIGURE_AND_UNIT =
  /(\d|[½¼¾]) (?=(?:kg|g|mL|L|°C|°F|min|h|s|mm|cm|m|in|ft|lb|oz|cups?|tsp|tbsp|W|am|pm|%)(?![\p{L}]))/gu;
const UNBROKEN = '\u00a0';

/** Breaks at spaces into lines no wider than `width`; a longer word stays whole. */
export function wrap(text: string, width: number): string[] {
  return wrapWords(text.replace(FIGURE_AND_UNIT, `$1${UNBROKEN}`), width).map((line) =>
    line.replaceAll(UNBROKEN, ' '),
  );
}

function wrapWords(text: string, width: number): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/ +/)) {
    const longer = current ? `${current} ${word}` : word;
    if (current && widthOf(longer) > width) {
      lines.push(current);
      current = word;
    } else current = longer;
  }
  lines.push(current);
  return lines;
}

/** A paragraph under a hanging indent. */
export const paragraph = (text: string, indent = 0, hanging = indent): string[] =>
  wrap(text, COLUMNS - Math.max(indent, hanging)).map(
    (line, i) => `${' '.repeat(i === 0 ? indent : hanging)}${line}`,
  );

/** A heading with a rule under it. */
export const heading = (text: string): string[] => ['', text, '─'.repeat(COLUMNS)];

export interface Column {
  readonly width: number;
  readonly align?: 'right';
}

const padded = (text: string, { width, align }: Column): string => {
  const room = ' '.repeat(Math.max(0, width - widthOf(text)));
  return align === 'right' ? room + text : text + room;
};

/** Cells side by side, two spaces between, each wrapped within its column; blank ends are trimmed. */
export function row(cells: readonly string[], columns: readonly Column[], indent = 0): string[] {
  const wrapped = cells.map((cell, i) => wrap(cell, columns[i]!.width));
  const height = Math.max(...wrapped.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) =>
    (
      ' '.repeat(indent) + wrapped.map((lines, i) => padded(lines[line] ?? '', columns[i]!)).join('  ')
    ).trimEnd(),
  );
}
