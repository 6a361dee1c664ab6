/** Runs inside the page: the contract on IndexedDB, and a writer for the kill test. */
import { createEntry, type Subject, setEntry } from '@pitwright/model';
import { openBrowserStore } from '../../src/browser/index.ts';
import { StoreFault } from '../../src/index.ts';
import { CONTRACT } from '../contract.ts';

const cook: Subject = { kind: 'cook', id: 'dinner' };

const onPage = {
  claims: CONTRACT.map(({ name }) => name),

  /** @returns the problem, or undefined where the claim holds */
  async holds(index: number): Promise<string | undefined> {
    try {
      await CONTRACT[index]?.holds({ open: (name) => openBrowserStore(name) });
      return undefined;
    } catch (problem) {
      return problem instanceof Error ? `${problem.message}\n${problem.stack}` : String(problem);
    }
  },

  /** Writes on and on; `acknowledge` hears the number of each entry once it is on the disk. */
  async writeOn(acknowledge: (seq: number) => Promise<void>): Promise<void> {
    const store = await openBrowserStore('killed');
    if ((await store.readSince(0)).last === 0) await store.write([createEntry(cook, { id: 'dinner' })]);
    for (let i = 0; ; i++) {
      const [entry] = await store.write([setEntry(cook, [{ path: ['name'], value: `name ${i}` }])]);
      if (entry) await acknowledge(entry.seq);
    }
  },

  async heldSeqs(): Promise<readonly number[]> {
    const store = await openBrowserStore('killed');
    const seqs: number[] = [];
    for (let cursor = 0; ; ) {
      const page = await store.readSince(cursor);
      seqs.push(...page.entries.map((entry) => entry.seq));
      cursor = page.cursor;
      if (cursor >= page.last) return seqs;
    }
  },

  /** Writes `count` large entries one by one, until one is refused. @returns the refusal, and how many are held then */
  async fill(count: number): Promise<{ readonly fault: string | undefined; readonly held: number }> {
    const store = await openBrowserStore('filled');
    let fault: string | undefined;
    try {
      // Chance does not deflate: the browser packs what it stores.
      const noise = () => Array.from(crypto.getRandomValues(new Uint32Array(16_000)), String).join(' ');
      for (let i = 0; i < count; i++)
        await store.write([setEntry(cook, [{ path: ['note'], value: noise() }])]);
    } catch (problem) {
      fault = problem instanceof StoreFault ? problem.said.id : String(problem);
    }
    const { last } = await store.readSince(0, 1);
    await store.close();
    return { fault, held: last };
  },

  /** Resolves when this tab's store has heard of another tab's entries. */
  async hearsOtherTab(): Promise<void> {
    const store = await openBrowserStore('two-tabs');
    await new Promise<void>((resolve) => {
      store.watch(resolve);
      document.title = 'listening';
    });
  },

  async tellOtherTab(): Promise<void> {
    const store = await openBrowserStore('two-tabs');
    await store.write([createEntry(cook, { id: 'dinner' })]);
    await store.close();
  },
};

export type OnPage = typeof onPage;
Object.assign(window, { onPage });
