/**
 * One member of one piece through its stages. Events are located inside a step: the step is taken again, shorter, so
 * that results are continuous in their inputs.
 */
import { exp } from '../numeric/elementary.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import { PieceSolver } from './solver.ts';
import { type AirPlan, isCooking, type StagePlan, type StageTrigger } from './stagePlan.ts';
import type { SofteningRate } from './tables.ts';

export interface RunSettings {
  readonly cells: number;
  /** Longest step [s]. */
  readonly longestStepS: number;
  /** Time from meat on after which a stage that has not ended counts as never ending [s]. */
  readonly horizonS: number;
  /** How long the last stage is followed beyond its end, for the time past the bite [s]. */
  readonly tailS: number;
}

/** For ensembles: finish time within 0.5 % of the fine grid. */
export const ENSEMBLE_SETTINGS: RunSettings = {
  cells: 12,
  longestStepS: 180,
  horizonS: 48 * 3600,
  tailS: 0,
};
/** For gradients inside the piece, and for holding against other codings. */
export const FINE_SETTINGS: RunSettings = { ...ENSEMBLE_SETTINGS, cells: 24, longestStepS: 60 };

const FIRST_STEP_S = 15;
const STEP_GROWTH = 0.06;
/** Air at the meat just after it went on, below the told temperature [K]: lid open, cold load. */
const WARM_UP_DROP_K = 55;
/** Below this softening takes days [°C]. */
const SOFTENS_FROM_C = 52;
/** Rest and hold are slow: longer steps. */
const STILL_STEP_SHARE = 3;
/** Landed on an event: miss over 1 + its level; a bark is measured in metres. */
const CLOSE = 1e-7;
const CLOSE_BARK = 1e-4;
/** A stage that ends at a core temperature has landed within this [K]. */
const LANDED_K = 1e-4;
/** A stage that ends at a dose has landed within this share of it. */
const LANDED = 1 - 1e-5;
/** The centre has left `raw`. */
const FIRM_FROM_C = 60;
const STALL_FROM_C = 55;
const STALL_TO_C = 85;

/** Dose at which each word beyond `firm` begins; ∞ where the tissue does not know it [h]. */
export type WordDoses = readonly [cleanBite: number, tender: number, fallsOff: number, pullsApart: number];
export const WORDS_TIMED = 5;

/** After the heat, how long until the figures of the eater are noted [s]; the last stands for all later. */
export const AFTER_HEAT_S = [0, 1800, 3600, 2 * 3600, 4 * 3600, 8 * 3600] as const;
/** Places of one noted moment: loss of the raw mass without bone [1], bark [m], browning [h], juiciness [1]. */
export const EATEN = { lossShare: 0, barkM: 1, browningH: 2, juiciness: 3, width: 4 } as const;

/** What one run leaves behind; times in seconds of the clock from meat on, ∞ = never. */
export class RunOutcome {
  readonly endS: Float64Array;
  readonly coreC: Float64Array;
  readonly surfaceC: Float64Array;
  readonly lossShare: Float64Array;
  readonly barkM: Float64Array;
  readonly doseH: Float64Array;
  /** firm (centre past 60 °C), clean bite, tender, falls off, pulls apart */
  readonly wordS = new Float64Array(WORDS_TIMED);
  /** Figures of `EATEN` at each of `AFTER_HEAT_S`; NaN where the piece never leaves the heat. */
  readonly afterHeat = new Float64Array(AFTER_HEAT_S.length * EATEN.width);
  reachS = Infinity;
  stallC = NaN;
  at65S = Infinity;
  at75S = Infinity;
  /** Index of the first stage that never ended, or −1. */
  stuckStage = -1;

  constructor(stages: number) {
    this.endS = new Float64Array(stages);
    this.coreC = new Float64Array(stages);
    this.surfaceC = new Float64Array(stages);
    this.lossShare = new Float64Array(stages);
    this.barkM = new Float64Array(stages);
    this.doseH = new Float64Array(stages);
  }
}

/** Called after every step. @param clockS from meat on @param stage index */
export type StepListener = (clockS: number, stage: number, solver: PieceSolver, around: Surroundings) => void;

export interface RunOptions {
  /** Clock time over model time: the model's own error as a factor on all times. */
  readonly stretch: number;
  readonly wordDoses: WordDoses;
  /** Centre temperature whose first passing is wanted [°C]. */
  readonly reachC?: number;
  /** Index of the last stage on the heat: from its end on the figures of the eater are noted. */
  readonly lastHeatStage?: number;
  /** Following the last stage ends at this dose [h]; missing: at the end of the tail. */
  readonly tailDoseH?: number;
  readonly onStep?: StepListener;
}

/** Fat that melts out in the end, of the raw fat. @source from memory, weak */
const RENDERABLE_SHARE = 0.45;
/** Of the melted fat, what leaves the piece: 2–4 points of a brisket's raw mass, the gap between water lost and yields measured by Kerth, Wall & Grayson-Holter. */
const RENDERED_FAT_LOST = 0.4;

/** A solver with its workspace; runs member after member without allocating in the loop. */
export class PieceRunner {
  readonly settings: RunSettings;
  readonly solver: PieceSolver;
  readonly #before: Float64Array;
  readonly #around: Surroundings = {
    gasC: 0,
    wallC: 0,
    humidityRatio: 0,
    convectionWm2K: 0,
    pressurePa: 101325,
  };
  #airDeviationK = 0;
  #airChangedS = 0;
  /** When the pit was last opened; −∞ not yet. */
  #openedS = -Infinity;
  #heatEndS = Infinity;
  /** Next of `AFTER_HEAT_S` to be noted. */
  #nextNoted = 0;
  #notedS = 0;
  readonly #noted = new Float64Array(EATEN.width);
  readonly #eaten = new Float64Array(EATEN.width);

  constructor(settings: RunSettings, softeningRate: SofteningRate) {
    this.settings = settings;
    this.solver = new PieceSolver(settings.cells, softeningRate);
    this.#before = new Float64Array(this.solver.state.length);
  }

  run(piece: MeatParameters, stages: readonly StagePlan[], options: RunOptions): RunOutcome {
    const outcome = new RunOutcome(stages.length);
    outcome.endS.fill(Infinity);
    outcome.wordS.fill(Infinity);
    outcome.afterHeat.fill(NaN);
    this.#heatEndS = Infinity;
    this.#nextNoted = 0;
    this.#openedS = -Infinity;
    this.#runStages(outcome, piece, stages, options);
    this.#standForLater(outcome);
    return outcome;
  }

  #runStages(
    outcome: RunOutcome,
    piece: MeatParameters,
    stages: readonly StagePlan[],
    options: RunOptions,
  ): void {
    const solver = this.solver;
    solver.begin(piece);
    const horizonS = this.settings.horizonS / options.stretch;
    let timeS = 0;
    let slowest = Infinity;
    this.#airDeviationK = -WARM_UP_DROP_K;
    this.#airChangedS = 0;
    let previousAir: AirPlan | undefined;

    for (let s = 0; s < stages.length; s++) {
      const stage = stages[s]!;
      const { air, cover, trigger } = stage;
      if (previousAir) this.#changeAir(previousAir, air, timeS);
      previousAir = air;
      this.#enterStage(stage, s > 0 ? stages[s - 1]!.cover : undefined);
      const beganS = timeS;
      const endsAtS = trigger.by === 'clock' ? beganS + trigger.afterS / options.stretch : Infinity;
      const everyS = stage.spritz ? stage.spritz.everyS / options.stretch : Infinity;
      let nextSpritzS = beganS + everyS;
      const isLast = s === stages.length - 1;
      const longestStepS =
        cover.kind === 'still' ? STILL_STEP_SHARE * this.settings.longestStepS : this.settings.longestStepS;
      const isFalling =
        trigger.by === 'core' && !isCooking(stage.kind) && solver.coreC > trigger.temperatureC;
      let ended = trigger.by === 'clock' && trigger.afterS <= 0;
      if (!ended && measures(trigger)) {
        const target = targetOf(trigger);
        const now = this.#measure(trigger, piece);
        ended = isFalling ? now <= target : now >= target;
      }
      let tailEndS = 0;
      // The table asks for the end of such a stage: the figures at its begin stand for it.
      if (trigger.by === 'table') ended = true;
      if (ended) {
        this.#close(outcome, piece, s, timeS * options.stretch);
        if (s === options.lastHeatStage) this.#leaveHeat(outcome, piece, timeS * options.stretch);
      }
      const followTail = isLast && this.settings.tailS > 0;
      if (ended && followTail) tailEndS = timeS + this.settings.tailS / options.stretch;

      while (!ended || timeS < tailEndS) {
        if (ended && this.#isSettled(options, air)) break;
        let stepS = FIRST_STEP_S + STEP_GROWTH * (timeS - Math.max(beganS, this.#openedS));
        if (stepS > longestStepS) stepS = longestStepS;
        const limitS = ended ? tailEndS : Math.min(endsAtS, horizonS, nextSpritzS);
        let lands = false;
        if (!ended && timeS >= horizonS) {
          outcome.stuckStage = s;
          return;
        }
        if (timeS + stepS >= limitS) {
          stepS = limitS - timeS;
          lands = true;
        }
        const coreBefore = solver.coreC;
        const doseBefore = solver.coreDoseH;
        const watched = !ended && measures(trigger);
        const measureBefore = watched ? this.#measure(trigger, piece) : 0;
        if (watched) copy(solver.state, this.#before);
        this.#step(air, cover, timeS, stepS, options.stretch);
        let hit = false;
        if (watched) {
          const target = targetOf(trigger);
          const after = this.#measure(trigger, piece);
          if (isFalling ? after <= target : after >= target) {
            hit = true;
            stepS = this.#land(
              piece,
              air,
              cover,
              timeS,
              stepS,
              options.stretch,
              trigger,
              target,
              measureBefore,
              after,
            );
          }
        }
        timeS = lands && !hit ? limitS : timeS + stepS;
        this.#note(outcome, options, coreBefore, doseBefore, timeS, stepS);
        const slope = (solver.coreC - coreBefore) / stepS;
        const middleC = 0.5 * (solver.coreC + coreBefore);
        if (slope < slowest && slope > 0 && middleC >= STALL_FROM_C && middleC <= STALL_TO_C) {
          slowest = slope;
          outcome.stallC = middleC;
        }
        if (this.#heatEndS < Infinity) this.#noteAfterHeat(outcome, piece, timeS * options.stretch);
        options.onStep?.(timeS * options.stretch, s, solver, this.#around);
        if (!ended && (hit || (lands && trigger.by === 'clock' && limitS === endsAtS))) {
          ended = true;
          this.#close(outcome, piece, s, timeS * options.stretch);
          if (s === options.lastHeatStage) this.#leaveHeat(outcome, piece, timeS * options.stretch);
          if (followTail) tailEndS = timeS + this.settings.tailS / options.stretch;
        } else if (lands) {
          if (ended) break;
          if (stage.spritz && limitS === nextSpritzS) {
            solver.spritz(stage.spritz.kgM2);
            this.#openedS = timeS;
            nextSpritzS += everyS;
          }
        }
      }
    }
  }

  #measureEaten(into: Float64Array, piece: MeatParameters): void {
    into[EATEN.lossShare] = lossShare(this.solver, piece);
    into[EATEN.barkM] = this.solver.barkM;
    into[EATEN.browningH] = this.solver.browningH;
    into[EATEN.juiciness] = this.solver.juiciness;
  }

  #leaveHeat(outcome: RunOutcome, piece: MeatParameters, clockS: number): void {
    this.#heatEndS = clockS;
    this.#notedS = clockS;
    this.#measureEaten(this.#noted, piece);
    outcome.afterHeat.set(this.#noted, 0);
    this.#nextNoted = 1;
  }

  /** Straight between the steps on both sides of a moment. */
  #noteAfterHeat(outcome: RunOutcome, piece: MeatParameters, clockS: number): void {
    if (this.#nextNoted >= AFTER_HEAT_S.length) return;
    const eaten = this.#eaten;
    this.#measureEaten(eaten, piece);
    while (this.#nextNoted < AFTER_HEAT_S.length) {
      const atS = this.#heatEndS + AFTER_HEAT_S[this.#nextNoted]!;
      if (clockS < atS) break;
      const share = clockS > this.#notedS ? (atS - this.#notedS) / (clockS - this.#notedS) : 1;
      for (let i = 0; i < EATEN.width; i++)
        outcome.afterHeat[this.#nextNoted * EATEN.width + i] =
          this.#noted[i]! + share * (eaten[i]! - this.#noted[i]!);
      this.#nextNoted++;
    }
    this.#noted.set(eaten);
    this.#notedS = clockS;
  }

  /** Where following ended early, the last figures stand for what comes later. */
  #standForLater(outcome: RunOutcome): void {
    if (this.#nextNoted === 0) return;
    for (let next = this.#nextNoted; next < AFTER_HEAT_S.length; next++)
      outcome.afterHeat.set(this.#noted, next * EATEN.width);
  }

  /** Nothing more to learn from following the last stage: past every word, or too cold to soften. */
  #isSettled(options: RunOptions, air: AirPlan): boolean {
    if (options.tailDoseH !== undefined && this.solver.coreDoseH >= options.tailDoseH) return true;
    return this.solver.coreC < SOFTENS_FROM_C && air.gasC < SOFTENS_FROM_C;
  }

  #enterStage(stage: StagePlan, before: Cover | undefined): void {
    const solver = this.solver;
    if (before?.kind === 'foil' && stage.cover.kind === 'open') solver.openWrap();
    if (stage.pouredKgM2) solver.pour(stage.pouredKgM2);
    if (stage.glaze) solver.glaze(stage.glaze.waterKgM2, stage.glaze.solidsKgM2);
  }

  #changeAir(before: AirPlan, now: AirPlan, timeS: number): void {
    const current =
      before.gasC +
      (before.lagS > 0 ? this.#airDeviationK * exp(-(timeS - this.#airChangedS) / before.lagS) : 0);
    this.#airDeviationK = before.isPit && now.isPit ? current - now.gasC : 0;
    this.#airChangedS = timeS;
  }

  #step(air: AirPlan, cover: Cover, timeS: number, stepS: number, stretch: number): void {
    const around = this.#around;
    const atS = timeS + stepS;
    if (air.curve) around.gasC = alongCurve(air.curve, atS * stretch);
    else
      around.gasC =
        air.gasC +
        (air.lagS > 0 && this.#airDeviationK !== 0
          ? this.#airDeviationK * exp(-(atS - this.#airChangedS) / air.lagS)
          : 0);
    if (air.driftKPerH) around.gasC += clamped((air.driftKPerH * atS * stretch) / 3600, MOST_DRIFT_K);
    around.wallC = around.gasC - air.wallDropK;
    // Opened, the air is lost at once; the walls hardly cool.
    if (air.opening && this.#openedS > -Infinity)
      around.gasC -= air.opening.dropK * exp(-(atS - this.#openedS) / air.opening.recoverS);
    around.humidityRatio = air.humidityRatio;
    around.convectionWm2K = air.convectionWm2K;
    around.pressurePa = air.pressurePa;
    this.solver.step(stepS, around, cover);
  }

  /** Takes the last step again so that it ends at the event. @returns its length [s] */
  #land(
    piece: MeatParameters,
    air: AirPlan,
    cover: Cover,
    timeS: number,
    stepS: number,
    stretch: number,
    trigger: MeasuredTrigger,
    target: number,
    before: number,
    after: number,
  ): number {
    // Illinois secant between the ends of the step, on the miss; a miss this small moves no result.
    let lowS = 0;
    let highS = stepS;
    let low = before - target;
    let high = after - target;
    const close = CLOSE * (1 + Math.abs(target)) * (trigger.by === 'bark' ? CLOSE_BARK : 1);
    let triedS = stepS;
    for (let round = 0; round < 12; round++) {
      triedS = high === low ? highS : lowS - (low * (highS - lowS)) / (high - low);
      copy(this.#before, this.solver.state);
      this.#step(air, cover, timeS, triedS, stretch);
      const miss = this.#measure(trigger, piece) - target;
      if (Math.abs(miss) < close) break;
      if (miss < 0 === low < 0) {
        lowS = triedS;
        low = miss;
        high *= 0.5;
      } else {
        highS = triedS;
        high = miss;
        low *= 0.5;
      }
    }
    return triedS;
  }

  #measure(trigger: StageTrigger, piece: MeatParameters): number {
    switch (trigger.by) {
      case 'core':
        return this.solver.coreC;
      case 'surface':
        return this.solver.surfaceC;
      case 'bark':
        return this.solver.barkM;
      case 'loss':
        return lossShare(this.solver, piece);
      case 'dose':
        return this.solver.coreDoseH;
      default:
        return -Infinity;
    }
  }

  #note(
    outcome: RunOutcome,
    options: RunOptions,
    coreBefore: number,
    doseBefore: number,
    timeS: number,
    stepS: number,
  ): void {
    const core = this.solver.coreC;
    const fromS = (timeS - stepS) * options.stretch;
    const toS = timeS * options.stretch;
    if (core > coreBefore) {
      if (options.reachC !== undefined && outcome.reachS === Infinity && core >= options.reachC - LANDED_K)
        outcome.reachS = passedS(options.reachC, coreBefore, core, fromS, toS);
      if (outcome.at65S === Infinity && core >= 65) outcome.at65S = passedS(65, coreBefore, core, fromS, toS);
      if (outcome.at75S === Infinity && core >= 75) outcome.at75S = passedS(75, coreBefore, core, fromS, toS);
      if (outcome.wordS[0] === Infinity && core >= FIRM_FROM_C)
        outcome.wordS[0] = passedS(FIRM_FROM_C, coreBefore, core, fromS, toS);
    }
    const dose = this.solver.coreDoseH;
    for (let w = 0; w < 4; w++) {
      const needed = options.wordDoses[w]!;
      if (dose >= needed * LANDED && outcome.wordS[w + 1] === Infinity)
        outcome.wordS[w + 1] = passedS(needed, doseBefore, dose, fromS, toS);
    }
  }

  #close(outcome: RunOutcome, piece: MeatParameters, stage: number, clockS: number): void {
    const solver = this.solver;
    outcome.endS[stage] = clockS;
    outcome.coreC[stage] = solver.coreC;
    outcome.surfaceC[stage] = solver.surfaceC;
    outcome.lossShare[stage] = lossShare(solver, piece);
    outcome.barkM[stage] = solver.barkM;
    outcome.doseH[stage] = solver.coreDoseH;
  }
}

/** Water and fat lost, of the raw mass without bone [1]. */
const lossShare = (solver: PieceSolver, piece: MeatParameters): number =>
  (solver.evaporatedKgM2 + solver.drippedKgM2) / solver.rawMassKgM2 +
  RENDERED_FAT_LOST * RENDERABLE_SHARE * piece.composition.fat * (1 - solver.solidFatShare);

/** Short arrays: a loop is faster than `set`. */
function copy(from: Float64Array, to: Float64Array): void {
  for (let i = 0; i < from.length; i++) to[i] = from[i]!;
}

/** Beyond it somebody would have seen to the fire [K]. */
const MOST_DRIFT_K = 40;
const clamped = (x: number, most: number): number => Math.min(most, Math.max(-most, x));

type MeasuredTrigger = Exclude<StageTrigger, { by: 'clock' } | { by: 'table' }>;
const measures = (trigger: StageTrigger): trigger is MeasuredTrigger =>
  trigger.by !== 'clock' && trigger.by !== 'table';

function targetOf(trigger: MeasuredTrigger): number {
  switch (trigger.by) {
    case 'bark':
      return trigger.thicknessM;
    case 'loss':
      return trigger.lossShare;
    case 'dose':
      return trigger.doseH;
    default:
      return trigger.temperatureC;
  }
}

/** When a rising figure passed a level inside a step, straight between; the step's begin where it began above. */
function passedS(level: number, before: number, after: number, fromS: number, toS: number): number {
  if (before >= level) return fromS;
  const share = (level - before) / (after - before);
  // Landed a rounding short of the level: passed at the end, to the bit.
  return share >= 1 ? toS : fromS + share * (toS - fromS);
}

/** Straight between points, constant outside. */
function alongCurve(curve: NonNullable<AirPlan['curve']>, atS: number): number {
  const { timesS, temperaturesC } = curve;
  const last = timesS.length - 1;
  if (atS >= timesS[last]!) return temperaturesC[last]!;
  let i = 0;
  while (timesS[i + 1]! < atS) i++;
  const share = (atS - timesS[i]!) / (timesS[i + 1]! - timesS[i]!);
  return temperaturesC[i]! + share * (temperaturesC[i + 1]! - temperaturesC[i]!);
}
