/** `plan --ics`: the file read back by an independent parser (ical.js) against the plan it was made of. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { printer } from '@pitwright/words';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { planCalendar } from '../../src/plan/calendar.ts';
import { runPlan } from '../../src/plan/command.ts';
import { readerOf } from '../../src/plan/reader.ts';
import { examplePath, exampleReport } from './examples.ts';

const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each));

test('every walk and every other job with hands is one event at its hour, in words', () => {
  const report = exampleReport('regatta-dinner');
  const print = printer(readerOf(report.cook, undefined));
  const events = eventsOf(planCalendar(report, print, '2027-09-01T08:00:00Z'));
  const { plan } = report;
  const alone = plan.placed.filter((placed) => placed.walk === undefined && placed.handIds.length > 0);
  const hours = [...plan.walks, ...alone].map(({ startAt }) => Date.parse(startAt)).sort((a, b) => a - b);
  expect(events.map((event) => event.startDate.toJSDate().getTime())).toEqual(hours);
  for (const event of events) expect(event.summary).toMatch(/^[A-Z].*\.$/);
  const lit = events.find((event) => event.summary.startsWith('Light the fire'))!;
  const alarm = lit.component.getFirstSubcomponent('valarm')!;
  expect(alarm.getFirstPropertyValue('trigger')!.toString()).toBe('-PT10M');
  expect(Date.parse(plan.lightAt!)).toBe(lit.startDate.toJSDate().getTime());
});

test('the command writes it beside the plan and says where', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'pitwright-ics-'));
  const path = join(folder, 'cook.ics');
  const told: string[] = [];
  const status = await runPlan([examplePath('two-racks'), '--members=10', `--ics=${path}`], {
    out: () => {},
    err: (text) => told.push(text),
  });
  expect(status).toBe(0);
  expect(told.join('')).toContain(path);
  expect(eventsOf(readFileSync(path, 'utf8')).length).toBeGreaterThan(10);
  rmSync(folder, { recursive: true });
});
