/**
 * Cooling a pot of sauce by vessel: thick sauce does not stir itself, so it is conduction in a short cylinder, or in a
 * slab for a pan; and the two-stage rule over what comes out.
 */
import type { Said } from '@pitwright/model';
import { type Body, conductionSeries, timeToTheta } from '../heat/conduction.ts';
import { log } from '../numeric/elementary.ts';

const CONDUCTIVITY = 0.5;
const DIFFUSIVITY = 1.36e-7;

export interface Vessel {
  readonly kind: 'jar' | 'pan';
  readonly radiusM: number;
  /** Half of the depth of the sauce; of a pan, the whole: its bottom is as good as insulated on a shelf. */
  readonly halfHeightM: number;
}

/** Jars by trade sizes (outer size of the sauce in them), and pans by depth. */
export const JARS: Readonly<Record<'half-pint' | 'pint' | 'quart', Vessel>> = {
  'half-pint': { kind: 'jar', radiusM: 0.033, halfHeightM: 0.0425 },
  pint: { kind: 'jar', radiusM: 0.038, halfHeightM: 0.0575 },
  quart: { kind: 'jar', radiusM: 0.045, halfHeightM: 0.0775 },
};
export const panOf = (diameterM: number, depthM: number): Vessel => ({
  kind: 'pan',
  radiusM: diameterM / 2,
  halfHeightM: depthM,
});

/** Round the vessel: heat-transfer coefficient [W/m²K] and temperature [°C] (coefficients from memory). */
export const SURROUNDINGS = {
  counter: { coefficientWm2K: 8, temperatureC: 22 },
  fridge: { coefficientWm2K: 8, temperatureC: 4 },
  'fan-fridge': { coefficientWm2K: 16, temperatureC: 4 },
  'ice-bath': { coefficientWm2K: 150, temperatureC: 0.5 },
  'stirred-ice-bath': { coefficientWm2K: 300, temperatureC: 0.5 },
} as const;
export type Surround = keyof typeof SURROUNDINGS;

/** Many warm jars together halve what a fridge takes from each (judgement). */
const CROWDED = 4;

/** Stirring the sauce itself: it is one temperature, and the wall's film is what is left [W/m²K]. */
const INSIDE_STIRRED = 250;

export interface CoolingAsk {
  readonly vessel: Vessel;
  readonly around: Surround;
  readonly startC: number;
  readonly jars?: number;
  readonly isStirred?: boolean;
}

function timeFrom(ask: CoolingAsk, toC: number): number {
  const { coefficientWm2K, temperatureC } = SURROUNDINGS[ask.around];
  const isFridge = ask.around === 'fridge' || ask.around === 'fan-fridge';
  const h = isFridge && (ask.jars ?? 1) > CROWDED ? coefficientWm2K / 2 : coefficientWm2K;
  const theta = (toC - temperatureC) / (ask.startC - temperatureC);
  if (theta >= 1) return 0;
  if (!(theta > 0)) return Infinity;
  const { radiusM, halfHeightM } = ask.vessel;
  if (ask.isStirred) {
    const overall = 1 / (1 / h + 1 / INSIDE_STIRRED);
    const volumePerArea = 1 / (2 / radiusM + 1 / halfHeightM);
    const capacity = (CONDUCTIVITY / DIFFUSIVITY) * volumePerArea;
    return (-log(theta) * capacity) / overall;
  }
  const body: Body = {
    axes: [
      { series: conductionSeries('cylinder', (h * radiusM) / CONDUCTIVITY), lengthM: radiusM },
      { series: conductionSeries('slab', (h * halfHeightM) / CONDUCTIVITY), lengthM: halfHeightM },
    ],
  };
  return timeToTheta(body, DIFFUSIVITY, theta);
}

/** First stage from 57 to 21 °C in 2 h, and to 5 °C in 6 h in all. @source FDA Food Code 3-501.14 */
const STAGE = { fromC: 57.2, throughC: 21.1, toC: 5, firstS: 2 * 3600, allS: 6 * 3600 };

export interface CoolingAnswer {
  /** Centre from 57 to 21 °C [s]. */
  readonly firstStageS: number;
  /** Centre from 57 to 5 °C [s]. */
  readonly bothStagesS: number;
  readonly passes: boolean;
  /** Until the centre is within 2 K of where it stands: cold thickness is there [s from the start]. */
  readonly coldThroughS: number;
  readonly said: readonly Said[];
}

/** How this vessel cools here, and whether that is fast enough; for a sauce that is not sour the rule binds. */
export function cooling(ask: CoolingAsk): CoolingAnswer {
  if (!(ask.startC > SURROUNDINGS[ask.around].temperatureC))
    throw new RangeError(`startC must be above the surroundings, got ${ask.startC}`);
  const at = (c: number): number => timeFrom(ask, c);
  const from = at(Math.min(STAGE.fromC, ask.startC));
  const firstStageS = at(STAGE.throughC) - from;
  const bothStagesS = at(STAGE.toC) - from;
  const passes = firstStageS <= STAGE.firstS && bothStagesS <= STAGE.allS;
  const params = { first: { kind: 'time', si: firstStageS } } as const;
  const said: Said[] = passes
    ? [{ id: 'sauce.cools-in-time', source: 'FDA Food Code 3-501.14', params }]
    : [
        {
          id: firstStageS === Infinity ? 'sauce.never-cools' : 'sauce.cools-too-slowly',
          level: 'caution',
          source: 'FDA Food Code 3-501.14',
          params: firstStageS === Infinity ? {} : params,
        },
      ];
  return {
    firstStageS,
    bothStagesS,
    passes,
    coldThroughS: at(SURROUNDINGS[ask.around].temperatureC + 2),
    said,
  };
}

/** What goes with every glaze: a clean portion for the table, and a boiled or thrown-away rest. */
export const brushNotices = (): readonly Said[] => [
  { id: 'sauce.clean-portion', level: 'caution', source: 'common practice, no source' },
  {
    id: 'sauce.boil-the-brush-bowl',
    level: 'caution',
    source: 'FSIS, safe marinades and sauces (from memory)',
  },
];
