import type { Said } from '../said.ts';

/** What is wrong at one place of a cook file, and what would be right; `words` prints it. */
export interface FileProblem extends Said {
  /** Counted from 1. */
  readonly line: number;
  /** Counted from 1. */
  readonly column: number;
}

/** In the order of the text; of two at one place the one first found. */
export const byPlace = (a: FileProblem, b: FileProblem): number => a.line - b.line || a.column - b.column;
