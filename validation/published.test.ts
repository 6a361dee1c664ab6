/**
 * Every published, exact and contract row against the engine: one test a row, named by its source and the kind of
 * evidence. Rows of calc `evidence` are outcomes that no calc answers; they judge models in docs, not here.
 *
 * A value that is missed stands in misses.csv with what was measured; a miss that is mended or moves fails too, so
 * that the list stays true. Tolerances are the source's and are never widened.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { answer, findCalc, isCalcProblem } from '@pitwright/engine';
import { fromSi, type Kind, toSi } from '@pitwright/model';
import { METRIC, say } from '@pitwright/words';
import { describe, expect, it } from 'vitest';
import { printNumber } from '../packages/cli/src/calc/answers.ts';
import { parseCsv } from '../packages/cli/src/calc/csv.ts';

const HERE = new URL('.', import.meta.url).pathname;

interface Row {
  readonly id: string;
  readonly calc: string;
  readonly inputs: string;
  readonly output: string;
  readonly expected: string;
  readonly tolerance: string;
  readonly unit: string;
  readonly source: string;
  readonly status: string;
}

function rowsOf<T>(path: string): readonly T[] {
  const [header = [], ...records] = parseCsv(readFileSync(`${HERE}${path}`, 'utf8'));
  return records.map((record) => Object.fromEntries(header.map((name, i) => [name, record[i] ?? ''])) as T);
}

const misses = new Map(
  rowsOf<{ id: string; measured: string; why: string }>('misses.csv').map((miss) => [miss.id, miss]),
);

/** `1e-7 m²/s` is that many of the unit. */
function inUnit(kind: Kind, value: number, unit: string, wanted: string): number {
  const [, factor = '1', symbol = wanted] = /^(1e-?\d+) (.+)$/.exec(wanted) ?? [];
  return fromSi(kind, toSi(kind, value, unit), symbol) / Number(factor);
}

/** The answer as a batch would print it, turned into the unit of the row. */
function measured(row: Row): string | number {
  const { value, unit, output } = answer(row.calc, row.inputs, row.output);
  if (typeof value !== 'number') return typeof value === 'string' ? value : value.join('|');
  const { kind, unitFrom } = findCalc(row.calc).outputs.find((o) => o.name === output)!;
  const printed = Number(printNumber(value));
  return unitFrom ? printed : inUnit(kind as Kind, printed, unit, row.unit);
}

const bag = (words: string): string => words.split('|').sort().join('|');

function agrees(got: string | number, row: Row): boolean {
  if (row.unit === 'word') return got === row.expected;
  if (row.unit === 'set') return bag(String(got)) === bag(row.expected);
  if (typeof got !== 'number') return false;
  const between = /^(.+?)\.\.(.+)$/.exec(row.expected);
  if (between) return got >= Number(between[1]) && got <= Number(between[2]);
  if (row.expected.startsWith('>=')) return got >= Number(row.expected.slice(2));
  if (row.expected.startsWith('<=')) return got <= Number(row.expected.slice(2));
  const expected = Number(row.expected);
  const off = Math.abs(got - expected);
  if (row.tolerance.endsWith('%'))
    return off <= (Number(row.tolerance.slice(0, -1)) / 100) * Math.abs(expected);
  return off <= (Number(row.tolerance) || 1e-6 * Math.abs(expected));
}

for (const file of readdirSync(`${HERE}published`).sort()) {
  const rows = rowsOf<Row>(`published/${file}`).filter((row) => row.calc !== 'evidence');
  describe(file, () => {
    for (const row of rows) {
      it(`${row.id} ${row.calc} [${row.status}] ${row.source}`, () => {
        if (row.expected === 'error') {
          try {
            expect.fail(`answered ${JSON.stringify(answer(row.calc, row.inputs, row.output))}`);
          } catch (error) {
            if (!isCalcProblem(error)) throw error;
            expect(say(error.said, METRIC)).toMatch(/^[\w-].*: .+/);
          }
          return;
        }
        const got = measured(row);
        const miss = misses.get(row.id);
        if (miss) {
          expect(agrees(got, row), 'this miss is mended: take it off the list').toBe(false);
          expect(got).toBeCloseTo(Number(miss.measured), 3);
        } else
          expect(
            agrees(got, row),
            `got ${got}, expected ${row.expected} ± ${row.tolerance} ${row.unit}`,
          ).toBe(true);
      });
    }
  });
}

it('every listed miss is a row', () => {
  const ids = new Set(
    readdirSync(`${HERE}published`).flatMap((file) => rowsOf<Row>(`published/${file}`).map((r) => r.id)),
  );
  expect([...misses.keys()].filter((id) => !ids.has(id))).toEqual([]);
});
