/** Both examples through `plan`: what a cook must be able to rely on when following it. */
import { readFileSync } from 'node:fs';
import { printer } from '@pitwright/words';
import { describe, expect, test } from 'vitest';
import { runPlan } from '../../src/plan/command.ts';
import { planJson } from '../../src/plan/json.ts';
import { readerOf } from '../../src/plan/reader.ts';
import { planForm, planJsonSchema } from '../../src/plan/schema.ts';
import { COLUMNS } from '../../src/plan/text/layout.ts';
import { planText } from '../../src/plan/text/print.ts';
import { whyText } from '../../src/plan/text/why.ts';
import { EXAMPLES, examplePath, exampleReport } from './examples.ts';

const at = (instant: string): number => Date.parse(instant);

describe.each(EXAMPLES)('%s', (name) => {
  const report = exampleReport(name);
  const { plan, cook } = report;
  const taskOf = (id: string) => plan.tasks.find((task) => task.id === id)!;

  test('nobody is in two places at once, and nobody works where they are away', () => {
    for (const hand of cook.hands) {
      const own = plan.placed
        .filter((placed) => placed.handIds.includes(hand.id))
        .sort((a, b) => at(a.startAt) - at(b.startAt));
      own.forEach((placed, i) => {
        const next = own[i + 1];
        if (next)
          expect(at(next.startAt), `${placed.taskId} and ${next.taskId}`).toBeGreaterThanOrEqual(
            at(placed.endAt),
          );
      });
    }
  });

  test('nothing is asked for before it is there', () => {
    const startOf = new Map(plan.placed.map((placed) => [placed.taskId, placed]));
    for (const placed of plan.placed)
      for (const lag of taskOf(placed.taskId).after) {
        const before = startOf.get(lag.id);
        if (before)
          expect(at(placed.startAt), `${placed.taskId} after ${lag.id}`).toBeGreaterThanOrEqual(
            at(before.endAt),
          );
      }
  });

  test('every job comes after the shopping and before the ash, the table where it was asked', () => {
    const serve = plan.placed.find((placed) => taskOf(placed.taskId).kind === 'serve')!;
    expect(at(serve.startAt)).toBeGreaterThanOrEqual(at(cook.table.at));
    expect(at(serve.startAt)).toBeLessThanOrEqual(at(cook.table.until));
    expect(taskOf(plan.placed[0]!.taskId).kind).toBe('buy');
  });

  test('every job is told in words, and the whole fits a terminal', () => {
    const print = printer(readerOf(cook, undefined));
    const text = planText(report, print);
    expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/);
    for (const line of text.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(COLUMNS);
  });

  test('the answer stands in the first lines, with the rules and how to change them', () => {
    for (const units of ['us', 'metric'] as const) {
      const text = planText(report, printer(readerOf(cook, units)));
      const head = text.slice(0, text.indexOf('─'));
      expect(head).toMatch(/%|times/);
      expect(head).toMatch(/First job/);
      expect(head).toMatch(/Rules: .*\n?.*rules: home-us/s);
      expect(text.includes('°F')).toBe(units === 'us');
      expect(text.includes('°C')).toBe(units === 'metric');
    }
  });

  test('what giving up an order would buy is the chance that heads the plan', () => {
    const bought = plan.conflicts.flatMap(({ wayOut }) => wayOut.map(({ buys }) => buys));
    for (const { id, params } of bought)
      if (id === 'way-out.order') expect(params!.to).toBe(plan.chanceAllOnTime);
  });

  test('each piece goes on at one clock time and reaches its bite as a range', () => {
    for (const piece of plan.pieces) {
      expect(piece.onAt).toMatch(/Z$/);
      if (piece.ready.p10 && piece.ready.p90)
        expect(at(piece.ready.p90)).toBeGreaterThan(at(piece.ready.p10));
    }
  });

  test('the JSON is as the published schema has it', () => {
    const json = JSON.parse(JSON.stringify(planJson(report, printer(readerOf(cook, 'metric')))));
    expect(planForm.safeParse(json).error?.issues ?? []).toEqual([]);
    expect(json.jobs.length).toBe(plan.placed.length);
  });

  test('cautions stand beside what they concern', () => {
    const json = planJson(report, printer(readerOf(cook, 'metric')));
    for (const piece of json.pieces)
      expect(piece.notices.map((notice) => notice.id).join(' '), piece.letter).toMatch(/safety\.min-temp/);
    const general = json.notices.map((notice) => notice.id);
    expect(general).toEqual(
      expect.arrayContaining(['safety.carbon-monoxide', 'safety.fire-attended', 'safety.thermometer']),
    );
    for (const formula of json.formulas.filter((one) => one.kind === 'sauce'))
      expect(formula.notices.map((notice) => notice.id)).toEqual(
        expect.arrayContaining(['safety.sauce-cold', 'safety.brush']),
      );
  });
});

test('why a piece is where it is: told at several hours before the table, each with its clock', () => {
  const report = exampleReport('regatta-dinner');
  const print = printer(readerOf(report.cook, 'metric'));
  const why = whyText(report, report.plan.pieces[3]!, print);
  expect(why.match(/ in {2,}/g)!.length).toBeGreaterThanOrEqual(3);
  expect(why).toMatch(/ W /);
  expect(why).toMatch(/ \d\.\d\s?mm/u);
});

test('why as JSON is that part of the plan, and a piece that is not there is said', async () => {
  const told = async (...words: string[]) => {
    let out = '';
    let err = '';
    const options = ['--members=16', '--json', ...words];
    const code = await runPlan([examplePath('two-racks'), ...options], {
      out: (text) => {
        out += text;
      },
      err: (text) => {
        err += text;
      },
    });
    return { code, out, err };
  };
  const { pieces } = planForm.parse(JSON.parse((await told()).out));
  expect(JSON.parse((await told('--why=a')).out)).toEqual(pieces[0]!.why);
  const missing = await told('--why=Q');
  expect(missing).toMatchObject({ code: 2, out: '' });
  expect(missing.err).toMatch(/Q/);
});

test('the list for the shop: equal cuts together, masses over all formulas, what is left over by the clock', () => {
  const report = exampleReport('regatta-dinner');
  const text = planText(report, printer(readerOf(report.cook, undefined)));
  const list = text.slice(text.indexOf('\nTo buy\n'), text.indexOf('\nSauce, rub, spritz\n'));
  expect(list).toMatch(/3 × loin back racks +3\.35 kg/);
  // 60 g in the rub and 16 g in the glaze.
  expect(list).toMatch(/Salt, sea, fine +76 g/);
  expect(list).toMatch(/in the cold by 1[45]:\d\d, eaten by Thursday 16 September/);
  expect(list).toMatch(/into the fridge by Thursday 9 September \d\d:\d\d \(D\)/);
});

test('leftovers are cold within two hours of serving, boards are washed after them', () => {
  const { plan } = exampleReport('regatta-dinner');
  const placed = (kind: string) => plan.placed.find(({ taskId }) => taskId.endsWith(`/${kind}`))!;
  expect(at(placed('chill-leftovers').endAt) - at(placed('serve').startAt)).toBeLessThanOrEqual(2 * 3600_000);
  expect(at(placed('clean').startAt)).toBeGreaterThanOrEqual(at(placed('chill-leftovers').endAt));
});

test('a hold begins when the rest before it is over', () => {
  for (const piece of exampleReport('regatta-dinner').plan.pieces) {
    const rest = piece.stages.findIndex(({ kind }) => kind === 'rest');
    if (rest < 0) continue;
    const [from, to] = [piece.stages[rest]!, piece.stages[rest + 1]!];
    expect(at(to.startAt) - at(from.startAt), piece.letter).toBe(10 * 60_000);
  }
});

test('the shoulder’s night is told with its other ways and their prices', () => {
  const report = exampleReport('regatta-dinner');
  const text = planText(report, printer(readerOf(report.cook, 'metric')));
  expect(report.plan.nightWorkS).toBeGreaterThan(0);
  const kinds = report.plan.alternatives.map(({ id }) => id.split(':')[0]);
  expect(kinds).toEqual(expect.arrayContaining(['tend', 'oven', 'cut-in-two']));
  for (const way of report.plan.alternatives)
    expect(way.buys.length + way.costs.length, way.id).toBeGreaterThan(0);
  expect(text).toMatch(/costs:/);
  expect(text).toMatch(/of sleep/);
});

describe('the command line', () => {
  async function run(...words: string[]) {
    const out: string[] = [];
    const err: string[] = [];
    const status = await runPlan(words, { out: (text) => out.push(text), err: (text) => err.push(text) });
    return { status, out: out.join(''), err: err.join('') };
  }

  test('prints JSON of its schema for a file', async () => {
    const { status, out } = await run(
      examplePath('two-racks'),
      '--json',
      '--members=10',
      '--units',
      'metric',
    );
    expect(status).toBe(0);
    expect(planForm.safeParse(JSON.parse(out)).success).toBe(true);
  });

  test('says every problem of a broken file with its line, and what it does not know', async () => {
    const missing = await run('no-such-file.yaml');
    expect([missing.status, missing.err]).toEqual([2, expect.stringContaining('no-such-file.yaml')]);
    expect((await run(examplePath('two-racks'), '--colour')).err).toContain('--colour');
    expect((await run(examplePath('two-racks'), '--units', 'stone')).status).toBe(2);
    const schema = new URL('../../schema/plan.schema.json', import.meta.url).pathname;
    const broken = await run(schema);
    expect(broken.status).toBe(2);
    expect(broken.err).toMatch(/plan\.schema\.json:\d+:\d+ /);
  });
});

test('the published schema is the one the code checks', () => {
  const published = readFileSync(new URL('../../schema/plan.schema.json', import.meta.url), 'utf8');
  expect(published).toBe(`${JSON.stringify(planJsonSchema(), null, 2)}\n`);
});

test('the sauce is weighed with what its simmer leaves', () => {
  const glaze = exampleReport('regatta-dinner').formulas.find(({ formula }) => formula.kind === 'sauce')!;
  const evaporatedKg = glaze.formula.simmer!.evaporated!.si;
  // Mass balance: what went in less the water that the file drives off, and at most the acid of 121 g of 5 % vinegar.
  const leftKg = glaze.totalKg - evaporatedKg;
  expect(glaze.yieldKg!).toBeLessThanOrEqual(leftKg);
  expect(glaze.yieldKg!).toBeGreaterThanOrEqual(leftKg - 0.05 * 0.1212);
  expect(glaze.lines.reduce((sum, line) => sum + line.massKg, 0)).toBeCloseTo(glaze.totalKg, 9);
});
