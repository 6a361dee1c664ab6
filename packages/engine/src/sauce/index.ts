/** The front door of the sauce room: formulas by weight, what they become, how they look, keep and taste. */

export { type Ingredient, searchIngredients } from '../food/data/ingredients.ts';
export { type Aim, type AimedTaste, aimAt } from './aim.ts';
export type { Allergens } from './allergens.ts';
export { type Batch, type BatchLine, batchMassG, SALT_PER_SODIUM, saltG, sugarsG } from './batch.ts';
export {
  brushNotices,
  type CoolingAnswer,
  type CoolingAsk,
  cooling,
  JARS,
  panOf,
  type Surround,
  type Vessel,
} from './cooling.ts';
export { type AfterWeighing, afterWeighing, contentsG, factorFromPlate, type Plate } from './corrections.ts';
export {
  costOf,
  type Enough,
  enough,
  type Glazed,
  glazeG,
  kitchenG,
  type Needs,
  type Price,
  SERVING_G,
  scaleFormula,
  slabSurfaceM2,
} from './enough.ts';
export { evaporate } from './evaporation.ts';
export type { Figures } from './figures.ts';
export { findIngredient, formulaLines, type Resolved, type ResolvedLine } from './formulaLines.ts';
export { PLATED_SD, THICKNESS_SD } from './goal.ts';
export type { JarSize, Jars } from './jars.ts';
export { STRESS_WEBER, stepsApart, TASTES, type Taste, tastesOf, WEBER } from './jnd.ts';
export { type Keeping, keeping } from './keeping.ts';
export {
  ingredientFromLabel,
  type LabelAnswer,
  type LabelField,
  type Labels,
  type LabelUnknown,
  type OwnIngredient,
  ownIngredients,
  type Span,
} from './label.ts';
export {
  FRIDGE_C,
  type Look,
  type Looks,
  lookAt,
  looks,
  POT_C,
  THICKNESS_WORDS,
  type ThicknessClass,
} from './look.ts';
export { type LineChange, type LineEffect, lineEffects } from './matters.ts';
export { type Nutrition, nutrition } from './nutrition.ts';
export { type OutcomeAnswer, type OutcomeOptions, type SauceOutcome, sauceOutcome } from './outcome.ts';
export { type PasteOptions, pasteRecipe } from './paste/recipe.ts';
export { type Choice, type Doubt, isSettled, type PastedLine, type PastedRecipe } from './paste/types.ts';
export type { MeasureSystem } from './paste/units.ts';
export {
  type Rebalance,
  type RebalanceAnswer,
  type Rebalanced,
  type RebalanceLine,
  rebalance,
  swapLine,
  wantedFrom,
} from './rebalance.ts';
export {
  type BrineMade,
  brineOf,
  COATINGS,
  type Coating,
  type DryBrine,
  dryBrine,
  EATEN_SHARE,
  equilibriumBrine,
  rubForSurface,
  rubSalt,
  type SaltAtTable,
  type SaltSource,
  saltAtTable,
  saltFromBrineKg,
} from './rub.ts';
export type { ScorchVerdict } from './scorch.ts';
export type { SimmerCurve, SimmerPoint } from './simmer.ts';
export type { KitchenAir } from './stove.ts';
export { waterForMass } from './target.ts';
export type { Aspect, Unknown } from './unknowns.ts';
