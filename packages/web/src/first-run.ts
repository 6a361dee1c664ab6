import { foundingEntry, readCookFile } from '@pitwright/model';
import type { Journal } from '@pitwright/store';

const EXAMPLES = import.meta.glob<string>('../../../examples/*.pitwright.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});
/** As the server lays it down: the same entries, so that browser and server hold each demo once. */
const LAID_DOWN_AT = '2027-09-01T00:00:00.000Z';

/** Puts the demo on an empty shelf. It is marked as demo in the files themselves. */
export async function shelveDemo(journal: Journal): Promise<void> {
  const entries = Object.values(EXAMPLES).flatMap((content) => {
    const reading = readCookFile(content);
    if (!reading.ok || reading.document.kind !== 'cook' || !reading.document.cook.isDemo) return [];
    const { cook } = reading.document;
    return [foundingEntry({ kind: 'cook', id: cook.id }, cook, LAID_DOWN_AT)];
  });
  await journal.store.receive(entries);
}
