import { pow } from '../numeric/elementary.ts';

/**
 * Dry air between −20 and 250 °C: within 1 % of a property library from 20 to 150 °C.
 * Conductivity by a power law, viscosity by Sutherland's law, density as an ideal gas.
 */

/** Prandtl number of air [1]; within 1 % of Incropera & DeWitt, Table A.4, from 0 to 350 °C. */
export function airPrandtl(temperatureC: number): number {
  return 0.7095 - temperatureC * (1.35e-4 - 1.7e-7 * temperatureC);
}

/** Thermal conductivity of air [W/mK]. */
export function airConductivityWmK(temperatureC: number): number {
  return 0.02587 * pow((temperatureC + 273.15) / 293.15, 0.84);
}

/** Dynamic viscosity of air [Pa·s]. @source Sutherland's law, U.S. Standard Atmosphere 1976 constants */
export function airViscosityPas(temperatureC: number): number {
  const T = temperatureC + 273.15;
  return (1.458e-6 * T * Math.sqrt(T)) / (T + 110.4);
}

/** Density of dry air [kg/m³]. */
export function airDensityKgM3(temperatureC: number, pressurePa: number): number {
  return (353.05 / (temperatureC + 273.15)) * (pressurePa / 101325);
}

/** Kinematic viscosity of dry air [m²/s]. */
export function airKinematicViscosityM2S(temperatureC: number, pressurePa: number): number {
  return airViscosityPas(temperatureC) / airDensityKgM3(temperatureC, pressurePa);
}
