import type { FormulaKind, Said } from '@pitwright/model';

/** One way to settle a doubt. */
export interface Choice {
  readonly ingredient?: string;
  readonly massG?: number;
  /** `as-weight`, `as-volume`, `packed`, `loose`, `ground` …: the reading's name. */
  readonly reading?: string;
}

/** Something that the text leaves open. What asks has to be answered before the line counts. */
export interface Doubt {
  readonly said: Said;
  readonly asks: boolean;
  readonly choices: readonly Choice[];
}

export interface PastedLine {
  /** From 1, as in the text. */
  readonly number: number;
  /** As written. */
  readonly text: string;
  /** A row of the catalogue; missing where none is meant, or nobody can tell. */
  readonly ingredient?: string;
  /** Grams; missing where an answer is needed first. While a doubt asks, only what one reading would give. */
  readonly massG?: number;
  /** The span that the words leave open [g]. */
  readonly lowG?: number;
  readonly highG?: number;
  /** Remarks in the line: how it is cut, "divided", "plus more". */
  readonly note?: string;
  readonly doubts: readonly Doubt[];
}

export interface PastedTitle {
  /** As written, without a colon. */
  readonly name: string;
  readonly kind: FormulaKind;
}

export interface PastedRecipe {
  /** What the text calls itself in its first line. */
  readonly title?: PastedTitle;
  readonly lines: readonly PastedLine[];
  /** Headings and method, kept as they stand. */
  readonly otherText: readonly { readonly number: number; readonly text: string }[];
  /** Doubts about the whole, such as whose cups these are. */
  readonly doubts: readonly Doubt[];
}

/** A line that needs no answer. */
export const isSettled = (line: PastedLine): boolean =>
  line.massG !== undefined && line.ingredient !== undefined && !line.doubts.some((doubt) => doubt.asks);
