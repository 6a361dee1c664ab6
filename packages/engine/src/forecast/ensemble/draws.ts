/**
 * What one member of the ensemble believes: the fitted parameters with their doubt, this cook, this piece, this item.
 * Draws of the cook (pit, wall, h_c, W, the fit's own doubt) are shared by all pieces of a member; the model's error by
 * the items of a piece; thickness, juice, bark and softening are each item's own.
 *
 * @source spreads: fit on measured cooks and common-practice times, docs/models/meat.md; calibration
 */

import { CONVECTION_SD_LN } from '../../meat/pitKinds.ts';
import { Stream } from '../../numeric/chance.ts';
import { exp, log } from '../../numeric/elementary.ts';

/** Standard normal draws of the cook, one of each for a member. */
export interface CookDraw {
  pit: number;
  wall: number;
  convection: number;
  humidity: number;
  oven: number;
  hotPlace: number;
  thickness: number;
  juice: number;
  openness: number;
  sealing: number;
  shrinkage: number;
  reserve: number;
  finalHolding: number;
  releaseMid: number;
  releaseWidth: number;
  releaseRate: number;
}

const COOK_STREAMS: readonly (keyof CookDraw)[] = [
  'pit',
  'wall',
  'convection',
  'humidity',
  'oven',
  'hotPlace',
  'thickness',
  'juice',
  'openness',
  'sealing',
  'shrinkage',
  'reserve',
  'finalHolding',
  'releaseMid',
  'releaseWidth',
  'releaseRate',
];

export class CookDraws {
  readonly #streams: readonly Stream[];
  readonly #draw = Object.fromEntries(COOK_STREAMS.map((name) => [name, 0])) as unknown as CookDraw;

  constructor(seed: number) {
    this.#streams = COOK_STREAMS.map((name) => new Stream(seed, `cook/${name}`));
  }

  /** The same record every time, filled for this member. */
  of(member: number): CookDraw {
    COOK_STREAMS.forEach((name, i) => {
      this.#draw[name] = this.#streams[i]!.normal(member);
    });
    return this.#draw;
  }
}

/**
 * Of ln t: what the equations leave out. Heavy tail, cut. Set so that eight in ten told readings fall inside the band,
 * a reading taken as sure to 4 K and 5 % in time (docs/models/measured.md); calibration.
 */
const MODEL_ERROR = 0.16;
const MODEL_ERROR_CUT = 1.2;

/** Draws of one piece (letter) and of its alike items. */
export class PieceDraws {
  readonly #modelError: Stream;
  readonly #start: Stream;
  readonly #face: Stream;
  readonly #wrap: Stream;
  readonly #wrapLeak: Stream;
  readonly #coals: Stream;
  readonly #bed: Stream;
  readonly #items: readonly Readonly<
    Record<'thickness' | 'juice' | 'openness' | 'finalHolding' | 'softening' | 'browning', Stream>
  >[];

  constructor(seed: number, pieceId: string, items: number) {
    const stream = (name: string): Stream => new Stream(seed, `piece/${pieceId}/${name}`);
    this.#modelError = stream('model-error');
    this.#start = stream('start');
    this.#face = stream('face');
    this.#wrap = stream('wrap');
    this.#wrapLeak = stream('wrap-leak');
    this.#coals = new Stream(seed, 'cook/coals');
    this.#bed = new Stream(seed, 'cook/bed');
    this.#items = Array.from({ length: items }, (_, item) => ({
      thickness: stream(`${item}/thickness`),
      juice: stream(`${item}/juice`),
      openness: stream(`${item}/openness`),
      finalHolding: stream(`${item}/final-holding`),
      softening: stream(`${item}/softening`),
      browning: stream(`${item}/browning`),
    }));
  }

  /** Clock time over model time [1]. */
  stretch(member: number): number {
    const error = MODEL_ERROR * this.#modelError.studentT3(member);
    return exp(error > MODEL_ERROR_CUT ? MODEL_ERROR_CUT : Math.max(error, -MODEL_ERROR_CUT));
  }
  start(member: number): number {
    return this.#start.normal(member);
  }
  face(member: number): number {
    return this.#face.normal(member);
  }
  wrap(member: number): number {
    return this.#wrap.normal(member);
  }
  wrapLeak(member: number): number {
    return this.#wrapLeak.normal(member);
  }
  /** How hot the coals are, and how near and wide: the cook's, drawn where a piece lies over them. */
  coals(member: number): number {
    return this.#coals.normal(member);
  }
  bed(member: number): number {
    return this.#bed.normal(member);
  }
  item(
    member: number,
    item: number,
  ): {
    thickness: number;
    juice: number;
    openness: number;
    finalHolding: number;
    softening: number;
    browning: number;
  } {
    const streams = this.#items[item]!;
    return {
      thickness: streams.thickness.normal(member),
      juice: streams.juice.normal(member),
      openness: streams.openness.normal(member),
      finalHolding: streams.finalHolding.normal(member),
      softening: streams.softening.normal(member),
      browning: streams.browning.normal(member),
    };
  }
}

/** Spreads: of the fitted level (posterior), and from piece to piece. */
export const SPREAD = {
  pitFitK: 0.7,
  wallFitK: 1,
  convectionLn: Math.sqrt(CONVECTION_SD_LN * CONVECTION_SD_LN + 0.08 * 0.08),
  ovenK: 3,
  face: 0.08,
  juiceFit: 0.03,
  juiceFitPoultry: 0.08,
  juiceLogit: 0.4,
  opennessFitLn: 0.33,
  opennessLn: 0.4,
  sealingLn: 0.167,
  shrinkage: 0.05,
  reserveLn: 0.25,
  finalHoldingFit: 0.05,
  finalHolding: 0.12,
  releaseMidK: 0.8,
  releaseWidthK: 0.6,
  releaseRateLn: 0.125,
  /** R_gap .03 to .08 about .05 */
  foilGapLn: 0.3,
  foilLeakLn: 0.6,
  /** Grades by eye differ by one from grader to grader. @source common practice, no source */
  browningLn: 0.7,
  /** R_p 3000 s/m. @source from memory, weak */
  paperLn: 0.7,
} as const;

/** A share moved by `shift` on the logit scale. */
export function movedShare(share: number, shift: number): number {
  return 1 / (1 + exp(-(log(share / (1 - share)) + shift)));
}
