import type { CookForecast, CookPlan, EaterForecast, Notice, SaltForecast } from '@pitwright/engine';
import type { Cook, Formula, Piece, Quantity, Range, Said } from '@pitwright/model';

/** One line of a formula by mass. */
export interface FormulaLineReport {
  readonly ingredientId: string;
  readonly name: string;
  readonly massKg: number;
  /** As the file has it. */
  readonly amount: Quantity<'mass'> | Quantity<'volume'>;
  /** Stirred in after the simmer. */
  readonly isLate: boolean;
}

/** A formula by mass, and what its simmer leaves. */
export interface FormulaReport {
  readonly formula: Formula;
  readonly lines: readonly FormulaLineReport[];
  readonly totalKg: number;
  /** After the simmer; missing: nothing is driven off. */
  readonly yieldKg?: number;
  /** In the pan when it comes off the heat, before anything is stirred in. */
  readonly takeOffKg?: number;
  /** The same by volume [m³]. */
  readonly yieldM3?: number;
  readonly jars?: number;
  /** Thickness words: in the pot, from the fridge, and from the fridge were it a standard deviation off. */
  readonly looks?: {
    readonly pot: string;
    readonly fridge: string;
    readonly thin: string;
    readonly thick: string;
  };
  /** [s] */
  readonly simmerS?: Range;
  /** Salt and water in the finished formula [1], and how heavy it is [kg/m³]; missing where it does not work out. */
  readonly saltShare?: number;
  readonly waterShare?: number;
  readonly densityKgM3?: number;
  /** What the bench says of it: consistency, keeping, allergens. */
  readonly said: readonly Said[];
}

/** What is on the plate of one piece at the serving hour. */
export interface EaterReport {
  readonly pieceId: string;
  /** Missing for a piece without a stage on the heat. */
  readonly atTable?: EaterForecast;
  /** Missing where no formula with salt in it is for the piece. */
  readonly salt?: SaltForecast;
}

/** Everything that the plan of a cook prints, in SI; text, JSON and sheets are made from this alone. */
export interface PlanReport {
  readonly cook: Cook;
  readonly forecast: CookForecast;
  readonly plan: CookPlan;
  readonly formulas: readonly FormulaReport[];
  /** What is on the plate, piece by piece. */
  readonly eaters: readonly EaterReport[];
  /** Standing cautions, each naming what it concerns where it concerns one thing. */
  readonly notices: readonly Notice[];
}

export const pieceOf = (cook: Cook, id: string): Piece => {
  const piece = cook.pieces.find((one) => one.id === id);
  if (!piece) throw new RangeError(`the cook has no piece ${id}`);
  return piece;
};
