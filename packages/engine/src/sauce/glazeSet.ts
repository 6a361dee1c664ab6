/** A brushed coat that dries to a glaze. */

/** Solids at which a glaze no longer runs or sticks to the tongs [1]. */
const SET_SOLIDS = 0.78;

/** Time [s] for a coat to dry from `solids` to `setSolids`: ρ h (1 − s1/s2)/flux; 0 where it is set already. */
export const glazeSetTimeS = (given: {
  readonly filmM: number;
  readonly densityKgM3: number;
  readonly solids: number;
  readonly setSolids?: number;
  /** [kg/m²s] */
  readonly evaporationFlux: number;
}): number =>
  (given.densityKgM3 * given.filmM * Math.max(0, 1 - given.solids / (given.setSolids ?? SET_SOLIDS))) /
  given.evaporationFlux;
