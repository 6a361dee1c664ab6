/** Strong ions of an ingredient, solved from its own pH: they carry the buffering of tomato, molasses and mustard. */
import { ACIDS, type Ingredient } from '../food/data/ingredients.ts';
import { strongIonDifferenceFor } from './chargeBalance.ts';
import { ACID_CONSTANTS } from './data/acids.ts';

/**
 * Rows whose strong ions do not follow from a pH [eq per 100 g]: soda is sodium bicarbonate, 11.9 meq/g, its carbonic
 * acid leaving as gas; citric acid is the pure acid, its pH that of some solution.
 */
const KNOWN_EQ: Readonly<Record<string, number>> = { baking_soda: 1.19, citric_acid: 0 };

/** Strong-ion difference [eq per 100 g of ingredient]; 0 where the row has no pH. */
export function ingredientStrongIonsEq(ingredient: Ingredient): number {
  const given = KNOWN_EQ[ingredient.id];
  if (given !== undefined) return given;
  const waterKg = ingredient.per100g.waterG / 1000;
  if (ingredient.ph === undefined || waterKg <= 0) return 0;
  const molalities = Object.fromEntries(
    ACIDS.map((acid) => [
      acid,
      (ingredient.per100g.acidsG[acid] ?? 0) / ACID_CONSTANTS[acid].molarMassG / waterKg,
    ]),
  );
  return strongIonDifferenceFor(molalities, ingredient.ph) * waterKg;
}
