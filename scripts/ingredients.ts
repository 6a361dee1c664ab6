/**
 * Turns packages/engine/src/food/data/ingredients.csv into the compact module that the browser loads.
 * Run after editing the table: npx tsx scripts/ingredients.ts
 */
import { readFileSync, writeFileSync } from 'node:fs';

const DATA = new URL('../packages/engine/src/food/data/', import.meta.url);
const EVIDENCE_LETTERS: Readonly<Record<string, string>> = {
  VERIFIED: 'V',
  DERIVED: 'D',
  ESTIMATED: 'E',
  MEMORY: 'M',
  NA: '-',
};
const PARTS = ['composition', 'split', 'density', 'pH', 'acid'];

/** Records of an RFC 4180 text, keyed by its header. */
function readCsv(text: string): Record<string, string>[] {
  const rows: string[][] = [[]];
  let field = '';
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!;
    if (quoted) {
      if (c !== '"') field += c;
      else if (text[i + 1] === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (c === '"') quoted = true;
    else if (c === ',' || c === '\n') {
      rows.at(-1)!.push(field);
      field = '';
      if (c === '\n') rows.push([]);
    } else if (c !== '\r') field += c;
  }
  if (field !== '' || rows.at(-1)!.length > 0) rows.at(-1)!.push(field);
  const [header, ...records] = rows.filter((row) => row.length > 0);
  return records.map((row) => Object.fromEntries(header!.map((name, i) => [name, row[i] ?? ''])));
}

const number = (text: string): string => (text === '' ? '' : String(Number(text)));

function compactRow(row: Record<string, string>): string {
  const statuses = row.status!.split(';').map((part) => part.trim());
  const evidence = PARTS.map((part) => {
    const found = statuses.find((status) => status.startsWith(`${part} `));
    const letter = EVIDENCE_LETTERS[found?.split(' ')[1] ?? ''];
    if (letter === undefined) throw new Error(`${row.id}: no evidence for ${part} in "${row.status}"`);
    return letter;
  }).join('');
  const remarks = statuses.filter((status) => !/^(composition|split|density|pH|acid) [A-Z]+$/.test(status));
  const fields = [
    row.id!,
    row.name!,
    row.category!,
    number(row.density_g_per_ml!),
    row.density_note!.replaceAll(';', ','),
    ...['water', 'protein', 'fat', 'carbohydrate', 'sugars', 'sucrose', 'glucose', 'fructose'].map((key) =>
      number(row[key]!),
    ),
    ...['fibre', 'ash', 'sodium_mg', 'alcohol'].map((key) => number(row[key]!)),
    row.acid_type!,
    number(row.pH!),
    number(row.kcal!),
    row.allergens_us!,
    row.allergens_eu!,
    row.usda_id!.replace('NDB ', ''),
    evidence,
    remarks.join('|'),
  ];
  for (const field of fields) {
    if (field.includes(';')) throw new Error(`${row.id}: "${field}" holds the separator ;`);
  }
  return fields.join(';');
}

/** The module's text, as written to ingredients.rows.ts. */
export function ingredientModule(csv: string): string {
  const rows = readCsv(csv).map((row) => `  ${JSON.stringify(compactRow(row)).replaceAll("'", "\\'")}`);
  const quoted = rows.map((row) => row.replace(/^ {2}"(.*)"$/, "  '$1',"));
  return `/** Written by scripts/ingredients.ts from ingredients.csv; edit that table, not this file. */\nexport const INGREDIENT_ROWS: readonly string[] = [\n${quoted.join('\n')}\n];\n`;
}

if (process.argv[1]?.endsWith('ingredients.ts')) {
  const csv = readFileSync(new URL('ingredients.csv', DATA), 'utf8');
  writeFileSync(new URL('ingredients.rows.ts', DATA), ingredientModule(csv));
}
