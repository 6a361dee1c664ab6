import { type Cook, type CutId, type Instant, madeFormula } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';
import { allIngredients, type Ingredient } from '../food/data/ingredients.ts';
import { thawTimeS } from '../safety/thaw.ts';
import { findIngredient } from '../sauce/formulaLines.ts';
import { fuelOf } from './fuel.ts';
import { itemMassKg } from './portions.ts';

export const SECTIONS = ['butcher', 'greengrocer', 'shelves', 'spices', 'fire'] as const;
export type Section = (typeof SECTIONS)[number];

/** What a household and its shops know: by catalogue key, or by cut. */
export interface Market {
  /** At home already [kg]. */
  readonly larderKg?: Readonly<Record<string, number>>;
  readonly packKg?: Readonly<Record<string, number>>;
  /** In the cook's own money. */
  readonly pricePerKg?: Readonly<Record<string, number>>;
}

export interface BuyLine {
  readonly section: Section;
  /** Catalogue key, cut, or `wood`, `charcoal`, `foil`. */
  readonly what: string;
  /** Of an ingredient of one's own. */
  readonly name?: string;
  readonly needKg?: number;
  /** The same as a volume, by the catalogue's density. */
  readonly needM3?: number;
  readonly needM?: number;
  readonly items?: number;
  readonly haveKg: number;
  readonly buyKg?: number;
  readonly packs?: number;
  readonly cost?: number;
  /** Others of the same kind, nearest first. */
  readonly substitutes: readonly string[];
}

export interface BuyingList {
  readonly lines: readonly BuyLine[];
  /** Of the lines with a price; `pricedShare` says of how many. */
  readonly cost?: number;
  readonly pricedShare: number;
  readonly costPerGuest?: number;
  /** For what is bought frozen: into the fridge at the latest. */
  readonly thaw: readonly { readonly pieceId: string; readonly cut: CutId; readonly intoFridgeAt: Instant }[];
}

/** Categories of the catalogue by the shop's own order; the rest stands on shelves. */
const GREENS = new Set(['vegetable', 'fruit']);
const SPICES = new Set(['spice', 'salt']);
const sectionOf = (ingredient: Ingredient): Section =>
  SPICES.has(ingredient.category) ? 'spices' : GREENS.has(ingredient.category) ? 'greengrocer' : 'shelves';

/**
 * Everything to buy for a cook, by shop section, less what is at home.
 * @param litS how long the fire burns [s]
 * @param neededByS when the pieces must be thawed [s since 1970]
 */
export function buyingList(cook: Cook, litS: number, neededByS: number, market: Market = {}): BuyingList {
  const lines = [...meatLines(cook, market), ...formulaLines(cook, market), ...fireLines(cook, litS)];
  const priced = lines.filter((line) => line.cost !== undefined);
  const cost = priced.reduce((sum, line) => sum + line.cost!, 0);
  const guests = cook.guests.adults + cook.guests.children;
  return {
    lines: lines.sort((a, b) => SECTIONS.indexOf(a.section) - SECTIONS.indexOf(b.section)),
    ...(priced.length && { cost }),
    pricedShare: lines.length ? priced.length / lines.length : 0,
    ...(priced.length && guests > 0 && { costPerGuest: cost / guests }),
    thaw: cook.pieces.flatMap((piece) => {
      const massKg = itemMassKg(piece);
      if (massKg === undefined) return [];
      const intoFridgeS = neededByS - thawTimeS('refrigerator', massKg).high;
      return [
        {
          pieceId: piece.id,
          cut: piece.cut,
          intoFridgeAt: Temporal.Instant.fromEpochMilliseconds(Math.round(intoFridgeS) * 1000).toString(),
        },
      ];
    }),
  };
}

/** The same list with the lines of one cut or ingredient taken together. */
export function joinedLines(lines: readonly BuyLine[]): readonly BuyLine[] {
  const byWhat = new Map<string, BuyLine>();
  for (const line of lines) {
    const so = byWhat.get(line.what);
    byWhat.set(line.what, so ? sumOf(so, line) : line);
  }
  return [...byWhat.values()];
}

const added = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined && b === undefined ? undefined : (a ?? 0) + (b ?? 0);

function sumOf(a: BuyLine, b: BuyLine): BuyLine {
  const total = {
    items: added(a.items, b.items),
    needKg: added(a.needKg, b.needKg),
    buyKg: added(a.buyKg, b.buyKg),
    packs: added(a.packs, b.packs),
    cost: added(a.cost, b.cost),
  };
  const known = Object.fromEntries(Object.entries(total).filter(([, value]) => value !== undefined));
  return { ...a, ...known };
}

function priced(
  what: string,
  needKg: number,
  market: Market,
): Pick<BuyLine, 'needKg' | 'haveKg' | 'buyKg' | 'packs' | 'cost'> {
  const haveKg = Math.min(needKg, market.larderKg?.[what] ?? 0);
  const missingKg = needKg - haveKg;
  const packKg = market.packKg?.[what];
  const packs = packKg === undefined ? undefined : Math.ceil(missingKg / packKg - 1e-9);
  const buyKg = packs === undefined ? missingKg : packs * packKg!;
  const price = market.pricePerKg?.[what];
  return {
    needKg,
    haveKg,
    buyKg,
    ...(packs !== undefined && { packs }),
    ...(price !== undefined && { cost: price * buyKg }),
  };
}

const meatLines = (cook: Cook, market: Market): BuyLine[] =>
  cook.pieces.map((piece) => {
    const massKg = itemMassKg(piece);
    return {
      section: 'butcher',
      what: piece.cut,
      items: piece.count,
      haveKg: 0,
      substitutes: [],
      ...(massKg !== undefined && priced(piece.cut, piece.count * massKg, market)),
    };
  });

function formulaLines(cook: Cook, market: Market): BuyLine[] {
  const need = new Map<string, { kg: number; m3: number }>();
  for (const formula of cook.formulas)
    for (const { ingredient, amount } of madeFormula(formula).lines) {
      const density = findIngredient(ingredient, cook.labels)?.densityGPerMl;
      const kg = amount.kind === 'mass' ? amount.si : density ? amount.si * density * 1000 : undefined;
      const so = need.get(ingredient) ?? { kg: 0, m3: 0 };
      need.set(ingredient, {
        kg: so.kg + (kg ?? 0),
        m3: so.m3 + (amount.kind === 'volume' ? amount.si : density ? amount.si / (density * 1000) : 0),
      });
    }
  return [...need].map(([id, { kg, m3 }]) => {
    const row = findIngredient(id, cook.labels);
    return {
      ...(row?.category === 'own' && { name: row.name }),
      section: row ? sectionOf(row) : 'shelves',
      what: id,
      ...(m3 > 0 && { needM3: m3 }),
      substitutes: row && row.category !== 'own' ? nearestOf(row) : [],
      ...priced(id, kg, market),
    };
  });
}

/** The same thing in another measure is no other thing to buy. */
const bought = (id: string): string => id.replace(/_(?:packed|loose)$/, '');

/**
 * Three others of its category, nearest in sugars, water and salt, none of which brings an allergen along. Of
 * condiments none: there the taste decides, and capers would stand in for a pepper sauce.
 */
function nearestOf(row: Ingredient): string[] {
  if (row.category === 'condiment') return [];
  const bringsNothing = (other: Ingredient): boolean =>
    (!other.allergensUnknown || row.allergensUnknown === true) &&
    other.allergensUs.every((one) => row.allergensUs.includes(one)) &&
    other.allergensEu.every((one) => row.allergensEu.includes(one));
  const apart = (other: Ingredient): number => {
    const [a, b] = [row.per100g, other.per100g];
    return (
      Math.abs(a.waterG - b.waterG) +
      Math.abs((a.sugarsG ?? 0) - (b.sugarsG ?? 0)) +
      Math.abs(a.sodiumMg - b.sodiumMg) / 100
    );
  };
  return (
    allIngredients()
      // A curing salt is nobody's stand-in: too much of it poisons.
      .filter(
        (other) =>
          other.category === row.category &&
          bought(other.id) !== bought(row.id) &&
          !other.id.startsWith('cure_') &&
          bringsNothing(other),
      )
      .sort((a, b) => apart(a) - apart(b) || (a.id < b.id ? -1 : 1))
      .slice(0, 3)
      .map((other) => other.id)
  );
}

function fireLines(cook: Cook, litS: number): BuyLine[] {
  const fuel = fuelOf(cook, litS);
  const line = (what: string, rest: Partial<BuyLine>): BuyLine => ({
    section: 'fire',
    what,
    haveKg: 0,
    substitutes: [],
    ...rest,
  });
  return [
    ...(fuel.woodKg.p90 > 0 ? [line('wood', { needKg: fuel.woodKg.p50, buyKg: fuel.woodKg.p90 })] : []),
    ...(fuel.charcoalKg.p90 > 0
      ? [line('charcoal', { needKg: fuel.charcoalKg.p50, buyKg: fuel.charcoalKg.p90 })]
      : []),
    ...(fuel.foilM > 0 ? [line('foil', { needM: fuel.foilM })] : []),
    ...(fuel.paperM > 0 ? [line('paper', { needM: fuel.paperM })] : []),
  ];
}
