import type { Range } from '@pitwright/model';

/** Point below which a share `q` of sorted values lies, straight between them; falling among ∞ it is ∞. */
export function quantile(sorted: Float64Array, q: number): number {
  if (!(sorted.length > 0)) throw new RangeError('no quantile of nothing');
  const place = q * (sorted.length - 1);
  const row = Math.floor(place);
  const low = sorted[row]!;
  const share = place - row;
  if (share === 0) return low;
  const high = sorted[row + 1]!;
  return high < Infinity ? low + share * (high - low) : high;
}

/** Range of values, ∞ counted as never; NaN left out. */
export function rangeOf(values: Float64Array): Range {
  const sorted = values.filter((value) => !Number.isNaN(value)).sort();
  let never = 0;
  for (const value of sorted) if (value === Infinity) never++;
  return {
    p10: quantile(sorted, 0.1),
    p50: quantile(sorted, 0.5),
    p90: quantile(sorted, 0.9),
    neverShare: never / sorted.length,
  };
}
