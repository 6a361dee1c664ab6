import type { Range } from '@pitwright/model';

/** Never is not a number in JSON: it is null. */
export const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

export const rangeJson = ({ p10, p50, p90, neverShare }: Range) => ({
  p10: finite(p10),
  p50: finite(p50),
  p90: finite(p90),
  neverShare,
});
