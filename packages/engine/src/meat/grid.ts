import { exp, log } from '../numeric/elementary.ts';

/**
 * Cells from the thermal centre (0) to the surface (n − 1), fine at the surface, for half thickness 1 m:
 * r_i = 1 − (1 − i/n)^1.5, face factor a_i = r_i^(E−1), volume per outer face (r_{i+1}^E − r_i^E)/E.
 * Lagrangian on the dry solids: the grid stays that of the raw piece.
 */
export interface UnitGrid {
  readonly cells: number;
  /** length n + 1 */
  readonly radius: Float64Array;
  /** length n + 1 */
  readonly face: Float64Array;
  /** length n */
  readonly volume: Float64Array;
}

const positivePower = (x: number, y: number): number => (x === 0 ? (y === 0 ? 1 : 0) : exp(y * log(x)));

export function unitGrid(cells: number, dimensionality: number): UnitGrid {
  const radius = new Float64Array(cells + 1);
  const face = new Float64Array(cells + 1);
  const volume = new Float64Array(cells);
  for (let i = 0; i <= cells; i++) {
    radius[i] = 1 - positivePower(1 - i / cells, 1.5);
    face[i] = positivePower(radius[i]!, dimensionality - 1);
  }
  for (let i = 0; i < cells; i++)
    volume[i] =
      (positivePower(radius[i + 1]!, dimensionality) - positivePower(radius[i]!, dimensionality)) /
      dimensionality;
  return { cells, radius, face, volume };
}
