/**
 * The inside of one member of the forecast, one that finishes about the median and whose stages end near theirs.
 * Times are seconds since 1970 UTC; depth is a share of the drawn thickness, 0 at the surface.
 */
export interface DepthTimeField {
  readonly letter: string;
  readonly timesS: readonly number[];
  /** Increasing, first 0 or just inside, last 1 or just inside. */
  readonly depthShares: readonly number[];
  /** [°C], one row per time, one value per depth. */
  readonly temperaturesC: readonly ArrayLike<number>[];
  /** Thickness that the drawing spans [m]: half the piece where its faces are alike. */
  readonly thicknessM: number;
  /** The face at depth 0 where the other one is another; missing: the surface. */
  readonly top?: 'open-side' | 'skin-side';
  /** Alike faces end at the middle; unlike ones at the face that is not open. */
  readonly bottom: 'middle' | 'bone-side' | 'fat-side' | 'skin-side' | 'other-side';
  /** Depth of the drying front at each time, from the open face and from the other one [m]. */
  readonly frontM?: readonly number[];
  readonly otherFrontM?: readonly number[];
  /** Share of depth of the coldest plane at each time, for unlike faces. */
  readonly coldestShares?: readonly number[];
  /** When each depth reaches the bite, 10, 50 and 90 %; ∞ = never. */
  readonly bite?: {
    readonly depthShares: readonly number[];
    readonly p10S: readonly number[];
    readonly p50S: readonly number[];
    readonly p90S: readonly number[];
    /** Printed, a line each: `pulls apart`, `12:35–13:40`. */
    readonly words?: readonly string[];
  };
  readonly stall?: {
    readonly fromS: number;
    readonly toS: number;
    readonly lowC: number;
    readonly highC: number;
  };
  /** Changes of stage, words printed. */
  readonly changes?: readonly { readonly atS: number; readonly words: string }[];
  readonly measured?: readonly { readonly atS: number; readonly depthShare: number }[];
}

/** Index of the last entry not greater than `value`, and how far it is to the next. Clamped at both ends. */
function place(values: readonly number[], value: number): { at: number; share: number } {
  const last = values.length - 1;
  if (value <= values[0]!) return { at: 0, share: 0 };
  if (value >= values[last]!) return { at: Math.max(0, last - 1), share: last === 0 ? 0 : 1 };
  let low = 0;
  let high = last;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (values[middle]! <= value) low = middle;
    else high = middle;
  }
  return { at: low, share: (value - values[low]!) / (values[high]! - values[low]!) };
}

/** A series at a moment, straight between its points. */
export function seriesAt(timesS: readonly number[], values: ArrayLike<number>, atS: number): number {
  const { at, share } = place(timesS, atS);
  const next = Math.min(at + 1, timesS.length - 1);
  return values[at]! * (1 - share) + values[next]! * share;
}

/** Temperature [°C] at a moment and share of depth, straight between the nodes. */
export function temperatureAt(field: DepthTimeField, atS: number, depthShare: number): number {
  const time = place(field.timesS, atS);
  const depth = place(field.depthShares, depthShare);
  const row = (t: number): number => {
    const values = field.temperaturesC[Math.min(t, field.timesS.length - 1)]!;
    const next = Math.min(depth.at + 1, field.depthShares.length - 1);
    return values[depth.at]! * (1 - depth.share) + values[next]! * depth.share;
  };
  return row(time.at) * (1 - time.share) + row(time.at + 1) * time.share;
}

/**
 * First moment at which a depth passes a temperature, undefined where it does not within the field.
 */
export function firstPassing(field: DepthTimeField, celsius: number, depthShare: number): number | undefined {
  for (let i = 1; i < field.timesS.length; i++) {
    const before = temperatureAt(field, field.timesS[i - 1]!, depthShare);
    const after = temperatureAt(field, field.timesS[i]!, depthShare);
    if (before < celsius && after >= celsius) {
      const share = (celsius - before) / (after - before);
      return field.timesS[i - 1]! + share * (field.timesS[i]! - field.timesS[i - 1]!);
    }
  }
  return undefined;
}
