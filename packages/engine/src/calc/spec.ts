import type { Kind, Said } from '@pitwright/model';

/** Straight pieces between points, times increasing from the first. */
export interface Curve {
  /** [s], the first point is 0. */
  readonly timesS: readonly number[];
  /** [°C] */
  readonly temperaturesC: readonly number[];
}

/** One line of a mix: a catalogue key and grams. */
export interface MixLine {
  readonly ingredient: string;
  readonly massG: number;
}

/** How an input is written and what it may be. Limits are in SI; temperatures as °C. */
export type InputSpec = { readonly name: string; readonly optional?: boolean; readonly remark?: string } & (
  | {
      readonly type: 'quantity';
      readonly kind: Kind;
      readonly min?: number;
      readonly max?: number;
      readonly limits?: string;
      readonly byDefault?: number;
    }
  | { readonly type: 'word'; readonly words: readonly string[]; readonly byDefault?: string }
  | { readonly type: 'text'; readonly byDefault?: string }
  | { readonly type: 'curve' }
  | { readonly type: 'mix' }
);

/** Unit used for the answer; `word` and `set` answer words. */
export interface OutputSpec {
  readonly name: string;
  readonly unit: string;
  readonly kind: Kind | 'word' | 'set';
  /** Names the input that tells the unit, where the asker chooses it; the value is then in that unit already. */
  readonly unitFrom?: string;
}

/** Values as given to `evaluate`: SI numbers, temperatures in °C, words and texts as they stand. */
export type CalcInputs = Readonly<Record<string, number | string | Curve | readonly MixLine[] | undefined>>;

/** Answers in SI (temperatures in °C), words, or what cannot be computed and why. */
export type CalcAnswer = Readonly<Record<string, number | string | readonly string[] | undefined>>;

/** A figure that can be asked for by name; each room exports its own list. */
export interface CalcSpec {
  readonly name: string;
  readonly room: string;
  readonly summary: string;
  readonly inputs: readonly InputSpec[];
  readonly outputs: readonly OutputSpec[];
  /** Section that defines it, and the page of docs/models that explains it. */
  readonly source: string;
  readonly page: string;
  /** @throws CalcProblem where nothing can be computed. `wanted` names the outputs asked for (all when missing). */
  readonly evaluate: (inputs: CalcInputs, wanted?: readonly string[]) => CalcAnswer;
}

/** Raised by `evaluate`: what cannot be computed, said, never a number. */
export class CalcProblem extends Error {
  readonly said: Said;
  constructor(said: Said) {
    super(said.id);
    this.said = said;
  }
}
