import type { Range } from '@pitwright/model';

/** Quantile of sorted values, straight between neighbours; ∞ as soon as a neighbour it leans on never arrives. */
function quantile(sorted: ArrayLike<number>, share: number): number {
  const place = share * (sorted.length - 1);
  const i = Math.floor(place);
  const rest = place - i;
  const low = sorted[i]!;
  if (rest === 0) return low;
  const high = sorted[i + 1]!;
  return high === Infinity ? Infinity : low + (high - low) * rest;
}

/** Ten, fifty and ninety percent points of the members' values; those that never arrive are ∞. */
export function rangeOf(values: ArrayLike<number>): Range {
  const sorted = Float64Array.from(values).sort();
  if (sorted.length === 0) throw new RangeError('rangeOf needs at least one value');
  const never = sorted.reduce((count, value) => count + (value === Infinity ? 1 : 0), 0);
  return {
    p10: quantile(sorted, 0.1),
    p50: quantile(sorted, 0.5),
    p90: quantile(sorted, 0.9),
    neverShare: never / sorted.length,
  };
}
