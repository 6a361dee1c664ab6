/**
 * pH by charge balance: [H⁺] + SID − [OH⁻] − Σ c_i z̄_i(pH) = 0, activity coefficients left out. In a salted sauce
 * the true value lies 0.1–0.2 lower; a computed pH is good to ±0.2 and never approves anything.
 */

import { ACIDS, type AcidId } from '../food/data/ingredients.ts';
import { exp } from '../numeric/elementary.ts';
import { ACID_CONSTANTS, WATER_PK } from './data/acids.ts';

const LN10 = Math.LN10;
export const tenToThe = (x: number): number => exp(LN10 * x);

/** Amounts per kg of water [mol/kg]. */
export type AcidMolalities = Readonly<Partial<Record<AcidId, number>>>;

/** Mean negative charges per molecule at this pH: Σ n β_n / Σ β_n with log β_n = Σ (pH − pK). */
function meanCharge(acid: AcidId, ph: number): number {
  let beta = 1;
  let sum = 1;
  let charged = 0;
  ACID_CONSTANTS[acid].pKs.forEach((pK, i) => {
    beta *= tenToThe(ph - pK);
    sum += beta;
    charged += (i + 1) * beta;
  });
  return charged / sum;
}

/** Share of the acid that carries no charge. */
export function undissociatedFraction(acid: AcidId, ph: number): number {
  let beta = 1;
  let sum = 1;
  for (const pK of ACID_CONSTANTS[acid].pKs) {
    beta *= tenToThe(ph - pK);
    sum += beta;
  }
  return 1 / sum;
}

/** Negative charge of the acids [eq/kg water] at this pH. */
export function acidCharge(acids: AcidMolalities, ph: number): number {
  let charge = 0;
  for (const acid of ACIDS) {
    const molality = acids[acid];
    if (molality) charge += molality * meanCharge(acid, ph);
  }
  return charge;
}

const hydrogen = (ph: number): number => tenToThe(-ph);
const hydroxide = (ph: number): number => tenToThe(ph - WATER_PK);

/** Charge left over [eq/kg] were the pH this one; falls as the pH rises. */
const chargeExcess = (acids: AcidMolalities, strongIonDifference: number, ph: number): number =>
  hydrogen(ph) + strongIonDifference - hydroxide(ph) - acidCharge(acids, ph);

/** Strong-ion difference [eq/kg water] that gives acids of these amounts this pH. */
export const strongIonDifferenceFor = (acids: AcidMolalities, ph: number): number =>
  acidCharge(acids, ph) - hydrogen(ph) + hydroxide(ph);

/**
 * pH of acids in water with strong ions beside them.
 *
 * @param strongIonDifference  Strong cations less strong anions [eq/kg water], may be negative
 * @returns pH by bisection between −1 and 15, to 1e-10
 */
export function phOf(acids: AcidMolalities, strongIonDifference: number): number {
  let low = -1;
  let high = 15;
  while (high - low > 1e-10) {
    const middle = (low + high) / 2;
    if (chargeExcess(acids, strongIonDifference, middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
