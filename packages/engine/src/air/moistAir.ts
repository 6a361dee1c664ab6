/**
 * Moist air as an ideal mixture of dry air and water vapour, per kg of dry air.
 *
 * Above boiling a relative humidity means nothing, so inside the pit the humidity ratio W [kg water / kg dry air]
 * is carried. @source ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 20, 26, 30; constants of that chapter
 */

/** Molar mass of water over that of dry air. */
export const WATER_TO_AIR = 0.621945;
const GAS_CONSTANT_DRY_AIR = 287.042;

/** W from the vapour pressure [Pa], which must stay below the air pressure [Pa]. @throws RangeError else */
export function humidityRatioFromVapour(vapourPa: number, pressurePa: number): number {
  if (!(vapourPa >= 0 && vapourPa < pressurePa))
    throw new RangeError(`vapourPa must be in [0, pressurePa = ${pressurePa}), got ${vapourPa}`);
  return (WATER_TO_AIR * vapourPa) / (pressurePa - vapourPa);
}

/** Vapour pressure [Pa] of air that holds W at this air pressure [Pa]. */
export function vapourPressurePa(humidityRatio: number, pressurePa: number): number {
  return (pressurePa * humidityRatio) / (WATER_TO_AIR + humidityRatio);
}

/** Enthalpy [J per kg dry air]; datum dry air and liquid water at 0 °C. */
export function moistAirEnthalpyJKg(dryBulbC: number, humidityRatio: number): number {
  return 1000 * (1.006 * dryBulbC + humidityRatio * (2501 + 1.86 * dryBulbC));
}

/** Volume [m³ per kg dry air]. */
export function moistAirVolumeM3Kg(dryBulbC: number, humidityRatio: number, pressurePa: number): number {
  return (GAS_CONSTANT_DRY_AIR * (dryBulbC + 273.15) * (1 + 1.607858 * humidityRatio)) / pressurePa;
}

/** Density of the moist air [kg/m³]: air and vapour together. */
export function moistAirDensityKgM3(dryBulbC: number, humidityRatio: number, pressurePa: number): number {
  return (1 + humidityRatio) / moistAirVolumeM3Kg(dryBulbC, humidityRatio, pressurePa);
}
