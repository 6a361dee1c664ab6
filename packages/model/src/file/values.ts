import type { Node } from 'yaml';
import { type Limits, withinLimits } from '../limits.ts';
import { printCookQuantity, readCookQuantity } from '../units/cook-quantity.ts';
import type { Kind } from '../units/kinds.ts';
import { fromSi, type Quantity, toSi } from '../units/quantity.ts';
import { cookNumber, writtenNumber } from '../units/written-number.ts';
import type { Form, JsonSchema } from './form.ts';
import { nearest } from './nearest.ts';
import { type Reader, scalarText } from './reader.ts';

/** Longer than any quantity, hour or word. */
const LONGEST_VALUE = 100;

/** A form of one scalar, read from its text. */
export function scalar<T>(
  read: (text: string, node: Node, reader: Reader) => T | undefined,
  print: Form<T>['print'],
  schema: JsonSchema,
  maxLength = LONGEST_VALUE,
): Form<T> {
  return {
    read(node, reader) {
      const text = scalarText(node);
      if (text === undefined) return reader.report(node, 'file.not-a-value');
      return text.length > maxLength
        ? reader.report(node, 'file.text-long', { maxLength })
        : read(text, node, reader);
    },
    print,
    schema,
  };
}

/** Controls but line end and tab, lone surrogates, separators, byte-order marks, what a wrong encoding leaves (U+FFFD). */
const CONTROL = /[^\P{Cc}\n\t]|[\p{Cs}\p{Zl}\p{Zp}\ufeff\ufffd-\uffff]/u;

function textForm(maxLength: number, isFit: (text: string) => boolean, misfit: string): Form<string> {
  return scalar(
    (text, node, reader) => {
      if (text.trim() === '') return reader.report(node, 'file.text-empty');
      if (CONTROL.test(text)) return reader.report(node, 'file.text-control');
      return isFit(text) ? text : reader.report(node, misfit, { text });
    },
    (value) => value,
    { type: ['string', 'number', 'boolean'], maxLength },
    maxLength,
  );
}

/** A name: one line. */
export const name = textForm(120, (text) => !/[\n\t]/.test(text) && text === text.trim(), 'file.name-form');
/** A note: any text. */
export const note = textForm(4000, () => true, 'file.name-form');

const pattern = (regex: RegExp, misfit: string): Form<string> =>
  scalar(
    (text, node, reader) => (regex.test(text) ? text : reader.report(node, misfit, { text })),
    (value) => value,
    { type: ['string', 'number'], pattern: regex.source },
  );

/** What a record is known by: small letters, digits, hyphens. */
export const id = pattern(/^[a-z0-9][a-z0-9-]{0,63}$/, 'file.id-form');
/** Letter of a piece. */
export const letter = pattern(/^[A-Z]{1,2}$/, 'file.letter-form');
/** Key of an ingredient of the catalogue. */
export const ingredient = pattern(/^[a-z][a-z0-9_]{0,63}$/, 'file.ingredient-form');
/** A clock time of every day. */
export const clock = pattern(/^(?:[01]\d|2[0-3]):[0-5]\d$/, 'file.clock-form');

/** One word of a closed list. */
export function word<W extends string>(words: readonly W[]): Form<W> {
  return scalar<W>(
    (text, node, reader) => {
      const found = words.find((known) => known === text);
      if (found !== undefined) return found;
      const near = nearest(text, words);
      const alike = words.filter((known) => text.length > 2 && known.includes(text.toLowerCase()));
      return reader.report(node, 'file.unknown-word', {
        text,
        words: (alike.length > 0 ? alike : words).join(', '),
        ...(near === undefined ? {} : { nearest: near }),
      });
    },
    (value) => value,
    { enum: words },
  );
}

export const yesNo: Form<boolean> = scalar(
  (text, node, reader) => {
    if (/^(?:yes|true)$/i.test(text)) return true;
    if (/^(?:no|false)$/i.test(text)) return false;
    return reader.report(node, 'file.not-yes-no', { text });
  },
  (value) => (value ? 'yes' : 'no'),
  { enum: ['yes', 'no', true, false] },
);

/** A pure number between two limits, ends included. */
export function number(min: number, max: number, { whole = false } = {}): Form<number> {
  return scalar(
    (text, node, reader) => {
      const value = cookNumber(text.trim());
      if (value === 'quantity.not-a-number') return reader.report(node, 'file.not-a-number', { text });
      if (typeof value !== 'number') return reader.report(node, value, { text });
      if (whole && !Number.isInteger(value)) return reader.report(node, 'file.not-whole', { text });
      return value >= min && value <= max ? value : reader.report(node, 'file.outside', { text, min, max });
    },
    (value) => Number(value.toPrecision(9)),
    { type: whole ? 'integer' : ['number', 'string'], minimum: min, maximum: max },
  );
}

interface Measure extends Limits {
  readonly spell?: (symbol: string) => string;
}

/** Digits, fractions and a unit: the strict reading is the reader's. */
const QUANTITY_SCHEMA: JsonSchema = { type: 'string', pattern: '[0-9½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞].*[^0-9.,\\s]' };

/** A quantity in any unit of its kind, between two limits, ends included. */
export function measure<K extends Kind>(kind: K, { min, max, unit, spell }: Measure): Form<Quantity<K>> {
  return scalar(
    (text, node, reader) => {
      const read = readCookQuantity(text, kind);
      if (!read.ok) return reader.take(node, read.problem);
      return withinLimits(read.quantity, { min, max, unit }) ? read.quantity : outside(text, node, reader);
    },
    (value) => printCookQuantity(value, spell),
    { ...QUANTITY_SCHEMA, description: `${kind}, ${min} to ${max} ${unit}` },
  );

  function outside(text: string, node: Node, reader: Reader): undefined {
    return reader.report(node, 'file.outside', { text, min: `${min} ${unit}`, max: `${max} ${unit}` });
  }
}

/** A share, written in percent, 0 to 1 in memory. */
export function percent(min: number, max: number): Form<number> {
  return scalar(
    (text, node, reader) => {
      const read = readCookQuantity(text, 'fraction');
      if (!read.ok) return reader.take(node, read.problem);
      const { si, writtenIn } = read.quantity;
      if (writtenIn !== '%') return reader.report(node, 'file.not-percent', { text });
      return si >= min / 100 && si <= max / 100
        ? si
        : reader.report(node, 'file.outside', { text, min: `${min} %`, max: `${max} %` });
    },
    (value) =>
      `${writtenNumber(fromSi('fraction', value, '%'), (candidate) => toSi('fraction', candidate, '%') === value, { ruler: false })} %`,
    { type: 'string', pattern: '%$' },
  );
}

/**
 * Amount of an ingredient: a mass or a volume. A bare `oz` could be either and is asked: `7 oz weight` or `7 fl oz`.
 */
export const amount: Form<Quantity<'mass'> | Quantity<'volume'>> = scalar(
  (text, node, reader) => {
    const ounces = /^([^a-z]*[^a-z\s])\s*(?:oz|ounces?)\.?$/i.exec(text.split(/±|\+\/-/)[0]!.trim());
    if (ounces) return reader.report(node, 'quantity.ounce', { number: ounces[1]! });
    const mass = readCookQuantity(text, 'mass');
    const read = mass.ok ? mass : readCookQuantity(text, 'volume');
    if (!read.ok) {
      const isUnit = read.problem.id.startsWith('quantity.unit-');
      return reader.take(node, isUnit ? { id: 'quantity.amount-unit', params: { text } } : read.problem);
    }
    const limits = read.quantity.kind === 'mass' ? MASS_LIMITS : VOLUME_LIMITS;
    return withinLimits(read.quantity, limits)
      ? read.quantity
      : reader.report(node, 'file.outside', { text, min: '0 g', max: `${limits.max} ${limits.unit}` });
  },
  (value) => printCookQuantity(value, (symbol) => (symbol === 'oz' ? 'oz weight' : symbol)),
  { ...QUANTITY_SCHEMA, description: 'mass or volume; ounces as oz weight or fl oz' },
);
const MASS_LIMITS: Limits = { min: 0, max: 100, unit: 'kg' };
const VOLUME_LIMITS: Limits = { min: 0, max: 100, unit: 'L' };
