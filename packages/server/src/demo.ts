import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { foundingEntry, readCookFile } from '@pitwright/model';
import type { Store } from '@pitwright/store';

const EXAMPLES = fileURLToPath(new URL('../../../examples/', import.meta.url));
/** Shown as the day the demo was laid down. */
const LAID_DOWN_AT = '2027-09-01T00:00:00.000Z';

/** Puts the demo cooks into a store that holds nothing yet. @returns how many */
export async function layDownDemo(store: Store, folder = EXAMPLES): Promise<number> {
  const { last } = await store.readSince(0, 1);
  if (last > 0) return 0;
  const entries = readdirSync(folder)
    .filter((name) => name.endsWith('.pitwright.yaml'))
    .sort()
    .flatMap((name) => {
      const reading = readCookFile(readFileSync(`${folder}/${name}`, 'utf8'));
      if (!reading.ok || reading.document.kind !== 'cook' || !reading.document.cook.isDemo) return [];
      const { cook } = reading.document;
      return [foundingEntry({ kind: 'cook', id: cook.id }, cook, LAID_DOWN_AT)];
    });
  return (await store.receive(entries)).length;
}
