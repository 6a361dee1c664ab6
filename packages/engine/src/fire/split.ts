import { exp } from '../numeric/elementary.ts';
import type { WoodGravity } from './data/species.ts';

/** Moisture at which the second gravity is measured, and from which wood no longer swells. */
const AIR_DRY = 0.12;
const SATURATION = 0.3;

/** Specific gravity at a moisture, oven-dry mass over volume there; 0 ≤ x ≤ 0.30. @source Wood Handbook ch. 4, from memory */
export const gravityAt = ({ basic, at12 }: WoodGravity, dryBasis: number): number =>
  at12 + ((basic - at12) * (dryBasis - AIR_DRY)) / (SATURATION - AIR_DRY);

/** Density with its water [kg/m³]. @source Wood Handbook ch. 4 */
export const woodDensityKgM3 = (gravity: number, dryBasis: number): number => 1000 * gravity * (1 + dryBasis);

/** Mass of a split [kg]; the diameter is that of the circle of equal area. */
export const splitMassKg = (densityKgM3: number, diameterM: number, lengthM: number): number =>
  ((densityKgM3 * Math.PI) / 4) * diameterM * diameterM * lengthM;

/** One split on the fire. */
export interface Split {
  /** Heat it gives in all: efficiency × mass × net value [J]. */
  readonly heatJ: number;
  /** Share of the heat that flames; the rest glows as char. */
  readonly volatileShare: number;
  readonly lagS: number;
  readonly burnS: number;
  readonly charConstantS: number;
}

/**
 * Power [W] and heat released so far [J] of a split, `timeS` after it was laid on.
 *
 * Flames follow a gamma law of shape 3 whose mean is a third of the burn time; char glows from then on and fades with
 * its own time constant. @source volatile share 0.65 and constants are assumptions, to be fitted to a pit
 */
export function splitBurn(
  split: Split,
  timeS: number,
): { readonly powerW: number; readonly releasedJ: number } {
  const s = timeS - split.lagS;
  if (!(s > 0)) return { powerW: 0, releasedJ: 0 };
  const thetaS = split.burnS / 9;
  const x = s / thetaS;
  const fade = exp(-x);
  const flamed = 1 - fade * (1 + x + (x * x) / 2);
  const flaming = (x * x * fade) / (2 * thetaS);
  const glowS = s - 3 * thetaS;
  const glow = glowS > 0 ? exp(-glowS / split.charConstantS) : 1;
  const glowing = glowS > 0 ? glow / split.charConstantS : 0;
  const { volatileShare: v, heatJ } = split;
  return {
    powerW: heatJ * (v * flaming + (1 - v) * glowing),
    releasedJ: heatJ * (v * flamed + (1 - v) * (1 - glow)),
  };
}
