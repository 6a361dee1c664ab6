import type { Instant } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';

/** One line of the calendar; all texts come printed. */
export interface CalendarEvent {
  /** The same in every export of the plan: an update, not a copy. */
  readonly uid: string;
  readonly startAt: Instant;
  readonly endAt: Instant;
  readonly summary: string;
  readonly description?: string;
  /** Minutes before the start at which it rings; missing: it does not. */
  readonly alarmMinutes?: number;
}

export interface CalendarOptions {
  readonly name: string;
  /** When the plan was made: the DTSTAMP of every event. */
  readonly madeAt: Instant;
}

/** Octets of a content line, its line break not counted. */
const MOST_OCTETS = 75;

/**
 * An iCalendar file of these events. Times are UTC, so that no reader needs our zone rules.
 * @source RFC 5545: 3.1 content lines (CRLF, folding at 75 octets), 3.3.11 text, 3.6.1 VEVENT, 3.6.6 VALARM
 */
export function calendarText(events: readonly CalendarEvent[], options: CalendarOptions): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Pitwright//run sheet//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `NAME:${escaped(options.name)}`,
    ...events.flatMap((event) => eventLines(event, options.madeAt)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(event: CalendarEvent, madeAt: Instant): string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(event.uid)}`,
    `DTSTAMP:${utc(madeAt)}`,
    `DTSTART:${utc(event.startAt)}`,
    `DTEND:${utc(event.endAt)}`,
    `SUMMARY:${escaped(event.summary)}`,
    ...(event.description ? [`DESCRIPTION:${escaped(event.description)}`] : []),
    ...(event.alarmMinutes === undefined
      ? []
      : [
          'BEGIN:VALARM',
          'ACTION:DISPLAY',
          `DESCRIPTION:${escaped(event.summary)}`,
          `TRIGGER:-PT${event.alarmMinutes}M`,
          'END:VALARM',
        ]),
    'END:VEVENT',
  ];
}

/** `20270912T123000Z` */
const utc = (instant: Instant): string =>
  Temporal.Instant.from(instant).toString({ smallestUnit: 'second' }).replace(/[-:]/g, '');

const escaped = (text: string): string =>
  text
    .replace(/\\/g, '\\\\')
    .replace(/([;,])/g, '\\$1')
    .replace(/\r\n|\n|\r/g, '\\n')
    // Other control characters are not allowed in a content line.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not stand in a line
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');

const octetsOf = (character: string): number => {
  const code = character.codePointAt(0)!;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
};

/** Broken into lines of at most 75 octets, never inside a character; each further line begins with a space. */
function folded(line: string): string {
  let text = '';
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > MOST_OCTETS) {
      text += '\r\n ';
      octets = 1;
    }
    text += character;
    octets += more;
  }
  return text;
}
