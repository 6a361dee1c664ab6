/** Sucrose in water: density, viscosity, solubility, boiling. */
import { exp, log10 } from '../numeric/elementary.ts';

const LN10 = Math.LN10;
const refuse = (name: string, low: number, high: number, got: number): never => {
  throw new RangeError(`${name} must be in [${low}, ${high}], got ${got}`);
};

/** Density of water [kg/m³] at 1 atm, 0 to 100 °C. @source Kell 1975 */
const waterDensity = (t: number): number =>
  (999.83952 +
    t * (16.952577 + t * (-7.9905127e-3 + t * (-4.6241757e-5 + t * (1.0584601e-7 - t * 2.8103006e-10))))) /
  (1 + 1.6887236e-2 * t);

/** Powers of the mass fraction, from the first on, for each power of (T − 20 °C)/100 K. */
const SUGAR_DENSITY: readonly (readonly number[])[] = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
];

/**
 * Density of an aqueous sucrose solution [kg/m³].
 *
 * @param sucrose  Mass fraction, 0 to 0.85
 * @param temperatureC  0 to 100; the equation was fitted to 80 °C
 * @source Emmerich & Emmerich 1994, equation of ICUMSA (SPS-4); within 0.03 % of the CRC table at 20 °C
 */
export function sucroseDensity(sucrose: number, temperatureC: number): number {
  if (!(sucrose >= 0 && sucrose <= 0.85)) refuse('sucrose', 0, 0.85, sucrose);
  const warmth = (temperatureC - 20) / 100;
  const series = (factors: readonly number[], x: number): number =>
    factors.reduceRight((sum, factor) => sum * x + factor, 0);
  const sugar = SUGAR_DENSITY.map((factors) => sucrose * series(factors, sucrose));
  return waterDensity(temperatureC) + series(sugar, warmth);
}

/**
 * Viscosity of an aqueous sucrose solution [mPa·s].
 *
 * @param sucrose  Mass fraction, 0 to 0.80
 * @param temperatureC  0 to 100
 * @source form of Génotelle after Mathlouthi & Reiser with a term in θ², fitted to the CRC tables (20, 40 and 60 %, 0 to
 *   100 °C; 10–74 % at 20 °C) and, above 60 %, to that form with its own constants. Within 4 % of the tables from 20 °C
 *   up; colder up to 8 % high, where the table at 60 % is not smooth (its 15 °C lies 5 % under its neighbours)
 */
export function sucroseViscosityMPas(sucrose: number, temperatureC: number): number {
  if (!(sucrose >= 0 && sucrose <= 0.8)) refuse('sucrose', 0, 0.8, sucrose);
  const x = 100 * sucrose;
  const n = x / (1900 - 18 * x);
  const theta = (34.178 - temperatureC) / (112.67 + temperatureC);
  const steep = n === 0 ? 0 : 51.973 * exp(1.2904 * LN10 * log10(n));
  return exp(LN10 * (21.5561 * n - 0.14397 + theta * (1.3 + steep + 5.846 * theta * n)));
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
