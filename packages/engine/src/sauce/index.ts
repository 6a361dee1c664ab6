/** The front door of the sauce room: formulas by weight, what they become, how they look, keep and taste. */
export { type Allergens, allergensOf } from './allergens.ts';
export {
  addBatches,
  type Batch,
  type BatchLine,
  batchMassG,
  batchOf,
  saltG,
  scaleBatch,
  sugarsG,
} from './batch.ts';
export { evaporate } from './evaporation.ts';
export {
  findIngredient,
  formulaLines,
  type OwnIngredients,
  type Resolved,
  type ResolvedLine,
} from './formulaLines.ts';
export { JAR_250, type JarSize, type Jars, jarsOf } from './jars.ts';
export { type Keeping, keeping } from './keeping.ts';
export {
  BRUSHED_C,
  FRIDGE_C,
  type Look,
  type Looks,
  lookAt,
  looks,
  POT_C,
  THICKNESS_WORDS,
  type ThicknessClass,
} from './look.ts';
export {
  type Figures,
  figuresOf,
  type OutcomeAnswer,
  type OutcomeOptions,
  type SauceOutcome,
  sauceOutcome,
} from './outcome.ts';
export { formulaLinesFrom, type PasteOptions, pasteRecipe } from './paste/recipe.ts';
export { type Choice, type Doubt, isSettled, type PastedLine, type PastedRecipe } from './paste/types.ts';
export type { MeasureSystem } from './paste/units.ts';
export type { SimmerCurve, SimmerPoint } from './simmer.ts';
export type { KitchenAir } from './stove.ts';
export { waterForMass, waterForThickness } from './target.ts';
export { type Aspect, type Unknown, unknownsOf } from './unknowns.ts';
