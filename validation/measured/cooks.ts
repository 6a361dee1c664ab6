import { readFileSync } from 'node:fs';
import { COOKS, type CookReading } from './interpretation.ts';

/** A core temperature that was read at a known time. */
export interface CoreReading {
  readonly hours: number;
  readonly coreC: number;
}

/** One measured cook, ready to be foreseen. */
export interface MeasuredCook {
  readonly id: string;
  readonly source: string;
  readonly reading: CookReading;
  /** Not told: the cut's ordinary piece with its doubt. */
  readonly massKg: number | undefined;
  readonly startC: number | undefined;
  readonly hasWaterPan: boolean;
  /** From so many hours on, or from a core temperature on where no hour is told. */
  readonly wrap:
    | {
        readonly kind: 'foil' | 'paper' | 'unknown';
        readonly hours?: number;
        readonly coreC?: number;
        readonly how?: 'loose' | 'pan';
        readonly openedH?: number;
      }
    | undefined;
  readonly cores: readonly CoreReading[];
}

/** Events whose core temperature belongs to the time on the pit. */
const ON_THE_PIT = new Set([
  'reading',
  'off',
  'tender',
  'wrap_foil',
  'wrap_paper',
  'wrap_unknown',
  'stall_start',
  'stall_end',
]);
const WRAPS: Readonly<Record<string, 'foil' | 'paper' | 'unknown'>> = {
  wrap_foil: 'foil',
  wrap_paper: 'paper',
  wrap_unknown: 'unknown',
};

/** Rows of an RFC 4180 table as records by header. */
function readTable(path: URL): Record<string, string>[] {
  const [header, ...rows] = cells(readFileSync(path, 'utf8'));
  return rows.map((row) => Object.fromEntries(header!.map((name, i) => [name, row[i] ?? ''])));
}

function cells(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let isQuoted = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (isQuoted) {
      if (c === '"' && text[i + 1] === '"') cell += text[++i];
      else if (c === '"') isQuoted = false;
      else cell += c;
    } else if (c === '"') isQuoted = true;
    else if (c === ',') {
      row.push(cell);
      cell = '';
    } else if (c === '\n') {
      row.push(cell.replace(/\r$/, ''));
      cell = '';
      if (row.length > 1) rows.push(row);
      row = [];
    } else cell += c;
  }
  if (cell || row.length) rows.push([...row, cell]);
  return rows;
}

const number = (text: string | undefined): number | undefined => (text ? Number(text) : undefined);

/** Rows of the logs by cook. */
export function logs(): ReadonlyMap<string, readonly Record<string, string>[]> {
  const byId = new Map<string, Record<string, string>[]>();
  for (const row of readTable(new URL('../cooks.csv', import.meta.url)))
    byId.set(row.cook_id!, [...(byId.get(row.cook_id!) ?? []), row]);
  return byId;
}

/** Every cook that was read, by its id: with a told pit, and timed core temperatures or a timed hand test. */
export const cooksRead = (): ReadonlyMap<string, MeasuredCook> =>
  new Map([...logs()].flatMap(([id, rows]) => (COOKS[id] ? [[id, cookOf(id, rows, COOKS[id])]] : [])));

/** Those with at least one timed core temperature. */
export const measuredCooks = (): MeasuredCook[] =>
  [...cooksRead().values()].filter(({ cores }) => cores.length > 0);

function cookOf(id: string, rows: readonly Record<string, string>[], reading: CookReading): MeasuredCook {
  const first = rows[0]!;
  const cores = rows
    .filter(
      (row) => ON_THE_PIT.has(row.event!) && row.elapsed_h && row.core_temp_C && Number(row.elapsed_h) > 0,
    )
    .map((row) => ({ hours: Number(row.elapsed_h), coreC: Number(row.core_temp_C) }))
    .filter(({ hours }) => !reading.skipH?.includes(hours))
    .sort((a, b) => a.hours - b.hours);
  const wrapped = rows.find((row) => WRAPS[row.event!] && (row.elapsed_h || row.core_temp_C));
  return {
    id,
    source: first.source!,
    reading,
    massKg: reading.massKg ?? number(first.mass_kg_raw),
    startC: reading.startC ?? number(first.start_temp_C),
    hasWaterPan: first.water_pan!.startsWith('yes'),
    wrap:
      reading.wrap ??
      (wrapped && {
        kind: WRAPS[wrapped.event!]!,
        ...(wrapped.elapsed_h
          ? { hours: Number(wrapped.elapsed_h) }
          : { coreC: Number(wrapped.core_temp_C) }),
      }),
    cores,
  };
}

/** Hours at which the core passed `coreC`, straight between readings that bracket it; undefined where none do. */
export function hoursTo(cook: MeasuredCook, coreC: number): number | undefined {
  for (let i = 0; i < cook.cores.length; i++) {
    const after = cook.cores[i]!;
    if (after.coreC < coreC) continue;
    if (after.coreC - coreC < 0.6) return after.hours;
    const before = cook.cores[i - 1];
    if (!before) return undefined;
    return (
      before.hours + ((after.hours - before.hours) * (coreC - before.coreC)) / (after.coreC - before.coreC)
    );
  }
  return undefined;
}
