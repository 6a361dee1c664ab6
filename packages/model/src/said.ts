import type { Quantity } from './units/quantity.ts';

/** An instant in UTC, ISO 8601 with a final Z. */
export type Instant = string & { readonly __instant?: never };

/**
 * A thing said by model, engine or store: never text. `words` prints it.
 * `id` names the message of the catalogue; `params` carry quantities, instants, numbers or ids.
 */
export interface Said {
  readonly id: string;
  readonly params?: Readonly<Record<string, Quantity | Range | number | string>>;
  /** Safety statements only: information, caution or stop. */
  readonly level?: NoticeLevel;
  /** Where the statement comes from: a key of docs/models or of a published rule. */
  readonly source?: string;
}

export type NoticeLevel = 'information' | 'caution' | 'stop';

/** Ten, fifty and ninety percent points; members that never arrive count as infinitely late. */
export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  /** Share of members that never get there, 0 to 1. */
  readonly neverShare: number;
}
