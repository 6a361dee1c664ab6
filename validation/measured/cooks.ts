import { readFileSync } from 'node:fs';
import { COOKS, type CookReading } from './interpretation.ts';

/** A core temperature that was read at a known time. */
export interface CoreReading {
  readonly hours: number;
  readonly coreC: number;
  readonly isLast: boolean;
}

/** One measured cook, ready to be foreseen. */
export interface MeasuredCook {
  readonly id: string;
  readonly source: string;
  readonly reading: CookReading;
  readonly massKg: number | undefined;
  readonly startC: number | undefined;
  readonly hasWaterPan: boolean;
  readonly wrap:
    | { readonly kind: 'foil' | 'paper'; readonly hours?: number; readonly coreC?: number }
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
const WRAPS: Readonly<Record<string, 'foil' | 'paper'>> = {
  wrap_foil: 'foil',
  wrap_paper: 'paper',
  // The wrap was not told: foil is the likelier of the two.
  wrap_unknown: 'foil',
};

/** Rows of an RFC 4180 table as records by header. */
export function readTable(path: URL): Record<string, string>[] {
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

/** Every measured cook with a told pit and at least one timed core temperature. */
export function measuredCooks(): MeasuredCook[] {
  const byId = new Map<string, Record<string, string>[]>();
  for (const row of readTable(new URL('../cooks.csv', import.meta.url))) {
    const id = row.cook_id!;
    if (COOKS[id]) byId.set(id, [...(byId.get(id) ?? []), row]);
  }
  const cooks = [...byId].map(([id, rows]) => cookOf(id, rows));
  return cooks.filter((cook) => cook.cores.length > 0 && !cook.reading.leftOut && cook.massKg !== undefined);
}

function cookOf(id: string, rows: readonly Record<string, string>[]): MeasuredCook {
  const first = rows[0]!;
  const reading = COOKS[id]!;
  const timed = rows
    .filter(
      (row) => ON_THE_PIT.has(row.event!) && row.elapsed_h && row.core_temp_C && Number(row.elapsed_h) > 0,
    )
    .map((row) => ({ hours: Number(row.elapsed_h), coreC: Number(row.core_temp_C) }))
    .sort((a, b) => a.hours - b.hours);
  const wrapped = rows.find((row) => WRAPS[row.event!] && (row.elapsed_h || row.core_temp_C));
  return {
    id,
    source: first.source!,
    reading,
    massKg: reading.massKg ?? number(first.mass_kg_raw),
    startC: number(first.start_temp_C),
    hasWaterPan: first.water_pan!.startsWith('yes'),
    wrap: wrapped && {
      kind: WRAPS[wrapped.event!]!,
      ...(wrapped.elapsed_h ? { hours: Number(wrapped.elapsed_h) } : { coreC: Number(wrapped.core_temp_C) }),
    },
    cores: timed.map((core, i) => ({ ...core, isLast: i === timed.length - 1 })),
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
