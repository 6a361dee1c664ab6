/** Sucrose in water: density, viscosity, solubility, boiling. */
import { exp, log10 } from '../numeric/elementary.ts';

const LN10 = Math.LN10;
const refuse = (name: string, low: number, high: number, got: number): never => {
  throw new RangeError(`${name} must be in [${low}, ${high}], got ${got}`);
};

/**
 * Density of an aqueous sucrose solution [kg/m³].
 *
 * @param sucrose  Mass fraction, 0 to 0.85
 * @param temperatureC  0 to 100
 * @source form from memory; within 0.25 % of the CRC table at 10–80 % and 20 °C
 */
export function sucroseDensity(sucrose: number, temperatureC: number): number {
  if (!(sucrose >= 0 && sucrose <= 0.85)) refuse('sucrose', 0, 0.85, sucrose);
  const x = 100 * sucrose;
  return 1000 * (1 + (x * (x + 200)) / 54000) * (1 - (0.036 * (temperatureC - 20)) / (160 - temperatureC));
}

/**
 * Viscosity of an aqueous sucrose solution [mPa·s].
 *
 * @param sucrose  Mass fraction, 0 to 0.80
 * @param temperatureC  0 to 100
 * @source Génotelle form after Mathlouthi & Reiser, from memory; ±3 % of the CRC table at 20 °C for 20–74 %,
 *   within 8 % at 20–80 °C, up to 14 % below 10 °C (60 % at 5 °C: 175 against 156)
 */
export function sucroseViscosityMPas(sucrose: number, temperatureC: number): number {
  if (!(sucrose >= 0 && sucrose <= 0.8)) refuse('sucrose', 0, 0.8, sucrose);
  const x = 100 * sucrose;
  const n = x / (1900 - 18 * x);
  const theta = (30 - temperatureC) / (91 + temperatureC);
  const steep = n === 0 ? 0 : 43.1 * exp(1.25 * LN10 * log10(n));
  return exp(LN10 * (22.46 * n - 0.114 + theta * (1.1 + steep)));
}

/**
 * Mass fraction of sucrose in the saturated solution.
 *
 * @param temperatureC  0 to 100
 * @source Vavrinecz, from memory; within 0.006 of Mohos, Confectionery and Chocolate Engineering (2010), app. 2
 */
export function sucroseSolubility(temperatureC: number): number {
  if (!(temperatureC >= 0 && temperatureC <= 100)) refuse('temperatureC', 0, 100, temperatureC);
  const t = temperatureC;
  return (64.397 + 0.07251 * t + 0.0020569 * t * t - 9.035e-6 * t * t * t) / 100;
}
