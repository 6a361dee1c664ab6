import type { SimmerMoment } from '@pitwright/draw';
import type { Notice } from '@pitwright/engine';
import type {
  Aim,
  CoolingAnswer,
  Enough,
  Labels,
  LineEffect,
  Nutrition,
  OutcomeAnswer,
  PastedRecipe,
  RebalanceAnswer,
  SaltAtTable,
  SauceOutcome,
  Taste,
} from '@pitwright/engine/sauce';
import type { Cook, Quantity, Said } from '@pitwright/model';

/** What was measured at the stove; kept beside the cook. */
export interface Corrections {
  /** Full pan on the scale, so long after the cold pot went on. */
  readonly weighed?: { readonly mass: Quantity<'mass'>; readonly after: Quantity<'time'> };
  /** Puddle of a tablespoon after a minute on a cold plate. */
  readonly plate?: { readonly diameter: Quantity<'length'> };
}

/** What a pack costs, by ingredient. */
export interface PackPrice {
  readonly pack: Quantity<'mass'>;
  readonly price: number;
}

export interface Swap {
  readonly index: number;
  readonly ingredient: string;
}

/** How the sauce should be, and whether sugar, vinegar, salt and the like may come to it. */
export interface Wish {
  readonly aim: Aim;
  readonly mayAdd: boolean;
}

/** The middle run of a simmer, past its target too. */
export interface Along {
  readonly moments: readonly (SimmerMoment & { readonly waterOffG: number })[];
  readonly fast: number;
  readonly slow: number;
}

/** The formula as written, beside the variant that is made. */
export interface AsWritten {
  readonly outcome: SauceOutcome;
  readonly along?: Along;
  /** Noticeable steps from it to what is made. */
  readonly steps: Readonly<Record<Taste, number>>;
}

/** What gets it where it is wanted; the outcome where there is a way. */
export interface Aimed {
  readonly rebalanced: RebalanceAnswer;
  readonly outcome?: OutcomeAnswer;
  readonly along?: Along;
}

export interface Swapped {
  readonly outcome: OutcomeAnswer;
  readonly along?: Along;
  readonly rebalanced: RebalanceAnswer;
}

export type VesselName = 'half-pint' | 'pint' | 'pan';

export interface CooledIn {
  readonly vessel: VesselName;
  readonly around: 'fridge' | 'stirred-ice-bath';
  readonly answer: CoolingAnswer;
}

/** Salt of a rub or spritz on the pieces it is for. */
export interface OnMeat {
  readonly meatKg: number;
  readonly edibleKg: number;
  readonly surfaceM2: number;
  readonly boneShare: number;
  /** Middle of the thickest piece [m]. */
  readonly thicknessM: number;
}

export interface Seen {
  readonly formulaId: string;
  readonly outcome: OutcomeAnswer;
  readonly along?: Along;
  readonly effects: readonly LineEffect[];
  readonly swapped?: Swapped;
  readonly asWritten?: AsWritten;
  readonly aimed?: Aimed;
  readonly enough?: Enough;
  readonly cooled: readonly CooledIn[];
  readonly nutrition?: Nutrition;
  readonly onMeat: OnMeat;
  /** Of all the formulas on the same pieces. */
  readonly salt?: SaltAtTable;
  /** What stands beside every plan and concerns this formula. */
  readonly notices: readonly Notice[];
  readonly corrected: readonly Said[];
  /** Until it is off the burner, from the weighing [s]. */
  readonly leftS?: { readonly p10: number; readonly p50: number; readonly p90: number };
}

export type Ask =
  | {
      readonly kind: 'see';
      readonly job: number;
      readonly cook: Cook;
      readonly formulaId: string;
      readonly corrections: Corrections;
      readonly swap?: Swap;
      readonly wish?: Wish;
    }
  | {
      readonly kind: 'read';
      readonly job: number;
      readonly text: string;
      readonly system?: MeasureSystemId;
      readonly labels?: Labels;
    };

export type MeasureSystemId = 'us' | 'uk' | 'au' | 'metric';

export type Answer =
  | { readonly kind: 'seen'; readonly job: number; readonly seen: Seen }
  | { readonly kind: 'recipe'; readonly job: number; readonly recipe: PastedRecipe }
  | { readonly kind: 'failed'; readonly job: number; readonly message: string };
