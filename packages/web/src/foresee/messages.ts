import type { DepthTimeField, HeatLedger } from '@pitwright/draw';
import type { CookForecast, CookPlan, Notice } from '@pitwright/engine';
import type { Cook, Said } from '@pitwright/model';

/** What a cook will do and when its work is done, from so many members. */
export interface Foresight {
  readonly cook: Cook;
  readonly members: number;
  readonly forecast: CookForecast;
  readonly plan: CookPlan;
  /** Cautions that stand beside any plan of this cook. */
  readonly notices: readonly Notice[];
}

/** The inside of the member whose finish is nearest the median; times are seconds from its own meat-on. */
export interface Inside {
  readonly pieceId: string;
  readonly field: Omit<DepthTimeField, 'letter' | 'changes' | 'measured'>;
  readonly ledger?: Omit<HeatLedger, 'letter'>;
  readonly why?: Said;
}

export type Ask =
  | { readonly kind: 'foresee'; readonly job: number; readonly cook: Cook; readonly members: number }
  | { readonly kind: 'inside'; readonly job: number; readonly cook: Cook; readonly pieceId: string };

export type Answer =
  | { readonly kind: 'foresight'; readonly job: number; readonly foresight: Foresight }
  | { readonly kind: 'inside'; readonly job: number; readonly inside: Inside }
  | { readonly kind: 'failed'; readonly job: number; readonly said?: Said; readonly message: string };
