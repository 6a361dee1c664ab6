import type { CutId, Piece, Pit, PitType } from '@pitwright/model';
import { familyOf } from '../rest-rules.ts';

/**
 * Length × breadth of one item as it lies, with the gap to its neighbour [m²].
 * @source from memory and common practice (no measured set was found); gap a fifth of the face
 */
const ITEM_M2: Readonly<Record<string, number>> = {
  'loin-back-ribs': 0.35 * 0.12 * 1.2,
  spareribs: 0.48 * 0.2 * 1.2,
  'st-louis-ribs': 0.34 * 0.125 * 1.2,
  'beef-back-ribs': 0.35 * 0.17 * 1.2,
  'beef-short-ribs': 0.3 * 0.25 * 1.2,
  'brisket-whole': 0.5 * 0.28 * 1.2,
  'brisket-flat': 0.38 * 0.22 * 1.2,
  'brisket-point': 0.25 * 0.2 * 1.2,
  'pork-shoulder': 0.24 * 0.19 * 1.2,
  'chicken-leg': 0.2 * 0.12 * 1.2,
  'chicken-half': 0.28 * 0.16 * 1.2,
  'chicken-breast': 0.18 * 0.1 * 1.2,
  'chicken-whole': 0.25 * 0.2 * 1.2,
  'spareribs-breast-off': 0.42 * 0.16 * 1.2,
  'rib-tips': 0.25 * 0.06 * 1.2,
  'country-style-ribs': 0.18 * 0.05 * 1.2,
  'pork-picnic': 0.28 * 0.17 * 1.2,
  'pork-shoulder-whole': 0.45 * 0.23 * 1.2,
  'pork-belly': 0.5 * 0.25 * 1.2,
  'pork-loin': 0.6 * 0.15 * 1.2,
  'pork-loin-center': 0.35 * 0.15 * 1.2,
  'chuck-short-ribs': 0.25 * 0.2 * 1.2,
  'beef-clod': 0.4 * 0.25 * 1.2,
  'chuck-roll': 0.45 * 0.25 * 1.2,
  'tri-tip': 0.25 * 0.12 * 1.2,
  'lamb-rack': 0.25 * 0.12 * 1.2,
  'lamb-breast': 0.25 * 0.12 * 1.2,
  'chicken-wing': 0.15 * 0.05 * 1.2,
  'chicken-thigh': 0.12 * 0.09 * 1.2,
  'chicken-drumstick': 0.12 * 0.045 * 1.2,
};
const OTHER_M2 = 0.3 * 0.22 * 1.2;

/** Whole spare ribs are trimmed square before they go on. */
const asItLies = (cut: CutId): string => (cut === 'spareribs' ? 'st-louis-ribs' : cut);

export const footprintM2 = (piece: Piece): number => piece.count * (ITEM_M2[asItLies(piece.cut)] ?? OTHER_M2);

/**
 * Cooking area where the pit names none [m²].
 * @source common practice, no source: usual backyard sizes of each type, all levels
 */
const GRATE_M2: Readonly<Record<PitType, number>> = {
  offset: 0.6,
  kettle: 0.24,
  drum: 0.48,
  bullet: 0.3,
  ceramic: 0.26,
  pellet: 0.5,
  cabinet: 0.8,
  gas: 0.35,
  electric: 0.4,
  oven: 0.32,
  unknown: 0.4,
};

export const grateM2 = (pit: Pit): number => pit.grateArea?.si ?? GRATE_M2[pit.type];

/**
 * Share of a fridge shelf that one item takes, rubbed and wrapped.
 * @source common practice, no source: a 46 × 33 cm tray holds two racks side by side and a third across them;
 *   a shoulder takes half a shelf, sixteen leg quarters a whole one
 */
const ITEM_SHELVES: Readonly<Record<string, number>> = { rack: 1 / 3, large: 0.5, bird: 1 / 16, roast: 0.5 };

export const shelvesOf = (piece: Piece): number => piece.count * ITEM_SHELVES[familyOf(piece.cut)]!;

/** Shelves of a household fridge that are free for the cook, where the kitchen names none. */
export const DEFAULT_SHELVES = 4;
/** A few jars of sauce. */
export const JAR_SHELVES = 0.25;

/**
 * Share of a household oven that one item takes, wrapped.
 * @source common practice, no source: two racks of trays hold ten racks of ribs, or three shoulders
 */
const ITEM_OVEN: Readonly<Record<string, number>> = { rack: 0.1, large: 0.3, bird: 0.02, roast: 0.3 };

export const ovenShareOf = (piece: Piece): number => piece.count * ITEM_OVEN[familyOf(piece.cut)]!;
