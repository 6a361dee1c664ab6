/** A brushed coat that dries to a glaze. */

/** Solids at which a glaze no longer runs or sticks to the tongs [1]. */
export const SET_SOLIDS = 0.78;

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

/** Solids below which a glaze runs off before it sets [1]. */
export const RUNS_OFF_BELOW = 0.4;

export interface CoatTime {
  readonly lowS: number;
  readonly highS: number;
  readonly runsOff: boolean;
}

/** How long one brushed coat takes to set in a pit of 110–135 °C. */
export function coatSetTime(filmM: number, densityKgM3: number, solids: number): CoatTime {
  const at = (evaporationFlux: number): number =>
    glazeSetTimeS({ filmM, densityKgM3, solids, evaporationFlux });
  return { lowS: at(PIT_FLUX_KG_M2S.high), highS: at(PIT_FLUX_KG_M2S.low), runsOff: solids < RUNS_OFF_BELOW };
}

/** Equivalent wet flux of a pit of 110–135 °C [kg/m²s] (0.4–0.8 kg/m²h, from memory). */
const PIT_FLUX_KG_M2S = { low: 0.4 / 3600, high: 0.8 / 3600 };
