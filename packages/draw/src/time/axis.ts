/** A stretch of time drawn at one scale. Times are seconds since 1970 UTC. */
export interface Stretch {
  readonly fromS: number;
  readonly toS: number;
  /** Relative to 1: a night folded to a third has 1/3. */
  readonly scale: number;
}

interface PlacedStretch extends Stretch {
  readonly x0: number;
  readonly x1: number;
}

/** The one horizontal axis that every strip of a page shares. */
export interface Axis {
  readonly x: (atS: number) => number;
  readonly at: (x: number) => number;
  readonly x0: number;
  readonly x1: number;
  readonly fromS: number;
  readonly toS: number;
  readonly stretches: readonly PlacedStretch[];
  /** Pixels of an hour at scale 1. */
  readonly hourPx: number;
}

/**
 * An axis of stretches in order, without gaps, between x0 and x1.
 * @throws RangeError where a stretch is empty or does not begin where the one before ends
 */
export function timeAxis(x0: number, x1: number, stretches: readonly Stretch[]): Axis {
  if (!(x1 > x0)) throw new RangeError(`x1 must be greater than x0, got ${x0} and ${x1}`);
  if (stretches.length === 0) throw new RangeError('an axis needs at least one stretch');
  stretches.forEach((s, i) => {
    if (!(s.toS > s.fromS) || !(s.scale > 0)) throw new RangeError(`stretch ${i} is empty`);
    if (i > 0 && s.fromS !== stretches[i - 1]!.toS) throw new RangeError(`stretch ${i} leaves a gap`);
  });
  const weight = stretches.reduce((sum, s) => sum + (s.toS - s.fromS) * s.scale, 0);
  const pxPerS = (x1 - x0) / weight;
  let edge = x0;
  const placed = stretches.map((s) => {
    const from = edge;
    edge += (s.toS - s.fromS) * s.scale * pxPerS;
    return { ...s, x0: from, x1: edge };
  });
  const last = placed[placed.length - 1]!;
  const x = (atS: number): number => {
    const s = placed.find((one) => atS <= one.toS) ?? last;
    return s.x0 + ((atS - s.fromS) / (s.toS - s.fromS)) * (s.x1 - s.x0);
  };
  const at = (px: number): number => {
    const s = placed.find((one) => px <= one.x1) ?? last;
    return s.fromS + ((px - s.x0) / (s.x1 - s.x0)) * (s.toS - s.fromS);
  };
  return {
    x,
    at,
    x0,
    x1,
    fromS: placed[0]!.fromS,
    toS: last.toS,
    stretches: placed,
    hourPx: pxPerS * 3600,
  };
}

/** A quiet stretch that may be folded: shorter than this it is not worth the fold. */
const LEAST_FOLD_S = 2 * 3600;

/** An axis from `fromS` to `toS` with the given stretches drawn at their own `scale`, else at `fold`, of the scale of the day. */
export function foldedAxis(
  x0: number,
  x1: number,
  fromS: number,
  toS: number,
  quiet: readonly { readonly fromS: number; readonly toS: number; readonly scale?: number }[],
  fold: number,
): Axis {
  const stretches: Stretch[] = [];
  let edge = fromS;
  for (const night of [...quiet].sort((a, b) => a.fromS - b.fromS)) {
    const from = Math.max(night.fromS, edge);
    const to = Math.min(night.toS, toS);
    if (to - from < LEAST_FOLD_S) continue;
    if (from > edge) stretches.push({ fromS: edge, toS: from, scale: 1 });
    stretches.push({ fromS: from, toS: to, scale: night.scale ?? fold });
    edge = to;
  }
  if (edge < toS) stretches.push({ fromS: edge, toS, scale: 1 });
  return timeAxis(x0, x1, stretches);
}
