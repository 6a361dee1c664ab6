import { pow } from '../numeric/elementary.ts';

/**
 * Dry air between −20 and 250 °C: conductivity within 1 % of Lemmon & Jacobsen 2004 to 180 °C, 1.7 % at 250 °C.
 * Conductivity by a power law, viscosity by Sutherland's law, density as an ideal gas.
 */

/** Prandtl number of air [1], −20 to 350 °C: between Lemmon & Jacobsen 2004 and Incropera & DeWitt, Table A.4, within 1.4 % of both. */
export function airPrandtl(temperatureC: number): number {
  return 0.7124 - temperatureC * (1.874e-4 - 4.034e-7 * temperatureC);
}

/** Thermal conductivity of air [W/mK]. */
export function airConductivityWmK(temperatureC: number): number {
  return 0.02587 * pow((temperatureC + 273.15) / 293.15, 0.84);
}

/** Dynamic viscosity of air [Pa·s]. @source Sutherland's law, constants fitted to Lemmon & Jacobsen 2004, −20 to 350 °C, within 0.4 % */
export function airViscosityPas(temperatureC: number): number {
  const T = temperatureC + 273.15;
  return (1.51394e-6 * T * Math.sqrt(T)) / (T + 124.5);
}

/** Density of dry air [kg/m³]. */
export function airDensityKgM3(temperatureC: number, pressurePa: number): number {
  return (353.05 / (temperatureC + 273.15)) * (pressurePa / 101325);
}

/** Kinematic viscosity of dry air [m²/s]. */
export function airKinematicViscosityM2S(temperatureC: number, pressurePa: number): number {
  return airViscosityPas(temperatureC) / airDensityKgM3(temperatureC, pressurePa);
}
