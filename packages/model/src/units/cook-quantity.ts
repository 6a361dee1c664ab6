/**
 * Quantities as a cook writes them: `250 °F`, `1.2 kg`, `1,2 kg`, `2 lb 10 oz`, `2½ cups`, `1 h 30 min`,
 * `15 K ± 5 K`. One unit table with `parseQuantity`; the unit is remembered and printed back.
 */
import { findUnit, type Kind } from './kinds.ts';
import { fromSi, type Quantity, toSi } from './quantity.ts';
import { problem, quantityOf, type Reading } from './read.ts';
import { COOK_NUMBER, cookNumber, writtenNumber } from './written-number.ts';

/** Other spellings of a unit, by the symbol of the table. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  lb: ['lbs', 'pound', 'pounds'],
  oz: ['ounce', 'ounces', 'oz weight', 'ounce weight', 'ounces weight'],
  kg: ['kilo', 'kilos', 'kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  in: ['inch', 'inches', '"', '″'],
  ft: ['foot', 'feet'],
  mL: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  L: ['l', 'litre', 'litres', 'liter', 'liters'],
  tsp: ['tsps', 'teaspoon', 'teaspoons'],
  tbsp: ['tbsps', 'tablespoon', 'tablespoons'],
  cup: ['cups'],
  'fl oz': ['fluid ounce', 'fluid ounces'],
  pt: ['pint', 'pints'],
  qt: ['quart', 'quarts'],
  gal: ['gallon', 'gallons'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  min: ['mins', 'minute', 'minutes'],
  s: ['sec', 'secs', 'second', 'seconds'],
  d: ['day', 'days'],
};
const SYMBOL_OF = new Map(
  Object.entries(SPELLINGS).flatMap(([symbol, spellings]) =>
    spellings.map((other) => [other, symbol] as const),
  ),
);

/** Units marked in fractions on the spoon, the cup or the ruler. */
const RULER_UNITS: ReadonlySet<string> = new Set(['tsp', 'tbsp', 'cup', 'fl oz', 'in', 'oz']);

/** Units that may stand together, largest first. */
const COMPOUNDS: readonly (readonly string[])[] = [
  ['lb', 'oz'],
  ['ft', 'in'],
  ['d', 'h'],
  ['d', 'h', 'min'],
  ['h', 'min'],
  ['h', 'min', 's'],
  ['min', 's'],
];

const WHOLE = new RegExp(`^(${COOK_NUMBER})\\s*(.*)$`, 'su');
const RANGE = new RegExp(`^${COOK_NUMBER}\\s*\\D{0,3}\\s*(?:-|–|—|to)\\s*${COOK_NUMBER}`, 'u');
const PARTS = new RegExp(`(${COOK_NUMBER})\\s*([\\p{L}"″]+)\\s*`, 'gu');

/** Longer than any quantity with its doubt; the patterns above would take long over more. */
const LONGEST = 100;

const symbolOf = (unitText: string): string => {
  const text = unitText.trim().replace(/\s+/g, ' ');
  return SYMBOL_OF.get(text) ?? text;
};

/** The parts of a compound such as `2 lb 10 oz`, or undefined where the text is none. */
function compoundParts(text: string): { number: string; unit: string }[] | undefined {
  const parts = [...text.matchAll(PARTS)];
  if (parts.length < 2 || parts.map((part) => part[0]).join('') !== text) return undefined;
  return parts.map((part) => ({ number: part[1]!, unit: symbolOf(part[2]!) }));
}

function numberOf<K extends Kind>(kind: K, text: string): number | (Reading<K> & { ok: false }) {
  const value = cookNumber(text);
  return typeof value === 'number' ? value : problem(value, { text, kind });
}

/** Every part but the last whole, every part but the first less than one of the unit before it. */
function readCompound<K extends Kind>(
  kind: K,
  text: string,
  parts: { number: string; unit: string }[],
): Reading<K> {
  const units = parts.map((part) => part.unit);
  const stranger = units.find((unit) => !findUnit(kind, unit));
  if (stranger !== undefined) return quantityOf(kind, 1, stranger);
  if (!isCompound(units.join(' '))) return problem('quantity.compound', { text, kind });
  let total = 0;
  for (const [index, part] of parts.entries()) {
    const value = numberOf(kind, part.number);
    if (typeof value !== 'number') return value;
    const ratio = index === 0 ? 1 : unitRatio(kind, units[index - 1]!, part.unit);
    const isLast = index === parts.length - 1;
    if (!(value >= 0) || (index > 0 && value >= ratio) || (!isLast && !Number.isInteger(value)))
      return problem('quantity.compound-part', { text, part: `${part.number} ${part.unit}` });
    total = total * ratio + value;
  }
  const read = quantityOf(kind, total, units.at(-1)!);
  return read.ok ? { ok: true, quantity: { ...read.quantity, writtenIn: units.join(' ') } } : read;
}

const unitRatio = (kind: Kind, large: string, small: string): number =>
  Math.round(toSi(kind, 1, large) / toSi(kind, 1, small));

function readPlain<K extends Kind>(kind: K, text: string): Reading<K> {
  const parts = WHOLE.exec(text);
  if (!parts) return problem('quantity.not-a-number', { text, kind });
  const symbol = symbolOf(parts[2]!);
  if (!findUnit(kind, symbol)) {
    const compound = compoundParts(text);
    if (compound) return readCompound(kind, text, compound);
  }
  if (/^[.,\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/.test(parts[2]!)) return problem('quantity.not-a-number', { text, kind });
  if (kind === 'volume' && symbol === 'oz') return problem('quantity.ounce-of-volume', { number: parts[1]! });
  const value = numberOf(kind, parts[1]!);
  return typeof value === 'number' ? quantityOf(kind, value, symbol) : value;
}

/** The kind in which a doubt of this kind is written. */
const doubtKind = (kind: Kind): Kind => (kind === 'temperature' ? 'difference' : kind);

/**
 * A quantity as a cook writes it, with an optional doubt: `15 K ± 5 K` (one standard deviation, in the same unit).
 * Problems beside those of `parseQuantity`: `quantity.thousands`, `quantity.fraction`, `quantity.digits`,
 * `quantity.compound`, `quantity.compound-part`, `quantity.range`, `quantity.doubt`, `quantity.ounce-of-volume`.
 */
export function readCookQuantity<K extends Kind>(text: string, kind: K): Reading<K> {
  const trimmed = text.trim();
  if (trimmed === '') return problem('quantity.empty', { kind });
  if (trimmed.length > LONGEST)
    return problem('quantity.not-a-number', { text: `${trimmed.slice(0, 20)}…`, kind });
  const [main, doubt, ...more] = trimmed.split(/\s*(?:±|\+\/-)\s*/u);
  if (more.length > 0) return problem('quantity.doubt', { text: trimmed });
  if (RANGE.test(trimmed)) return problem('quantity.range', { text: trimmed });
  const read = readPlain(kind, main!);
  if (!read.ok || doubt === undefined) return read;
  const sd = readPlain(doubtKind(kind), doubt);
  if (!sd.ok) return problem('quantity.doubt', { text: trimmed });
  if (doubtUnit(kind, read.quantity.writtenIn!) !== doubtUnit(kind, sd.quantity.writtenIn!))
    return problem('quantity.doubt', { text: trimmed });
  return { ok: true, quantity: { ...read.quantity, sd: sd.quantity.si } };
}

/** The unit of a doubt: the same one, a kelvin for degrees Celsius, the smallest part of a compound. */
function doubtUnit(kind: Kind, writtenIn: string): string {
  const last = isCompound(writtenIn) ? writtenIn.split(' ').at(-1)! : writtenIn;
  return kind === 'temperature' && last === '°C' ? 'K' : last;
}

const isCompound = (writtenIn: string): boolean =>
  COMPOUNDS.some((compound) => compound.join(' ') === writtenIn);

/** Cups stand in the plural as spoken; symbols never do. */
const plural = (unit: string, number: string): string =>
  unit === 'cup' && !(number === '1' || /^\d+\/\d+$/.test(number)) ? 'cups' : unit;

/**
 * The one way this project writes a quantity into a file, in the unit it was written in (in SI where it never was).
 *
 * @param spell  another way of writing a unit where its symbol would be ambiguous (`oz weight`)
 */
export function printCookQuantity(
  quantity: Quantity,
  spell: (symbol: string) => string = (symbol) => symbol,
): string {
  const { kind, si, sd } = quantity;
  const writtenIn = quantity.writtenIn ?? PRINTED_SI[kind] ?? '1';
  const main = isCompound(writtenIn)
    ? printCompound(kind, si, writtenIn.split(' '))
    : printOne(kind, si, writtenIn, spell);
  if (sd === undefined) return main;
  return `${main} ± ${printOne(doubtKind(kind), sd, doubtUnit(kind, writtenIn), spell)}`;
}

/** What a quantity without a written unit is printed in. */
const PRINTED_SI: Partial<Record<Kind, string>> = {
  temperature: '°C',
  difference: 'K',
  mass: 'kg',
  length: 'mm',
  area: 'm²',
  volume: 'mL',
  time: 'min',
  speed: 'm/s',
  power: 'W',
};

function printOne(kind: Kind, si: number, unit: string, spell: (symbol: string) => string): string {
  const isSame = (candidate: number): boolean => toSi(kind, candidate, unit) === si;
  const number = writtenNumber(fromSi(kind, si, unit), isSame, { ruler: RULER_UNITS.has(unit) });
  return `${number} ${spell(plural(unit, number))}`;
}

function printCompound(kind: Kind, si: number, units: readonly string[]): string {
  const smallest = units.at(-1)!;
  const ratios = units.slice(1).map((unit, index) => unitRatio(kind, units[index]!, unit));
  // A hair is added before rounding down, so that 15.999 999 999 9 oz becomes the next pound.
  let rest = fromSi(kind, si, smallest);
  let below = 0;
  const wholes: string[] = [];
  for (const index of ratios.keys()) {
    const size = ratios.slice(index).reduce((product, ratio) => product * ratio, 1);
    const whole = Math.floor((rest + 1e-7) / size);
    rest = Math.max(0, rest - whole * size);
    below += whole * size;
    wholes.push(`${whole} ${units[index]!}`);
  }
  const isSame = (candidate: number): boolean => toSi(kind, below + candidate, smallest) === si;
  const number = writtenNumber(rest < 1e-7 ? 0 : rest, isSame, { ruler: RULER_UNITS.has(smallest) });
  return [...wholes, `${number} ${smallest}`].join(' ');
}
