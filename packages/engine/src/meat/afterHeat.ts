/** Notes what the eater gets as the piece leaves the heat and at fixed waits after it. */
import { AFTER_HEAT_S, EATEN, lossShare, type RunOutcome } from './outcome.ts';
import type { MeatParameters } from './parameters.ts';
import type { PieceSolver } from './solver.ts';

export class AfterHeat {
  #leftS = Infinity;
  /** Next of `AFTER_HEAT_S` to be noted; 0 while on the heat. */
  #next = 0;
  #notedS = 0;
  readonly #noted = new Float64Array(EATEN.width);
  readonly #now = new Float64Array(EATEN.width);

  begin(): void {
    this.#leftS = Infinity;
    this.#next = 0;
  }

  readonly keptLength = 3 + EATEN.width;
  keep(row: Float64Array, at: number): number {
    row[at] = this.#leftS;
    row[at + 1] = this.#next;
    row[at + 2] = this.#notedS;
    row.set(this.#noted, at + 3);
    return at + this.keptLength;
  }
  takeUp(row: Float64Array, at: number): number {
    this.#leftS = row[at]!;
    this.#next = row[at + 1]!;
    this.#notedS = row[at + 2]!;
    this.#noted.set(row.subarray(at + 3, at + this.keptLength));
    return at + this.keptLength;
  }

  /** The piece leaves the heat. @param clockS from meat on */
  leave(outcome: RunOutcome, solver: PieceSolver, piece: MeatParameters, clockS: number): void {
    this.#leftS = clockS;
    this.#notedS = clockS;
    measureEaten(this.#noted, solver, piece);
    outcome.afterHeat.set(this.#noted, 0);
    this.#next = 1;
  }

  /** After a step; straight between the steps on both sides of a moment. */
  note(outcome: RunOutcome, solver: PieceSolver, piece: MeatParameters, clockS: number): void {
    if (this.#leftS === Infinity || this.#next >= AFTER_HEAT_S.length) return;
    const now = this.#now;
    measureEaten(now, solver, piece);
    while (this.#next < AFTER_HEAT_S.length) {
      const atS = this.#leftS + AFTER_HEAT_S[this.#next]!;
      if (clockS < atS) break;
      const share = clockS > this.#notedS ? (atS - this.#notedS) / (clockS - this.#notedS) : 1;
      for (let i = 0; i < EATEN.width; i++)
        outcome.afterHeat[this.#next * EATEN.width + i] =
          this.#noted[i]! + share * (now[i]! - this.#noted[i]!);
      this.#next++;
    }
    this.#noted.set(now);
    this.#notedS = clockS;
  }

  /** Where following ended early, the last figures stand for what comes later. */
  standForLater(outcome: RunOutcome): void {
    if (this.#next === 0) return;
    for (let next = this.#next; next < AFTER_HEAT_S.length; next++)
      outcome.afterHeat.set(this.#noted, next * EATEN.width);
  }
}

function measureEaten(into: Float64Array, solver: PieceSolver, piece: MeatParameters): void {
  into[EATEN.lossShare] = lossShare(solver, piece);
  into[EATEN.barkM] = solver.barkM;
  into[EATEN.browningH] = solver.browningH;
  into[EATEN.waterLeft] = solver.juiciness;
  into[EATEN.doseH] = solver.coreDoseH;
  into[EATEN.otherBarkM] = solver.otherBarkM;
  into[EATEN.otherBrowningH] = solver.otherBrowningH;
}
