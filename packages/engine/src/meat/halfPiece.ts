/**
 * From the thermal centre of a piece to one of its faces: state, coefficients, and the stages of a step.
 *
 * The step has two stages, singly diagonal and stiffly accurate (Alexander 1977, SDIRK of order 2, L-stable): the first
 * ends γ into the step, the second with it. Each is an elimination inward, a Newton on the surface, and the way back;
 * film and pool take part. One stage over the whole step, first order, stands in where the second would set out from
 * less than no water.
 *
 * @source R. Alexander, Diagonally implicit Runge–Kutta methods for stiff ODEs, SIAM J. Numer. Anal. 14 (1977)
 */

import { exp } from '../numeric/elementary.ts';
import { PieceBody } from './body.ts';
import { solveClosedSurface } from './closedSurface.ts';
import { StepCoefficients } from './coefficients.ts';
import { browningRate } from './colour.ts';
import { gatherDose } from './dose.ts';
import { moveFront } from './dryingFront.ts';
import { SPECIFIC_HEAT_WATER } from './heatContent.ts';
import { Interior } from './interior.ts';
import { OpenSurface } from './openSurface.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import { AT } from './state.ts';
import { SurfaceFlows } from './surfaceFlows.ts';
import type { SofteningRate } from './tables.ts';

/** γ = 1 − √½: where the first stage ends, and the implicit share of either. */
export const STAGE_SHARE = 1 - Math.SQRT1_2;
/** (1 − γ)/γ: the second stage sets out from the begin plus so much of what the first one changed. */
const SET_OUT_FACTOR = 1 + Math.SQRT2;

/** Rendering of fat at 80 °C [1/s], with the juice's temperature dependence. @source from memory, weak */
const RENDERING_80_PER_S = 1 / (3 * 3600);

const brownsIn = browningRate;

export class HalfPiece {
  readonly body: PieceBody;
  readonly state: Float64Array;
  /** Of the last step, mean over its stages; temperatures as it ended. */
  readonly flows = new SurfaceFlows();

  readonly #coefficients: StepCoefficients;
  readonly #interior: Interior;
  readonly #openSurface = new OpenSurface();
  readonly #stage = new SurfaceFlows();
  readonly #begunC: Float64Array;
  readonly #setOutC: Float64Array;
  readonly #stageC: Float64Array;
  #store: number = AT.film;
  #stepS = 0;
  #implicitS = 0;
  #boilingC = 100;
  #cover!: Cover;
  #convectionWm2K = 0;
  #canDry = false;
  /** Juice that reaches film or pool in this step [kg/m²]. */
  #storedJuice = 0;
  #setOutStore = 0;
  #stageStore = 0;
  /** The surface before the stage: as the step began, or as its first stage ended. */
  #earlierS = 0;
  #earlierSurfaceC = 0;
  #earlierFrontC = 0;

  /** @param state of this half, length PieceBody.stateLength */
  constructor(body: PieceBody, state: Float64Array) {
    this.body = body;
    this.state = state;
    const { cells } = body;
    this.#coefficients = new StepCoefficients(cells);
    this.#interior = new Interior(cells);
    this.#begunC = new Float64Array(cells);
    this.#setOutC = new Float64Array(cells);
    this.#stageC = new Float64Array(cells);
  }

  static onGrid(cells: number, softeningRate: SofteningRate): HalfPiece {
    const body = new PieceBody(cells, softeningRate);
    return new HalfPiece(body, new Float64Array(body.stateLength));
  }

  begin(piece: MeatParameters): void {
    this.body.begin(piece, this.state);
  }

  /** Coefficients of the step; the juice leaves the cells. @param around at its end */
  prepare(stepS: number, around: Surroundings, cover: Cover, boilingC: number): void {
    const { state, body } = this;
    const coefficients = this.#coefficients;
    const k = state[AT.wetCell]! | 0;
    this.#stepS = stepS;
    this.#cover = cover;
    this.#boilingC = boilingC;
    this.#convectionWm2K = around.convectionWm2K;
    this.#canDry = k > 1;
    const begun = this.#begunC;
    const T = body.temperatureAt;
    for (let i = 0; i <= k; i++) begun[i] = state[T + i]!;
    coefficients.prepare(body, state, stepS);
    if (cover.kind === 'open') {
      this.#store = AT.film;
      this.#storedJuice = body.piece.juiceToSurfaceShare * coefficients.juiceKgM2;
      this.#openSurface.configure(body.piece, around, cover, boilingC, coefficients.barkM, this.#canDry);
    } else {
      this.#store = AT.pool;
      this.#storedJuice = coefficients.juiceKgM2;
    }
  }

  /** Begins a stage from where the step began. @param share of the step over which it is implicit */
  startFirst(share: number): void {
    const { state } = this;
    this.#implicitS = share * this.#stepS;
    this.#interior.factor(this.#coefficients, state[AT.wetCell]! | 0, this.#implicitS);
    this.#interior.setOut(this.#begunC);
    this.#setOutStore = state[this.#store]!;
    this.#earlierS = 0;
    this.#earlierSurfaceC = state[AT.surfaceC]!;
    this.#earlierFrontC = state[AT.frontC]!;
    this.#stage.surfaceC = this.#earlierSurfaceC + this.#implicitS * state[AT.surfaceSlope]!;
    this.#stage.frontC = this.#earlierFrontC + this.#implicitS * state[AT.frontSlope]!;
  }

  /** Begins the second stage after the first. @returns whether it sets out from water that is there */
  startSecond(): boolean {
    const { state } = this;
    const begunStore = state[this.#store]!;
    this.#setOutStore = begunStore + SET_OUT_FACTOR * (this.#stageStore - begunStore);
    if (!(this.#setOutStore + STAGE_SHARE * this.#storedJuice >= 0)) return false;
    const k = state[AT.wetCell]! | 0;
    const begun = this.#begunC;
    const first = this.#stageC;
    const setOut = this.#setOutC;
    for (let i = 0; i <= k; i++) setOut[i] = begun[i]! + SET_OUT_FACTOR * (first[i]! - begun[i]!);
    this.#interior.setOut(setOut);
    const stage = this.#stage;
    const { surfaceC, frontC } = stage;
    stage.surfaceC += SET_OUT_FACTOR * (surfaceC - this.#earlierSurfaceC);
    stage.frontC += SET_OUT_FACTOR * (frontC - this.#earlierFrontC);
    this.#earlierS = this.#implicitS;
    this.#earlierSurfaceC = surfaceC;
    this.#earlierFrontC = frontC;
    return true;
  }

  /** Solves the surface of the stage and the cells behind it. @param share as in `startFirst` @param weight in the step */
  solveStage(gasC: number, wallC: number, share: number, weight: number, isFirst: boolean): void {
    const interior = this.#interior;
    const cover = this.#cover;
    const stage = this.#stage;
    const available = this.#setOutStore + share * this.#storedJuice;
    if (cover.kind === 'open') {
      this.#openSurface.solve(
        stage,
        gasC,
        wallC,
        this.#implicitS,
        available,
        interior.effectiveWm2K,
        interior.seenC,
      );
      stage.browning = brownsIn(stage.surfaceC, stage.dryShare, cover.waterActivity);
    } else
      solveClosedSurface(
        stage,
        gasC,
        this.#convectionWm2K,
        this.#implicitS,
        cover,
        this.#boilingC,
        available,
        this.#canDry,
        interior.effectiveWm2K,
        interior.seenC,
      );
    this.#stageStore = available - stage.wetKgM2S * this.#implicitS;
    interior.settle(this.#stageC, this.#coefficients.link, stage.intoMeatWm2);
    this.flows.gather(stage, weight, isFirst);
  }

  /** Books the step. @param setOut temperatures from which the last stage set out @param lastDosed outermost cell whose dose is kept */
  finish(isTwoStaged: boolean, lastDosed: number): void {
    const { state, body, flows } = this;
    const coefficients = this.#coefficients;
    const { released } = coefficients;
    const stepS = this.#stepS;
    const begun = this.#begunC;
    const setOut = isTwoStaged ? this.#setOutC : begun;
    const ended = this.#stageC;
    const k = state[AT.wetCell]! | 0;
    const T = body.temperatureAt;
    const slope = body.slopeAt;
    const perImplicitS = 1 / this.#implicitS;
    let enthalpy = 0;
    for (let i = 0; i <= k; i++) {
      const endC = ended[i]!;
      state[T + i] = endC;
      state[slope + i] = (endC - setOut[i]!) * perImplicitS;
      enthalpy += released[i]! * (begun[i]! + endC);
    }
    state[AT.waterEnthalpyOut] = state[AT.waterEnthalpyOut]! + 0.5 * SPECIFIC_HEAT_WATER * enthalpy;
    this.#bookSurface(stepS);
    this.#bookJuice(stepS);
    state[AT.solidFatShare] =
      state[AT.solidFatShare]! * exp(-RENDERING_80_PER_S * stepS * coefficients.middleReleaseRate);
    gatherDose(body, state, begun, stepS, lastDosed);
    moveFront(body, state, flows.frontKgM2S * stepS, coefficients.frontWaterKgM2, begun[k]!);
  }

  #bookSurface(stepS: number): void {
    const { state, flows } = this;
    const perLater = 1 / (stepS - this.#earlierS);
    state[AT.surfaceSlope] = (flows.surfaceC - this.#earlierSurfaceC) * perLater;
    state[AT.frontSlope] = (flows.frontC - this.#earlierFrontC) * perLater;
    state[AT.surfaceC] = flows.surfaceC;
    state[AT.frontC] = flows.frontC;
    state[AT.throughFront] = this.#stage.frontKgM2S;
    state[AT.evaporated] = state[AT.evaporated]! + (flows.wetKgM2S + flows.frontKgM2S) * stepS;
    state[AT.browningH] = state[AT.browningH]! + (stepS / 3600) * flows.browning;
    state[AT.heatIn] = state[AT.heatIn]! + flows.intoMeatWm2 * stepS;
    state[AT.heatFromAir] = state[AT.heatFromAir]! + flows.fromAirWm2 * stepS;
    state[AT.heatEvaporating] = state[AT.heatEvaporating]! + flows.evaporatingWm2 * stepS;
  }

  /** Film or pool as the last stage left it; what is over the film's cap runs off. */
  #bookJuice(stepS: number): void {
    const { state, body } = this;
    const held = state[this.#store]! + this.#storedJuice - this.flows.wetKgM2S * stepS;
    if (this.#store === AT.pool) {
      state[AT.pool] = held;
      return;
    }
    const { filmCapKgM2 } = body.piece;
    const over = held > filmCapKgM2 ? held - filmCapKgM2 : 0;
    state[AT.film] = held - over;
    state[AT.dripped] = state[AT.dripped]! + this.#coefficients.juiceKgM2 - this.#storedJuice + over;
  }
}
