/** The air round a piece over time: warm-up, a change from stage to stage, a told curve, drift, the lid opened. */
import { exp } from '../numeric/elementary.ts';
import type { Surroundings } from './parameters.ts';
import type { AirPlan } from './stagePlan.ts';

/** Air at the meat just after it went on, below the told temperature [K]: lid open, cold load. */
const WARM_UP_DROP_K = 55;
/** Beyond it somebody would have seen to the fire [K]. */
const MOST_DRIFT_K = 40;

const clamped = (x: number, most: number): number => Math.min(most, Math.max(-most, x));

export class AirCourse {
  /** When the pit was last opened [s]; −∞ not yet. */
  openedS = -Infinity;
  #deviationK = 0;
  #changedS = 0;

  begin(): void {
    this.openedS = -Infinity;
    this.#deviationK = -WARM_UP_DROP_K;
    this.#changedS = 0;
  }

  readonly keptLength = 3;
  keep(row: Float64Array, at: number): number {
    row[at] = this.openedS;
    row[at + 1] = this.#deviationK;
    row[at + 2] = this.#changedS;
    return at + this.keptLength;
  }
  takeUp(row: Float64Array, at: number): number {
    this.openedS = row[at]!;
    this.#deviationK = row[at + 1]!;
    this.#changedS = row[at + 2]!;
    return at + this.keptLength;
  }

  change(before: AirPlan, now: AirPlan, timeS: number): void {
    const current =
      before.gasC + (before.lagS > 0 ? this.#deviationK * exp(-(timeS - this.#changedS) / before.lagS) : 0);
    this.#deviationK = before.isPit && now.isPit ? current - now.gasC : 0;
    this.#changedS = timeS;
  }

  /**
   * Fills the surroundings at a moment.
   *
   * @param atS model time from meat on
   * @param stretch clock time over model time: curve and drift are told by the clock
   */
  fill(around: Surroundings, air: AirPlan, atS: number, stretch: number): void {
    if (air.curve) around.gasC = alongCurve(air.curve, atS * stretch);
    else
      around.gasC =
        air.gasC +
        (air.lagS > 0 && this.#deviationK !== 0
          ? this.#deviationK * exp(-(atS - this.#changedS) / air.lagS)
          : 0);
    if (air.driftKPerH) around.gasC += clamped((air.driftKPerH * atS * stretch) / 3600, MOST_DRIFT_K);
    around.wallC = around.gasC - air.wallDropK;
    // Opened, the air is lost at once; the walls hardly cool.
    if (air.opening && this.openedS > -Infinity)
      around.gasC -= air.opening.dropK * exp(-(atS - this.openedS) / air.opening.recoverS);
    around.humidityRatio = air.humidityRatio;
    around.convectionWm2K = air.convectionWm2K;
    around.pressurePa = air.pressurePa;
  }
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
