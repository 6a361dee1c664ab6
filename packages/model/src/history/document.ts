import type { Change, Path } from './entry.ts';

/** Steps that would reach into an object's machinery instead of its fields. */
const NO_FIELD = new Set(['__proto__', 'constructor', 'prototype']);

type Fields = Readonly<Record<string, unknown>>;

export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether a list holds things with ids, so that its members are merged one by one. An empty list may. */
export function isListOfThings(value: unknown): value is readonly Fields[] {
  return Array.isArray(value) && value.every((thing) => isFields(thing) && typeof thing.id === 'string');
}

/** A document while it is reduced: removed things stay in their lists, so that they can come back. */
export interface Draft {
  readonly document: unknown;
  /** Paths of things taken out of their lists, as JSON. */
  readonly takenOut: ReadonlySet<string>;
}

/** `draft` after one change; the same draft where the change finds no place. */
export function withChange(draft: Draft, change: Change): Draft {
  const { path } = change;
  if (path.length === 0 || path.some((step) => NO_FIELD.has(step))) return draft;
  if ('order' in change) {
    const list = valueAt(draft.document, path);
    if (!isListOfThings(list)) return draft;
    return { ...draft, document: withValue(draft.document, path, inOrder(list, change.order)) };
  }
  const key = JSON.stringify(path);
  if ('back' in change) return { ...draft, takenOut: without(draft.takenOut, key) };
  if (!('value' in change) || change.value === undefined) {
    const holder = valueAt(draft.document, path.slice(0, -1));
    if (Array.isArray(holder)) return { ...draft, takenOut: new Set([...draft.takenOut, key]) };
    return { ...draft, document: withValue(draft.document, path, undefined) };
  }
  return { ...draft, document: withValue(draft.document, path, change.value) };
}

/** The document as a reader sees it: without the things taken out. */
export function seen(draft: Draft): unknown {
  let document = draft.document;
  for (const key of draft.takenOut) {
    const path: string[] = JSON.parse(key);
    const holder = valueAt(document, path.slice(0, -1));
    if (!Array.isArray(holder)) continue;
    const left = holder.filter((thing) => !(isFields(thing) && thing.id === path.at(-1)));
    document = path.length === 1 ? left : withValue(document, path.slice(0, -1), left);
  }
  return document;
}

/** Value at a path, or undefined. */
function valueAt(document: unknown, path: Path): unknown {
  let node = document;
  for (const step of path) {
    if (Array.isArray(node)) node = node.find((thing) => isFields(thing) && thing.id === step);
    else if (isFields(node) && Object.hasOwn(node, step)) node = node[step];
    else return undefined;
  }
  return node;
}

/** A copy with `value` at `path`, sharing what did not change; undefined clears the field. */
function withValue(node: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(node)) {
    const index = node.findIndex((thing) => isFields(thing) && thing.id === step);
    if (index >= 0) return node.with(index, withValue(node[index], rest, value));
    const joins = rest.length === 0 && isFields(value) && value.id === step;
    return joins ? [...node, value] : node;
  }
  if (node !== undefined && !isFields(node)) return node;
  const { [step]: held, ...others } = node ?? {};
  const startsList = held === undefined && rest.length === 1 && isFields(value) && value.id === rest[0];
  const next = startsList ? [value] : withValue(held, rest, value);
  if (next === undefined) return node === undefined ? undefined : others;
  return held === undefined ? { ...others, [step]: next } : { ...node, [step]: next };
}

function inOrder(list: readonly Fields[], order: readonly string[]): readonly Fields[] {
  const place = new Map(order.map((id, index) => [id, index]));
  const placeOf = (thing: Fields) => place.get(String(thing.id)) ?? Number.POSITIVE_INFINITY;
  return [...list].sort((a, b) => {
    const left = placeOf(a);
    const right = placeOf(b);
    return left === right ? 0 : left - right;
  });
}

function without(set: ReadonlySet<string>, key: string): ReadonlySet<string> {
  const rest = new Set(set);
  rest.delete(key);
  return rest;
}
