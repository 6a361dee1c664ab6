/**
 * Seeded chance by counting: draw `member` of a stream depends on the seed, the stream's name and the member alone, so
 * that member i is the same whatever the split over workers, and changing one input leaves all other draws as they were.
 *
 * Draws are stratified in blocks of 40 members: in each block every fortieth of the distribution is hit once, in a
 * random order. That keeps medians of few members steady and leaves them unbiased.
 */
import { cos, log, sin } from './elementary.ts';

export const BLOCK = 40;

/** Mixes 32-bit words (finaliser of MurmurHash3, public domain). */
function mix(h: number, word: number): number {
  let x = Math.imul(h ^ word, 0x85ebca6b) + 0x9e3779b9;
  x ^= x >>> 16;
  x = Math.imul(x, 0x85ebca6b);
  x ^= x >>> 13;
  x = Math.imul(x, 0xc2b2ae35);
  return (x ^ (x >>> 16)) | 0;
}

function hashOfText(text: string): number {
  let h = 0x811c9dc5 | 0;
  for (let i = 0; i < text.length; i++) h = mix(h, text.charCodeAt(i));
  return h;
}

const PER_WORD = 1 / 4294967296;

/** One named stream of numbers, one for each member. */
export class Stream {
  readonly #key: number;
  readonly #order = new Uint8Array(BLOCK);
  #block = -1;

  constructor(seed: number, name: string) {
    this.#key = mix(mix(hashOfText(name), seed | 0), Math.floor(seed / 4294967296) | 0);
  }

  /** Uniform in (0, 1). @param member 0, 1, 2 … */
  uniform(member: number): number {
    const block = Math.floor(member / BLOCK);
    if (block !== this.#block) this.#shuffle(block);
    const within = (mix(mix(this.#key, 0x51ed270b), member) >>> 0) * PER_WORD;
    return (this.#order[member - block * BLOCK]! + within + 0.5 * PER_WORD) / BLOCK;
  }

  /** Standard normal. */
  normal(member: number): number {
    return normalQuantile(this.uniform(member));
  }

  /** Student's t with three degrees of freedom: heavy tails. */
  studentT3(member: number): number {
    return studentT3Quantile(this.uniform(member));
  }

  #shuffle(block: number): void {
    this.#block = block;
    const order = this.#order;
    const key = mix(this.#key, block + 1);
    for (let i = 0; i < BLOCK; i++) order[i] = i;
    for (let i = BLOCK - 1; i > 0; i--) {
      const j = Math.floor((mix(key, i) >>> 0) * PER_WORD * (i + 1));
      const kept = order[i]!;
      order[i] = order[j]!;
      order[j] = kept;
    }
  }
}

/**
 * Standard normal deviate below which a share `p` lies; relative error below 10⁻⁷.
 *
 * @param p in (0, 1)
 * @source Wichura 1988, Algorithm AS 241 (PPND7), Applied Statistics 37:477
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`p must be in (0, 1), got ${p}`);
  const q = p - 0.5;
  if (q >= -0.425 && q <= 0.425) {
    const r = 0.180625 - q * q;
    return (
      (q * (((59.10937472 * r + 159.29113202) * r + 50.434271938) * r + 3.3871327179)) /
      (((67.1875636 * r + 78.757757664) * r + 17.895169469) * r + 1)
    );
  }
  let r = Math.sqrt(-log(q < 0 ? p : 1 - p));
  let value: number;
  if (r <= 5) {
    r -= 1.6;
    value =
      (((0.17023821103 * r + 1.3067284816) * r + 2.75681539) * r + 1.4234372777) /
      ((0.12021131975 * r + 0.7370016425) * r + 1);
  } else {
    r -= 5;
    value =
      (((0.017337203997 * r + 0.42868294337) * r + 3.081226386) * r + 6.657905115) /
      ((0.012258202635 * r + 0.24197894225) * r + 1);
  }
  return q < 0 ? -value : value;
}

const SQRT3 = 1.7320508075688772;
const PI = 3.141592653589793;

/**
 * Student's t, three degrees of freedom: with t = √3 tan θ its share is ½ + (θ + sin θ cos θ)/π, solved by Newton
 * inside a bracket to 10⁻¹² in θ.
 */
export function studentT3Quantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`p must be in (0, 1), got ${p}`);
  const wanted = PI * (p - 0.5);
  let low = -PI / 2;
  let high = PI / 2;
  let theta = wanted / 2;
  for (let i = 0; i < 60; i++) {
    const c = cos(theta);
    const miss = theta + sin(theta) * c - wanted;
    if (miss > 0) high = theta;
    else low = theta;
    let next = theta - miss / (2 * c * c);
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    if (next - theta < 1e-12 && theta - next < 1e-12) break;
    theta = next;
  }
  return (SQRT3 * sin(theta)) / cos(theta);
}
