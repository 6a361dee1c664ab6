/**
 * A form reads, prints and describes one part of a cook file: one declaration is the reader, the canonical print and
 * the published JSON Schema.
 */
import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from 'yaml';
import { nearest } from './nearest.ts';
import { type Reader, scalarText } from './reader.ts';

/** What the printer hands to YAML: texts, numbers, lists and maps in their canonical order. */
export type Plain = string | number | readonly Plain[] | { readonly [key: string]: Plain };

export type JsonSchema = { readonly [key: string]: unknown };

/** What a print needs to know of the whole document. */
export interface PrintContext {
  readonly zone: string;
}

export interface Form<T> {
  /** The value, or undefined after its problems were reported. */
  read(node: Node, reader: Reader): T | undefined;
  print(value: T, context: PrintContext): Plain;
  readonly schema: JsonSchema;
}

/** One field of a record: its key in the file and what happens where it is missing. */
export interface Field<V, T> {
  readonly key: string;
  readonly form: Form<V>;
  readonly required: boolean;
  /** Value of a field that was left out, from the fields before it. */
  readonly orElse?: (rest: Partial<T>) => V | undefined;
  /** Whether a value equal to `orElse` is left out of the print. */
  readonly quiet?: boolean;
}

export const required = <V, T>(key: string, form: Form<V>): Field<V, T> => ({ key, form, required: true });
export const optional = <V, T>(key: string, form: Form<V>): Field<V, T> => ({ key, form, required: false });
/** Left out: this value, printed in the canonical form. */
export const byDefault = <V, T>(key: string, form: Form<V>, value: V): Field<V, T> => ({
  key,
  form,
  required: false,
  orElse: () => value,
});
/** Left out: the value that follows from the other fields, and printed only where it differs. */
export const derived = <V, T>(
  key: string,
  form: Form<V>,
  orElse: (rest: Partial<T>) => V | undefined,
): Field<V, T> => ({ key, form, required: false, orElse, quiet: true });

export type Fields<T> = { readonly [P in keyof Required<T>]: Field<NonNullable<T[P]>, T> };

/** Finds the node of a key for a check of several fields together; the record's own node where it is missing. */
export type Locate = (key: string) => Node;

export interface RecordOptions<T> {
  /** Checks that need several fields; a field with a problem of its own is missing here. */
  readonly check?: (value: Partial<T>, locate: Locate, reader: Reader) => void;
}

/**
 * A map with the given keys and no others. After a problem the value lacks that field: good for further checks only,
 * and never handed out, because a document with problems is not.
 */
export function record<T extends object>(fields: Fields<T>, { check }: RecordOptions<T> = {}): Form<T> {
  const entries = Object.entries(fields) as [keyof T & string, Field<unknown, T>][];
  const keys = entries.map(([, field]) => field.key);
  return {
    read(node, reader) {
      if (!isMap(node)) return reader.report(node, 'file.not-a-map', { keys: keys.join(', ') });
      const { pairs, meant } = pairsByKey(node, keys, reader);
      const value: Partial<T> = {};
      for (const [property, field] of entries) {
        const pair = pairs.get(field.key);
        if (!pair && field.required && !meant.has(field.key))
          reader.report(node, 'file.missing-key', { key: field.key });
        const read = pair ? readValue(pair, field, reader) : field.orElse?.(value);
        if (read !== undefined) value[property] = read as T[typeof property];
      }
      check?.(value, (key) => (pairs.get(key)?.value as Node | undefined) ?? node, reader);
      return value as T;
    },
    print(value, context) {
      const printed: Record<string, Plain> = {};
      for (const [property, field] of entries) {
        const own = value[property];
        if (own === undefined) continue;
        if (field.quiet && isEqual(field.orElse?.(value), own)) continue;
        printed[field.key] = field.form.print(own, context);
      }
      return printed;
    },
    schema: {
      type: 'object',
      additionalProperties: false,
      properties: Object.fromEntries(entries.map(([, field]) => [field.key, field.form.schema])),
      required: entries.filter(([, field]) => field.required).map(([, field]) => field.key),
    },
  };
}

function readValue<T>(pair: Pair, field: Field<unknown, T>, reader: Reader): unknown {
  const node = pair.value as Node | null;
  const isEmpty = node === null || (isScalar(node) && scalarText(node) === undefined);
  return isEmpty
    ? reader.report(pair.key as Node, 'file.no-value', { key: field.key })
    : reader.within(field.key, () => field.form.read(node, reader));
}

/** Of plain data. */
const isEqual = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Words a cook may write for a key. */
const OTHER_WORDS: Readonly<Record<string, string>> = {
  weight: 'mass',
  temp: 'temperature',
  number: 'count',
};

/** The known pairs of a map, and the keys that unknown ones were meant for; unknown and repeated keys are reported. */
function pairsByKey(
  map: YAMLMap,
  known: readonly string[],
  reader: Reader,
): { pairs: Map<string, Pair>; meant: Set<string> } {
  const pairs = new Map<string, Pair>();
  const meant = new Set<string>();
  for (const pair of map.items) {
    const keyNode = pair.key as Node | null;
    const key = scalarText(keyNode);
    if (keyNode === null || key === undefined) reader.report(keyNode ?? map, 'file.key-not-text');
    else if (key === '<<') reader.report(keyNode, 'file.merge-key');
    else if (pairs.has(key)) reader.report(keyNode, 'file.duplicate-key', { key });
    else if (known.includes(key)) pairs.set(key, pair);
    else {
      const other = OTHER_WORDS[key];
      const near = other !== undefined && known.includes(other) ? other : nearest(key, known);
      if (near !== undefined) meant.add(near);
      reader.report(keyNode, 'file.unknown-key', {
        key,
        known: known.join(', '),
        ...(near === undefined ? {} : { nearest: near }),
      });
    }
  }
  return { pairs, meant };
}

/** A list of at least `min` items. */
export function list<T>(item: Form<T>, { min = 1 }: { min?: number } = {}): Form<readonly T[]> {
  return {
    read(node, reader) {
      if (!isSeq(node)) return reader.report(node, 'file.not-a-list');
      if (node.items.length < min) return reader.report(node, 'file.list-too-short', { min });
      const items = (node.items as (Node | null)[]).map((child) =>
        child === null || (isScalar(child) && scalarText(child) === undefined)
          ? reader.report(child ?? node, 'file.no-item')
          : item.read(child, reader),
      );
      return items.filter((value) => value !== undefined);
    },
    print: (values, context) => values.map((value) => item.print(value, context)),
    schema: { type: 'array', minItems: min, items: item.schema },
  };
}

/** A form whose file shape and model differ. `read` reports what does not translate. */
export function mapped<F, T>(
  form: Form<F>,
  read: (value: F, node: Node, reader: Reader) => T | undefined,
  print: (value: T, context: PrintContext) => F,
): Form<T> {
  return {
    read(node, reader) {
      const value = form.read(node, reader);
      return value === undefined ? undefined : read(value, node, reader);
    },
    print: (value, context) => form.print(print(value, context), context),
    schema: form.schema,
  };
}
