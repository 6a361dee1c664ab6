/** The figures of a batch that a screen shows beside its formula. */
import { batchPh, PH_SD, titratableAcidity } from './acidity.ts';
import { type Batch, batchMassG } from './batch.ts';
import type { ResolvedLine } from './formulaLines.ts';
import { pulpIndex } from './rheology.ts';
import {
  batchDensity,
  batchWaterActivity,
  effectiveBrix,
  totalSolidsG,
  WATER_ACTIVITY_SD,
} from './solution.ts';
import { energyPer100g, type HeatWord, heatWord, saltPercent, scoville, sweetness } from './taste.ts';
import { unknownPhShare } from './unknowns.ts';

/** More of the batch than this with an unknown pH, and its pH is not said. */
const MOST_UNKNOWN = 0.02;

export interface Figures {
  readonly brix: number;
  readonly solidsPercent: number;
  readonly saltPercent: number;
  /** As acetic acid [g/100 g]. */
  readonly acidPercent: number;
  /** Missing where too much of it has no known pH. */
  readonly ph?: number;
  readonly phSd: number;
  readonly waterActivity?: number;
  readonly waterActivitySd: number;
  /** Sucrose equivalent [g/100 g]. */
  readonly sweetness: number;
  readonly scoville: number;
  readonly heat: HeatWord;
  readonly pulpIndex: number;
  readonly densityKgM3: number;
  readonly kcalPer100g: number;
}

export function figuresOf(b: Batch, lines: readonly ResolvedLine[]): Figures {
  const hasWater = b.waterG > 0;
  const isPhKnown = hasWater && unknownPhShare(lines) <= MOST_UNKNOWN;
  return {
    brix: effectiveBrix(b),
    solidsPercent: (100 * totalSolidsG(b)) / batchMassG(b),
    saltPercent: saltPercent(b),
    acidPercent: hasWater ? titratableAcidity(b) : 0,
    ...(isPhKnown && { ph: batchPh(b) }),
    phSd: PH_SD,
    ...(hasWater && { waterActivity: batchWaterActivity(b) }),
    waterActivitySd: WATER_ACTIVITY_SD,
    sweetness: sweetness(b),
    scoville: scoville(b),
    heat: heatWord(scoville(b)),
    pulpIndex: pulpIndex(b),
    densityKgM3: batchDensity(b),
    kcalPer100g: energyPer100g(b),
  };
}
