import type { Instant } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';

/** Seconds since 1970-01-01T00:00Z. */
export type EpochS = number;

/** From – to, the end not included [s since 1970]. */
export interface Span {
  readonly fromS: EpochS;
  readonly toS: EpochS;
}

export const MINUTE_S = 60;
export const HOUR_S = 3600;
/** Planned clock times stand on five minutes. */
export const FIVE_MINUTES_S = 300;
/** Grid on which jobs are placed. */
export const SLOT_S = 60;

/** As the plan writes instants itself. */
const PLAIN = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/;

/** @throws RangeError on anything that is no UTC instant */
export const epochS = (instant: Instant): EpochS => {
  if (PLAIN.test(instant)) {
    const at = new Date(instant);
    // A day that the calendar does not have is left to be refused.
    if (at.getUTCDate() === Number(instant.slice(8, 10))) return at.getTime() / 1000;
  }
  return Math.round(Temporal.Instant.from(instant).epochMilliseconds / 1000);
};

/** ISO 8601 with a final Z and no fraction. */
export const instantOf = (seconds: EpochS): Instant => {
  if (!Number.isFinite(seconds)) throw new RangeError(`an instant needs a finite time, got ${seconds}`);
  return new Date(Math.round(seconds) * 1000).toISOString().replace('.000Z', 'Z');
};

export const ceilToFive = (seconds: number): number => Math.ceil(seconds / FIVE_MINUTES_S) * FIVE_MINUTES_S;
export const roundToFive = (seconds: number): number => Math.round(seconds / FIVE_MINUTES_S) * FIVE_MINUTES_S;

const zoned = (seconds: EpochS, zone: string): Temporal.ZonedDateTime =>
  Temporal.Instant.fromEpochMilliseconds(seconds * 1000).toZonedDateTimeISO(zone);

/**
 * The instant at which the clock on the wall of `zone` shows `time`, `dayOffset` days from the local date of `near`.
 * A time that falls twice is the first of the two, one that falls out is moved on by the gap.
 */
export function wallClockS(near: EpochS, dayOffset: number, time: string, zone: string): EpochS {
  return clockOnS(zoned(near, zone).toPlainDate().add({ days: dayOffset }), time, zone);
}

function clockOnS(date: Temporal.PlainDate, time: string, zone: string): EpochS {
  const at = date.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(time) });
  return Math.round(at.epochMilliseconds / 1000);
}

const DATED = /^\d{4}-\d{2}-\d{2}T/;

/**
 * Spans that `from`–`to` cover between two instants: every day for wall-clock times (`23:00`–`06:00` passes
 * midnight), once for local date-times or UTC instants.
 */
export function recurringSpans(
  hours: { readonly from: string; readonly to: string },
  zone: string,
  horizon: Span,
): Span[] {
  if (DATED.test(hours.from)) {
    const localS = (text: string): EpochS =>
      text.endsWith('Z')
        ? epochS(text)
        : Math.round(Temporal.PlainDateTime.from(text).toZonedDateTime(zone).epochMilliseconds / 1000);
    return clipped([{ fromS: localS(hours.from), toS: localS(hours.to) }], horizon);
  }
  const spans: Span[] = [];
  const passesMidnight = hours.to <= hours.from;
  const days = Math.ceil((horizon.toS - horizon.fromS) / 86400) + 2;
  let date = zoned(horizon.fromS, zone).toPlainDate().subtract({ days: 1 });
  for (let day = -1; day <= days; day++) {
    const next = date.add({ days: 1 });
    const fromS = clockOnS(date, hours.from, zone);
    const toS = clockOnS(passesMidnight ? next : date, hours.to, zone);
    spans.push({ fromS, toS });
    date = next;
  }
  return clipped(spans, horizon);
}

export const clipped = (spans: readonly Span[], to: Span): Span[] =>
  spans
    .map((span) => ({ fromS: Math.max(span.fromS, to.fromS), toS: Math.min(span.toS, to.toS) }))
    .filter((span) => span.toS > span.fromS);

export const overlapS = (a: Span, b: Span): number =>
  Math.max(0, Math.min(a.toS, b.toS) - Math.max(a.fromS, b.fromS));

/** Time during which all of `groups` cover (everybody asleep at once). */
export function commonSpans(groups: readonly (readonly Span[])[]): Span[] {
  if (groups.length === 0) return [];
  return groups
    .slice(1)
    .reduce<Span[]>(
      (common, spans) =>
        common.flatMap((a) =>
          spans
            .map((b) => ({ fromS: Math.max(a.fromS, b.fromS), toS: Math.min(a.toS, b.toS) }))
            .filter((span) => span.toS > span.fromS),
        ),
      [...groups[0]!],
    );
}
