/**
 * What every store must do, written once and run on each: SQLite in Node, IndexedDB in Chromium. It leans on no test
 * runner, so that the same code runs inside a page.
 */
import { createEntry, type Entry, logEntry, type Subject, setEntry } from '@pitwright/model';
import { openJournal, readHistory, type Store, StoreFault } from '../src/index.ts';

export interface Ground {
  /** Opens the store of a name; the same name again is the same store, also after it was closed. */
  open(name: string): Promise<Store>;
}

export interface Claim {
  readonly name: string;
  holds(ground: Ground): Promise<void>;
}

const cook: Subject = { kind: 'cook', id: 'dinner' };
const create = createEntry(cook, { id: 'dinner', name: 'Dinner', pieces: [] });
const rename = (name: string) => setEntry(cook, [{ path: ['name'], value: name }]);
const ids = (entries: readonly Entry[]) => entries.map((entry) => entry.id);

export const CONTRACT: readonly Claim[] = [
  {
    name: 'numbers what its device writes, one by one, with a clock that only grows',
    async holds({ open }) {
      const store = await open('numbers');
      const entries = [...(await store.write([create, rename('a')])), ...(await store.write([rename('b')]))];
      same(
        entries.map(({ device, seq, clock }) => [device, seq, clock]),
        [1, 2, 3].map((number) => [store.device, number, number]),
      );
      same(new Set(ids(entries)).size, 3);
      await store.close();
    },
  },
  {
    name: 'holds identity, device, numbers and entries over a restart',
    async holds({ open }) {
      const first = await open('restart');
      const written = await first.write([create, rename('a')]);
      await first.close();
      const second = await open('restart');
      same([second.storeId, second.device], [first.storeId, first.device]);
      same((await second.readSince(0)).entries, written);
      same((await second.write([rename('b')]))[0]?.seq, 3);
      await second.close();
    },
  },
  {
    name: 'two stores are two devices',
    async holds({ open }) {
      const first = await open('one');
      const second = await open('other');
      must(first.device !== second.device && first.storeId !== second.storeId, 'identities must differ');
      await first.close();
      await second.close();
    },
  },
  {
    name: 'takes in each entry once, however often it comes',
    async holds({ open }) {
      const from = await open('once-from');
      const to = await open('once-to');
      const entries = await from.write([
        create,
        rename('a'),
        logEntry('dinner', 'look', { colour: 'amber' }),
      ]);
      same(await to.receive([entries[0] as Entry, entries[0] as Entry]), [entries[0]]);
      same(await to.receive(entries), entries.slice(1));
      same(await to.receive(entries), []);
      same((await to.readSince(0)).entries, entries);
      await from.close();
      await to.close();
    },
  },
  {
    name: 'writes after what it has seen',
    async holds({ open }) {
      const ahead = await open('ahead');
      const behind = await open('behind');
      const seen = await ahead.write([create, ...Array.from({ length: 9 }, (_, i) => rename(`${i}`))]);
      await behind.receive(seen);
      const [next] = await behind.write([rename('mine')]);
      same([next?.seq, next?.clock], [1, 11]);
      same((await readHistory(behind)).state.cooks.get('dinner')?.document.name, 'mine');
      await ahead.close();
      await behind.close();
    },
  },
  {
    name: 'reads on from a cursor, in portions, and says where the end is',
    async holds({ open }) {
      const store = await open('cursor');
      same(await store.readSince(0), { entries: [], cursor: 0, last: 0 });
      const entries = await store.write([create, rename('a'), rename('b'), rename('c'), rename('d')]);
      const read: Entry[] = [];
      let cursor = 0;
      for (;;) {
        const page = await store.readSince(cursor, 2);
        read.push(...page.entries);
        cursor = page.cursor;
        if (cursor >= page.last) break;
      }
      same(read, entries);
      same(await store.readSince(cursor), { entries: [], cursor, last: cursor });
      await store.close();
    },
  },
  {
    name: 'keeps for the peer what it has not acknowledged, and nothing that came from it',
    async holds({ open }) {
      const store = await open('outbox');
      const peer = await open('outbox-peer');
      const theirs = await peer.write([createEntry({ kind: 'pit', id: 'kettle' }, { id: 'kettle' })]);
      const entries = await store.write([create, rename('a'), rename('b')]);
      await store.receive(theirs);
      same(await store.outbox(), entries);
      same(ids(await store.outbox(2)), ids(entries).slice(0, 2));
      await store.markSent(ids(entries).slice(0, 2));
      await store.markSent([...ids(entries).slice(0, 1), 'not-here']);
      same(await store.outbox(), entries.slice(2));
      await store.close();
      const again = await open('outbox');
      same(await again.outbox(), entries.slice(2));
      await again.close();
      await peer.close();
    },
  },
  {
    name: 'sends on what came from a file',
    async holds({ open }) {
      const writer = await open('file-from');
      const store = await open('file-to');
      const entries = await writer.write([create, rename('a')]);
      await store.receive(entries, { forward: true });
      same(await store.outbox(), entries);
      await writer.close();
      await store.close();
    },
  },
  {
    name: 'notes how far the exchange with the peer has come, and can send everything again',
    async holds({ open }) {
      const store = await open('peer');
      same(await store.peer(), undefined);
      const entries = await store.write([create, rename('a')]);
      await store.markSent(ids(entries));
      await store.setPeer({ storeId: 'harbour', cursor: 2 });
      await store.setPeer({ storeId: 'another', cursor: 7 });
      same(await store.peer(), { storeId: 'another', cursor: 7 });
      same(await store.outbox(), []);
      await store.sendAllAgain();
      same(await store.outbox(), entries);
      await store.close();
    },
  },
  {
    name: 'keeps all of a portion or nothing of it',
    async holds({ open }) {
      const store = await open('portion');
      await store.write([create]);
      const huge = rename('x'.repeat(600_000));
      await refused(store.write([rename('a'), huge]), 'store.entry-too-large');
      const [entry] = await store.write([rename('b')]);
      same(entry?.seq, 2);
      const strangers = [1, 2].map((seq): Entry => {
        const body = seq === 2 ? huge.body : rename('c').body;
        return { ...(entry as Entry), id: `stranger-${seq}`, device: 'stranger', seq, body };
      });
      await refused(store.receive(strangers), 'store.entry-too-large');
      same((await store.readSince(0)).entries.length, 2);
      await store.close();
    },
  },
  {
    name: 'keeps what JSON carries and refuses a number that it cannot carry',
    async holds({ open }) {
      const store = await open('json');
      const at = 'søndag – 7 °F \u{1F525} \u0000 "\\';
      const [entry] = await store.write([{ ...rename(at), body: { at, nothing: undefined } }]);
      same(entry?.body, { at });
      same((await store.readSince(0)).entries, [entry]);
      let problem: unknown;
      await store.write([logEntry('dinner', 'reading', { coreC: Number.NaN })]).catch((cause) => {
        problem = cause;
      });
      must(problem instanceof RangeError, 'a NaN must be refused');
      same((await store.readSince(0)).entries.length, 1);
      await store.close();
    },
  },
  {
    name: 'writes that overlap are numbered without gap or doubling',
    async holds({ open }) {
      const store = await open('overlap');
      const portions = await Promise.all(
        Array.from({ length: 20 }, (_, i) => store.write([rename(`${i}`), rename(`${i} again`)])),
      );
      const seqs = portions.flat().map((entry) => entry.seq);
      same(
        [...seqs].sort((a, b) => a - b),
        Array.from({ length: 40 }, (_, i) => i + 1),
      );
      await store.close();
    },
  },
  {
    name: 'a second opening of the same store writes as the same device and hears of the first',
    async holds({ open }) {
      const first = await open('tabs');
      const second = await open('tabs');
      same(second.device, first.device);
      await first.write([create]);
      const [entry] = await second.write([rename('from the second')]);
      same(entry?.seq, 2);
      await first.close();
      await second.close();
    },
  },
  {
    name: 'a journal has in its state what its store holds, undoes and redoes, and tells those who watch',
    async holds({ open }) {
      const journal = await openJournal(await open('journal'));
      let calls = 0;
      const end = journal.watch(() => {
        calls += 1;
      });
      const name = () => journal.state.cooks.get('dinner')?.document.name;
      await journal.write(create);
      await journal.write(rename('Supper'));
      same([name(), calls], ['Supper', 2]);
      must((await journal.undo()).length === 1, 'there was something to undo');
      same(name(), 'Dinner');
      await journal.redo();
      same(name(), 'Supper');
      same(await journal.redo(), []);
      end();
      await journal.write(rename('Breakfast'));
      same(calls, 4);
      await journal.close();
      const again = await openJournal(await open('journal'));
      same(again.state.cooks.get('dinner')?.document.name, 'Breakfast');
      same([...again.history.entries.values()].length, 5);
      await again.close();
    },
  },
  {
    name: 'deeds in quick succession each see the one before: two undos take back two changes',
    async holds({ open }) {
      const journal = await openJournal(await open('journal-quick'));
      const name = () => journal.state.cooks.get('dinner')?.document.name;
      const first = journal.write(create);
      await Promise.all([first, journal.write(rename('Supper')), journal.write(rename('Lunch'))]);
      await Promise.all([journal.undo(), journal.undo()]);
      same(name(), 'Dinner');
      await Promise.all([journal.redo(), journal.redo()]);
      same(name(), 'Lunch');
      await Promise.all([journal.write(rename('Breakfast')), journal.undo()]);
      same(name(), 'Lunch');
      await journal.close();
    },
  },
  {
    name: 'a journal takes in what its store receives',
    async holds({ open }) {
      const journal = await openJournal(await open('journal-receives'));
      const other = await open('journal-sends');
      const told = new Promise<void>((resolve) => journal.watch(resolve));
      await journal.store.receive(await other.write([create]));
      await told;
      same(journal.state.cooks.get('dinner')?.document.name, 'Dinner');
      await journal.close();
      await other.close();
    },
  },
];

function must(isTrue: boolean, claim: string): void {
  if (!isTrue) throw new Error(claim);
}

function same(received: unknown, expected: unknown): void {
  const [left, right] = [sorted(received), sorted(expected)];
  must(left === right, `expected ${right}, got ${left}`);
}

/** JSON with keys in order, undefined told apart from null. */
function sorted(value: unknown): string {
  return String(
    JSON.stringify(value, (_, held) => {
      if (held === undefined) return '\u0000undefined';
      if (typeof held !== 'object' || held === null || Array.isArray(held)) return held;
      return Object.fromEntries(
        Object.entries(held)
          .filter(([, field]) => field !== undefined)
          .sort(([a], [b]) => (a < b ? -1 : 1)),
      );
    }),
  );
}

async function refused(attempt: Promise<unknown>, id: string): Promise<void> {
  let problem: unknown;
  await attempt.catch((cause) => {
    problem = cause;
  });
  must(problem instanceof StoreFault, `expected a refusal ${id}, got ${String(problem)}`);
  same((problem as StoreFault).said.id, id);
}
