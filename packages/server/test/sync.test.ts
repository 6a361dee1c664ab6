/**
 * Stores that exchange entries over a real server, which is slow, gone, killed or another one. Evidence: conformity.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { createEntry, type Entry, logEntry, type Subject, setEntry } from '@pitwright/model';
import {
  exchange,
  httpPeer,
  type Peer,
  PeerFault,
  readHistory,
  type Store,
  type SyncState,
  startSync,
} from '@pitwright/store';
import { openSqliteStore } from '@pitwright/store/sqlite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundleForNode } from '../../store/test/bundle-node.ts';
import { startServer } from '../src/index.ts';

let folder: string;
let script: { readonly script: string; readonly folder: string };
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pitwright-sync-'));
  script = await bundleForNode(new URL('./server-process.ts', import.meta.url));
});
afterAll(() => {
  for (const made of [folder, script.folder]) rmSync(made, { recursive: true, force: true });
});

const cook: Subject = { kind: 'cook', id: 'harvest' };
const create = createEntry(cook, { id: 'harvest', name: 'Harvest', pieces: [] });
const rename = (name: string) => setEntry(cook, [{ path: ['name'], value: name }]);

const openStore = (name: string) => openSqliteStore(join(folder, `${name}.db`));

async function idsIn(store: Pick<Store, 'readSince'>): Promise<readonly string[]> {
  const ids: string[] = [];
  for (let cursor = 0; ; ) {
    const page = await store.readSince(cursor);
    ids.push(...page.entries.map((entry) => entry.id));
    cursor = page.cursor;
    if (cursor >= page.last) return ids.sort();
  }
}

/** The server's entries, read as a client does. */
const held = (url: string) => ({
  readSince: (cursor: number) => httpPeer(url).read(cursor),
});

async function cookName(store: Store): Promise<string | undefined> {
  return (await readHistory(store)).state.cooks.get('harvest')?.document.name;
}

/** Resolves at the first state that fits. */
function watching() {
  let state: SyncState | undefined;
  let check: () => void = () => {};
  return {
    hear(next: SyncState) {
      state = next;
      check();
    },
    until(fits: (state: SyncState) => boolean): Promise<void> {
      return new Promise((resolve) => {
        check = () => {
          if (state && fits(state)) resolve();
        };
        check();
      });
    },
  };
}

describe('exchange', () => {
  test('two devices and the server hold the same entries, each once, and the same state', async () => {
    const server = await startServer({ port: 0, dataDir: join(folder, 'two') });
    const [deck, galley] = [await openStore('two-deck'), await openStore('two-galley')];
    const peer = httpPeer(server.url);
    await deck.write([create, ...Array.from({ length: 700 }, (_, i) => rename(`${i}`))]);
    await exchange(deck, peer);
    await exchange(galley, peer);
    await galley.write([rename('from the galley'), logEntry('harvest', 'look', { colour: 'amber' })]);
    await deck.write([rename('from the deck')]);
    for (const store of [deck, galley, deck, deck]) expect(await exchange(store, peer)).toEqual([]);
    const ids = await idsIn(held(server.url));
    expect(new Set(ids).size).toBe(ids.length);
    expect(await idsIn(deck)).toEqual(ids);
    expect(await idsIn(galley)).toEqual(ids);
    expect(await cookName(galley)).toBe(await cookName(deck));
    expect(await deck.outbox()).toEqual([]);
    for (const store of [deck, galley]) await store.close();
    await server.close();
  });

  test('an answer that is lost after the server kept the entries is made good by sending again', async () => {
    const server = await startServer({ port: 0, dataDir: join(folder, 'lost') });
    const store = await openStore('lost');
    const peer = httpPeer(server.url);
    const deaf: Peer = {
      ...peer,
      async send(entries) {
        await peer.send(entries);
        throw new PeerFault('away');
      },
    };
    const [entry] = await store.write([create]);
    await expect(exchange(store, deaf)).rejects.toMatchObject({ why: 'away' });
    expect(await store.outbox()).toEqual([entry]);
    await exchange(store, peer);
    expect(await store.outbox()).toEqual([]);
    expect((await idsIn(held(server.url))).filter((id) => id === entry?.id)).toHaveLength(1);
    await store.close();
    await server.close();
  });

  test('one entry that the server does not take does not hold up the others', async () => {
    const server = await startServer({ port: 0, dataDir: join(folder, 'refused') });
    const store = await openStore('refused');
    const good = await store.write([create, rename('a')]);
    await store.receive([{ ...(good[0] as Entry), id: 'bad', at: 'this morning' }], { forward: true });
    await store.write([rename('b')]);
    expect(await exchange(store, httpPeer(server.url))).toEqual(['bad']);
    expect(await store.outbox()).toEqual([]);
    const ids = await idsIn(held(server.url));
    expect(ids).toEqual((await idsIn(store)).filter((id) => id !== 'bad'));
    await store.close();
    await server.close();
  });

  test.each([
    ['a new server at the old address', false],
    ['the old server brought back from an earlier copy of its folder', true],
  ])('%s is given everything again', async (name, isCopied) => {
    const dataDir = join(folder, isCopied ? 'from-copy' : 'new-one');
    const store = await openStore(isCopied ? 'from-copy' : 'new-one');
    await store.write([create]);
    const first = await startServer({ port: 0, dataDir });
    await exchange(store, httpPeer(first.url));
    await first.close();
    cpSync(dataDir, `${dataDir}-copy`, { recursive: true });
    const second = await startServer({ port: 0, dataDir });
    await store.write([rename('after the copy')]);
    await exchange(store, httpPeer(second.url));
    await second.close();
    const third = await startServer({ port: 0, dataDir: isCopied ? `${dataDir}-copy` : `${dataDir}-other` });
    await exchange(store, httpPeer(third.url));
    expect(await idsIn(held(third.url)), name).toEqual(await idsIn(store));
    await third.close();
    await store.close();
  });

  test('a host of plain files is no server, and nobody at all is away', async () => {
    const store = await openStore('none');
    const server = await startServer({ port: 0, dataDir: join(folder, 'none') });
    const files = httpPeer(new URL('/somewhere/', server.url).href);
    const elsewhere: Peer = { ...files, read: () => httpPeer(server.url).read(-1) };
    await expect(exchange(store, elsewhere)).rejects.toMatchObject({ why: 'none' });
    await server.close();
    await expect(exchange(store, httpPeer(server.url))).rejects.toMatchObject({ why: 'away' });
    await store.close();
  });
});

describe('a server of its own', () => {
  async function startProcess(
    dataDir: string,
    port = 0,
  ): Promise<{ readonly child: ChildProcess; readonly url: string }> {
    const child = spawn(process.execPath, [script.script, dataDir, String(port)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const [url] = await new Promise<[string]>((resolve, reject) => {
      createInterface({ input: child.stdout! }).once('line', (line) => resolve([line]));
      child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
    });
    return { child, url };
  }

  async function kill(child: ChildProcess): Promise<void> {
    if (child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGKILL');
    await ended;
  }

  test('two devices stay in step; the server is killed, both go on, it comes back, all catch up', async () => {
    const dataDir = join(folder, 'gone');
    const [deck, galley] = [await openStore('gone-deck'), await openStore('gone-galley')];
    const first = await startProcess(dataDir);
    const [onDeck, inGalley] = [watching(), watching()];
    const syncs = [
      startSync(deck, httpPeer(first.url), onDeck.hear),
      startSync(galley, httpPeer(first.url), inGalley.hear),
    ];
    await Promise.all([onDeck, inGalley].map((each) => each.until((state) => state.phase === 'in-step')));

    const heard = new Promise<void>((resolve) => galley.watch(resolve));
    await deck.write([create]);
    await heard;
    expect(await cookName(galley)).toBe('Harvest');

    await kill(first.child);
    await Promise.all([onDeck, inGalley].map((each) => each.until((state) => state.phase === 'away')));
    await deck.write([rename('on deck, alone')]);
    await galley.write([rename('in the galley, alone'), logEntry('harvest', 'look', { colour: 'amber' })]);

    const again = await startProcess(dataDir, Number(new URL(first.url).port));
    for (const sync of syncs) sync.tryNow();
    const isInStep = (state: SyncState) => state.phase === 'in-step' && state.waiting === 0;
    await Promise.all([onDeck, inGalley].map((each) => each.until(isInStep)));
    for (const store of [deck, galley]) await exchange(store, httpPeer(again.url));
    expect(await idsIn(deck)).toEqual(await idsIn(galley));
    expect(await idsIn(deck)).toEqual(await idsIn(held(again.url)));
    expect(await cookName(deck)).toBe(await cookName(galley));

    for (const sync of syncs) await sync.stop();
    for (const store of [deck, galley]) await store.close();
    await kill(again.child);
  });

  test('100 SIGKILLs of the server while it is sent entries lose none that it acknowledged', async () => {
    const dataDir = join(folder, 'killed');
    const acknowledged = new Set<string>();
    let number = 0;
    for (let round = 0; round < 100; round++) {
      const { child, url } = await startProcess(dataDir);
      const peer = httpPeer(url);
      const enough = acknowledged.size + 1 + (round % 7);
      const sending = Array.from({ length: 3 }, async () => {
        for (;;) {
          number += 1;
          const id = `entry-${number}`;
          const entry = {
            ...rename(id),
            id,
            device: 'phone',
            seq: number,
            clock: number,
            at: '2027-09-12T06:00:00Z',
          };
          await peer.send([entry]);
          acknowledged.add(id);
          if (acknowledged.size >= enough) child.kill('SIGKILL');
        }
      });
      const ends = await Promise.allSettled(sending);
      for (const end of ends) expect(end).toMatchObject({ status: 'rejected', reason: { why: 'away' } });
      await kill(child);
    }
    const last = await startServer({ port: 0, dataDir });
    const ids = await idsIn(held(last.url));
    expect(new Set(ids).size).toBe(ids.length);
    expect([...acknowledged].filter((id) => !ids.includes(id))).toEqual([]);
    await last.close();
  }, 300_000);
});
