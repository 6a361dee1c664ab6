/** A bird finished over the coals, from the cook file to what `plan`, its jobs, its cautions and its why say. */
import { forecastCook } from '@pitwright/engine';
import { type Cook, printCookFile, readCookFile } from '@pitwright/model';
import { gatherReport } from '@pitwright/paper';
import { printer } from '@pitwright/words';
import { describe, expect, test } from 'vitest';
import { planJson } from '../../src/plan/json.ts';
import { readerOf } from '../../src/plan/reader.ts';
import { planForm } from '../../src/plan/schema.ts';
import { planText } from '../../src/plan/text/print.ts';
import { whyText } from '../../src/plan/text/why.ts';

const fileOf = (direct: string): string => `kind: cook
version: 1
name: Half birds over the coals
demo: yes
zone: Europe/Lisbon
table:
  at: 2027-06-19 18:30
guests:
  adults: 4
pit:
  name: Kettle
  type: kettle
  temperature: 250 °F
pieces:
  - letter: A
    cut: chicken-half
    count: 2
    bite: firm
    stages:
      - stage: bare
        until: core 68 °C
      - stage: bare
        until: core 76 °C
${direct}      - stage: rest
        until: table
`;
const over = (more: string): string => `        direct:
          side: skin
          distance: 12 in
${more}`;

function cookOf(text: string): Cook {
  const reading = readCookFile(text);
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error(JSON.stringify(reading));
  return reading.document.cook;
}
const MEMBERS = 24;
const minutes = (direct: string): number => {
  const [, finish] = forecastCook(cookOf(fileOf(direct)), { members: MEMBERS, seed: 3 }).pieces[0]!.stages;
  return (finish!.endS!.p50 - finish!.startS.p50) / 60;
};

describe('half birds finished over the coals', () => {
  const cook = cookOf(fileOf(over('          turn: 4 min\n')));
  const report = gatherReport(cook, forecastCook(cook, { members: MEMBERS, seed: 3 }));
  const print = printer(readerOf(cook, undefined));

  test('the file comes back as it was read', () => {
    expect(cook.pieces[0]!.stages[1]!.direct).toMatchObject({ side: 'skin', turn: { si: 240 } });
    expect(cookOf(printCookFile({ kind: 'cook', cook }))).toEqual(cook);
  });

  test('sooner than away from them; nearer is sooner still; a pan of water between holds it back', () => {
    const away = minutes('');
    const over12 = minutes(over(''));
    expect(over12).toBeLessThan(0.75 * away);
    expect(minutes(over('').replace('12 in', '8 in'))).toBeLessThan(over12);
    expect(minutes(over('          between: plate\n'))).toBeGreaterThan(over12);
    expect(minutes(over('          between: pan\n'))).toBeGreaterThan(
      minutes(over('          between: plate\n')),
    );
  });

  test('a job lays them there, and says which side and how often they are turned', () => {
    const text = planText(report, print);
    expect(text).toMatch(/A over the coals, skin side to them, turned every/u);
    expect(report.plan.tasks.map(({ kind }) => kind)).toContain('to-coals');
  });

  test('seared first, it is laid away from the coals by a job as well', () => {
    const seared = cookOf(
      fileOf('').replace('        until: core 68 °C\n', `        for: 15 min\n${over('')}`),
    );
    const text = planText(gatherReport(seared, forecastCook(seared, { members: 8, seed: 3 })), print);
    expect(text).toMatch(/A on: half chickens, over the coals, skin side to/u);
    expect(text).toMatch(/A away from the coals\./u);
  });

  test('racks bone side down: what the eater gets tells the darker side too, in words and figures', () => {
    const racks = cookOf(
      fileOf(over('').replace('skin', 'bone'))
        .replace('chicken-half', 'loin-back-ribs')
        .replace('bite: firm', 'bite: tender')
        .replace('until: core 68 °C', 'for: 2 h')
        .replace('until: core 76 °C', 'for: 30 min'),
    );
    const rackReport = gatherReport(racks, forecastCook(racks, { members: MEMBERS, seed: 3 }));
    expect(planText(rackReport, print).replace(/\s+/gu, ' ')).toMatch(
      /Its bone side, over the coals, is darker: bark, .+?; (?:dark )?mahogany to black-brown\./u,
    );
    const json = planJson(rackReport, print);
    expect(planForm.safeParse(JSON.parse(JSON.stringify(json))).error?.issues ?? []).toEqual([]);
    expect(json.pieces[0]!.eater!.table.overCoals!.side).toBe('bone');
    expect(planJson(report, print).pieces[0]!.eater!.table.overCoals?.side).toBe('bone');
  });

  test('colour is no sign, and fat flares: said once each', () => {
    const ids = report.notices.map(({ id }) => id);
    expect(ids.filter((id) => id === 'safety.coals-colour')).toHaveLength(1);
    expect(ids.filter((id) => id === 'safety.flare-up')).toHaveLength(1);
  });

  test('why: the coals give most of its heat there', () => {
    const why = whyText(report, report.plan.pieces[0]!, print);
    expect(why.replace(/\s+/gu, ' ')).toMatch(
      /Over the coals, turned: (nearly all|most of) its heat shines up from them/u,
    );
  });
});
