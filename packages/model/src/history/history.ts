import type { Cook, Pit, Recipe } from '../nouns.ts';
import { type Draft, isFields, seen, withChange } from './document.ts';
import {
  type Change,
  compareEntries,
  type Entry,
  HISTORY_SCHEMA,
  type Subject,
  subjectKey,
} from './entry.ts';
import { hiddenIds } from './hidden.ts';

/** A document as the entries left it. */
export interface Kept<T> {
  readonly id: string;
  /** In the form its entries wrote; a reader that must be sure checks it against the schema of the noun. */
  readonly document: T;
  /** Removed documents stay, so that they can be shown and brought back. */
  readonly isRemoved: boolean;
  readonly createdAt: string;
  /** Instant of the last entry in force. */
  readonly changedAt: string;
}

/** Everything that is kept, by id. */
export interface State {
  readonly cooks: ReadonlyMap<string, Kept<Cook>>;
  readonly recipes: ReadonlyMap<string, Kept<Recipe>>;
  readonly pits: ReadonlyMap<string, Kept<Pit>>;
  readonly settings: ReadonlyMap<string, Kept<unknown>>;
  /** Log entries in force of each cook, in the order in which things happened. */
  readonly logs: ReadonlyMap<string, readonly Entry[]>;
  /** Entries of kinds or forms this version does not know: kept, passed on, not applied. */
  readonly notApplied: readonly Entry[];
}

/** The entries and what they amount to. Not changed in place: what an entry does not touch keeps its identity. */
export interface History {
  readonly entries: ReadonlyMap<string, Entry>;
  /** Entries of each subject, in order. */
  readonly bySubject: ReadonlyMap<string, readonly Entry[]>;
  readonly state: State;
}

export const emptyHistory: History = {
  entries: new Map(),
  bySubject: new Map(),
  state: {
    cooks: new Map(),
    recipes: new Map(),
    pits: new Map(),
    settings: new Map(),
    logs: new Map(),
    notApplied: [],
  },
};

/** State of the given entries, in whatever order and how often they come. */
export function reduce(entries: Iterable<Entry>): State {
  return extendHistory(emptyHistory, entries).state;
}

/** `history` with the entries it did not hold yet; the same history where there are none. */
export function extendHistory(history: History, arrived: Iterable<Entry>): History {
  const fresh = new Map<string, Entry>();
  for (const entry of arrived)
    if (!history.entries.has(entry.id)) fresh.set(entry.id, fresh.get(entry.id) ?? entry);
  if (fresh.size === 0) return history;

  const bySubject = new Map(history.bySubject);
  const touched = new Map<string, Subject>();
  for (const entry of fresh.values()) {
    const key = subjectKey(entry.subject);
    bySubject.set(key, [...(bySubject.get(key) ?? []), entry]);
    touched.set(key, entry.subject);
  }
  let state = history.state;
  for (const [key, subject] of touched) {
    const ordered = [...(bySubject.get(key) ?? [])].sort(compareEntries);
    bySubject.set(key, ordered);
    state = withSubject(state, subject, ordered);
  }
  return { entries: new Map([...history.entries, ...fresh]), bySubject, state };
}

const COLLECTIONS = { cook: 'cooks', recipe: 'recipes', pit: 'pits', setting: 'settings' } as const;

function withSubject(state: State, subject: Subject, ordered: readonly Entry[]): State {
  const { kept, log, notApplied } = reduceSubject(subject, ordered);
  const key = subjectKey(subject);
  const others = state.notApplied.filter((entry) => subjectKey(entry.subject) !== key);
  const collection = Object.hasOwn(COLLECTIONS, subject.kind) ? COLLECTIONS[subject.kind] : undefined;
  return {
    ...state,
    ...(collection ? { [collection]: withKey(state[collection], subject.id, kept) } : {}),
    ...(subject.kind === 'cook'
      ? { logs: withKey(state.logs, subject.id, log.length > 0 ? log : undefined) }
      : {}),
    notApplied: [...others, ...notApplied].sort(compareEntries),
  };
}

/** Sorted by key, so that the state prints alike however the entries came. */
function withKey<T>(map: ReadonlyMap<string, T>, id: string, value: T | undefined): ReadonlyMap<string, T> {
  if (value === undefined && !map.has(id)) return map;
  const rest = [...map].filter(([key]) => key !== id);
  if (value !== undefined) rest.push([id, value]);
  return new Map(rest.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)));
}

interface Reduced {
  readonly kept: Kept<never> | undefined;
  readonly log: readonly Entry[];
  readonly notApplied: readonly Entry[];
}

function reduceSubject(subject: Subject, ordered: readonly Entry[]): Reduced {
  const hidden = hiddenIds(ordered);
  const log: Entry[] = [];
  const notApplied: Entry[] = [];
  let draft: Draft | undefined;
  let isRemoved = false;
  let createdAt = '';
  let changedAt = '';

  for (const entry of ordered) {
    if (entry.what.startsWith('log.') && subject.kind === 'cook') {
      if (!hidden.has(entry.id)) log.push(entry);
      continue;
    }
    const change = readChange(entry);
    if (!change) {
      notApplied.push(entry);
      continue;
    }
    if (hidden.has(entry.id) || entry.what === 'undo') continue;
    if ('document' in change) {
      // The first one wins: a second creation of the same id must not wipe what was edited since.
      if (draft) continue;
      draft = { document: change.document, takenOut: new Set() };
      createdAt = entry.at;
    } else if (!draft) continue;
    else if ('changes' in change) draft = change.changes.reduce(withChange, draft);
    else isRemoved = change.isRemoved;
    changedAt = entry.at;
  }

  const inTime = log.sort((a, b) => {
    const left = a.happenedAt ?? a.at;
    const right = b.happenedAt ?? b.at;
    return left < right ? -1 : left > right ? 1 : compareEntries(a, b);
  });
  if (!draft) return { kept: undefined, log: inTime, notApplied };
  const document = seen(draft) as never;
  return { kept: { id: subject.id, document, isRemoved, createdAt, changedAt }, log: inTime, notApplied };
}

type KnownChange =
  | { readonly document: unknown }
  | { readonly changes: readonly Change[] }
  | { readonly isRemoved: boolean };

/** What an entry does to its document, or undefined where this version does not know its kind or form. */
function readChange(entry: Entry): KnownChange | undefined {
  if (entry.schema !== HISTORY_SCHEMA) return undefined;
  const body = isFields(entry.body) ? entry.body : {};
  switch (entry.what) {
    case 'create':
      return isFields(body.document) ? { document: body.document } : undefined;
    case 'set':
      return Array.isArray(body.changes) && body.changes.every(isChange)
        ? { changes: body.changes }
        : undefined;
    case 'remove':
      return { isRemoved: true };
    case 'bring-back':
      return { isRemoved: false };
    case 'undo':
      return typeof entry.undoes === 'string' ? { changes: [] } : undefined;
    default:
      return undefined;
  }
}

function isChange(value: unknown): value is Change {
  if (!isFields(value) || !isTexts(value.path)) return false;
  return !('order' in value) || isTexts(value.order);
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((step) => typeof step === 'string');
}
