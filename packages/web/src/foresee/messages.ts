import type { DepthTimeField, HeatLedger } from '@pitwright/draw';
import type { CookForecast, PieceSensitivity, PieceZones, Zone } from '@pitwright/engine';
import type { Cook, Said, StageKind } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';

/** What a cook will do, when its work is done and what stands beside it, from so many members. */
export interface Foresight extends PlanReport {
  readonly members: number;
  /** With the other ways to cook it, and its jobs as every face prints them. */
  readonly isWhole: boolean;
  /** The solver has settled the jobs. A plan that is whole without it, because it could not be had, says so. */
  readonly isSettled: boolean;
}

/** The inside of a typical member; times are seconds from its own meat-on. */
export interface Inside {
  readonly pieceId: string;
  /** The muscle shown; missing: the whole piece. */
  readonly zone?: Zone;
  readonly field: Omit<DepthTimeField, 'letter' | 'changes' | 'measured'>;
  /** When each stage after the first begins in it. */
  readonly changes: readonly {
    readonly kind: StageKind;
    readonly isOverCoals: boolean;
    readonly atS: number;
  }[];
  readonly ledger?: Omit<HeatLedger, 'letter'>;
  /** What holds it back at telling moments, in order. */
  readonly why: readonly { readonly atS: number; readonly said: Said }[];
}

/** What would narrow the range of a piece, and how its muscles differ. */
export interface Closer {
  readonly pieceId: string;
  readonly sensitivity: PieceSensitivity;
  /** Missing for a piece of one muscle. */
  readonly zones?: PieceZones;
}

/** Asked of the worker that steps members. */
export type Ask =
  | { readonly kind: 'foresee'; readonly cook: Cook; readonly members: number }
  | {
      readonly kind: 'inside';
      readonly cook: Cook;
      readonly pieceId: string;
      readonly zone?: Zone | undefined;
    }
  | { readonly kind: 'closer'; readonly cook: Cook; readonly pieceId: string };

/** To each kind its own. */
export type SteppingAnswer = PlanReport | Inside | Closer;

/** Asked of the worker that makes the whole plan of members already stepped. */
export interface WholeAsk {
  readonly cook: Cook;
  readonly forecast: CookForecast;
}

export interface WholeAnswer {
  readonly report: PlanReport;
  readonly isSettled: boolean;
}
