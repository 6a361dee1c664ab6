import type { Said } from '@pitwright/model';
import { isSayable, type Printer, say, unbroken } from '@pitwright/words';

/** Words of a thing said. What the catalogue lacks is reported and left out: one missing message takes no place down. */
export function saidWords(said: Said, print: Printer): string {
  if (isSayable(said.id)) return unbroken(say(said, print));
  console.error(`no message says ${said.id}`);
  return '';
}
