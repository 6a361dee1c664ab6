/** A process that writes on and on and prints the number of each entry once it is acknowledged. Killed by a test. */
import { writeSync } from 'node:fs';
import { createEntry, type Subject, setEntry } from '@pitwright/model';
import { StoreFault } from '../src/index.ts';
import { openSqliteStore } from '../src/sqlite/index.ts';

const cook: Subject = { kind: 'cook', id: 'dinner' };
const [path = '', length = '200'] = process.argv.slice(2);
try {
  const store = await openSqliteStore(path);
  if ((await store.readSince(0, 1)).last === 0) await store.write([createEntry(cook, { id: 'dinner' })]);
  for (;;) {
    const value = 'x'.repeat(Number(length));
    const [entry] = await store.write([setEntry(cook, [{ path: ['note'], value }])]);
    writeSync(1, `${entry?.seq}\n`);
  }
} catch (fault) {
  if (!(fault instanceof StoreFault)) throw fault;
  writeSync(1, `fault ${JSON.stringify(fault.said)}\n`);
}
