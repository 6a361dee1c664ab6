import type { Cook, CutId, Piece } from '@pitwright/model';
import { itemsNeeded, portionsOf } from './portions.ts';

/** "Three cancel", "five more come": the same cook for other people. Never below nobody. */
export const withGuests = (
  cook: Cook,
  change: { readonly adults?: number; readonly children?: number },
): Cook => ({
  ...cook,
  guests: {
    ...cook.guests,
    adults: Math.max(0, cook.guests.adults + (change.adults ?? 0)),
    children: Math.max(0, cook.guests.children + (change.children ?? 0)),
  },
});

/** What a shop has in place of what was asked. */
export interface ShopHas {
  readonly cut: CutId;
  readonly massKg: number;
  /** Most that it has; missing: enough. */
  readonly atMost?: number;
}

/** "The shop has only …": the piece replaced by as many of the other cut as keep the table as well fed as before. */
export function withOtherCut(cook: Cook, pieceId: string, shop: ShopHas): Cook {
  const piece = cook.pieces.find((one) => one.id === pieceId);
  if (!piece) throw new RangeError(`no piece ${pieceId}`);
  const others = cook.pieces.filter((one) => one !== piece);
  const wanted =
    itemsNeeded(cook.guests, shop, others, Math.max(portionsOf(cook).shortChance, 0.01)) ?? piece.count;
  const count = Math.max(1, Math.min(wanted, shop.atMost ?? wanted));
  const { thickness: _, ...rest } = piece;
  const bought: Piece = { ...rest, cut: shop.cut, count, mass: { kind: 'mass', si: shop.massKg } };
  return { ...cook, pieces: cook.pieces.map((one) => (one === piece ? bought : one)) };
}
