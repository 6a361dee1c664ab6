import type { Range, StageKind } from '@pitwright/model';

/** A stage of a band: what it is, where, and when it begins. Times are seconds since 1970 UTC. */
export interface BandStage {
  readonly kind: StageKind;
  /** Said above the band where it is not the pit: oven, pan, box … */
  readonly place?: string;
  /** The first stage begins at meat-on: all three points alike. */
  readonly start: Range;
}

/** One piece as its band shows it. Words are printed already. */
export interface BandPiece {
  readonly letter: string;
  readonly name: string;
  /** Beside the name: mass or thickness. */
  readonly remark?: string;
  readonly bite: string;
  /** Meat-on, planned or done. */
  readonly onS: number;
  readonly stages: readonly BandStage[];
  /** When it reaches its bite. */
  readonly ready: Range;
  /** When it was seen to reach it. */
  readonly readyAtS?: number;
  /** Readings and looks that were logged. */
  readonly measuredAtS?: readonly number[];
  /** As it was before the last change, drawn as a dashed outline. */
  readonly was?: { readonly onS: number; readonly ready: Range };
}

/** A moment without doubt, as a range. */
export const sure = (atS: number): Range => ({ p10: atS, p50: atS, p90: atS, neverShare: 0 });
