/** Specific and latent heats of the piece model. */

/** [J/(kg·K)] */
export const SPECIFIC_HEAT_WATER = 4186;
const SPECIFIC_HEAT_PROTEIN = 2010;
/** Fat and ash together [J/(kg·K)]. */
const SPECIFIC_HEAT_FAT = 1990;

/** Heat capacity of all but the water, per kg of protein [J/(kg·K)]. */
export const solidsCapacityJkgK = (protein: number, fatAndAsh: number): number =>
  SPECIFIC_HEAT_PROTEIN + (SPECIFIC_HEAT_FAT * fatAndAsh) / protein;

/** How much less heat evaporation takes for each kelvin [J/(kg·K)]. */
export const LATENT_SLOPE = 2361;
/** Of water in air [J/kg]; 0 to 120 °C. */
export const latentHeatJkg = (temperatureC: number): number => 2.501e6 - LATENT_SLOPE * temperatureC;
