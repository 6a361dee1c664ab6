/** The calendar file, read back by an independent parser (ical.js), and the rules of RFC 5545 on the raw text. */
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { exampleCook } from '../../../../validation/scenarios/kitchens.ts';
import { syntheticForecast } from '../../../../validation/scenarios/synthetic-forecast.ts';
import { planCook } from '../schedule/plan.ts';
import { type CalendarEvent, calendarText } from './calendar.ts';
import { calendarEvents } from './calendar-of-plan.ts';

const MADE_AT = '2027-09-10T09:00:00Z';
const event: CalendarEvent = {
  uid: 'b/foil/wrap@demo.pitwright',
  startAt: '2027-09-12T10:20:00Z',
  endAt: '2027-09-12T10:27:00Z',
  summary: 'Wrap B; 45 mL of liquid, each',
  description: 'far side first\nthen A',
  alarmMinutes: 5,
};
const textOf = (events: readonly CalendarEvent[]): string =>
  calendarText(events, { name: 'Demo', madeAt: MADE_AT });
const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));

describe('an independent parser', () => {
  test('reads back hour, words and alarm', () => {
    const [parsed] = read(textOf([event]));
    expect(parsed!.uid).toBe(event.uid);
    expect(parsed!.startDate.toJSDate().toISOString()).toBe('2027-09-12T10:20:00.000Z');
    expect(parsed!.endDate.toJSDate().toISOString()).toBe('2027-09-12T10:27:00.000Z');
    expect(parsed!.summary).toBe(event.summary);
    expect(parsed!.description).toBe(event.description);
    const alarm = parsed!.component.getFirstSubcomponent('valarm')!;
    expect(String(alarm.getFirstPropertyValue('trigger'))).toBe('-PT5M');
    expect(alarm.getFirstPropertyValue('action')).toBe('DISPLAY');
  });

  test('reads back any words at all', () => {
    const words = fc
      .string({ unit: 'grapheme', minLength: 1, maxLength: 300 })
      .filter((text) => !/\p{Cc}/u.test(text));
    fc.assert(
      fc.property(words, (summary) => {
        expect(read(textOf([{ ...event, summary }]))[0]!.summary).toBe(summary);
      }),
      { seed: 5545, numRuns: 200 },
    );
  });

  test('reads every job of a whole plan, each with an id of its own', () => {
    const cook = exampleCook('regatta-dinner');
    const plan = planCook(cook, syntheticForecast(cook));
    const events = calendarEvents(plan, (id) => `job ${id}`);
    const parsed = read(textOf(events));
    expect(parsed.length).toBe(events.length);
    expect(new Set(parsed.map((each) => each.uid)).size).toBe(events.length);
    const jobs = plan.placed.filter((task) => task.handIds.length > 0 && task.walk === undefined).length;
    expect(events.length).toBe(jobs + plan.walks.length);
  });
});

describe('RFC 5545 3.1', () => {
  test('every line ends with CRLF and holds at most 75 octets, and none is broken inside a character', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (summary) => {
        const text = textOf([{ ...event, summary }]);
        expect(text.endsWith('\r\n')).toBe(true);
        for (const line of text.slice(0, -2).split('\r\n')) {
          expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
          expect(line).not.toMatch(/[\ud800-\udbff](?![\udc00-\udfff])/);
        }
      }),
      { seed: 5545, numRuns: 200 },
    );
  });
});
