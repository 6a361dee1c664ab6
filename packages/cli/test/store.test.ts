// The commands that have to do with what is kept, as they are typed. Evidence: conformity.
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createEntry, logEntry, removeEntry, type Subject, setEntry, undoEntries } from '@pitwright/model';
import { openJournal, readHistory } from '@pitwright/store';
import { openSqliteStore } from '@pitwright/store/sqlite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { backup } from '../src/store/backup.ts';
import { replay } from '../src/store/replay.ts';

const cook: Subject = { kind: 'cook', id: 'harvest' };
const pit: Subject = { kind: 'pit', id: 'drum' };

let folder: string;
let data: string;
let lines: string;

function streams() {
  const held = { out: '', err: '' };
  return {
    held,
    out: (text: string) => {
      held.out += text;
    },
    err: (text: string) => {
      held.err += text;
    },
  };
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-commands-'));
  data = join(folder, 'data');
  mkdirSync(data, { mode: 0o700 });
  let minute = 0;
  const now = () => new Date(Date.UTC(2027, 8, 11, 6, minute++));
  const journal = await openJournal(await openSqliteStore(join(data, 'pitwright.db'), { now }));
  await journal.write(createEntry(cook, { id: 'harvest', name: 'Harvest' }));
  await journal.write(createEntry(pit, { id: 'drum', name: 'Drum' }));
  await journal.write(setEntry(cook, [{ path: ['name'], value: 'Harvest supper' }]));
  await journal.write(setEntry(cook, [{ path: ['name'], value: 'Mistaken' }]));
  await journal.write(...undoEntries(journal.history, journal.store.device));
  await journal.write(logEntry('harvest', 'look', { colour: 'amber' }), removeEntry(pit));
  await journal.write({ subject: cook, what: 'weigh-again', schema: 1, body: {} });
  await journal.close();
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('backup', () => {
  test('writes a dated copy and the entries, for their owner alone, and says how many', async () => {
    const told = streams();
    expect(await backup({ data }, told, new Date('2027-09-11T20:30:00.5Z'))).toBe(0);
    const names = readdirSync(join(data, 'backups')).sort();
    expect(names).toEqual(['pitwright-2027-09-11T20-30-00Z.db', 'pitwright-2027-09-11T20-30-00Z.jsonl']);
    for (const name of names) expect(statSync(join(data, 'backups', name)).mode & 0o777).toBe(0o600);
    expect(told.held.out).toContain('8 entries copied and read back');
    lines = join(data, 'backups', names[1]!);
    expect(readFileSync(lines, 'utf8').trimEnd().split('\n')).toHaveLength(8);
  });

  test('the copy in the place of the store gives the same state', async () => {
    const store = await openSqliteStore(join(data, 'pitwright.db'));
    const { state } = await readHistory(store);
    await store.close();
    const restored = join(folder, 'restored.db');
    renameSync(join(data, 'backups', 'pitwright-2027-09-11T20-30-00Z.db'), restored);
    const copy = await openSqliteStore(restored);
    expect((await readHistory(copy)).state).toEqual(state);
    await copy.close();
  });

  test('leaves alone what is there already, and a folder that keeps nothing', async () => {
    const told = streams();
    const at = new Date('2027-09-12T08:00:00Z');
    expect(await backup({ data }, told, at)).toBe(0);
    const before = readFileSync(join(data, 'backups', 'pitwright-2027-09-12T08-00-00Z.db'));
    expect(await backup({ data }, told, at)).toBe(1);
    expect(told.held.err).toContain('is there already and was left alone');
    expect(readFileSync(join(data, 'backups', 'pitwright-2027-09-12T08-00-00Z.db')).equals(before)).toBe(
      true,
    );
    expect(await backup({ data: join(folder, 'none') }, told)).toBe(1);
    expect(told.held.err).toContain('Nothing is kept in');
  });

  test('says where it could not write', async () => {
    const told = streams();
    expect(await backup({ data, to: join(data, 'pitwright.db', 'x') }, told)).toBe(1);
    expect(told.held.err).toContain('The backup could not be written to');
  });
});

describe('replay', () => {
  test('prints what the entries amount to', async () => {
    const told = streams();
    expect(await replay(lines, {}, told)).toBe(0);
    expect(told.held.out.trimEnd().split('\n')).toEqual([
      'cook Harvest supper (harvest), last changed 2027-09-11T06:02:00.000Z, 1 entry in its log',
      'pit Drum (drum), removed 2027-09-11T06:05:00.000Z',
      '1 entry of kinds that this version does not know, kept and not applied',
    ]);
  });

  test('prints the state of an earlier moment, as JSON', async () => {
    const told = streams();
    expect(await replay(lines, { json: true, until: '2027-09-11T06:03:00Z' }, told)).toBe(0);
    const state = JSON.parse(told.held.out);
    expect(state.cooks.harvest.document.name).toBe('Mistaken');
    expect(state.pits.drum.isRemoved).toBe(false);
    expect(state.logs).toEqual({});
  });

  test('names each line that is no entry, and prints no state then', async () => {
    const [first = '', second = ''] = readFileSync(lines, 'utf8').split('\n');
    const path = join(folder, 'broken.jsonl');
    writeFileSync(path, [first, '', '{"id": ', JSON.stringify({ ...JSON.parse(second), seq: 0 })].join('\n'));
    const told = streams();
    expect(await replay(path, {}, told)).toBe(1);
    expect(told.held.out).toBe('');
    expect(told.held.err).toMatch(/^line 3 is no entry: text: .*\nline 4 is no entry: seq: .*\n$/);
  });

  test('a file of another kind, no file, and no instant are said', async () => {
    const told = streams();
    writeFileSync(join(folder, 'letter.txt'), 'dear friend\n'.repeat(50));
    expect(await replay(join(folder, 'letter.txt'), {}, told)).toBe(1);
    expect(told.held.err).toContain('and 40 more lines that are no entries');
    expect(await replay(join(folder, 'none.jsonl'), {}, told)).toBe(1);
    expect(await replay(lines, { until: 'noon' }, told)).toBe(1);
    expect(told.held.err).toContain('noon is no instant');
  });
});
