/** Where a run stands in its stages, and how far the figures that may end the stage have come in it. */

import type { MeatParameters } from './parameters.ts';
import type { PieceSolver } from './solver.ts';
import { isFalling, type MeasuredTrigger, measureOf, targetOf } from './stageEnd.ts';
import type { StagePlan } from './stagePlan.ts';

const MEASURED: readonly MeasuredTrigger[] = [
  { by: 'core', temperatureC: 0 },
  { by: 'surface', temperatureC: 0 },
  { by: 'bark', thicknessM: 0 },
  { by: 'loss', lossShare: 0 },
  { by: 'dose', doseH: 0 },
];
const LOWEST_CORE = MEASURED.length;

export class Whereabouts {
  readonly keptLength = 6 + MEASURED.length + 1;

  stage = 0;
  /** Model time from meat on [s]. */
  timeS = 0;
  /** The stage has been entered. */
  isInside = false;
  /** Model time and centre when it was entered. */
  beganS = 0;
  coreBeganC = 0;
  /** Steps taken in it. */
  steps = 0;
  /** Highest figure of each of MEASURED after any step of the stage, then the lowest centre. */
  readonly #furthest = new Float64Array(MEASURED.length + 1);

  /** Before the first stage. */
  begin(): void {
    this.timeS = 0;
    this.goTo(0);
  }

  /** Before a stage. */
  goTo(stage: number): void {
    this.stage = stage;
    this.isInside = false;
    this.steps = 0;
    this.#furthest.fill(-Infinity);
    this.#furthest[LOWEST_CORE] = Infinity;
  }

  /** As the stage is entered and after each of its steps. */
  noteFigures(solver: PieceSolver, piece: MeatParameters): void {
    const furthest = this.#furthest;
    for (let i = 0; i < MEASURED.length; i++) {
      const figure = measureOf(MEASURED[i]!, solver, piece);
      if (figure > furthest[i]!) furthest[i] = figure;
    }
    if (solver.coreC < furthest[LOWEST_CORE]!) furthest[LOWEST_CORE] = solver.coreC;
  }

  /** Whether a stage that was entered alike but may end otherwise would still go on here. */
  wouldGoOn(stage: StagePlan, stretch: number): boolean {
    const { trigger } = stage;
    if (trigger.by === 'table') return false;
    if (trigger.by === 'clock') return this.timeS < this.beganS + trigger.afterS / stretch;
    const target = targetOf(trigger);
    if (isFalling(stage, this.coreBeganC)) return !(this.#furthest[LOWEST_CORE]! <= target);
    const furthest = this.#furthest[MEASURED.findIndex(({ by }) => by === trigger.by)]!;
    return !(furthest >= target);
  }

  keep(row: Float64Array, at: number): number {
    row[at] = this.stage;
    row[at + 1] = this.timeS;
    row[at + 2] = this.isInside ? 1 : 0;
    row[at + 3] = this.beganS;
    row[at + 4] = this.coreBeganC;
    row[at + 5] = this.steps;
    row.set(this.#furthest, at + 6);
    return at + this.keptLength;
  }

  takeUp(row: Float64Array, at: number): number {
    this.stage = row[at]!;
    this.timeS = row[at + 1]!;
    this.isInside = row[at + 2] === 1;
    this.beganS = row[at + 3]!;
    this.coreBeganC = row[at + 4]!;
    this.steps = row[at + 5]!;
    this.#furthest.set(row.subarray(at + 6, at + this.keptLength));
    return at + this.keptLength;
  }
}
