/** When the centre passes the levels that are asked for, straight inside each step. */
import type { RunOutcome, WordDoses } from './outcome.ts';

/** A stage that ends at a core temperature has landed within this [K]. */
const LANDED_K = 1e-4;
/** A stage that ends at a dose has landed within this share of it. */
const LANDED = 1 - 1e-5;
/** The centre has left `raw`. */
const FIRM_FROM_C = 60;
const STALL_FROM_C = 55;
const STALL_TO_C = 85;

export class Passings {
  #slowest = Infinity;

  begin(): void {
    this.#slowest = Infinity;
  }

  readonly keptLength = 1;
  keep(row: Float64Array, at: number): number {
    row[at] = this.#slowest;
    return at + 1;
  }
  takeUp(row: Float64Array, at: number): number {
    this.#slowest = row[at]!;
    return at + 1;
  }

  /**
   * @param reachC a level beside the fixed ones
   * @param stepS in model time, for the slope of the stall
   */
  note(
    outcome: RunOutcome,
    wordDoses: WordDoses,
    reachC: number | undefined,
    coreBeforeC: number,
    coreC: number,
    doseBeforeH: number,
    doseH: number,
    fromS: number,
    toS: number,
    stepS: number,
  ): void {
    if (coreC > coreBeforeC) {
      if (reachC !== undefined && outcome.reachS === Infinity && coreC >= reachC - LANDED_K)
        outcome.reachS = passedS(reachC, coreBeforeC, coreC, fromS, toS);
      if (outcome.at65S === Infinity && coreC >= 65)
        outcome.at65S = passedS(65, coreBeforeC, coreC, fromS, toS);
      if (outcome.at75S === Infinity && coreC >= 75)
        outcome.at75S = passedS(75, coreBeforeC, coreC, fromS, toS);
      if (outcome.wordS[0] === Infinity && coreC >= FIRM_FROM_C)
        outcome.wordS[0] = passedS(FIRM_FROM_C, coreBeforeC, coreC, fromS, toS);
    }
    for (let w = 0; w < 4; w++) {
      const needed = wordDoses[w]!;
      if (doseH >= needed * LANDED && outcome.wordS[w + 1] === Infinity)
        outcome.wordS[w + 1] = passedS(needed, doseBeforeH, doseH, fromS, toS);
    }
    const slope = (coreC - coreBeforeC) / stepS;
    const middleC = 0.5 * (coreC + coreBeforeC);
    if (slope < this.#slowest && slope > 0 && middleC >= STALL_FROM_C && middleC <= STALL_TO_C) {
      this.#slowest = slope;
      outcome.stallC = middleC;
    }
  }
}

/** When a rising figure passed a level inside a step, straight between; the step's begin where it began above. */
function passedS(level: number, before: number, after: number, fromS: number, toS: number): number {
  if (before >= level) return fromS;
  const share = (level - before) / (after - before);
  // Landed a rounding short of the level: passed at the end, to the bit.
  return share >= 1 ? toS : fromS + share * (toS - fromS);
}
