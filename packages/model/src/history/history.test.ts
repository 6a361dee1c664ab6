// SPEC.md of this folder, H1 to H17. Evidence: conformity.
import { describe, expect, test } from 'vitest';
import type { Entry, Subject } from './entry.ts';
import { foundingEntry } from './founding.ts';
import { reduce } from './history.ts';
import { MemoryDevice } from './memory-device.testing.ts';
import {
  bringBackEntry,
  createEntry,
  logEntry,
  redoEntries,
  removeEntry,
  setEntry,
  undoEntries,
} from './write.ts';

const cook: Subject = { kind: 'cook', id: 'dinner' };
const dinner = {
  id: 'dinner',
  name: 'Dinner',
  guests: { adults: 18, children: 0 },
  pieces: [
    { id: 'rack', letter: 'A', bite: 'tender', stages: [{ kind: 'bare' }] },
    { id: 'shoulder', letter: 'B', bite: 'pulls-apart', stages: [{ kind: 'bare' }] },
  ],
};

function twoDevices() {
  const deck = new MemoryDevice('deck');
  const galley = new MemoryDevice('galley');
  deck.write(createEntry(cook, dinner));
  galley.receive(deck.entries);
  return { deck, galley };
}

function exchange(a: MemoryDevice, b: MemoryDevice) {
  a.receive(b.entries);
  b.receive(a.entries);
}

// biome-ignore lint/suspicious/noExplicitAny: the tests look into documents of any form
const documentOn = (device: MemoryDevice): any => device.history.state.cooks.get('dinner')?.document;

describe('order and identity', () => {
  test('[H1] at equal clocks the device with the greater name writes last', () => {
    const { deck, galley } = twoDevices();
    galley.write(setEntry(cook, [{ path: ['name'], value: 'From the galley' }]));
    deck.write(setEntry(cook, [{ path: ['name'], value: 'From the deck' }]));
    exchange(deck, galley);
    expect(documentOn(deck).name).toBe('From the galley');
    expect(documentOn(galley)).toEqual(documentOn(deck));
  });

  test('[H2] the same entry arriving again changes nothing, not even the identity of the state', () => {
    const { deck, galley } = twoDevices();
    const before = galley.history;
    galley.receive(deck.entries);
    expect(galley.history).toBe(before);
  });

  test('[H2] the same id twice in one portion counts once', () => {
    const { deck } = twoDevices();
    deck.write(logEntry('dinner', 'look', { colour: 'mahogany' }));
    expect(reduce([...deck.entries, ...deck.entries]).logs.get('dinner')).toHaveLength(1);
  });

  test('[H4] what was written knowing of another entry wins over it, whatever the names of the devices', () => {
    const { deck, galley } = twoDevices();
    galley.write(setEntry(cook, [{ path: ['name'], value: 'first' }]));
    deck.receive(galley.entries);
    deck.write(setEntry(cook, [{ path: ['name'], value: 'second' }]));
    exchange(deck, galley);
    expect(documentOn(galley).name).toBe('second');
  });
});

describe('documents', () => {
  test('[H5] a second creation does not wipe what was edited since', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['guests', 'adults'], value: 15 }]));
    galley.receive(deck.entries);
    galley.write(createEntry(cook, dinner));
    expect(documentOn(galley).guests.adults).toBe(15);
  });

  test('[H6] two devices setting two fields both keep theirs', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['guests', 'adults'], value: 15 }]));
    galley.write(setEntry(cook, [{ path: ['guests', 'children'], value: 3 }]));
    exchange(deck, galley);
    expect(documentOn(deck).guests).toEqual({ adults: 15, children: 3 });
  });

  test('[H6] a field set without a value is cleared', () => {
    const { deck } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['guests', 'children'] }]));
    expect(documentOn(deck).guests).toEqual({ adults: 18 });
  });

  test('[H7] two devices editing two pieces, and each adding one, keep all four changes', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['pieces', 'rack', 'bite'], value: 'clean-bite' }]));
    deck.write(setEntry(cook, [{ path: ['pieces', 'legs'], value: { id: 'legs', letter: 'C' } }]));
    galley.write(setEntry(cook, [{ path: ['pieces', 'shoulder', 'bite'], value: 'falls-off' }]));
    galley.write(setEntry(cook, [{ path: ['pieces', 'spare'], value: { id: 'spare', letter: 'C' } }]));
    exchange(deck, galley);
    const bites = documentOn(deck).pieces.map((piece: { id: string; bite?: string }) => [
      piece.id,
      piece.bite,
    ]);
    expect(bites).toEqual([
      ['rack', 'clean-bite'],
      ['shoulder', 'falls-off'],
      ['legs', undefined],
      ['spare', undefined],
    ]);
  });

  test('[H7] a list without ids is one field', () => {
    const { deck } = twoDevices();
    const stages = [{ kind: 'bare' }, { kind: 'foil' }];
    deck.write(setEntry(cook, [{ path: ['pieces', 'rack', 'stages'], value: stages }]));
    expect(documentOn(deck).pieces[0].stages).toEqual(stages);
    deck.write(setEntry(cook, [{ path: ['pieces', 'rack', 'stages', '0', 'kind'], value: 'paper' }]));
    expect(documentOn(deck).pieces[0].stages).toEqual(stages);
  });

  test.each([
    ['a piece that is not there', ['pieces', 'goose', 'bite']],
    ['through a word', ['name', 'length']],
    ['the root', []],
    ['an object’s machinery', ['__proto__', 'isAdmin']],
    ['an object’s machinery, deeper', ['guests', 'constructor', 'prototype', 'isAdmin']],
  ])('[H8] %s finds no place; the rest of the entry holds', (_, path) => {
    const { deck } = twoDevices();
    deck.write(
      setEntry(cook, [
        { path, value: true },
        { path: ['name'], value: 'Supper' },
      ]),
    );
    expect(documentOn(deck)).toEqual({ ...dinner, name: 'Supper' });
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
  });

  test('[H9] an order given on one device keeps the piece that another added meanwhile', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['pieces'], order: ['shoulder', 'rack'] }]));
    galley.write(setEntry(cook, [{ path: ['pieces', 'legs'], value: { id: 'legs' } }]));
    exchange(deck, galley);
    expect(documentOn(deck).pieces.map((piece: { id: string }) => piece.id)).toEqual([
      'shoulder',
      'rack',
      'legs',
    ]);
  });
});

describe('what was laid down', () => {
  const at = '2027-09-01T00:00:00.000Z';

  test('[H2] the same document laid down on two devices is one entry, and edits of both hold', () => {
    const { deck, galley } = { deck: new MemoryDevice('deck'), galley: new MemoryDevice('galley') };
    for (const device of [deck, galley]) device.receive([foundingEntry(cook, dinner, at)]);
    deck.write(setEntry(cook, [{ path: ['name'], value: 'Supper' }]));
    exchange(deck, galley);
    expect(galley.entries).toHaveLength(2);
    expect(documentOn(galley).name).toBe('Supper');
  });

  test('[H5] a newer edition of it does not wipe what was edited on the older one', () => {
    const { deck } = { deck: new MemoryDevice('deck') };
    deck.receive([foundingEntry(cook, dinner, at)]);
    deck.write(setEntry(cook, [{ path: ['name'], value: 'Supper' }]));
    deck.receive([foundingEntry(cook, { ...dinner, guests: { adults: 20, children: 0 } }, at)]);
    expect(documentOn(deck)).toMatchObject({ name: 'Supper' });
    expect(deck.history.state.cooks.size).toBe(1);
  });
});

describe('removing', () => {
  test('[H10] deleting beats a later edit, and bringing back restores with that edit', () => {
    const { deck, galley } = twoDevices();
    deck.write(removeEntry(cook));
    galley.write(setEntry(cook, [{ path: ['name'], value: 'a' }]));
    galley.write(setEntry(cook, [{ path: ['name'], value: 'b' }]));
    exchange(deck, galley);
    expect(deck.history.state.cooks.get('dinner')?.isRemoved).toBe(true);
    deck.write(bringBackEntry(cook));
    expect(deck.history.state.cooks.get('dinner')).toMatchObject({
      isRemoved: false,
      document: { name: 'b' },
    });
  });

  test('[H11] a piece taken out stays out when edited or when the list is set, and comes back with its edits', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['pieces', 'rack'] }]));
    galley.write(setEntry(cook, [{ path: ['pieces', 'shoulder', 'bite'], value: 'tender' }]));
    galley.write(setEntry(cook, [{ path: ['pieces', 'rack', 'bite'], value: 'falls-off' }]));
    exchange(deck, galley);
    expect(documentOn(deck).pieces.map((piece: { id: string }) => piece.id)).toEqual(['shoulder']);
    galley.write(
      setEntry(cook, [{ path: ['pieces'], value: [{ id: 'rack', bite: 'firm' }, { id: 'shoulder' }] }]),
    );
    expect(documentOn(galley).pieces).toEqual([{ id: 'shoulder' }]);
    galley.write(setEntry(cook, [{ path: ['pieces', 'rack'], back: true }]));
    expect(documentOn(galley).pieces).toEqual([{ id: 'rack', bite: 'firm' }, { id: 'shoulder' }]);
  });
});

describe('undo', () => {
  test('[H12] an undo of another device’s entry, of a later one or of another subject’s does nothing', () => {
    const { deck, galley } = twoDevices();
    const first = deck.entries[0] as Entry;
    const undo: Entry = { ...first, id: 'x', what: 'undo', body: {}, undoes: first.id, seq: 9, clock: 9 };
    expect(reduce([first, { ...undo, device: galley.id }]).cooks.size).toBe(1);
    expect(reduce([first, { ...undo, seq: 0 }]).cooks.size).toBe(1);
    expect(reduce([first, { ...undo, subject: { kind: 'cook', id: 'other' } }]).cooks.size).toBe(1);
    expect(reduce([first, undo]).cooks.size).toBe(0);
  });

  test('[H13] [H14] undo twice, redo twice, then undo once walks back and forth over two edits', () => {
    const { deck } = twoDevices();
    const names: string[] = [];
    deck.write(setEntry(cook, [{ path: ['name'], value: 'one' }]));
    deck.write(setEntry(cook, [{ path: ['name'], value: 'two' }]));
    for (const step of [undoEntries, undoEntries, redoEntries, redoEntries, undoEntries, redoEntries]) {
      deck.write(...step(deck.history, deck.id));
      names.push(documentOn(deck).name);
    }
    expect(names).toEqual(['one', 'Dinner', 'one', 'two', 'one', 'two']);
    expect(redoEntries(deck.history, deck.id)).toEqual([]);
  });

  test('[H14] undo takes the device’s own last entry and leaves another’s, though it came later', () => {
    const { deck, galley } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['guests', 'adults'], value: 15 }]));
    galley.receive(deck.entries);
    galley.write(setEntry(cook, [{ path: ['name'], value: 'Supper' }]));
    exchange(deck, galley);
    deck.write(...undoEntries(deck.history, deck.id));
    expect(documentOn(deck)).toMatchObject({ name: 'Supper', guests: { adults: 18 } });
  });

  test('[H14] after something new there is nothing to redo', () => {
    const { deck } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['name'], value: 'one' }]));
    deck.write(...undoEntries(deck.history, deck.id));
    deck.write(setEntry(cook, [{ path: ['name'], value: 'two' }]));
    expect(redoEntries(deck.history, deck.id)).toEqual([]);
  });

  test('[H14] undo can be held to one subject', () => {
    const { deck } = twoDevices();
    deck.write(setEntry(cook, [{ path: ['name'], value: 'one' }]));
    deck.write(createEntry({ kind: 'setting', id: 'units' }, { system: 'us' }));
    deck.write(...undoEntries(deck.history, deck.id, cook));
    expect(documentOn(deck).name).toBe('Dinner');
    expect(deck.history.state.settings.has('units')).toBe(true);
  });

  test('[H19] what one deed wrote about two things is undone and redone as one, from either of them', () => {
    const { deck } = twoDevices();
    const pit = { kind: 'pit', id: 'smoker' } as const;
    const [before, there] = [() => documentOn(deck), () => deck.history.state.pits.has('smoker')];
    deck.write(
      setEntry(cook, [{ path: ['name'], value: 'one' }]),
      createEntry(pit, { id: 'smoker', name: 'The smoker' }),
    );
    deck.write(setEntry(cook, [{ path: ['guests', 'adults'], value: 15 }]));
    const seen: unknown[] = [];
    const look = () => seen.push([before().guests.adults, before().name, there()]);
    for (const [step, about] of [
      [undoEntries, pit],
      [redoEntries, pit],
      [undoEntries, cook],
      [undoEntries, cook],
      [redoEntries, undefined],
      [redoEntries, undefined],
    ] as const) {
      deck.write(...step(deck.history, deck.id, about));
      look();
    }
    expect(seen).toEqual([
      [15, 'Dinner', false],
      [15, 'one', true],
      [18, 'one', true],
      [18, 'Dinner', false],
      [18, 'one', true],
      [15, 'one', true],
    ]);
  });

  test('[H15] an undo that arrives first waits for its entry', () => {
    const { deck, galley } = twoDevices();
    const edit = deck.write(setEntry(cook, [{ path: ['name'], value: 'one' }])) as Entry;
    const undo = deck.write(...undoEntries(deck.history, deck.id)) as Entry;
    galley.receive([undo]);
    galley.receive([edit]);
    expect(documentOn(galley).name).toBe('Dinner');
  });
});

describe('what is not known', () => {
  test.each([
    ['an unknown kind', { what: 'weigh-again' }],
    ['a newer form', { schema: 99 }],
    ['a body of another form', { body: { changes: [{ path: 'name', value: 1 }] } }],
    ['an unknown subject', { what: 'paint', subject: { kind: 'boat' as never, id: 'dinner' } }],
  ])('[H16] %s is kept and not applied', (_, part) => {
    const { deck } = twoDevices();
    const odd = deck.write({ ...setEntry(cook, [{ path: ['name'], value: 'odd' }]), ...part }) as Entry;
    expect(documentOn(deck).name).toBe('Dinner');
    expect(deck.history.state.notApplied).toEqual([odd]);
    expect(deck.history.entries.get(odd.id)).toBe(odd);
  });

  test('[H17] the log stands in the order in which things happened, without what was undone', () => {
    const { deck } = twoDevices();
    deck.write(logEntry('dinner', 'wrap', { piece: 'rack' }, { happenedAt: '2027-09-12T08:00:00Z' }));
    deck.write(logEntry('dinner', 'look', { piece: 'rack' }, { happenedAt: '2027-09-12T07:30:00Z' }));
    deck.write(logEntry('dinner', 'spritz', { piece: 'rack' }, { happenedAt: '2027-09-12T07:00:00Z' }));
    deck.write(...undoEntries(deck.history, deck.id));
    expect(deck.history.state.logs.get('dinner')?.map((entry) => entry.what)).toEqual([
      'log.look',
      'log.wrap',
    ]);
  });
});
