/**
 * Chilling of a cooked piece: conduction from a body of its thickness, and the two-stage cooling rule over its middle.
 *
 * Covered, so that nothing evaporates, and of its raw thickness: both err to the slow side, which is the safe one.
 */
import type { Curve } from '../calc/spec.ts';
import { type Body, conductionSeries, timeToTheta } from '../heat/conduction.ts';
import type { SeriesShape } from '../heat/eigenvalues.ts';
import type { Cut } from '../meat/cut.ts';
import { pieceSize } from '../meat/size.ts';
import { SURROUNDINGS } from '../sauce/cooling.ts';
import { COOLING_RULES, type CoolingVerdict, coolingVerdict } from './cooling.ts';

/** Cooked meat. @source ASHRAE Handbook Refrigeration ch. 19, cooked beef and pork, from memory: k 0.43–0.49, α 1.2–1.4e-7 */
const CONDUCTIVITY_WMK = 0.45;
const DIFFUSIVITY_M2S = 1.3e-7;

export const CHILLERS = ['fridge', 'fan-fridge', 'ice-bath', 'stirred-ice-bath'] as const;
/** Where it cools; the baths with the piece in a bag without air. */
export type Chiller = (typeof CHILLERS)[number];

/** A body that cools. */
export interface Chilled {
  /** From its middle to the nearest face that cools [m]. */
  readonly halfThicknessM: number;
  /** 1 slab, 2 cylinder, 3 sphere, between for chunky pieces. */
  readonly dimensionality: number;
}

/** The piece as it comes off the pit, uncut. */
export function wholePiece(cut: Cut, massKg?: number, thicknessM?: number): Chilled {
  return {
    halfThicknessM: pieceSize(cut, massKg, thicknessM).halfThicknessM,
    dimensionality: cut.dimensionality,
  };
}

/** Pulled or sliced and spread in a flat pan: its bottom cools next to nothing. @param depthM of the layer */
export const spreadInPan = (depthM: number): Chilled => ({ halfThicknessM: depthM, dimensionality: 1 });

const SHAPES: readonly SeriesShape[] = ['slab', 'cylinder', 'sphere'];

/**
 * Time for the middle to fall from `startC` to `toC` [s]; ∞ where the surroundings are no colder. Between the shapes the
 * rate goes straight with the dimensionality.
 */
function chillS(chilled: Chilled, around: Chiller, startC: number, toC: number): number {
  const { coefficientWm2K, temperatureC } = SURROUNDINGS[around];
  const { halfThicknessM, dimensionality } = chilled;
  const theta = (toC - temperatureC) / (startC - temperatureC);
  const biot = (coefficientWm2K * halfThicknessM) / CONDUCTIVITY_WMK;
  const timeOf = (shape: SeriesShape): number => {
    const body: Body = { axes: [{ series: conductionSeries(shape, biot), lengthM: halfThicknessM }] };
    return timeToTheta(body, DIFFUSIVITY_M2S, theta);
  };
  const below = Math.min(1, Math.floor(dimensionality) - 1);
  const share = dimensionality - 1 - below;
  const slow = timeOf(SHAPES[below]!);
  if (!(share > 0) || slow === 0) return slow;
  return 1 / ((1 - share) / slow + share / timeOf(SHAPES[below + 1]!));
}

/** Temperatures at which the curve of the middle is noted: where the rule looks, and between. @source FDA Food Code 3-501.14: 135, 70, 41 °F */
const LOOKED_AT_C = [135, 70, 41].map((fahrenheit) => (fahrenheit - 32) / 1.8);
const BETWEEN = 6;

export interface Chilling extends CoolingVerdict {
  /** At the middle, from the start of chilling. */
  readonly curve: Curve;
  /** From 57 °C to 21 °C, and to 5 °C in all [s]. */
  readonly firstStageS: number;
  readonly bothStagesS: number;
}

/**
 * How long the middle takes and whether the rule of two hours and six is kept.
 *
 * @param startC of the whole piece when chilling begins, 57.3 to 100 °C
 * @throws RangeError on another start
 */
export function chilling(chilled: Chilled, around: Chiller, startC: number): Chilling {
  if (!(startC > LOOKED_AT_C[0]! && startC <= 100))
    throw new RangeError(`startC must be above 57.3 and at most 100, got ${startC}`);
  if (!(chilled.halfThicknessM > 0 && chilled.dimensionality >= 1 && chilled.dimensionality <= 3))
    throw new RangeError(`a body of ${chilled.halfThicknessM} m, dimensionality ${chilled.dimensionality}`);
  const temperaturesC: number[] = [startC];
  let aboveC = startC;
  for (const belowC of LOOKED_AT_C) {
    for (let i = 1; i < BETWEEN; i++) temperaturesC.push(aboveC + (i / BETWEEN) * (belowC - aboveC));
    temperaturesC.push(belowC);
    aboveC = belowC;
  }
  const timesS = temperaturesC.map((toC) => chillS(chilled, around, startC, toC));
  const curve = { timesS, temperaturesC };
  const [from, through, to] = LOOKED_AT_C.map((c) => timesS[temperaturesC.indexOf(c)]!) as [
    number,
    number,
    number,
  ];
  return {
    curve,
    firstStageS: through - from,
    bothStagesS: to - from,
    ...coolingVerdict(COOLING_RULES['food-code'], curve, 0),
  };
}
