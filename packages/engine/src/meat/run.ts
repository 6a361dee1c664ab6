/**
 * One member of one piece through its stages. Events are located inside a step: the step is taken again, shorter, so
 * that results are continuous in their inputs.
 */
import { AfterHeat } from './afterHeat.ts';
import { AirCourse } from './airCourse.ts';
import { STAGE_SHARE } from './halfPiece.ts';
import { RunOutcome, type WordDoses } from './outcome.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import { Passings } from './passings.ts';
import { PieceSolver } from './solver.ts';
import { isFalling as fallsTo, isMeasured, landingS, measureOf, targetOf } from './stageEnd.ts';
import type { AirPlan, StagePlan } from './stagePlan.ts';
import type { SofteningRate } from './tables.ts';
import { KEPT_EVERY_STEPS, type RunTerms, type Trail } from './trail.ts';
import { Whereabouts } from './whereabouts.ts';

export interface RunSettings {
  readonly cells: number;
  /** Longest step [s]: whatever the piece, and for each metre of its half thickness [s/m]. */
  readonly longestStepS: number;
  readonly longestStepSPerM: number;
  /** Time from meat on after which a stage that has not ended counts as never ending [s]. */
  readonly horizonS: number;
  /** How long the last stage is followed beyond its end, for the time past the bite [s]. */
  readonly tailS: number;
}

/** For ensembles: times within 0.2 % of the fine grid for big pieces, 0.6 % for thin ones (docs/models/meat.md). */
export const ENSEMBLE_SETTINGS: RunSettings = {
  cells: 12,
  longestStepS: 600,
  longestStepSPerM: 1e4,
  horizonS: 48 * 3600,
  tailS: 0,
};
/** For gradients inside the piece, and for holding against other codings. */
export const FINE_SETTINGS: RunSettings = {
  ...ENSEMBLE_SETTINGS,
  cells: 24,
  longestStepS: 90,
  longestStepSPerM: 4e3,
};

/** After every change a step of so many seconds, growing with the time since. */
const FIRST_STEP_S = 15;
const STEP_GROWTH = 0.15;
/** Below this softening takes days [°C]. */
const SOFTENS_FROM_C = 52;
/** Rest and hold are slow, and nothing evaporates: longer steps for pieces of any size [s]. */
const LONGEST_STILL_STEP_S = 900;

/** Called after every step. @param clockS from meat on @param stage index */
export type StepListener = (clockS: number, stage: number, solver: PieceSolver, around: Surroundings) => void;

export interface RunOptions extends RunTerms {
  /** Clock time over model time: the model's own error as a factor on all times. */
  readonly stretch: number;
  readonly wordDoses: WordDoses;
  /** Centre temperature whose first passing is wanted [°C]. */
  readonly reachC?: number;
  /** Index of the last stage on the heat: from its end on the figures of the eater are noted. */
  readonly lastHeatStage?: number;
  /** Following the last stage ends at this dose [h]; missing: at the end of the tail. */
  readonly tailDoseH?: number;
  /** Hears of the steps that are taken, not of those that a trail spares. */
  readonly onStep?: StepListener;
  /** What this piece left behind when it last ran on a runner of these settings; written anew. */
  readonly trail?: Trail;
}

const NOWHERE: Surroundings = {
  gasC: 0,
  wallC: 0,
  humidityRatio: 0,
  convectionWm2K: 0,
  pressurePa: 101325,
};

/** A solver with its workspace; runs member after member without allocating in the loop. */
export class PieceRunner {
  readonly settings: RunSettings;
  readonly solver: PieceSolver;
  readonly #before: Float64Array;
  readonly #earlier: Surroundings = { ...NOWHERE };
  readonly #around: Surroundings = { ...NOWHERE };
  readonly #air = new AirCourse();
  readonly #passings = new Passings();
  readonly #afterHeat = new AfterHeat();
  readonly #at = new Whereabouts();

  constructor(settings: RunSettings, softeningRate: SofteningRate) {
    this.settings = settings;
    this.solver = new PieceSolver(settings.cells, softeningRate);
    this.#before = new Float64Array(this.solver.state.length);
  }

  run(piece: MeatParameters, stages: readonly StagePlan[], options: RunOptions): RunOutcome {
    const outcome = new RunOutcome(stages.length);
    this.solver.begin(piece);
    this.#air.begin();
    this.#passings.begin();
    this.#afterHeat.begin();
    const at = this.#at;
    at.begin();
    const { stretch, wordDoses, reachC, lastHeatStage, tailDoseH, trail } = options;
    const from = trail?.setOut(piece, stages, { stretch, wordDoses, reachC, lastHeatStage, tailDoseH });
    if (from) this.#takeUp(from, outcome);
    for (;;) {
      this.#runStage(outcome, piece, stages, options);
      if (outcome.stuckStage >= 0 || at.stage === stages.length - 1) break;
      at.goTo(at.stage + 1);
      if (trail) this.#keep(trail, outcome);
    }
    this.#afterHeat.standForLater(outcome);
    return outcome;
  }

  /** From where the run stands to the end of the stage and its tail. */
  #runStage(
    outcome: RunOutcome,
    piece: MeatParameters,
    stages: readonly StagePlan[],
    options: RunOptions,
  ): void {
    const { solver } = this;
    const at = this.#at;
    const s = at.stage;
    const stage = stages[s]!;
    const { air, cover, trigger } = stage;
    const { stretch, trail } = options;
    if (!at.isInside) this.#enterStage(stage, stages[s - 1], piece);
    const { beganS } = at;
    let timeS = at.timeS;
    const horizonS = this.settings.horizonS / stretch;
    const endsAtS = trigger.by === 'clock' ? beganS + trigger.afterS / stretch : Infinity;
    const everyS = stage.spritz ? stage.spritz.everyS / stretch : Infinity;
    let nextSpritzS = beganS + everyS;
    const turnEveryS = stage.fire ? stage.fire.turnEveryS / stretch : Infinity;
    let nextTurnS = beganS + turnEveryS;
    let isOnOpenFace = stage.fire?.isOnOpenFace ?? true;
    // What has been before a state that the run took up.
    for (; nextSpritzS <= timeS; nextSpritzS += everyS);
    for (; nextTurnS <= timeS; nextTurnS += turnEveryS) isOnOpenFace = !isOnOpenFace;
    this.#faceFire(stage, isOnOpenFace);
    const longestStepS =
      cover.kind === 'still'
        ? LONGEST_STILL_STEP_S
        : Math.min(this.settings.longestStepS, this.settings.longestStepSPerM * piece.halfThicknessM);
    const watched = isMeasured(trigger) ? trigger : undefined;
    const target = watched ? targetOf(watched) : 0;
    const isFalling = fallsTo(stage, at.coreBeganC);
    const isPast = (figure: number): boolean => (isFalling ? figure <= target : figure >= target);
    const tailS = s === stages.length - 1 ? this.settings.tailS / stretch : 0;
    let tailEndS = 0;
    const close = (): void => {
      outcome.closeStage(s, solver, piece, timeS * stretch);
      if (s === options.lastHeatStage) this.#afterHeat.leave(outcome, solver, piece, timeS * stretch);
      tailEndS = timeS + tailS;
    };
    // The table asks for the end of such a stage: the figures at its begin stand for it.
    let ended =
      trigger.by === 'table' ||
      (trigger.by === 'clock' && trigger.afterS <= 0) ||
      (watched !== undefined && isPast(measureOf(watched, solver, piece)));
    if (ended) close();

    while (!ended || timeS < tailEndS) {
      if (ended && this.#isSettled(options, air)) break;
      let stepS = FIRST_STEP_S + STEP_GROWTH * (timeS - Math.max(beganS, this.#air.openedS));
      if (stepS > longestStepS) stepS = longestStepS;
      const limitS = ended ? tailEndS : Math.min(endsAtS, horizonS, nextSpritzS, nextTurnS);
      let lands = false;
      if (!ended && timeS >= horizonS) {
        outcome.stuckStage = s;
        return;
      }
      if (timeS + stepS >= limitS) {
        stepS = limitS - timeS;
        lands = true;
      }
      const coreBeforeC = solver.coreC;
      const doseBeforeH = solver.coreDoseH;
      let hit = false;
      if (watched && !ended) {
        const figureBefore = measureOf(watched, solver, piece);
        copy(solver.state, this.#before, solver.stateLength);
        this.#step(air, cover, timeS, stepS, stretch);
        const figure = measureOf(watched, solver, piece);
        if (isPast(figure)) {
          hit = true;
          stepS = landingS(watched, stepS, figureBefore, figure, (triedS) => {
            copy(this.#before, solver.state, solver.stateLength);
            this.#step(air, cover, timeS, triedS, stretch);
            return measureOf(watched, solver, piece);
          });
        }
      } else this.#step(air, cover, timeS, stepS, stretch);
      timeS = lands && !hit ? limitS : timeS + stepS;
      this.#passings.note(
        outcome,
        options.wordDoses,
        options.reachC,
        coreBeforeC,
        solver.coreC,
        doseBeforeH,
        solver.coreDoseH,
        (timeS - stepS) * stretch,
        timeS * stretch,
        stepS,
      );
      this.#afterHeat.note(outcome, solver, piece, timeS * stretch);
      options.onStep?.(timeS * stretch, s, solver, this.#around);
      if (!ended && (hit || (lands && limitS === endsAtS))) {
        ended = true;
        close();
      } else if (lands) {
        if (ended) break;
        if (stage.spritz && limitS === nextSpritzS) {
          solver.spritz(stage.spritz.kgM2);
          this.#air.openedS = timeS;
          nextSpritzS += everyS;
        }
        if (limitS === nextTurnS) {
          isOnOpenFace = !isOnOpenFace;
          this.#faceFire(stage, isOnOpenFace);
          this.#air.openedS = timeS;
          nextTurnS += turnEveryS;
        }
      }
      if (trail && !ended) {
        at.timeS = timeS;
        at.steps++;
        at.noteFigures(solver, piece);
        if (at.steps % KEPT_EVERY_STEPS === 0) this.#keep(trail, outcome);
      }
    }
    at.timeS = timeS;
  }

  /** Nothing more to learn from following the last stage: past every word, or too cold to soften. */
  #isSettled(options: RunOptions, air: AirPlan): boolean {
    if (options.tailDoseH !== undefined && this.solver.coreDoseH >= options.tailDoseH) return true;
    return this.solver.coreC < SOFTENS_FROM_C && air.gasC < SOFTENS_FROM_C;
  }

  #enterStage(stage: StagePlan, before: StagePlan | undefined, piece: MeatParameters): void {
    const { solver } = this;
    const at = this.#at;
    if (before) this.#air.change(before.air, stage.air, at.timeS);
    if (before?.cover.kind === 'foil' && stage.cover.kind === 'open') solver.openWrap();
    if (stage.pouredKgM2) solver.pour(stage.pouredKgM2);
    if (stage.glaze) solver.glaze(stage.glaze.waterKgM2, stage.glaze.solidsKgM2);
    at.isInside = true;
    at.beganS = at.timeS;
    at.coreBeganC = solver.coreC;
    at.noteFigures(solver, piece);
  }

  #keep(trail: Trail, outcome: RunOutcome): void {
    const parts = [this.#at, this.solver, this.#air, this.#passings, this.#afterHeat, outcome];
    const row = trail.next(parts.reduce((length, part) => length + part.keptLength, 0));
    if (row) parts.reduce((at, part) => part.keep(row, at), 0);
  }

  #takeUp(row: Float64Array, outcome: RunOutcome): void {
    const parts = [this.#at, this.solver, this.#air, this.#passings, this.#afterHeat, outcome];
    parts.reduce((at, part) => part.takeUp(row, at), 0);
  }

  #faceFire({ fire }: StagePlan, isOnOpenFace: boolean): void {
    const riseK = fire ? fire.riseK : 0;
    this.solver.faceFire(isOnOpenFace ? riseK : 0, isOnOpenFace ? 0 : riseK);
  }

  #step(air: AirPlan, cover: Cover, timeS: number, stepS: number, stretch: number): void {
    this.#air.fill(this.#earlier, air, timeS + STAGE_SHARE * stepS, stretch);
    this.#air.fill(this.#around, air, timeS + stepS, stretch);
    this.solver.step(stepS, this.#around, cover, this.#earlier);
  }
}

/** Short arrays: a loop is faster than `set`. */
function copy(from: Float64Array, to: Float64Array, length: number): void {
  for (let i = 0; i < length; i++) to[i] = from[i]!;
}
