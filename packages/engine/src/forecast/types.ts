import type { Bite, Range, Said, StageKind } from '@pitwright/model';

/** What one piece will do, over the members of the ensemble. Times are seconds from the piece's own meat-on. */
export interface PieceForecast {
  readonly pieceId: string;
  readonly members: number;
  /** Bite and all stages before the rest reached: ready to rest. One column per member; ∞ = never. */
  readonly readyS: Float64Array;
  /** Leaves one word past its bite if it stays where it is; ∞ = never. */
  readonly pastBiteS: Float64Array;
  readonly ready: Range;
  readonly stages: readonly StageForecast[];
  /** Chance of each bite word at the table, sums to 1. */
  readonly biteChances: Readonly<Partial<Record<Bite, number>>>;
  readonly lossKg: Range;
  readonly stallCoreC?: Range;
  readonly notices: readonly Said[];
}

export interface StageForecast {
  readonly kind: StageKind;
  readonly startS: Range;
  readonly endS: Range;
  /** At the end of the stage. */
  readonly coreC: Range;
  readonly surfaceC: Range;
}

export interface CookForecast {
  readonly seed: number;
  readonly members: number;
  readonly pieces: readonly PieceForecast[];
  /** Share of members in which every piece is on time, given the planned starts. */
  readonly chanceAllOnTime: number;
  readonly tightestPieceId?: string;
  /** Answers that were asked and are not used yet. */
  readonly notUsed: readonly Said[];
}
