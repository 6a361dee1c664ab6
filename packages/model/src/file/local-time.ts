import { Temporal } from 'temporal-polyfill';
import type { Form } from './form.ts';
import { scalar } from './values.ts';

const LOCAL = /^(\d{4}-\d{2}-\d{2})[ T](\d{1,2}):(\d{2})(?::(\d{2}))?(?:\s*([+\-−]\d{2}:\d{2}))?$/;

/** Years of a cook: an hour outside them is a slip of the fingers. */
const EARLIEST_YEAR = 2000;
const LATEST_YEAR = 2199;

/** The zone's own spelling, or undefined where no zone of the IANA list has this name. */
export function zoneName(text: string): string | undefined {
  if (!/^[A-Za-z][\w+\-/]{0,63}$/.test(text)) return undefined;
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text);
    return text;
  } catch {
    return undefined;
  }
}

/** Time zone of the cook. */
export const zoneForm: Form<string> = scalar(
  (text, node, reader) => zoneName(text) ?? reader.report(node, 'file.zone', { text }),
  (value) => value,
  { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9_+/-]*$' },
);

const possibleInstants = (local: Temporal.PlainDateTime, zone: string): Temporal.ZonedDateTime[] => {
  const earlier = local.toZonedDateTime(zone, { disambiguation: 'earlier' });
  const later = local.toZonedDateTime(zone, { disambiguation: 'later' });
  return earlier.epochMilliseconds === later.epochMilliseconds ? [earlier] : [earlier, later];
};

const minuteText = (time: Temporal.ZonedDateTime): string =>
  time.toPlainDateTime().toString({ smallestUnit: 'minute' }).replace('T', ' ');

/**
 * A local time of the cook's zone, `2027-09-12 13:30`, kept as UTC instant. A time that falls twice or not at all on
 * the night of a clock change is refused with both readings; an offset (`2027-10-31 01:30 +01:00`) says which is meant.
 */
export const localTime: Form<string> = scalar(
  (text, node, reader) => {
    const parts = LOCAL.exec(text.trim());
    if (!parts) return reader.report(node, 'file.time-form', { text });
    let local: Temporal.PlainDateTime;
    try {
      const clock = `${parts[2]!.padStart(2, '0')}:${parts[3]}:${parts[4] ?? '00'}`;
      if (parts[4] === '60') throw new RangeError('a leap second is no time of a cook');
      local = Temporal.PlainDateTime.from(`${parts[1]}T${clock}`, { overflow: 'reject' });
    } catch {
      return reader.report(node, 'file.time-none', { text });
    }
    if (local.year < EARLIEST_YEAR || local.year > LATEST_YEAR)
      return reader.report(node, 'file.outside', { text, min: EARLIEST_YEAR, max: LATEST_YEAR });
    if (reader.zone === undefined) return undefined;
    const readings = possibleInstants(local, reader.zone);
    const offset = parts[5]?.replace('−', '-');
    const isSkipped = readings.every((reading) => !reading.toPlainDateTime().equals(local));
    if (isSkipped) {
      const [before, after] = [readings[0]!, readings[1] ?? readings[0]!];
      return reader.report(node, 'file.time-skipped', {
        text,
        before: minuteText(before),
        after: minuteText(after),
      });
    }
    if (offset !== undefined) {
      const meant = readings.find((reading) => reading.offset === offset);
      const offsets = readings.map((reading) => reading.offset).join(', ');
      return meant
        ? instantText(meant)
        : reader.report(node, 'file.time-offset', { text, offset, offsets, zone: reader.zone });
    }
    if (readings.length > 1) {
      const [first, second] = readings.map((reading) => `${minuteText(reading)} ${reading.offset}`);
      return reader.report(node, 'file.time-twice', { text, first: first!, second: second! });
    }
    return instantText(readings[0]!);
  },
  (instant, { zone }) => printLocalTime(instant, zone),
  { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}[ T]\\d{1,2}:\\d{2}' },
);

const instantText = (time: Temporal.ZonedDateTime): string => time.toInstant().toString();

/** The offset is written only where the clock shows this time twice. */
function printLocalTime(instant: string, zone: string): string {
  const time = Temporal.Instant.from(instant).toZonedDateTimeISO(zone);
  const local = time.toPlainDateTime();
  const text = local.toString({ smallestUnit: time.second === 0 ? 'minute' : 'second' }).replace('T', ' ');
  return possibleInstants(local, zone).length > 1 ? `${text} ${time.offset}` : text;
}
