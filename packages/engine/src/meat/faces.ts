/**
 * A rack has unlike faces: open meat on one side, bones under a membrane on the other.
 *
 * The piece is one symmetric body; its open share of the face is the mean of both sides, A_f = (1 + s)/2, with s what the
 * bone side dries of what the meat side does. How much that simplifies: docs/models/meat.md, "Unlike faces".
 *
 * @source s 0.3 to 0.5, common practice, no source: the membrane holds water back, bare intercostal meat does not; the
 * middle is the fitted share of racks (calibration)
 */
import type { Cut } from './cuts.ts';

/** s with the membrane left on, pulled off, and as fitted where nobody told. */
const MEMBRANE_ON = 0.3;
const MEMBRANE_OFF = 0.5;
const UNTOLD = 0.4;

/** Slabs of ribs; strips of cartilage and lamb ribs carry no membrane that matters. */
export const hasMembrane = (cut: Cut): boolean => cut.tissue.endsWith('ribs') && cut.id !== 'rib-tips';

/** The cut with its membrane left on or pulled off; a cut without one as it is. */
export function withMembrane(cut: Cut, isOn: boolean): Cut {
  if (!hasMembrane(cut)) return cut;
  const boneSide = isOn ? MEMBRANE_ON : MEMBRANE_OFF;
  return { ...cut, evaporatingShare: cut.evaporatingShare + (boneSide - UNTOLD) / 2 };
}
