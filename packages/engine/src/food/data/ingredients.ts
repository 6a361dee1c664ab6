/**
 * The catalogue of ingredients: 237 rows per 100 g, from the USDA National Nutrient Database SR28 (2016; sugar
 * split and alcohol SR27, 2014) and, where it has none, from common formulation knowledge. What is not known is
 * undefined, never zero. Acid contents are typical values (from memory, ±20 %), pH ±0.3 where marked memory.
 */
import { INGREDIENT_ROWS } from './ingredients.rows.ts';

export const ACIDS = [
  'acetic',
  'citric',
  'malic',
  'lactic',
  'tartaric',
  'phosphoric',
  'gluconic',
  'aconitic',
  'quinic',
  'chlorogenic',
] as const;
export type AcidId = (typeof ACIDS)[number];

/** How a figure is known. */
export type Evidence = 'verified' | 'derived' | 'estimated' | 'memory' | 'none';

/** Grams per 100 g unless the name says otherwise. */
export interface Composition {
  readonly waterG: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly carbohydrateG: number;
  readonly sugarsG?: number;
  readonly sucroseG?: number;
  readonly glucoseG?: number;
  readonly fructoseG?: number;
  readonly fibreG: number;
  readonly ashG: number;
  readonly sodiumMg: number;
  readonly alcoholG: number;
  /** Undissociated and dissociated together. */
  readonly acidsG: Readonly<Partial<Record<AcidId, number>>>;
  readonly energyKcal: number;
}

export interface Ingredient {
  readonly id: string;
  readonly name: string;
  readonly category: string;
  readonly densityGPerMl: number;
  /** The household measure that the density comes from. */
  readonly densityNote: string;
  readonly per100g: Composition;
  readonly ph?: number;
  /** US nine and EU fourteen; an empty list of a blend means "read the label", never "free". */
  readonly allergensUs: readonly string[];
  readonly allergensEu: readonly string[];
  /** Of a person's own: how much pulp it brings, ketchup 1; missing where nobody told. */
  readonly pulp?: number;
  /** Of a person's own whose label was not copied down. */
  readonly allergensUnknown?: true;
  /** NDB number in SR28. */
  readonly usdaId?: string;
  readonly source: string;
  readonly evidence: Readonly<Record<'composition' | 'split' | 'density' | 'ph' | 'acid', Evidence>>;
  /** Known exceptions: sums that do not close, energies that do not agree, assumed splits. */
  readonly remarks: readonly string[];
}

const USDA = 'USDA SR28 (2016) abbreviated and weight files; sugar split and alcohol USDA SR27 (2014)';
const TRADE = 'common formulation knowledge';
const EVIDENCE: Readonly<Record<string, Evidence>> = {
  V: 'verified',
  D: 'derived',
  E: 'estimated',
  M: 'memory',
  '-': 'none',
};

const list = (text: string): readonly string[] => (text === '' ? [] : text.split('|'));
const known = (text: string): number | undefined => (text === '' ? undefined : Number(text));

function parseRow(row: string): Ingredient {
  const f = row.split(';');
  const acids = list(f[17]!).map((pair) => {
    const [acid, grams] = pair.split(':');
    return [acid, Number(grams)] as const;
  });
  const letters = f[23]!;
  return {
    id: f[0]!,
    name: f[1]!,
    category: f[2]!,
    densityGPerMl: Number(f[3]),
    densityNote: f[4]!,
    per100g: {
      waterG: Number(f[5]),
      proteinG: Number(f[6]),
      fatG: Number(f[7]),
      carbohydrateG: Number(f[8]),
      sugarsG: known(f[9]!),
      sucroseG: known(f[10]!),
      glucoseG: known(f[11]!),
      fructoseG: known(f[12]!),
      fibreG: Number(f[13]),
      ashG: Number(f[14]),
      sodiumMg: Number(f[15]),
      alcoholG: Number(f[16]),
      acidsG: Object.fromEntries(acids),
      energyKcal: Number(f[19]),
    },
    ph: known(f[18]!),
    allergensUs: list(f[20]!),
    allergensEu: list(f[21]!),
    usdaId: f[22] === '' ? undefined : f[22],
    source: f[22] === '' ? TRADE : USDA,
    evidence: {
      composition: EVIDENCE[letters[0]!]!,
      split: EVIDENCE[letters[1]!]!,
      density: EVIDENCE[letters[2]!]!,
      ph: EVIDENCE[letters[3]!]!,
      acid: EVIDENCE[letters[4]!]!,
    },
    remarks: list(f[24]!),
  };
}

let catalogue: ReadonlyMap<string, Ingredient> | undefined;
/** Read on first use, so that a screen that needs none of it does not pay for it. */
function byId(): ReadonlyMap<string, Ingredient> {
  catalogue ??= new Map(INGREDIENT_ROWS.map((row) => [row.slice(0, row.indexOf(';')), parseRow(row)]));
  return catalogue;
}

/** One row of the catalogue, or undefined where it has no such id. */
export const ingredientById = (id: string): Ingredient | undefined => byId().get(id);

/** All rows, in the order of the table. */
export const allIngredients = (): readonly Ingredient[] => [...byId().values()];

const words = (text: string): string[] =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '');

/**
 * Rows whose name or id holds every word of `text` (a word may be the beginning of one), best first: names that
 * begin with the first word, then the fewest further words, then the order of the table.
 */
export function searchIngredients(text: string, limit = 8): readonly Ingredient[] {
  const wanted = words(text);
  if (wanted.length === 0) return [];
  const found: { ingredient: Ingredient; rank: number }[] = [];
  for (const ingredient of byId().values()) {
    const has = words(`${ingredient.name} ${ingredient.id}`);
    if (!wanted.every((word) => has.some((h) => h.startsWith(word)))) continue;
    const exact = wanted.filter((word) => has.includes(word)).length;
    const begins = has[0]!.startsWith(wanted[0]!) ? 0 : 100;
    found.push({ ingredient, rank: begins - 10 * exact + words(ingredient.name).length });
  }
  found.sort((a, b) => a.rank - b.rank);
  return found.slice(0, limit).map(({ ingredient }) => ingredient);
}
