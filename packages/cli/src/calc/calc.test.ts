/** The command line of calc: tables in and out, arguments, exit statuses. */
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printNumber } from './answers.ts';
import { answerBatch } from './batch.ts';
import { readArguments, runCalc } from './command.ts';
import { csvLine, parseCsv } from './csv.ts';

async function run(...words: string[]) {
  let out = '';
  let err = '';
  const status = await runCalc(words, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { status, out, err };
}

describe('comma-separated values', () => {
  it('come back as they went', () => {
    const field = fc.string({ unit: fc.constantFrom('a', ',', '"', '\n', '\r\n', ' ', '°', ';') });
    const record = fc.array(field, { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(
        fc.array(record, { minLength: 1, maxLength: 5 }),
        fc.constantFrom('\n', '\r\n'),
        (records, end) => {
          expect(parseCsv(records.map(csvLine).join(end) + end)).toEqual(records);
        },
      ),
    );
  });

  it('may begin with a byte-order mark and end without a line break', () => {
    expect(parseCsv('\ufeffid,calc\na,"x ""y"", z"')).toEqual([
      ['id', 'calc'],
      ['a', 'x "y", z'],
    ]);
  });
});

describe('a batch', () => {
  it('answers in order, says what it cannot, ignores further columns', () => {
    const { csv, allAnswered } = answerBatch(
      [
        'note,output,inputs,calc,id',
        '"a, b",temperature,dry-bulb=250 °F; humidity-ratio=0.02; pressure=101.325 kPa,wet-bulb,a1',
        ',temperature,dry-bulb=121 °C; relative-humidity=60 %,wet-bulb,a2',
        ',,"organism=salmonella; curve=""0 min 54.4 °C | 60 min 65.6 °C""",log-reduction,a3',
        ',verdict,rule=fsis-meat-6.5; temperature=140 °F; time=12 min,hold-verdict,a4',
      ].join('\n'),
    );
    const rows = parseCsv(csv);
    expect(rows[0]).toEqual(['id', 'value', 'unit', 'problem']);
    expect(rows.slice(1).map((row) => row[0])).toEqual(['a1', 'a2', 'a3', 'a4']);
    expect(Number(rows[1]![1])).toBeCloseTo(41.86299, 4);
    expect(rows[1]![2]).toBe('°C');
    expect(rows[2]).toEqual([
      'a2',
      '',
      '',
      'relative-humidity: no air at 101.325 kPa can hold 60 % at 121 °C, give the humidity ratio',
    ]);
    expect(Number(rows[3]![1])).toBeCloseTo(75.79348, 4);
    expect(rows[4]).toEqual(['a4', 'pass', 'word', '']);
    expect(allAnswered).toBe(false);
  });

  it('keeps the line breaks it was given', () => {
    const row = 'id,calc,inputs,output\r\na,latent-heat,temperature=60 °C,\r\n';
    expect(answerBatch(row).csv.endsWith('kJ/kg,\r\n')).toBe(true);
  });

  it('refuses a table without its columns', () => {
    expect(() => answerBatch('id,calc\n')).toThrow(/inputs/);
  });

  it('exits 0 where every row was answered, 1 else, and on a file that is not there', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'calc-'));
    const write = async (name: string, rows: string) => {
      const path = join(folder, name);
      await writeFile(path, `id,calc,inputs,output\n${rows}\n`);
      return path;
    };
    const good = await run('--batch', await write('good.csv', 'a,latent-heat,temperature=60 °C,'));
    expect(good.status).toBe(0);
    expect(good.err).toBe('');
    const bad = await run('--batch', await write('bad.csv', 'a,latent-heat,temperature=60,'));
    expect(bad.status).toBe(1);
    expect(parseCsv(bad.out)).toHaveLength(2);
    const gone = await run('--batch', join(folder, 'gone.csv'));
    expect(gone.status).toBe(1);
    expect(gone.out).toBe('');
    expect(gone.err).toContain('gone.csv');
  });
});

describe('one figure', () => {
  it.each([
    [['wet-bulb', '--dry-bulb', '250 °F', '--humidity-ratio', '0.02']],
    [['wet-bulb', '--dry-bulb', '250', '°F', '--humidity-ratio=0.02']],
    [['wet-bulb', '--input', 'dry-bulb=250 °F', '--input', 'humidity-ratio=0.02']],
    [['wet-bulb', '--input', 'dry-bulb=250F; humidity-ratio=0.02']],
    [['wet-bulb', 'dry-bulb=250 °F', 'humidity-ratio=0.02']],
  ])('%s', async (words) => {
    const { status, out } = await run(...words);
    expect(status).toBe(0);
    expect(out).toMatch(/^temperature {2}41\.8629\d+ °C\n$/);
  });

  it('takes a value below zero and a curve with its bars', async () => {
    expect((await run('saturation-pressure', '--temperature', '-20 °C')).out).toContain('0.10326');
    const grown = await run(
      'microbial-growth',
      '--organism',
      'staphylococcus-aureus',
      '--curve',
      '0 h 10 °C | 6 h 54.4 °C',
      '--output',
      'growth',
    );
    expect(grown.out).toMatch(/^growth {2}2\.09/);
  });

  it('answers all outputs, and says of those that these inputs cannot tell', async () => {
    const { out, status } = await run('air-properties', '--temperature', '20 °C');
    expect(out.trim().split('\n')).toHaveLength(5);
    expect(status).toBe(0);
    const some = await run('fuel-properties', '--fuel', 'wood');
    expect(some.status).toBe(0);
    expect(some.out).toContain('gross-value  –');
  });

  it('says once what is wrong, on the error stream', async () => {
    const { status, out, err } = await run('air-properties', '--temperature', '20');
    expect([status, out]).toEqual([1, '']);
    expect(err).toBe('temperature: the unit is missing, write one of K, °C or °F\n');
    expect((await run('latent-heat', '--temperature', '20 °C', '--temperature', '30 °C')).err).toContain(
      'twice',
    );
    expect((await run('nothing')).err).toContain('--list');
  });

  it('writes JSON', async () => {
    const { out } = await run('latent-heat', '--temperature', '60 °C', '--json');
    expect(JSON.parse(out)).toEqual({
      calc: 'latent-heat',
      answers: [{ output: 'heat', value: expect.closeTo(2357.713, 3), unit: 'kJ/kg' }],
    });
  });

  it('lists and explains', async () => {
    expect((await run('--list')).out).toContain('  wet-bulb');
    expect((await run('wet-bulb', '--help')).out).toContain(
      '--pressure ?  pressure [50..120 kPa] = 101.325 kPa',
    );
  });
});

it('reads arguments apart from inputs', () => {
  const asked = readArguments([
    'piece',
    '--output=elapsed',
    '--stages',
    'bare until 74 °C | foil 2 h',
    '--json',
  ]);
  expect(asked).toMatchObject({ name: 'piece', output: 'elapsed', wantsJson: true });
  expect([...asked.inputs]).toEqual([['stages', 'bare until 74 °C | foil 2 h']]);
});

it('prints ten digits, a decimal point, no grouping, no negative zero', () => {
  expect(printNumber(75.7934812345678)).toBe('75.79348123');
  expect(printNumber(-0)).toBe('0.000000000');
  expect(Number(printNumber(1.9e-10))).toBe(1.9e-10);
  expect(printNumber(1234567.891)).toBe('1234567.891');
});
