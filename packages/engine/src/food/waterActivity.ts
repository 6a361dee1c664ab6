/** Water activity of the two solutes that a sauce is made of: sucrose and sodium chloride. */
import { exp } from '../numeric/elementary.ts';

const GAS_CONSTANT = 8.314462618;
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
  const lnGamma = (Q_J_PER_MOL / (GAS_CONSTANT * (temperatureC + 273.15))) * (1 + A * x + B * x * x) * x * x;
  return (1 - x) * exp(lnGamma);
}

/**
 * Water activity [1] over a sodium chloride solution at 25 °C.
 *
 * @param molality  [mol per kg water], 0 to 6.2 (saturated at 6.146)
 * @source Pitzer's osmotic coefficient; within 0.002 of Robinson & Stokes (1959)
 */
export function saltWaterActivity(molality: number): number {
  if (!(molality >= 0 && molality <= 6.5))
    throw new RangeError(`molality must be in [0, 6.5], got ${molality}`);
  const root = Math.sqrt(molality);
  const osmotic =
    1 -
    (0.3915 * root) / (1 + 1.2 * root) +
    molality * (0.0765 + 0.2664 * exp(-2 * root)) +
    0.00127 * molality * molality;
  return exp(-2 * WATER_KG_PER_MOL * molality * osmotic);
}
