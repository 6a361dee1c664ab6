import type { Said } from '@pitwright/model';
import { CATALOGUE } from './catalogue.ts';
import type { MessageParams } from './messages/message.ts';
import { type Printer, printer } from './printer.ts';
import type { PrintSettings } from './settings.ts';

/**
 * The words of a thing said, for one reader.
 * @throws RangeError on an id that the catalogue lacks: every `Said` has its message
 */
export function say(said: Said, reader: PrintSettings | Printer): string {
  const message = CATALOGUE[said.id];
  if (!message) throw new RangeError(`no message says ${said.id}`);
  const params: MessageParams = said.params ?? {};
  return message(params, 'settings' in reader ? reader : printer(reader));
}

/** Whether the catalogue has this id. */
export const isSayable = (id: string): boolean => CATALOGUE[id] !== undefined;
