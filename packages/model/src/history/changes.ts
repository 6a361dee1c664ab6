import { isFields, isListOfThings } from './document.ts';
import type { Change, Path } from './entry.ts';

/**
 * The smallest changes that lead from one document to another, for one `set` entry: field by field in objects,
 * thing by thing in lists of things with ids. A quantity is one field, so that a value never meets another's unit,
 * and so is a list without ids.
 */
export function changesBetween(before: unknown, after: unknown): readonly Change[] {
  return between(before, after, []);
}

function between(before: unknown, after: unknown, path: Path): readonly Change[] {
  if (isSame(before, after)) return [];
  if (isListOfThings(after) && (isListOfThings(before) || (before === undefined && after.length > 0)))
    return betweenLists(before ?? [], after, path);
  if (isFields(before) && isFields(after) && (path.length === 0 || isMergeable(before, after)))
    return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
      between(before[key], after[key], [...path, key]),
    );
  return [after === undefined ? { path } : { path, value: after }];
}

function betweenLists(
  before: readonly Readonly<Record<string, unknown>>[],
  after: readonly Readonly<Record<string, unknown>>[],
  path: Path,
): readonly Change[] {
  const ids = (list: readonly Readonly<Record<string, unknown>>[]) => list.map((thing) => String(thing.id));
  const held = ids(before);
  const wanted = ids(after);
  // A list that names one id twice cannot be told apart thing by thing.
  if (new Set(held).size < held.length || new Set(wanted).size < wanted.length)
    return [{ path, value: after }];
  const changes: Change[] = [];
  for (const id of held) if (!wanted.includes(id)) changes.push({ path: [...path, id] });
  for (const [index, id] of wanted.entries()) {
    const place = [...path, id];
    const known = before[held.indexOf(id)];
    if (known) changes.push(...between(known, after[index], place));
    // It may be one that was taken out before: then it comes back.
    else changes.push({ path: place, back: true }, { path: place, value: after[index] });
  }
  // One that comes back stands where it stood, so the order is said whenever something joins.
  const stays = held.filter((id) => wanted.includes(id));
  const hasJoined = wanted.length > stays.length;
  if (wanted.length > 1 && (hasJoined || stays.some((id, index) => id !== wanted[index])))
    changes.push({ path, order: wanted });
  return changes;
}

/** Things with unlike ids are two things: one replaces the other. */
function isMergeable(a: Readonly<Record<string, unknown>>, b: Readonly<Record<string, unknown>>): boolean {
  return !isQuantity(a) && !isQuantity(b) && a.id === b.id;
}

function isQuantity(value: Readonly<Record<string, unknown>>): boolean {
  return typeof value.kind === 'string' && typeof value.si === 'number';
}

function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b))
    return a.length === b.length && a.every((value, index) => isSame(value, b[index]));
  if (!isFields(a) || !isFields(b)) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => isSame(a[key], b[key]));
}
