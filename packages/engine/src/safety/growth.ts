import type { Curve } from '../calc/spec.ts';
import { exp, log } from '../numeric/elementary.ts';
import { integrate } from '../numeric/quadrature.ts';

const LN10 = Math.LN10;
/** Pieces of each straight run of a curve; the rates are smooth between their cardinal temperatures. */
const PIECES = 24;

export const GROWING = ['clostridium-perfringens', 'staphylococcus-aureus'] as const;
export type GrowingOrganism = (typeof GROWING)[number];
export const MATRICES = ['beef', 'chicken', 'pork'] as const;
export type Matrix = (typeof MATRICES)[number];

/** Growth of one organism in one food: its rate by temperature, and the state it starts with. */
export interface GrowthModel {
  /** Natural-log rate [1/s], zero outside `leastC`…`mostC`. */
  readonly ratePerS: (temperatureC: number) => number;
  readonly leastC: number;
  readonly mostC: number;
  /** Baranyi's physiological state at the start; infinite: no lag. */
  readonly q0: number;
}

interface Ratkowsky {
  readonly a: number;
  readonly leastC: number;
  readonly b: number;
  readonly mostC: number;
  readonly q0: number;
}

/**
 * Clostridium perfringens in cooked uncured meat.
 * @source GroPIN models 1157–1162 (Juneja, Marks, Huang & Thippareddi 2011). That the square is log10 per hour is
 *   inferred: only then does the fastest doubling take the 7 minutes that are published
 */
const PERFRINGENS: Readonly<Record<Matrix, Ratkowsky>> = {
  beef: { a: 0.05, leastC: 10.15, b: 0.238, mostC: 53, q0: 0.0699 },
  chicken: { a: 0.048, leastC: 9.74, b: 0.208, mostC: 52.1, q0: 0.0105 },
  pork: { a: 0.047, leastC: 10.69, b: 0.252, mostC: 52.8, q0: 0.0137 },
};

/** @source cardinal temperatures of S. aureus 2064 (published abstract), form of Rosso 1993; no lag, on the safe side */
const AUREUS = { leastC: 7.7, bestC: 40.6, mostC: 46.7, bestPerH: 1.97 };

function perfringens({ a, leastC, b, mostC, q0 }: Ratkowsky): GrowthModel {
  return {
    leastC,
    mostC,
    q0,
    ratePerS(t) {
      if (!(t > leastC && t < mostC)) return 0;
      const root = a * (t - leastC);
      return (LN10 * root * root * (1 - exp(b * (t - mostC)))) / 3600;
    },
  };
}

const aureus: GrowthModel = {
  leastC: AUREUS.leastC,
  mostC: AUREUS.mostC,
  q0: Number.POSITIVE_INFINITY,
  ratePerS(t) {
    const { leastC, bestC, mostC, bestPerH } = AUREUS;
    if (!(t > leastC && t < mostC)) return 0;
    const up = bestC - leastC;
    return (
      (bestPerH * (t - mostC) * (t - leastC) * (t - leastC)) /
      (up * (up * (t - bestC) - (bestC - mostC) * (bestC + leastC - 2 * t))) /
      3600
    );
  },
};

/** The model of an organism; C. perfringens needs the food. @throws RangeError where it is missing */
export function growthModel(organism: GrowingOrganism, matrix?: Matrix): GrowthModel {
  if (organism === 'staphylococcus-aureus') return aureus;
  if (matrix === undefined) throw new RangeError('clostridium-perfringens needs a matrix');
  return perfringens(PERFRINGENS[matrix]);
}

/** Lag at a steady temperature [s]; undefined where nothing grows. */
export function lagS(model: GrowthModel, temperatureC: number): number | undefined {
  const rate = model.ratePerS(temperatureC);
  return rate > 0 ? log(1 + 1 / model.q0) / rate : undefined;
}

/** ∫µ dt along a straight piece. */
function rateIntegral(model: GrowthModel, fromC: number, toC: number, durationS: number): number {
  if (fromC === toC) return model.ratePerS(fromC) * durationS;
  const lo = Math.max(Math.min(fromC, toC), model.leastC);
  const hi = Math.min(Math.max(fromC, toC), model.mostC);
  if (!(hi > lo)) return 0;
  // Time is proportional to temperature along the piece.
  return (integrate(model.ratePerS, lo, hi, PIECES) * durationS) / Math.abs(toC - fromC);
}

/**
 * log10 growth over a curve of straight pieces, without a ceiling.
 *
 * Baranyi and Roberts: dq/dt = µq, dy/dt = µq/(1+q); so y = ln((1+q)/(1+q₀)) whatever the course of µ, and only its
 * integral is needed. @source Baranyi & Roberts 1994
 */
export function growthLog10(model: GrowthModel, curve: Curve): number {
  let grown = 0;
  for (let i = 1; i < curve.timesS.length; i++)
    grown += rateIntegral(
      model,
      curve.temperaturesC[i - 1]!,
      curve.temperaturesC[i]!,
      curve.timesS[i]! - curve.timesS[i - 1]!,
    );
  // ln((1 + q₀e^M)/(1 + q₀)), written so that a large M does not overflow.
  const lagged =
    model.q0 === Number.POSITIVE_INFINITY ? grown : grown + log((model.q0 + exp(-grown)) / (1 + model.q0));
  return Math.max(0, lagged) / LN10;
}
