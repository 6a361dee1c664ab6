/** Water leaving an open surface that does not boil. */

import { airConductivityWmK, airKinematicViscosityM2S, airPrandtl } from '../air/dryAir.ts';
import {
  humidityRatioFromVapour,
  moistAirDensityKgM3,
  moistAirVolumeM3Kg,
  vapourPressurePa,
} from '../air/moistAir.ts';
import { saturationPressurePa } from '../air/saturation.ts';
import { GRAVITY_MS2 } from '../numeric/constants.ts';
import { cbrt, pow } from '../numeric/elementary.ts';

/** A pan of water, or of sauce, in a room. */
export interface OpenSurface {
  readonly waterC: number;
  readonly waterActivity: number;
  readonly airC: number;
  readonly airHumidityRatio: number;
  readonly pressurePa: number;
}

/** Humidity ratio of the air at the surface. @throws RangeError where the water boils */
export const surfaceHumidityRatio = (s: OpenSurface): number =>
  humidityRatioFromVapour(s.waterActivity * saturationPressurePa(s.waterC), s.pressurePa);

const PER_HOUR = 3600;
const SHAH = 35;
/** One standard deviation of the still-air law, relative (deviation from the data of 11 sources, 7–94 °C). */
export const STILL_AIR_SD = 0.18;

/**
 * Flux over still air [kg/m²s]: 35 ρ_w (ρ_a − ρ_w)^⅓ (W_w − W_a) per hour, ρ of the dry air in the mixtures;
 * nothing where the air at the surface is not the lighter.
 *
 * @source Shah, HVAC&R Research 8(1), 2002 (abstract; constant from memory)
 */
export function stillAirFlux(s: OpenSurface): number {
  const surface = surfaceHumidityRatio(s);
  const rhoSurface = 1 / moistAirVolumeM3Kg(s.waterC, surface, s.pressurePa);
  const rhoAir = 1 / moistAirVolumeM3Kg(s.airC, s.airHumidityRatio, s.pressurePa);
  if (rhoAir <= rhoSurface) return 0;
  return (SHAH * rhoSurface * cbrt(rhoAir - rhoSurface) * (surface - s.airHumidityRatio)) / PER_HOUR;
}

const VAPOUR_GAS_CONSTANT = 461.5;

/** Diffusivity of vapour in air [m²/s]. @source D = 1.87e-10 T^2.072 / P, Cengel */
const vapourDiffusivity = (temperatureC: number, pressurePa: number): number =>
  (1.87e-10 * pow(temperatureC + 273.15, 2.072)) / (pressurePa / 101325);

export interface AirGiven {
  readonly kinematicViscosity?: number;
  readonly conductivity?: number;
  readonly prandtl?: number;
}

/**
 * Flux [kg/m²s] and heat coefficient [W/m²K] by the analogy of heat and mass: Sh = 0.15 (Gr Sc)^⅓ with Gr from the
 * densities of the two moist airs; the size of the pan falls out.
 *
 * @source Cengel, heat transfer, example 14-13
 */
export function analogyFlux(s: OpenSurface, given: AirGiven = {}): { flux: number; heatCoefficient: number } {
  const filmC = (s.waterC + s.airC) / 2;
  const nu = given.kinematicViscosity ?? airKinematicViscosityM2S(filmC, s.pressurePa);
  const k = given.conductivity ?? airConductivityWmK(filmC);
  const prandtl = given.prandtl ?? airPrandtl(filmC);
  const diffusivity = vapourDiffusivity(filmC, s.pressurePa);
  const surface = surfaceHumidityRatio(s);
  const rhoSurface = moistAirDensityKgM3(s.waterC, surface, s.pressurePa);
  const rhoAir = moistAirDensityKgM3(s.airC, s.airHumidityRatio, s.pressurePa);
  const buoyancy = (GRAVITY_MS2 * (rhoAir - rhoSurface)) / ((rhoAir + rhoSurface) / 2);
  // Gr/L³; a heavy layer at the surface lies still.
  const grashofPerCube = Math.max(0, buoyancy) / (nu * nu);
  const massCoefficient = 0.15 * cbrt((grashofPerCube * nu) / diffusivity) * diffusivity;
  const heatCoefficient = 0.15 * cbrt(grashofPerCube * prandtl) * k;
  const surfacePa = s.waterActivity * saturationPressurePa(s.waterC);
  const airPa = vapourPressurePa(s.airHumidityRatio, s.pressurePa);
  const vapour = (pa: number, celsius: number): number => pa / (VAPOUR_GAS_CONSTANT * (celsius + 273.15));
  return {
    flux: massCoefficient * (vapour(surfacePa, s.waterC) - vapour(airPa, s.airC)),
    heatCoefficient,
  };
}

/** Flux in moving air near room temperature [kg/m²s]: (25 + 19 v)(W_s − W_a) per hour. @source pool formula, worked example */
export const windFlux = (speedMs: number, surfaceRatio: number, airRatio: number): number =>
  ((25 + 19 * speedMs) * (surfaceRatio - airRatio)) / PER_HOUR;
