/** What one run of a piece through its stages leaves behind. */
import type { MeatParameters } from './parameters.ts';
import type { PieceSolver } from './solver.ts';

/** Dose at which each word beyond `firm` begins; ∞ where the tissue does not know it [h]. */
export type WordDoses = readonly [cleanBite: number, tender: number, fallsOff: number, pullsApart: number];
export const WORDS_TIMED = 5;

/** After the heat, how long until the figures of the eater are noted [s]; the last stands for all later. */
export const AFTER_HEAT_S = [0, 1800, 3600, 2 * 3600, 4 * 3600, 8 * 3600] as const;
/**
 * Places of one noted moment: loss of the raw mass without bone [1], bark [m] and browning [h] of the open face, water
 * left [1], dose [h]; bark and browning of the other face, those of the open one where they are alike.
 */
export const EATEN = {
  lossShare: 0,
  barkM: 1,
  browningH: 2,
  waterLeft: 3,
  doseH: 4,
  otherBarkM: 5,
  otherBrowningH: 6,
  width: 7,
} as const;

/** Times in seconds of the clock from meat on, ∞ = never. */
export class RunOutcome {
  readonly endS: Float64Array;
  readonly coreC: Float64Array;
  readonly surfaceC: Float64Array;
  readonly lossShare: Float64Array;
  readonly barkM: Float64Array;
  readonly doseH: Float64Array;
  /** firm (centre past 60 °C), clean bite, tender, falls off, pulls apart */
  readonly wordS = new Float64Array(WORDS_TIMED).fill(Infinity);
  /** Figures of `EATEN` at each of `AFTER_HEAT_S`; NaN where the piece never leaves the heat. */
  readonly afterHeat = new Float64Array(AFTER_HEAT_S.length * EATEN.width).fill(NaN);
  reachS = Infinity;
  stallC = NaN;
  at65S = Infinity;
  at75S = Infinity;
  /** Index of the first stage that never ended, or −1. */
  stuckStage = -1;

  constructor(stages: number) {
    this.endS = new Float64Array(stages).fill(Infinity);
    this.coreC = new Float64Array(stages);
    this.surfaceC = new Float64Array(stages);
    this.lossShare = new Float64Array(stages);
    this.barkM = new Float64Array(stages);
    this.doseH = new Float64Array(stages);
  }

  /** How many figures `keep` writes. */
  get keptLength(): number {
    return this.#columns().reduce((length, column) => length + column.length, 4);
  }
  keep(row: Float64Array, at: number): number {
    let end = at;
    for (const column of this.#columns()) {
      row.set(column, end);
      end += column.length;
    }
    row[end] = this.reachS;
    row[end + 1] = this.stallC;
    row[end + 2] = this.at65S;
    row[end + 3] = this.at75S;
    return end + 4;
  }
  takeUp(row: Float64Array, at: number): number {
    let end = at;
    for (const column of this.#columns()) {
      column.set(row.subarray(end, end + column.length));
      end += column.length;
    }
    this.reachS = row[end]!;
    this.stallC = row[end + 1]!;
    this.at65S = row[end + 2]!;
    this.at75S = row[end + 3]!;
    return end + 4;
  }
  #columns(): readonly Float64Array[] {
    const { endS, coreC, surfaceC, lossShare, barkM, doseH, wordS, afterHeat } = this;
    return [endS, coreC, surfaceC, lossShare, barkM, doseH, wordS, afterHeat];
  }

  /** Notes the end of a stage. @param clockS from meat on */
  closeStage(stage: number, solver: PieceSolver, piece: MeatParameters, clockS: number): void {
    this.endS[stage] = clockS;
    this.coreC[stage] = solver.coreC;
    this.surfaceC[stage] = solver.surfaceC;
    this.lossShare[stage] = lossShare(solver, piece);
    this.barkM[stage] = solver.barkM;
    this.doseH[stage] = solver.coreDoseH;
  }
}

/** Fat that melts out in the end, of the raw fat. @source from memory, weak */
const RENDERABLE_SHARE = 0.45;
/**
 * Of the melted fat, what leaves the piece: up to 5 points of a brisket's raw mass, the gap between water lost and the two
 * yields measured by Kerth, Wall & Grayson-Holter (59.3 and 56.0 %, after 3 h at 85 and 90 °C).
 */
const RENDERED_FAT_LOST = 0.6;

/** Water and fat lost, of the raw mass without bone [1]. */
export const lossShare = (solver: PieceSolver, piece: MeatParameters): number =>
  (solver.evaporatedKgM2 + solver.drippedKgM2) / solver.rawMassKgM2 +
  RENDERED_FAT_LOST * RENDERABLE_SHARE * piece.composition.fat * (1 - solver.solidFatShare);
