/** Between what a person's figures must lie, for the cook file and for the fields of the app alike. */
import { type Quantity, toSi } from './units/quantity.ts';

export interface Limits {
  readonly min: number;
  readonly max: number;
  /** Unit in which the limits are given. */
  readonly unit: string;
}

/** Of a piece. */
export const PIECE_LIMITS = {
  mass: { min: 0.05, max: 20, unit: 'kg' },
  thickness: { min: 5, max: 300, unit: 'mm' },
  /** Length and width of a cut of one's own. */
  side: { min: 10, max: 1000, unit: 'mm' },
  start: { min: -25, max: 30, unit: '°C' },
  solution: { min: 0, max: 30, unit: '%' },
  fatCap: { min: 0, max: 30, unit: 'mm' },
} as const satisfies Readonly<Record<string, Limits>>;

/** Of a stage. */
export const STAGE_LIMITS = {
  for: { min: 1, max: 48 * 60, unit: 'min' },
  at: { min: -30, max: 150, unit: '°C' },
  /** Air or ice water round a chill. */
  chillAt: { min: -30, max: 10, unit: '°C' },
  pit: { min: 50, max: 350, unit: '°C' },
  liquid: { min: 0, max: 2, unit: 'L' },
  every: { min: 5, max: 12 * 60, unit: 'min' },
  /** Core and surface at its end. */
  sign: { min: 0, max: 150, unit: '°C' },
  loss: { min: 1, max: 70, unit: '%' },
  /** From the coals to the meat, and of the bed across. */
  distance: { min: 3, max: 150, unit: 'cm' },
  across: { min: 5, max: 200, unit: 'cm' },
  turn: { min: 1, max: 120, unit: 'min' },
} as const satisfies Readonly<Record<string, Limits>>;

/** Of a pit. */
export const PIT_LIMITS = {
  temperature: { min: 50, max: 350, unit: '°C' },
  driftPerHour: { min: -30, max: 30, unit: 'K' },
  /** Hot end over the middle, middle over the cool end. */
  end: { min: 0, max: 100, unit: 'K' },
  grateArea: { min: 0.02, max: 20, unit: 'm²' },
  steel: { min: 0.3, max: 30, unit: 'mm' },
} as const satisfies Readonly<Record<string, Limits>>;

/** Both ends included. */
export function withinLimits({ kind, si }: Quantity, { min, max, unit }: Limits): boolean {
  // A hair of room, so that a limit written in another unit is still inside.
  const room = 1e-9 * Math.abs(toSi(kind, max, unit));
  return si >= toSi(kind, min, unit) - room && si <= toSi(kind, max, unit) + room;
}
