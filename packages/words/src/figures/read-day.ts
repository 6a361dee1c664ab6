import { Temporal } from 'temporal-polyfill';
import { MONTHS, WEEKDAYS } from './clock.ts';

export interface DayReading {
  /** Month before day, as in `9/12`. */
  readonly order: 'us' | 'uk';
  /** `2027-09-10`: a day without its year, and a weekday, are the next to come from here. */
  readonly today: string;
}

/** Letters that tell a name from all others of its list. */
const LEAST_LETTERS = 3;

/** Position in a list of names, from their first letters, 1 the first. */
function named(word: string, names: readonly string[]): number | undefined {
  if (word.length < LEAST_LETTERS) return undefined;
  const at = names.findIndex((name) => name.toLowerCase().startsWith(word));
  return at < 0 ? undefined : at + 1;
}

function dayOf(year: number, month: number, day: number): Temporal.PlainDate | undefined {
  try {
    return Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' });
  } catch {
    return undefined;
  }
}

/** Of a year not told: this year's, or next year's once it is past. */
function nextOf(month: number, day: number, today: Temporal.PlainDate): Temporal.PlainDate | undefined {
  const own = dayOf(today.year, month, day);
  if (own && Temporal.PlainDate.compare(own, today) >= 0) return own;
  return dayOf(today.year + 1, month, day);
}

/**
 * A day as a person writes it: `12 September`, `Sep 12, 2027`, `Sunday`, `12/9`, `12.9.2027`, `2027-09-12`.
 *
 * @returns `2027-09-12`; undefined where it says no day, or one that the calendar has not
 */
export function readDay(text: string, { order, today }: DayReading): string | undefined {
  const from = Temporal.PlainDate.from(today);
  const words = text
    .toLowerCase()
    .replace(/(\d)(st|nd|rd|th)\b/gu, '$1')
    .match(/\d+|\p{L}+/gu);
  if (!words) return undefined;
  const numbers = words.filter((word) => /^\d+$/u.test(word)).map(Number);
  const letters = words.filter((word) => !/^\d+$/u.test(word));
  const months = letters.map((word) => named(word, MONTHS)).filter((month) => month !== undefined);
  const weekdays = letters.map((word) => named(word, WEEKDAYS)).filter((day) => day !== undefined);
  if (months.length + weekdays.length < letters.length || months.length > 1 || weekdays.length > 1)
    return undefined;
  const weekday = weekdays[0];
  if (numbers.length === 0 && weekday !== undefined && months.length === 0)
    return from.add({ days: (weekday - from.dayOfWeek + 7) % 7 }).toString();
  const day = numbersDay(numbers, months[0], order, from);
  // A weekday written beside another day's date is a slip.
  return day && (weekday === undefined || day.dayOfWeek === weekday) ? day.toString() : undefined;
}

function numbersDay(
  numbers: readonly number[],
  month: number | undefined,
  order: DayReading['order'],
  today: Temporal.PlainDate,
): Temporal.PlainDate | undefined {
  const [a, b, c] = numbers;
  if (month !== undefined) {
    if (a === undefined || c !== undefined) return undefined;
    return b === undefined ? nextOf(month, a, today) : dayOf(b, month, a);
  }
  if (a === undefined || b === undefined || numbers.length > 3) return undefined;
  if (a > 31) return c === undefined ? undefined : dayOf(a, b, c);
  const [first, second] = order === 'us' ? [a, b] : [b, a];
  return c === undefined ? nextOf(first, second, today) : dayOf(c < 100 ? 2000 + c : c, first, second);
}
