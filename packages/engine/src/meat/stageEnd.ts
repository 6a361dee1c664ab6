/** Ends of stages that are measured on the piece, and landing on them inside a step. */
import { lossShare } from './outcome.ts';
import type { MeatParameters } from './parameters.ts';
import type { PieceSolver } from './solver.ts';
import { isCooking, type StagePlan, type StageTrigger } from './stagePlan.ts';

export type MeasuredTrigger = Exclude<StageTrigger, { by: 'clock' } | { by: 'table' }>;

export const isMeasured = (trigger: StageTrigger): trigger is MeasuredTrigger =>
  trigger.by !== 'clock' && trigger.by !== 'table';

export function targetOf(trigger: MeasuredTrigger): number {
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

/** The measured figure now, in the unit of `targetOf`. */
export function measureOf(trigger: MeasuredTrigger, solver: PieceSolver, piece: MeatParameters): number {
  switch (trigger.by) {
    case 'core':
      return solver.coreC;
    case 'surface':
      return solver.surfaceC;
    case 'bark':
      return solver.barkM;
    case 'loss':
      return lossShare(solver, piece);
    case 'dose':
      return solver.coreDoseH;
  }
}

/** A piece that cools ends its stage on the way down. @param coreC as the stage began */
export const isFalling = ({ trigger, kind }: StagePlan, coreC: number): boolean =>
  trigger.by === 'core' && !isCooking(kind) && coreC > trigger.temperatureC;

/** Landed on an event: miss over 1 + its level; a bark is measured in metres. */
const CLOSE = 1e-7;
const CLOSE_BARK = 1e-4;
const MOST_ROUNDS = 12;

/**
 * Length of a step that ends at the event [s]: Illinois secant between the ends of the step, on the miss; a miss within
 * CLOSE moves no result.
 *
 * @param stepS length of the step that went past it
 * @param before figure at its begin
 * @param after figure at its end
 * @param tried takes a step of so many seconds from the begin and returns the figure; the last one tried stands
 */
export function landingS(
  trigger: MeasuredTrigger,
  stepS: number,
  before: number,
  after: number,
  tried: (stepS: number) => number,
): number {
  const target = targetOf(trigger);
  let lowS = 0;
  let highS = stepS;
  let low = before - target;
  let high = after - target;
  const close = CLOSE * (1 + Math.abs(target)) * (trigger.by === 'bark' ? CLOSE_BARK : 1);
  let triedS = stepS;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    triedS = high === low ? highS : lowS - (low * (highS - lowS)) / (high - low);
    const miss = tried(triedS) - target;
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
