/** Books a step once its stages are solved: temperatures and slopes, surface, film or pool, fat, dose, front. */
import { exp } from '../numeric/elementary.ts';
import type { PieceBody } from './body.ts';
import type { StepCoefficients } from './coefficients.ts';
import { gatherDose } from './dose.ts';
import { moveFront } from './dryingFront.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { AT } from './state.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';

/** Rendering of fat at 80 °C [1/s], with the juice's temperature dependence. @source from memory, weak */
const RENDERING_80_PER_S = 1 / (3 * 3600);

/** What of a half piece is booked: its step as the stages left it (halfPiece.ts). */
export interface SolvedStep {
  readonly body: PieceBody;
  readonly state: Float64Array;
  readonly coefficients: StepCoefficients;
  readonly flows: SurfaceFlows;
  readonly stage: SurfaceFlows;
  readonly begunC: Float64Array;
  readonly stageC: Float64Array;
  readonly store: number;
  readonly storedJuice: number;
  readonly stepS: number;
  readonly implicitS: number;
  readonly earlierS: number;
  readonly earlierSurfaceC: number;
  readonly earlierFrontC: number;
}

/** @param setOutC from which the last stage set out @param lastDosed outermost cell whose dose is kept */
export function bookStep(half: SolvedStep, setOutC: Float64Array, lastDosed: number): void {
  const { state, body, flows, stepS, begunC, coefficients } = half;
  const { released } = coefficients;
  const endedC = half.stageC;
  const k = state[AT.wetCell]! | 0;
  const T = body.temperatureAt;
  const slope = body.slopeAt;
  const perImplicitS = 1 / half.implicitS;
  const carriedBefore = state[AT.waterEnthalpyOut]!;
  const owedBefore = state[AT.front]!;
  let enthalpy = 0;
  for (let i = 0; i <= k; i++) {
    const endC = endedC[i]!;
    state[T + i] = endC;
    state[slope + i] = (endC - setOutC[i]!) * perImplicitS;
    enthalpy += released[i]! * (begunC[i]! + endC);
  }
  state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + 0.5 * SPECIFIC_HEAT_WATER * enthalpy;
  bookSurface(half);
  bookWater(half);
  state[AT.solidFatShare] =
    state[AT.solidFatShare]! * exp(-RENDERING_80_PER_S * stepS * coefficients.middleReleaseRate);
  gatherDose(body, state, begunC, stepS, lastDosed);
  const throughFront = flows.frontKgM2S * stepS;
  moveFront(body, state, throughFront, coefficients.frontWaterKgM2, begunC[k]!);
  // What the front owes was not taken out of the cells.
  const leftKgM2 = coefficients.juiceKgM2 + throughFront - owedBefore + state[AT.front]!;
  const carried = state[AT.waterEnthalpyOut]! - carriedBefore;
  flows.withWaterWm2 = (carried - SPECIFIC_HEAT_WATER * body.piece.startC * leftKgM2) / stepS;
}

function bookSurface(half: SolvedStep): void {
  const { state, flows, stepS } = half;
  const perLater = 1 / (stepS - half.earlierS);
  state[AT.surfaceSlope] = (flows.surfaceC - half.earlierSurfaceC) * perLater;
  state[AT.frontSlope] = (flows.frontC - half.earlierFrontC) * perLater;
  state[AT.surfaceC] = flows.surfaceC;
  state[AT.frontC] = flows.frontC;
  state[AT.throughFront] = half.stage.frontKgM2S;
  state[AT.evaporated] = state[AT.evaporated]! + (flows.wetKgM2S + flows.frontKgM2S) * stepS;
  state[AT.browningH] = state[AT.browningH]! + (stepS / 3600) * flows.browning;
  state[AT.heatIn] = state[AT.heatIn]! + (flows.intoMeatWm2 + flows.fromMiddleWm2) * stepS;
  state[AT.heatFromAir] = state[AT.heatFromAir]! + flows.fromAirWm2 * stepS;
  state[AT.heatEvaporating] = state[AT.heatEvaporating]! + flows.evaporatingWm2 * stepS;
}

/** Film or pool as the last stage left it; what is over the film's cap runs off. */
function bookWater(half: SolvedStep): void {
  const { state, body, store, storedJuice } = half;
  const held = state[store]! + storedJuice - half.flows.wetKgM2S * half.stepS;
  if (store === AT.pool) {
    state[AT.pool] = held;
    return;
  }
  const { filmCapKgM2 } = body.piece;
  const over = held > filmCapKgM2 ? held - filmCapKgM2 : 0;
  state[AT.film] = held - over;
  state[AT.dripped] = state[AT.dripped]! + half.coefficients.juiceKgM2 - storedJuice + over;
}
