import type { Composition } from './tables.ts';

/** Kinds of tissue that soften alike. */
export const TISSUES = [
  'pork-loin-ribs',
  'pork-spareribs',
  'beef-ribs',
  'beef',
  'pork-shoulder',
  'lamb',
  'poultry',
] as const;
export type Tissue = (typeof TISSUES)[number];

export interface Cut {
  readonly id: string;
  /** Item of the Institutional Meat Purchase Specifications. */
  readonly imps?: string;
  readonly composition: Composition;
  /** Half thickness of a piece of `massKg` [m]. */
  readonly halfThicknessM: number;
  /** Mass of one ordinary piece [kg]. */
  readonly massKg: number;
  readonly dimensionality: number;
  /** Half thickness over half of the thickest place that a ruler finds [1]. */
  readonly rulerFactor: number;
  readonly evaporatingShare: number;
  readonly juiceToSurfaceShare: number;
  readonly tissue: Tissue;
  /** Bone of the raw mass where it is sold with its bone [1]. */
  readonly boneShare: number;
  /** Whether it is usually sold so. */
  readonly hasBone: boolean;
  readonly isPoultry: boolean;
  /** Working muscle, whose gelatin wets the mouth once it is tender. @source from memory: brisket and shank 1.5–2 % collagen of the raw meat, loins 0.5 % */
  readonly isCollagenRich: boolean;
  /** Doubt of ln(half thickness): from the mass alone, and told neither mass nor thickness. */
  readonly massOnlySdLn: number;
  readonly untoldSdLn: number;
  /** Of the common level, what the fit leaves open. */
  readonly fitSdLn: number;
}
