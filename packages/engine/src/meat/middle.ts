/**
 * Two halves of a piece with unlike faces, coupled through its middle: each half is eliminated for itself and answers
 * there like a resistance, so that the flow between them is found with the surfaces, not before or after them.
 */
import type { HalfPiece } from './halfPiece.ts';

/** Flow through the middle found to this [W/m²]; energy closes whatever is left. */
const CLOSE_WM2 = 3e-3;
const MOST_ROUNDS = 20;

/** Conductance between the innermost cells [W/(m²·K)]. */
function middleConductance(upper: HalfPiece, lower: HalfPiece): number {
  // At the middle itself the face of a body with E > 1 would vanish; that of the innermost cell stands for it.
  const face = upper.body.unit.face[1]!;
  return face / (upper.coefficients.middleResistance + lower.coefficients.middleResistance);
}

/** From the lower into the upper half, at the heat that the surfaces last let in [W/m²]. */
function middleFlow(upper: HalfPiece, lower: HalfPiece, perGap: number): number {
  const one = upper.interior;
  const other = lower.interior;
  return (
    perGap *
    (other.middleC +
      other.acrossPerFlow * lower.stage.intoMeatWm2 -
      one.middleC -
      one.acrossPerFlow * upper.stage.intoMeatWm2)
  );
}

/**
 * Solves both surfaces of a stage and the flow between the halves, after both have set out. Air and wall in °C.
 *
 * @param share of the step over which the stage is implicit
 * @param isFactored anew for this stage
 */
export function solveBoth(
  upper: HalfPiece,
  lower: HalfPiece,
  gasC: number,
  wallC: number,
  share: number,
  isFactored: boolean,
): void {
  const one = upper.interior;
  const other = lower.interior;
  if (isFactored) {
    one.factorMiddle(upper.coefficients.link);
    other.factorMiddle(lower.coefficients.link);
  }
  one.setOutMiddle(upper.coefficients.link);
  other.setOutMiddle(lower.coefficients.link);
  const g = middleConductance(upper, lower);
  const perGap = g / (1 + g * (one.middlePerFlow + other.middlePerFlow));
  let through = middleFlow(upper, lower, perGap);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    upper.solveSurface(gasC, wallC, share, through);
    lower.solveSurface(gasC, wallC, share, -through);
    const next = middleFlow(upper, lower, perGap);
    const miss = next - through;
    if (miss < CLOSE_WM2 && miss > -CLOSE_WM2) return;
    through = next;
  }
}
