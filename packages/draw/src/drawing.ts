import type { Mark } from './mark.ts';

/** What a drawing shows, in words and as a table of the same figures. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** One sentence that a cook could say aloud; the label of the image. */
  readonly sentence: string;
  readonly table: FigureTable;
}

export interface FigureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Colour on a screen; black alone on paper, where hatches carry what colour did. */
export type Ink = 'colour' | 'black';

/** What every drawing is told beside its data. */
export interface Setting {
  /** [px] */
  readonly width: number;
  readonly ink?: Ink;
  /** Prefix of the ids of hatches and clips: one per drawing on a page. */
  readonly id: string;
}

/** Below this width [px] names and ranges stand above their bands, and hours are short. */
export const NARROW = 640;
export const isNarrow = (width: number): boolean => width < NARROW;
