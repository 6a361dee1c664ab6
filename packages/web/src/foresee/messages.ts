import type { DepthTimeField, HeatLedger } from '@pitwright/draw';
import type { PieceSensitivity, PieceZones, Zone } from '@pitwright/engine';
import type { Cook, Said } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';

/** What a cook will do, when its work is done and what stands beside it, from so many members. */
export interface Foresight extends PlanReport {
  readonly members: number;
}

/** The inside of the member whose finish is nearest the median; times are seconds from its own meat-on. */
export interface Inside {
  readonly pieceId: string;
  /** The muscle shown; missing: the whole piece. */
  readonly zone?: Zone;
  readonly field: Omit<DepthTimeField, 'letter' | 'changes' | 'measured'>;
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

export type Ask =
  | {
      readonly kind: 'foresee';
      readonly job: number;
      readonly cook: Cook;
      readonly members: number;
      /** With the other ways to cook it, which are foreseen too; without them while a hand moves something. */
      readonly isWhole: boolean;
    }
  | {
      readonly kind: 'inside';
      readonly job: number;
      readonly cook: Cook;
      readonly pieceId: string;
      readonly zone?: Zone | undefined;
    }
  | { readonly kind: 'closer'; readonly job: number; readonly cook: Cook; readonly pieceId: string };

export type Answer =
  | { readonly kind: 'foresight'; readonly job: number; readonly foresight: Foresight }
  | { readonly kind: 'inside'; readonly job: number; readonly inside: Inside }
  | { readonly kind: 'closer'; readonly job: number; readonly closer: Closer }
  | { readonly kind: 'failed'; readonly job: number; readonly said?: Said; readonly message: string };
