// SPEC.md of this folder, H3, H14 and H18 on random sequences. Evidence: conformity.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changesBetween } from './changes.ts';
import type { Change, Subject } from './entry.ts';
import { reduce, type State } from './history.ts';
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

const subject: fc.Arbitrary<Subject> = fc.constantFrom(
  { kind: 'cook', id: 'dinner' },
  { kind: 'pit', id: 'offset' },
);
const pieceId = fc.constantFrom('rack', 'shoulder', 'legs');
const word = fc.constantFrom('firm', 'tender', 'falls-off');

const change: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ path: fc.constantFrom(['name'], ['guests', 'adults']), value: fc.nat(20) }),
  fc.record({ path: fc.constantFrom(['name'], ['guests', 'adults']) }),
  fc.record({ path: pieceId.map((id) => ['pieces', id, 'bite']), value: word }),
  fc.tuple(pieceId, word).map(([id, bite]) => ({ path: ['pieces', id], value: { id, bite } })),
  fc.record({ path: pieceId.map((id) => ['pieces', id]) }),
  fc.record({ path: pieceId.map((id) => ['pieces', id]), back: fc.constant(true as const) }),
  fc.record({ path: fc.constant(['pieces']), order: fc.shuffledSubarray(['rack', 'shoulder', 'legs']) }),
);

type Step = (self: MemoryDevice, other: MemoryDevice) => void;
const step: fc.Arbitrary<{ readonly onFirst: boolean; readonly act: Step }> = fc.record({
  onFirst: fc.boolean(),
  act: fc.oneof(
    {
      weight: 6,
      arbitrary: fc.tuple(subject, fc.array(change, { minLength: 1, maxLength: 3 })).map(
        ([about, changes]): Step =>
          (self) =>
            void self.write(setEntry(about, changes)),
      ),
    },
    {
      weight: 2,
      arbitrary: fc.tuple(subject, subject, change).map(
        ([about, other, one]): Step =>
          (self) =>
            void self.write(setEntry(about, [one]), createEntry(other, { id: other.id, pieces: [] })),
      ),
    },
    {
      weight: 1,
      arbitrary: subject.map(
        (about): Step =>
          (self) =>
            void self.write(createEntry(about, { id: about.id, pieces: [] })),
      ),
    },
    {
      weight: 1,
      arbitrary: subject.map(
        (about): Step =>
          (self) =>
            void self.write(removeEntry(about)),
      ),
    },
    {
      weight: 1,
      arbitrary: subject.map(
        (about): Step =>
          (self) =>
            void self.write(bringBackEntry(about)),
      ),
    },
    {
      weight: 1,
      arbitrary: word.map(
        (colour): Step =>
          (self) =>
            void self.write(logEntry('dinner', 'look', { colour })),
      ),
    },
    {
      weight: 1,
      arbitrary: word.map(
        (what): Step =>
          (self) =>
            void self.write({ ...removeEntry({ kind: 'cook', id: 'dinner' }), what }),
      ),
    },
    {
      weight: 3,
      arbitrary: fc.constant<Step>((self) => void self.write(...undoEntries(self.history, self.id))),
    },
    {
      weight: 2,
      arbitrary: fc.constant<Step>((self) => void self.write(...redoEntries(self.history, self.id))),
    },
    // Some of what the other holds arrives, in any order: the link is poor, and then it is gone.
    {
      weight: 2,
      arbitrary: fc.infiniteStream(fc.boolean()).map(
        (arrives): Step =>
          (self, other) => {
            self.receive(other.entries.filter(() => arrives.next().value).reverse());
          },
      ),
    },
  ),
});

const plain = (state: State) => ({
  cooks: [...state.cooks],
  recipes: [...state.recipes],
  pits: [...state.pits],
  settings: [...state.settings],
  logs: [...state.logs],
  notApplied: state.notApplied,
});

test('[H3] 200 random sequences of edits, undo, offline and merge: two devices and a replay end alike', () => {
  fc.assert(
    fc.property(fc.array(step, { minLength: 5, maxLength: 60 }), fc.func(fc.nat()), (steps, shuffle) => {
      const first = new MemoryDevice('deck');
      const second = new MemoryDevice('galley');
      first.write(createEntry({ kind: 'cook', id: 'dinner' }, { id: 'dinner', pieces: [{ id: 'rack' }] }));
      for (const { onFirst, act } of steps) onFirst ? act(first, second) : act(second, first);
      first.receive(second.entries);
      second.receive([...first.entries].reverse());
      const shuffled = [...first.entries].sort((a, b) => shuffle(a.id) - shuffle(b.id));
      expect(JSON.stringify(plain(second.history.state))).toBe(JSON.stringify(plain(first.history.state)));
      expect(JSON.stringify(plain(reduce(shuffled)))).toBe(JSON.stringify(plain(first.history.state)));
    }),
    { numRuns: 200, seed: 20270912 },
  );
});

test('[H14] on one device undo gives the state before its last entry, and redo the state after', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(change, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 12 }),
      (edits) => {
        const device = new MemoryDevice('deck');
        device.write(createEntry({ kind: 'cook', id: 'dinner' }, { id: 'dinner', pieces: [] }));
        const documents: unknown[] = [];
        const now = () => device.history.state.cooks.get('dinner')?.document;
        for (const changes of edits) {
          documents.push(now());
          device.write(setEntry({ kind: 'cook', id: 'dinner' }, changes));
        }
        const last = now();
        for (const expected of documents.toReversed()) {
          device.write(...undoEntries(device.history, device.id));
          expect(now()).toEqual(expected);
        }
        for (const _ of edits) device.write(...redoEntries(device.history, device.id));
        expect(now()).toEqual(last);
      },
    ),
    { numRuns: 200 },
  );
});

const thing = fc.record({
  id: fc.constantFrom('a', 'b', 'c', 'd'),
  bite: word,
  stages: fc.array(fc.record({ kind: word }), { maxLength: 2 }),
  mass: fc.record({
    kind: fc.constant('mass'),
    si: fc.integer({ min: 1, max: 9 }),
    writtenIn: fc.constantFrom('kg', 'lb'),
  }),
});
const whole = fc.record(
  {
    id: fc.constant('dinner'),
    name: word,
    guests: fc.record(
      { adults: fc.nat(20), notes: fc.array(fc.string(), { maxLength: 2 }) },
      { requiredKeys: [] },
    ),
    pieces: fc.uniqueArray(thing, { selector: (each) => each.id, maxLength: 4 }),
  },
  { requiredKeys: ['id'] },
);

test('[H18] the changes between two documents, applied to the first, give the second', () => {
  fc.assert(
    fc.property(whole, whole, whole, (first, second, third) => {
      const device = new MemoryDevice('deck');
      const about: Subject = { kind: 'cook', id: 'dinner' };
      device.write(createEntry(about, first));
      for (const next of [second, third]) {
        const before = device.history.state.cooks.get('dinner')?.document;
        device.write(setEntry(about, changesBetween(before, next)));
        expect(device.history.state.cooks.get('dinner')?.document).toEqual(next);
      }
    }),
    { numRuns: 500 },
  );
});

test('[H18] a quantity is one change, and equal documents need none', () => {
  const mass = { kind: 'mass', si: 3.6, writtenIn: 'kg' };
  const before = { pieces: [{ id: 'a', mass }] };
  const after = { pieces: [{ id: 'a', mass: { kind: 'mass', si: 3.5, writtenIn: 'lb' } }] };
  expect(changesBetween(before, after)).toEqual([
    { path: ['pieces', 'a', 'mass'], value: after.pieces[0]?.mass },
  ]);
  expect(changesBetween(before, structuredClone(before))).toEqual([]);
});
