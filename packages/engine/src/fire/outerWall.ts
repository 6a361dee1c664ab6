import { SEA_LEVEL_PA } from '../air/atmosphere.ts';
import { airConductivityWmK, airKinematicViscosityM2S, airPrandtl } from '../air/dryAir.ts';
import { crossFlowNusselt, mixedConvectionWm2K, naturalNusselt, rayleighNumber } from '../heat/convection.ts';
import { radiationWm2K } from '../heat/radiation.ts';
import { rootBetween } from '../numeric/roots.ts';

export interface OuterWall {
  readonly insideC: number;
  readonly airC: number;
  readonly windMs: number;
  readonly diameterM: number;
  readonly innerWm2K: number;
  /** Of the wall itself [m²K/W]; steel has none worth counting. */
  readonly resistanceM2KW: number;
  readonly emissivity: number;
}

export interface OuterWallState {
  readonly transmittanceWm2K: number;
  readonly skinC: number;
  readonly outerWm2K: number;
}

/** Outer coefficient of a round body at a skin temperature: natural and wind together, and radiation to the air. */
export function outerCoefficientWm2K(wall: OuterWall, skinC: number): number {
  const filmC = 0.5 * (skinC + wall.airC);
  const viscosity = airKinematicViscosityM2S(filmC, SEA_LEVEL_PA);
  const prandtl = airPrandtl(filmC);
  const perLength = airConductivityWmK(filmC) / wall.diameterM;
  const Ra = rayleighNumber(wall.diameterM, skinC - wall.airC, 1 / (filmC + 273.15), viscosity, prandtl);
  const natural = naturalNusselt('horizontal-cylinder', Ra, prandtl) * perLength;
  const wind =
    wall.windMs === 0 ? 0 : crossFlowNusselt((wall.windMs * wall.diameterM) / viscosity, prandtl) * perLength;
  return mixedConvectionWm2K(natural, wind) + radiationWm2K(wall.emissivity, skinC, wall.airC);
}

/** Steady wall of a round body: the skin temperature at which heat through it and heat off it agree. */
export function outerWall(wall: OuterWall): OuterWallState {
  const within = 1 / wall.innerWm2K + wall.resistanceM2KW;
  const skinC =
    wall.insideC === wall.airC
      ? wall.airC
      : rootBetween(
          (skin) => outerCoefficientWm2K(wall, skin) * (skin - wall.airC) - (wall.insideC - skin) / within,
          wall.airC,
          wall.insideC,
          1e-9,
        );
  const outerWm2K = outerCoefficientWm2K(wall, skinC);
  return { skinC, outerWm2K, transmittanceWm2K: 1 / (within + 1 / outerWm2K) };
}
