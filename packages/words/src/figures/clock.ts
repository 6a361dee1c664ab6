import { Temporal } from 'temporal-polyfill';

export const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

export type ClockStyle = { readonly clock: '24' | '12'; readonly zone: string };

/** An instant, rounded to whole `minutes`, on the wall of the zone. */
function wall(instant: string, zone: string, minutes: number): Temporal.ZonedDateTime {
  const at = Temporal.Instant.from(instant);
  const step = minutes * 60_000;
  const rounded = Math.round(at.epochMilliseconds / step) * step;
  return Temporal.Instant.fromEpochMilliseconds(rounded).toZonedDateTimeISO(zone);
}

/** `first` or `second` where the wall shows this time twice, on the night the clocks go back. */
function whichOfTwo(at: Temporal.ZonedDateTime): 'first' | 'second' | undefined {
  const plain = at.toPlainDateTime();
  const earlier = plain.toZonedDateTime(at.timeZoneId, { disambiguation: 'earlier' });
  const later = plain.toZonedDateTime(at.timeZoneId, { disambiguation: 'later' });
  if (earlier.epochMilliseconds === later.epochMilliseconds) return undefined;
  return at.epochMilliseconds === earlier.epochMilliseconds ? 'first' : 'second';
}

const two = (n: number): string => String(n).padStart(2, '0');
const half = (at: Temporal.ZonedDateTime): 'am' | 'pm' => (at.hour < 12 ? 'am' : 'pm');

function figures(at: Temporal.ZonedDateTime, style: ClockStyle): string {
  return style.clock === '24'
    ? `${two(at.hour)}:${two(at.minute)}`
    : `${((at.hour + 11) % 12) + 1}:${two(at.minute)}`;
}

/** Wall-clock time: `16:45`, `4:45 pm`; on the night of a clock change the doubled hour says which it is. */
export function clock(instant: string, style: ClockStyle, { toMinutes = 1 } = {}): string {
  const at = wall(instant, style.zone, toMinutes);
  const which = whichOfTwo(at);
  const time = style.clock === '24' ? figures(at, style) : `${figures(at, style)} ${half(at)}`;
  return which ? `${time} (the ${which})` : time;
}

/** Two instants: `12:35–13:40`, `4:45–5:25 pm`, `11:35 am–12:40 pm`. Rounded to 5 minutes. */
export function clockRange(from: string, to: string, style: ClockStyle, { toMinutes = 5 } = {}): string {
  const a = wall(from, style.zone, toMinutes);
  const b = wall(to, style.zone, toMinutes);
  const low = clock(from, style, { toMinutes });
  const high = clock(to, style, { toMinutes });
  if (low === high && a.toPlainDate().equals(b.toPlainDate())) return low;
  const oneHalf = style.clock === '12' && half(a) === half(b) && !low.includes('(');
  return `${oneHalf ? figures(a, style) : low}–${high}`;
}

/** `Saturday` in the cook's zone. */
export const weekday = (instant: string, zone: string): string =>
  WEEKDAYS[wall(instant, zone, 1).dayOfWeek - 1]!;

/** `Sat` */
export const shortWeekday = (instant: string, zone: string): string => weekday(instant, zone).slice(0, 3);

/** `Saturday 11 September`, or `Saturday, September 11` with American names. */
export function date(instant: string, zone: string, order: 'us' | 'uk', { year = false } = {}): string {
  const at = wall(instant, zone, 1);
  const day = WEEKDAYS[at.dayOfWeek - 1]!;
  const month = MONTHS[at.month - 1]!;
  return order === 'us'
    ? `${day}, ${month} ${at.day}${year ? `, ${at.year}` : ''}`
    : `${day} ${at.day} ${month}${year ? ` ${at.year}` : ''}`;
}

/** The calendar day in the zone, `2027-09-11`: equal for instants of one day. */
export const dayKey = (instant: string, zone: string): string =>
  wall(instant, zone, 1).toPlainDate().toString();
