// What the plan says of hours without hands, of what is chilled and of what is brined. Evidence: law; exact (the limits
// of the uptake of salt).
import { forecastCook } from '@pitwright/engine';
import { saltFromBrineKg } from '@pitwright/engine/sauce';
import { type Cook, readCookFile } from '@pitwright/model';
import { METRIC, printer, say } from '@pitwright/words';
import { beforeAll, describe, expect, test } from 'vitest';
import { gatherReport } from './gather.ts';
import type { PlanReport } from './report.ts';
import { taskSaid } from './task-words.ts';

const TEXT = `kind: cook
version: 1
name: A shoulder through the night
demo: yes
zone: Europe/Lisbon
table:
  at: 2027-06-19 18:30
guests:
  adults: 8
pit:
  name: Cabinet
  type: cabinet
  temperature: 107 °C
pieces:
  - letter: A
    cut: pork-shoulder
    mass: 3.6 kg
    bite: pulls-apart
    on: 2027-06-18 22:00
    stages:
      - stage: bare
        for: 10 h
        spritz:
          amount: 30 mL
          every: 60 min
      - stage: foil
        until: pulls-apart
      - stage: hold
        until: table
  - letter: B
    cut: chicken-breast
    count: 4
    mass: 250 g
    bite: firm
    on: 2027-06-18 18:30
    stages:
      - stage: bare
        until: core 74 °C
      - stage: rest
        for: 10 min
      - stage: chill
        until: core 5 °C
        in: ice-bath
formulas:
  - name: Brine
    kind: brine
    for:
      - B
    lines:
      - ingredient: water
        amount: 2 L
      - ingredient: salt_sea_fine
        amount: 120 g
`;

function reportOf(text: string): PlanReport {
  const reading = readCookFile(text);
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(JSON.stringify(reading));
  const cook: Cook = reading.document.cook;
  return gatherReport(cook, forecastCook(cook, { members: 16, seed: 2 }));
}

describe('a night cook with chicken for the day after', () => {
  let report: PlanReport;
  beforeAll(() => {
    report = reportOf(TEXT);
  });
  const placedOf = (kind: string) => {
    const task = report.plan.tasks.find((one) => one.kind === kind)!;
    return { task, placed: report.plan.placed.find(({ taskId }) => taskId === task.id)! };
  };

  test('sprays that fall into everybody’s sleep are counted and said in one sentence', () => {
    expect(report.plan.notices).toHaveLength(1);
    // 23:00 to 06:30 by default: sprays at 23, 0, 1, 2, 3, 4, 5 and 6 o’clock.
    expect(report.plan.notices[0]).toMatchObject({
      id: 'schedule.spritz-unattended',
      params: { letter: 'A', count: 8 },
    });
    expect(say(report.plan.notices[0]!, METRIC)).toMatch(
      /^The spritz of A every 1.h needs somebody at the pit/u,
    );
  });

  test('with somebody awake there is nothing to say', () => {
    const watched = TEXT.replace(
      'pit:\n',
      'hands:\n  - name: Early\n    sleeps:\n      from: 20:00\n      to: 02:00\n  - name: Late\n    sleeps:\n      from: 02:00\n      to: 08:00\npit:\n',
    );
    expect(reportOf(watched).plan.notices).toEqual([]);
  });

  test('the chill is a job after the rest, in hands, with both hours of the rule', () => {
    const { task, placed } = placedOf('chill');
    const off = report.plan.placed.find(({ taskId }) => taskId === 'b/take-off')!;
    const restS = (Date.parse(placed.startAt) - Date.parse(off.endAt)) / 1000;
    expect(restS).toBeGreaterThanOrEqual(600);
    expect(restS).toBeLessThanOrEqual(600 + 15 * 60);
    expect(placed.handIds).toHaveLength(1);
    const said = taskSaid(task, report, printer(METRIC));
    const hours = (['pass', 'first', 'both'] as const).map((key) => Date.parse(said.params![key] as string));
    expect(hours[0]).toBeGreaterThanOrEqual(Date.parse(placed.startAt));
    expect(hours[1]! - hours[0]!).toBe(2 * 3600e3);
    expect(hours[2]! - hours[0]!).toBe(6 * 3600e3);
    expect(say(said, METRIC)).toMatch(/^B into ice water/u);
  });

  test('unrubbed meat lies in its brine for at least four hours; its salt is on the plate, more of a stronger one', () => {
    const brine = placedOf('brine').placed;
    const out = report.plan.placed.find(({ taskId }) => taskId === 'b/out-of-fridge')!;
    expect(Date.parse(out.startAt) - Date.parse(brine.endAt)).toBeGreaterThanOrEqual(4 * 3600e3);
    const saltOf = ({ eaters }: PlanReport) => eaters.find(({ pieceId }) => pieceId === 'b')!.salt!;
    const salt = saltOf(report);
    expect(salt.parts.map(({ part }) => part)).toEqual(['brine']);
    expect(saltOf(reportOf(TEXT.replace('120 g', '160 g'))).perKg.p50).toBeGreaterThan(1.2 * salt.perKg.p50);
  });
});

describe('salt from a brine', () => {
  const brine = { saltKg: 0.12, waterKg: 2 };
  test('none at once; all of its share of the water in the end', () => {
    expect(saltFromBrineKg(brine, 1, 0.03, 0)).toBe(0);
    expect(saltFromBrineKg(brine, 1, 0.03, 1e8)).toBeCloseTo((0.12 * 0.72) / (0.72 + 2 + 0.12), 10);
  });
  test('thinner meat and longer hours take up more, never what the brine has not', () => {
    expect(saltFromBrineKg(brine, 1, 0.02, 3600)).toBeGreaterThan(saltFromBrineKg(brine, 1, 0.04, 3600));
    expect(saltFromBrineKg(brine, 1, 0.03, 7200)).toBeGreaterThan(saltFromBrineKg(brine, 1, 0.03, 3600));
    expect(saltFromBrineKg(brine, 50, 0.001, 1e9)).toBeLessThan(0.12);
  });
});
