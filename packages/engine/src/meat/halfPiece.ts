/**
 * From the thermal centre of a piece, or the middle between two unlike faces, to one face: state, coefficients, and the
 * stages of a step.
 *
 * The step has two stages, singly diagonal and stiffly accurate (SDIRK of order 2, L-stable): the first ends γ into the
 * step, the second with it. Each is an elimination inward, a Newton on the surface, and the way back; film and pool take
 * part. One stage over the whole step, first order, stands in where the second would set out from less than no water.
 *
 * @source R. Alexander, Diagonally implicit Runge–Kutta methods for stiff ODEs, SIAM J. Numer. Anal. 14 (1977)
 */
import type { PieceBody } from './body.ts';
import { solveClosedSurface } from './closedSurface.ts';
import { StepCoefficients } from './coefficients.ts';
import { browningRate } from './colour.ts';
import { Interior } from './interior.ts';
import { OpenSurface } from './openSurface.ts';
import type { Cover, Face, MeatParameters, Surroundings } from './parameters.ts';
import { AT } from './state.ts';
import { bookStep } from './stepBooks.ts';
import { SurfaceFlows } from './surfaceFlows.ts';

/** γ = 1 − √½: where the first stage ends, and the implicit share of either. */
export const STAGE_SHARE = 1 - Math.SQRT1_2;
/** (1 − γ)/γ: the second stage sets out from the begin plus so much of what the first one changed. */
const SET_OUT_FACTOR = 1 + Math.SQRT2;

const brownsIn = browningRate;

/**
 * The first guess goes no further than this from where the surface was [K]: after a step that an event has cut to next to
 * nothing, or as a piece leaves the coals, its slope says nothing of the next one.
 */
const GUESS_MOST_K = 40;
const guessedK = (changeK: number): number =>
  changeK < GUESS_MOST_K && changeK > -GUESS_MOST_K ? changeK : 0;

export class HalfPiece {
  readonly body: PieceBody;
  /** Its own part of the piece's state, length `body.stateLength`. */
  readonly state: Float64Array;
  readonly coefficients: StepCoefficients;
  readonly interior: Interior;
  /** Of the last step, mean over its stages; temperatures as it ended. */
  readonly flows = new SurfaceFlows();
  /** Of the last stage. */
  readonly stage = new SurfaceFlows();
  /** Temperatures as the step began, as the last stage set out and as it ended; length cells. */
  readonly begunC: Float64Array;
  readonly setOutC: Float64Array;
  readonly stageC: Float64Array;
  /** Where the juice goes: AT.film or AT.pool; and what of it gets there in this step [kg/m²]. */
  store: number = AT.film;
  storedJuice = 0;
  /** How much warmer the walls are that this face sees [K]. */
  wallRiseK = 0;
  stepS = 0;
  implicitS = 0;
  /** The surface before the last stage: as the step began, or as its first stage ended. */
  earlierS = 0;
  earlierSurfaceC = 0;
  earlierFrontC = 0;

  readonly #openSurface = new OpenSurface();
  #face!: Face;
  #cover!: Cover;
  #boilingC = 100;
  #convectionWm2K = 0;
  #canDry = false;
  #setOutStore = 0;
  #stageStore = 0;

  constructor(body: PieceBody, state: Float64Array) {
    this.body = body;
    this.state = state;
    const { cells } = body;
    this.coefficients = new StepCoefficients(cells);
    this.interior = new Interior(cells);
    this.begunC = new Float64Array(cells);
    this.setOutC = new Float64Array(cells);
    this.stageC = new Float64Array(cells);
  }

  begin(piece: MeatParameters, face: Face): void {
    this.#face = face;
    this.body.begin(piece, face.layerJM2K, this.state);
    // Among it the first guess of the flow through the middle: no member may see what another left.
    this.stage.clear();
    this.flows.clear();
  }

  /** Coefficients of the step; the juice leaves the cells. @param around at its end */
  prepare(stepS: number, around: Surroundings, cover: Cover, boilingC: number): void {
    const { state, body, coefficients } = this;
    const face = this.#face;
    const k = state[AT.wetCell]! | 0;
    this.stepS = stepS;
    this.#cover = cover;
    this.#boilingC = boilingC;
    this.#convectionWm2K = face.convectionShare * around.convectionWm2K;
    this.#canDry = k > 1;
    const begun = this.begunC;
    const T = body.temperatureAt;
    for (let i = 0; i <= k; i++) begun[i] = state[T + i]!;
    coefficients.prepare(body, state, stepS);
    if (cover.kind === 'open') {
      this.store = AT.film;
      this.storedJuice = body.piece.juiceToSurfaceShare * coefficients.juiceKgM2;
      this.#openSurface.configure(
        body.piece,
        face,
        around,
        cover,
        boilingC,
        coefficients.barkM,
        this.#canDry,
      );
    } else {
      this.store = AT.pool;
      this.storedJuice = coefficients.juiceKgM2;
    }
  }

  /** Begins a stage from where the step began. @param share of the step over which it is implicit */
  startFirst(share: number): void {
    const { state, stage } = this;
    this.implicitS = share * this.stepS;
    this.interior.factor(this.coefficients, state[AT.wetCell]! | 0, this.implicitS);
    this.interior.setOut(this.begunC);
    this.#setOutStore = state[this.store]!;
    this.earlierS = 0;
    this.earlierSurfaceC = state[AT.surfaceC]!;
    this.earlierFrontC = state[AT.frontC]!;
    stage.surfaceC = this.earlierSurfaceC + guessedK(this.implicitS * state[AT.surfaceSlope]!);
    stage.frontC = this.earlierFrontC + guessedK(this.implicitS * state[AT.frontSlope]!);
  }

  /** Whether a second stage would set out from water that is there. */
  canGoOn(): boolean {
    const begunStore = this.state[this.store]!;
    this.#setOutStore = begunStore + SET_OUT_FACTOR * (this.#stageStore - begunStore);
    return this.#setOutStore + STAGE_SHARE * this.storedJuice >= 0;
  }

  /** Begins the second stage after the first, and after `canGoOn`. */
  startSecond(): void {
    const { stage, begunC, setOutC, stageC } = this;
    const k = this.state[AT.wetCell]! | 0;
    for (let i = 0; i <= k; i++) setOutC[i] = begunC[i]! + SET_OUT_FACTOR * (stageC[i]! - begunC[i]!);
    this.interior.setOut(setOutC);
    const { surfaceC, frontC } = stage;
    stage.surfaceC += guessedK(SET_OUT_FACTOR * (surfaceC - this.earlierSurfaceC));
    stage.frontC += guessedK(SET_OUT_FACTOR * (frontC - this.earlierFrontC));
    this.earlierS = this.implicitS;
    this.earlierSurfaceC = surfaceC;
    this.earlierFrontC = frontC;
  }

  /**
   * Solves the surface of the stage, which holds its first guess.
   *
   * @param share as in `startFirst`
   * @param fromMiddleWm2 from the other half
   */
  solveSurface(gasC: number, wallC: number, share: number, fromMiddleWm2: number): void {
    const { interior, stage } = this;
    const cover = this.#cover;
    const available = this.#setOutStore + share * this.storedJuice;
    const seenC = interior.seenC + interior.acrossPerFlow * fromMiddleWm2;
    if (cover.kind === 'open')
      this.#openSurface.solve(
        stage,
        gasC,
        wallC + this.wallRiseK,
        this.implicitS,
        available,
        interior.effectiveWm2K,
        seenC,
      );
    else
      solveClosedSurface(
        stage,
        gasC,
        this.wallRiseK,
        this.#convectionWm2K,
        this.implicitS,
        cover,
        this.#face.layerM2KW,
        this.#boilingC,
        available,
        this.#canDry,
        interior.effectiveWm2K,
        seenC,
      );
    stage.fromMiddleWm2 = fromMiddleWm2;
    this.#stageStore = available - stage.wetKgM2S * this.implicitS;
  }

  /** The cells behind the solved surface. @param weight of the stage in the step */
  settleStage(weight: number, isFirst: boolean): void {
    const { interior, stage } = this;
    const cover = this.#cover;
    if (cover.kind === 'open') stage.browning = brownsIn(stage.surfaceC, stage.dryShare, cover.waterActivity);
    if (stage.fromMiddleWm2 !== 0) interior.addMiddle(stage.fromMiddleWm2);
    interior.settle(this.stageC, this.coefficients.link, stage.intoMeatWm2);
    this.flows.gather(stage, weight, isFirst);
  }

  /** Books the step. @param lastDosed outermost cell whose dose is kept */
  finish(isTwoStaged: boolean, lastDosed: number): void {
    bookStep(this, isTwoStaged ? this.setOutC : this.begunC, lastDosed);
  }
}
