import type { Cook, Kept } from '@pitwright/model';

export interface ShelvedCooks {
  /** Next first. */
  readonly coming: readonly Kept<Cook>[];
  /** Latest first. */
  readonly past: readonly Kept<Cook>[];
  readonly removed: readonly Kept<Cook>[];
}

/** Cooks by their table hour against `nowMs`; a cook is coming until its serving window ends. */
export function shelveCooks(cooks: Iterable<Kept<Cook>>, nowMs: number): ShelvedCooks {
  const all = [...cooks];
  const standing = all.filter((kept) => !kept.isRemoved);
  const untilMs = (kept: Kept<Cook>) => Date.parse(kept.document.table.until);
  return {
    coming: standing.filter((kept) => untilMs(kept) >= nowMs).sort((a, b) => untilMs(a) - untilMs(b)),
    past: standing.filter((kept) => !(untilMs(kept) >= nowMs)).sort((a, b) => untilMs(b) - untilMs(a)),
    removed: all.filter((kept) => kept.isRemoved),
  };
}
