import { PIECE_LIMITS } from '../limits.ts';
import { OWN_FATS, type OwnCut, type Piece } from '../nouns.ts';
import { printCookQuantity } from '../units/cook-quantity.ts';
import { quantity } from '../units/quantity.ts';
import { type Form, type Locate, optional, record, required } from './form.ts';
import type { Reader } from './reader.ts';
import { measure, word, yesNo } from './values.ts';

export const ownCut: Form<OwnCut> = record<OwnCut>({
  length: required('length', measure('length', PIECE_LIMITS.side)),
  width: required('width', measure('length', PIECE_LIMITS.side)),
  skin: optional('skin', yesNo),
  fat: optional('fat', word(OWN_FATS)),
});

/** Raw meat, kg/m³; what a block of the told sides would weigh is known to no better. */
const MEAT_KG_M3 = 1060;
/** A piece of meat fills so much of the block round it; outside, a figure is a slip. From memory: brisket 0.4, racks near 1. */
const FILLS = { least: 0.25, most: 1.15 };

/** What a block of the told sides would weigh [kg]. */
const blockKg = (length: number, width: number, thickness: number): number =>
  MEAT_KG_M3 * length * width * thickness;

export type OwnMisfit = 'thickness' | 'sides' | 'mass';

/** What of a cut of one's own does not fit together: no thickness, sides out of order, a mass that the block cannot have. */
export function ownMisfit({ own, thickness, mass }: Partial<Piece>): OwnMisfit | undefined {
  if (!own) return undefined;
  if (!thickness) return 'thickness';
  const { length, width } = own;
  if (!length || !width) return undefined;
  if (!(thickness.si <= width.si && width.si <= length.si)) return 'sides';
  const block = blockKg(length.si, width.si, thickness.si);
  return mass && !(mass.si >= FILLS.least * block && mass.si <= FILLS.most * block) ? 'mass' : undefined;
}

/** What the sides, the thickness and the mass of a cut of one's own say of each other. */
export function checkOwnCut(piece: Partial<Piece>, locate: Locate, reader: Reader): void {
  const { own, thickness, mass } = piece;
  switch (ownMisfit(piece)) {
    case 'thickness':
      reader.report(locate('own-cut'), 'file.own-thickness');
      return;
    case 'sides':
      reader.report(locate('own-cut'), 'file.own-sides', {
        length: printCookQuantity(own!.length),
        width: printCookQuantity(own!.width),
        thickness: printCookQuantity(thickness!),
      });
      return;
    case 'mass': {
      const block = blockKg(own!.length.si, own!.width.si, thickness!.si);
      reader.report(locate('mass'), 'file.own-mass', {
        mass: printCookQuantity(mass!),
        block: printCookQuantity(quantity('mass', Number(block.toPrecision(2)), 'kg')),
      });
    }
  }
}
