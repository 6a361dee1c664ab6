import type { Said } from '@pitwright/model';
import { levelName, type Printer, say } from '@pitwright/words';
import { paragraph } from './layout.ts';

/** Marks by shape, as on screen: a bar, a corner, a block. */
const MARKS = { information: '│', caution: '◤', stop: '■' } as const;

/** A notice that stands where the decision is made; each begins with its word. */
export function noticeText(said: Said, print: Printer, indent = 0, letters?: string): string[] {
  const level = said.level ?? 'information';
  const whom = letters ? `${letters}: ` : '';
  return paragraph(`${MARKS[level]} ${levelName(level)}. ${whom}${say(said, print)}`, indent, indent + 2);
}
