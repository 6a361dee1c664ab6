import type { Cook, CutId, Guests, Piece, Range } from '@pitwright/model';
import { findCut } from '../meat/cuts.ts';
import { NORMAL_P90_SD } from '../numeric/constants.ts';
import { erfc } from '../numeric/erfc.ts';
import { edibleYield, yieldMoments } from './yields.ts';

/**
 * Cooked boneless meat that one adult eats [kg]. @source catering tables: 5–8 oz (140–225 g) an adult; children half
 * (common practice, no source)
 */
const ADULT_KG = { p10: 0.14, p50: 0.18, p90: 0.225 };
const CHILD_SHARE = 0.5;
/** @source common practice, no source */
const APPETITE = { small: 0.8, ordinary: 1, big: 1.25 } as const;
const WITHOUT_OTHER_DISHES = 1.2;
/** One person's appetite against the table's: what parts one eater from another. @source common practice, no source */
const EATER_SD = 0.3;

/** A sum known by mean and standard deviation [kg]. */
export interface Amount {
  readonly meanKg: number;
  readonly sdKg: number;
}

const rangeOf = ({ meanKg, sdKg }: Amount): Range => ({
  p10: Math.max(0, meanKg - NORMAL_P90_SD * sdKg),
  p50: meanKg,
  p90: meanKg + NORMAL_P90_SD * sdKg,
  neverShare: 0,
});

/** What the guests eat of cooked boneless meat: a table eats alike, and each eater differs besides. */
export function demandOf(guests: Guests): Amount {
  const each =
    ADULT_KG.p50 *
    APPETITE[guests.appetite ?? 'ordinary'] *
    (guests.otherDishes === 0 ? WITHOUT_OTHER_DISHES : 1);
  const shares = guests.adults + CHILD_SHARE * guests.children;
  const squares = guests.adults + CHILD_SHARE * CHILD_SHARE * guests.children;
  const tableSd = ((ADULT_KG.p90 - ADULT_KG.p10) / (2 * NORMAL_P90_SD)) * (each / ADULT_KG.p50);
  const own = EATER_SD * each;
  return {
    meanKg: each * shares,
    sdKg: Math.sqrt(tableSd * tableSd * shares * shares + own * own * squares),
  };
}

/** Raw mass of one item as bought [kg]: told, else what is usual for its cut. */
export const itemMassKg = (piece: Pick<Piece, 'mass' | 'cut'>): number | undefined =>
  piece.mass?.si ?? findCut(piece.cut)?.massKg;

/**
 * What one piece gives, off the bone. Alike items share half of the doubt of their yield.
 * @returns undefined for a cut of unknown yield or mass
 */
export function edibleOf(piece: Pick<Piece, 'mass' | 'cut' | 'count'>): Amount | undefined {
  const known = edibleYield(piece.cut);
  const massKg = itemMassKg(piece);
  if (!known || massKg === undefined) return undefined;
  const { mean, sd } = yieldMoments(known);
  const spread = Math.sqrt((1 + piece.count) / (2 * piece.count));
  return { meanKg: piece.count * massKg * mean, sdKg: piece.count * massKg * sd * spread };
}

/** Chance that somebody goes short: the table eats more than there is. */
export function shortChance(supply: Amount, demand: Amount): number {
  const sd = Math.sqrt(supply.sdKg * supply.sdKg + demand.sdKg * demand.sdKg);
  if (!(sd > 0)) return supply.meanKg >= demand.meanKg ? 0 : 1;
  return 0.5 * erfc((supply.meanKg - demand.meanKg) / (sd * Math.SQRT2));
}

const sum = (amounts: readonly Amount[]): Amount => ({
  meanKg: amounts.reduce((total, amount) => total + amount.meanKg, 0),
  sdKg: Math.sqrt(amounts.reduce((total, amount) => total + amount.sdKg * amount.sdKg, 0)),
});

export interface Portions {
  readonly pieces: readonly {
    readonly pieceId: string;
    readonly boughtKg: number;
    readonly edible: Range;
    /** Off the bone, each guest. */
    readonly perGuestKg: number;
  }[];
  readonly edible: Range;
  readonly wanted: Range;
  readonly shortChance: number;
  readonly leftOver: Range;
  /** Pieces whose yield nobody knows: they count for nothing above. */
  readonly unknownPieceIds: readonly string[];
}

/** Whether the meat of a cook is enough for its guests. */
export function portionsOf(cook: Pick<Cook, 'pieces' | 'guests'>): Portions {
  const eaters = Math.max(1, cook.guests.adults + CHILD_SHARE * cook.guests.children);
  const known = cook.pieces.flatMap((piece) => {
    const edible = edibleOf(piece);
    return edible ? [{ piece, edible }] : [];
  });
  const supply = sum(known.map(({ edible }) => edible));
  const demand = demandOf(cook.guests);
  return {
    pieces: known.map(({ piece, edible }) => ({
      pieceId: piece.id,
      boughtKg: piece.count * itemMassKg(piece)!,
      edible: rangeOf(edible),
      perGuestKg: edible.meanKg / eaters,
    })),
    edible: rangeOf(supply),
    wanted: rangeOf(demand),
    shortChance: shortChance(supply, demand),
    leftOver: rangeOf({
      meanKg: Math.max(0, supply.meanKg - demand.meanKg),
      sdKg: Math.sqrt(supply.sdKg * supply.sdKg + demand.sdKg * demand.sdKg),
    }),
    unknownPieceIds: cook.pieces
      .filter((piece) => !known.some((one) => one.piece === piece))
      .map((piece) => piece.id),
  };
}

/** More than this nobody lays on one grate. */
const MOST_ITEMS = 200;

/**
 * Fewest items of a cut with which, beside the other pieces, at most `shortAsked` of such tables run short.
 * @returns undefined for a cut of unknown yield
 */
export function itemsNeeded(
  guests: Guests,
  item: { readonly cut: CutId; readonly massKg?: number },
  others: readonly Piece[] = [],
  shortAsked = 0.1,
): number | undefined {
  const demand = demandOf(guests);
  const rest = others.flatMap((piece) => edibleOf(piece) ?? []);
  const mass = item.massKg === undefined ? {} : { mass: { kind: 'mass' as const, si: item.massKg } };
  for (let count = 0; count <= MOST_ITEMS; count++) {
    const own = count === 0 ? [] : [edibleOf({ cut: item.cut, count, ...mass })];
    if (own.some((amount) => amount === undefined)) return undefined;
    if (shortChance(sum([...rest, ...(own as Amount[])]), demand) <= shortAsked) return count;
  }
  return undefined;
}

/** A longer table than this nobody cooks for alone. */
const MOST_SERVED = 200;

/**
 * How many grown people the pieces feed, so that at most `shortAsked` of such tables run short.
 * @returns 0 where not even one is sure to be fed, or where no yield is known
 */
export function tableServed(pieces: readonly Piece[], shortAsked = 0.1): number {
  const supply = sum(pieces.flatMap((piece) => edibleOf(piece) ?? []));
  const isEnough = (adults: number): boolean =>
    shortChance(supply, demandOf({ adults, children: 0 })) <= shortAsked;
  let served = 0;
  while (served < MOST_SERVED && isEnough(served + 1)) served += 1;
  return served;
}
