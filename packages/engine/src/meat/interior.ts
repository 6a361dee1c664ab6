/**
 * Heat between the cells of a piece, implicit: eliminated from the centre to the front, so that the surface sees the whole
 * interior as q = G_e (T_f − T_e), exactly; then the temperatures, back to the centre. One factoring serves both stages.
 */
import type { StepCoefficients } from './coefficients.ts';

export class Interior {
  /** G_e [W/(m²·K)] */
  effectiveWm2K = 0;
  /** T_e [°C] */
  seenC = 0;
  /**
   * Where the piece has another half behind its middle: the innermost cell without heat from there [°C], and what a flow
   * from there adds to it and, through the interior, to T_e; as much does a flow through the front add to it [m²·K/W].
   */
  middleC = 0;
  middlePerFlow = 0;
  acrossPerFlow = 0;
  readonly #storage: Float64Array;
  readonly #perPivot: Float64Array;
  /** What of a cell's right side goes on to the next outer one; [0] unused. */
  readonly #passed: Float64Array;
  readonly #right: Float64Array;
  /** What of a flow from the middle arrives in each cell's right side [1]. */
  readonly #reach: Float64Array;
  #last = 0;

  constructor(cells: number) {
    this.#storage = new Float64Array(cells);
    this.#perPivot = new Float64Array(cells);
    this.#passed = new Float64Array(cells);
    this.#right = new Float64Array(cells);
    this.#reach = new Float64Array(cells);
  }

  /** @param lastCell k @param implicitS time over which this stage is implicit */
  factor(coefficients: StepCoefficients, lastCell: number, implicitS: number): void {
    const { capacity, link, toFront } = coefficients;
    const storage = this.#storage;
    const perPivot = this.#perPivot;
    const passed = this.#passed;
    const perS = 1 / implicitS;
    let pivot = 0;
    for (let i = 0; i <= lastCell; i++) {
      const stored = capacity[i]! * perS;
      storage[i] = stored;
      if (i > 0) {
        const g = link[i]!;
        const per = 1 / (pivot + g);
        perPivot[i - 1] = per;
        const w = g * per;
        passed[i] = w;
        pivot = stored + g - w * g;
      } else pivot = stored;
    }
    perPivot[lastCell] = 1 / pivot;
    this.#last = lastCell;
    this.effectiveWm2K = toFront / (1 + toFront * perPivot[lastCell]!);
  }

  /** After `factor`: what a flow from the middle does. */
  factorMiddle(link: Float64Array): void {
    const perPivot = this.#perPivot;
    const passed = this.#passed;
    const reach = this.#reach;
    const last = this.#last;
    reach[0] = 1;
    for (let i = 1; i <= last; i++) reach[i] = reach[i - 1]! * passed[i]!;
    let response = reach[last]! * perPivot[last]!;
    this.acrossPerFlow = response;
    for (let i = last - 1; i >= 0; i--) response = (reach[i]! + link[i + 1]! * response) * perPivot[i]!;
    this.middlePerFlow = response;
  }

  /** After `setOut`: the innermost cell without a flow through the front or from the middle. */
  setOutMiddle(link: Float64Array): void {
    const perPivot = this.#perPivot;
    const right = this.#right;
    let outerC = this.seenC;
    for (let i = this.#last - 1; i >= 0; i--) outerC = (right[i]! + link[i + 1]! * outerC) * perPivot[i]!;
    this.middleC = outerC;
  }

  /** Takes a flow from the middle into the right sides. */
  addMiddle(fromMiddleWm2: number): void {
    const right = this.#right;
    const reach = this.#reach;
    for (let i = 0; i <= this.#last; i++) right[i] = right[i]! + reach[i]! * fromMiddleWm2;
  }

  /** Takes up the temperatures from which a stage sets out; length cells. */
  setOut(fromC: Float64Array): void {
    const storage = this.#storage;
    const passed = this.#passed;
    const right = this.#right;
    const last = this.#last;
    let rest = storage[0]! * fromC[0]!;
    right[0] = rest;
    for (let i = 1; i <= last; i++) {
      rest = storage[i]! * fromC[i]! + passed[i]! * rest;
      right[i] = rest;
    }
    this.seenC = rest * this.#perPivot[last]!;
  }

  /** Temperatures of the stage. @param intoMeatWm2 through the front */
  settle(intoC: Float64Array, link: Float64Array, intoMeatWm2: number): void {
    const perPivot = this.#perPivot;
    const right = this.#right;
    const last = this.#last;
    let outerC = (right[last]! + intoMeatWm2) * perPivot[last]!;
    intoC[last] = outerC;
    for (let i = last - 1; i >= 0; i--) {
      outerC = (right[i]! + link[i + 1]! * outerC) * perPivot[i]!;
      intoC[i] = outerC;
    }
  }
}
