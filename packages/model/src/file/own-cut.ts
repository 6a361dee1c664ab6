import type { Node } from 'yaml';
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

/** What the sides, the thickness and the mass of a cut of one's own say of each other. */
export function checkOwnCut(piece: Partial<Piece>, locate: Locate, reader: Reader): void {
  const { own, thickness, mass } = piece;
  if (!own) return;
  const at: Node = locate('own-cut');
  if (!thickness) {
    reader.report(at, 'file.own-thickness');
    return;
  }
  const { length, width } = own;
  if (!length || !width) return;
  if (!(thickness.si <= width.si && width.si <= length.si)) {
    reader.report(at, 'file.own-sides', {
      length: printCookQuantity(length),
      width: printCookQuantity(width),
      thickness: printCookQuantity(thickness),
    });
    return;
  }
  const blockKg = MEAT_KG_M3 * length.si * width.si * thickness.si;
  if (mass && !(mass.si >= FILLS.least * blockKg && mass.si <= FILLS.most * blockKg))
    reader.report(locate('mass'), 'file.own-mass', {
      mass: printCookQuantity(mass),
      block: printCookQuantity(quantity('mass', Number(blockKg.toPrecision(2)), 'kg')),
    });
}
