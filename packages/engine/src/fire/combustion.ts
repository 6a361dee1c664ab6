/** Fuels by their elements, as fired: moisture M is kg water per kg of it, x kg water per kg dry. */

/** Heat taken by the water that wood holds [J/kg]. @source European wood-fuels handbook */
const WATER_IN_WOOD_J = 2.44e6;
/** Heat of the water formed by burning, at 25 °C [J/kg]. */
const WATER_FORMED_J = 2.442e6;
/** Oxygen for carbon and hydrogen, and its share of air, by mass. */
const OXYGEN_FOR_CARBON = 2.664;
const OXYGEN_FOR_HYDROGEN = 7.937;
const OXYGEN_IN_AIR = 0.2314;
/** Water from hydrogen, by mass. */
const WATER_FROM_HYDROGEN = 8.937;

export const wetBasisOf = (dryBasis: number): number => dryBasis / (1 + dryBasis);
export const dryBasisOf = (wetBasis: number): number => wetBasis / (1 - wetBasis);

/** Mass fractions of a dry fuel; what they leave is ash, nitrogen and the like. */
export interface Elements {
  readonly carbon: number;
  readonly hydrogen: number;
  readonly oxygen: number;
}

const MOLAR_G: Readonly<Record<string, number>> = { C: 12.011, H: 1.008, O: 15.999, N: 14.007 };

/**
 * Mass fractions of a chemical formula of C, H, O and N, such as `C3H8` or `CH1.4O0.6`.
 * @returns undefined where it is none, or holds neither carbon nor hydrogen
 */
export function elementsOf(formula: string): Elements | undefined {
  const grams: Record<string, number> = { C: 0, H: 0, O: 0, N: 0 };
  const rest = formula.replace(/([CHON])(\d+(?:\.\d+)?)?/g, (_, element: string, count?: string) => {
    grams[element]! += MOLAR_G[element]! * (count === undefined ? 1 : Number(count));
    return '';
  });
  const total = grams.C! + grams.H! + grams.O! + grams.N!;
  if (rest !== '' || !(grams.C! + grams.H! > 0)) return undefined;
  return { carbon: grams.C! / total, hydrogen: grams.H! / total, oxygen: grams.O! / total };
}

/** Net heating value of wood as fired [J/kg]. @source European wood-fuels handbook */
export const woodNetJKg = (wetBasis: number, dryNetJKg: number): number =>
  dryNetJKg * (1 - wetBasis) - WATER_IN_WOOD_J * wetBasis;

/** Net from gross heating value [J/kg], `waterFormed` kg per kg fuel. */
export const netFromGrossJKg = (grossJKg: number, waterFormed: number): number =>
  grossJKg - WATER_FORMED_J * waterFormed;

/** Air for complete combustion [kg per kg fuel as fired]. */
export const stoichiometricAir = (dry: Elements, wetBasis: number): number =>
  ((OXYGEN_FOR_CARBON * dry.carbon + OXYGEN_FOR_HYDROGEN * dry.hydrogen - dry.oxygen) / OXYGEN_IN_AIR) *
  (1 - wetBasis);

/** Water leaving [kg per kg fuel as fired]: formed and held. */
export const combustionWater = (hydrogen: number, wetBasis: number): number =>
  WATER_FROM_HYDROGEN * hydrogen * (1 - wetBasis) + wetBasis;
