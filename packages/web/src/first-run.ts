import { createEntry } from '@pitwright/model';
import type { Journal } from '@pitwright/store';
import type { PrintSettings } from '@pitwright/words';
import regatta from '../../../examples/regatta-dinner.pitwright.yaml?raw';
import twoRacks from '../../../examples/two-racks.pitwright.yaml?raw';
import { readFile } from './file-door.ts';

/** Puts the demo on an empty shelf. It is marked as demo in the file itself. */
export async function shelveDemo(journal: Journal, settings: PrintSettings): Promise<void> {
  const entries = [regatta, twoRacks].flatMap((content) => {
    const reading = readFile(content, settings);
    if (!reading.ok || reading.document.kind !== 'cook')
      throw new Error('the demo does not read as a cook file');
    const { cook } = reading.document;
    return [
      createEntry({ kind: 'cook', id: cook.id }, cook),
      createEntry({ kind: 'pit', id: `${cook.id}-pit` }, { ...cook.pit, id: `${cook.id}-pit` }),
    ];
  });
  await journal.write(...entries);
}
