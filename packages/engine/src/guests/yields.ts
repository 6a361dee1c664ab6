import type { CutId, Range } from '@pitwright/model';
import { NORMAL_P90_SD } from '../numeric/constants.ts';

/** Edible share of the raw mass as bought: boneless, cooked, off the bone, ready to eat. */
export interface EdibleYield {
  readonly share: Range;
  readonly evidence: 'published' | 'derived' | 'common practice';
  readonly source: string;
}

const row = (
  p10: number,
  p50: number,
  p90: number,
  evidence: EdibleYield['evidence'],
  source: string,
): EdibleYield => ({
  share: { p10, p50, p90, neverShare: 0 },
  evidence,
  source,
});

const DERIVED = 'raw mass less bone (USDA SR28 refuse) less a cooking loss of 20–30 %';

const DERIVED_SKIN = `${DERIVED}, skin of 15–20 % left on the plate`;

const YIELDS: Readonly<Record<string, EdibleYield>> = {
  spareribs: row(
    0.38,
    0.43,
    0.47,
    'published',
    'US Army Natick Laboratories: 46.6 % of 3-lb racks; USDA SR28: 39 % braised',
  ),
  'st-louis-ribs': row(0.4, 0.46, 0.51, 'derived', DERIVED),
  'loin-back-ribs': row(0.39, 0.45, 0.51, 'derived', DERIVED),
  'pork-shoulder': row(0.43, 0.5, 0.6, 'published', 'weighings of 42.6 % on 136 lb, 50 % and 63 %, bone in'),
  'brisket-whole': row(0.36, 0.46, 0.53, 'published', 'shops and cooks: 36 to 53 %, 46–47 % of 32 a night'),
  'brisket-flat': row(0.45, 0.55, 0.62, 'common practice', 'no source'),
  'brisket-point': row(0.38, 0.46, 0.55, 'common practice', 'no source'),
  'beef-short-ribs': row(0.43, 0.5, 0.54, 'published', 'USDA SR28: 49.6 %'),
  'beef-back-ribs': row(0.28, 0.35, 0.42, 'derived', DERIVED),
  'chuck-roast': row(0.55, 0.62, 0.68, 'common practice', 'no source'),
  'rib-roast': row(0.55, 0.62, 0.68, 'derived', DERIVED),
  'lamb-shoulder': row(0.45, 0.52, 0.58, 'derived', DERIVED),
  'lamb-leg': row(0.5, 0.57, 0.63, 'derived', DERIVED),
  'fresh-ham': row(0.48, 0.55, 0.62, 'derived', DERIVED),
  'chicken-leg': row(0.45, 0.52, 0.58, 'derived', DERIVED),
  'chicken-whole': row(0.43, 0.5, 0.56, 'derived', DERIVED),
  'chicken-half': row(0.43, 0.5, 0.56, 'derived', DERIVED),
  'chicken-breast': row(0.7, 0.75, 0.8, 'derived', DERIVED),
  'turkey-whole': row(0.42, 0.5, 0.56, 'derived', DERIVED),
  'turkey-half': row(0.42, 0.5, 0.56, 'derived', DERIVED),
  'turkey-breast': row(0.6, 0.67, 0.73, 'derived', DERIVED),
  'spareribs-breast-off': row(0.4, 0.45, 0.5, 'derived', DERIVED),
  'rib-tips': row(0.38, 0.45, 0.52, 'derived', DERIVED),
  'country-style-ribs': row(0.48, 0.55, 0.62, 'derived', DERIVED),
  'pork-picnic': row(0.42, 0.5, 0.58, 'derived', DERIVED_SKIN),
  'pork-shoulder-whole': row(0.43, 0.51, 0.6, 'derived', DERIVED),
  'pork-belly': row(0.5, 0.6, 0.7, 'common practice', 'no source'),
  'pork-loin': row(0.53, 0.59, 0.65, 'derived', DERIVED),
  'pork-loin-center': row(0.53, 0.59, 0.65, 'derived', DERIVED),
  'chuck-short-ribs': row(0.43, 0.5, 0.55, 'derived', DERIVED),
  'beef-clod': row(0.58, 0.65, 0.72, 'common practice', 'no source'),
  'chuck-roll': row(0.55, 0.62, 0.68, 'common practice', 'no source'),
  'tri-tip': row(0.68, 0.74, 0.8, 'derived', DERIVED),
  'lamb-rack': row(0.4, 0.45, 0.5, 'derived', DERIVED),
  'lamb-breast': row(0.4, 0.47, 0.54, 'derived', DERIVED),
  'chicken-wing': row(0.4, 0.46, 0.52, 'derived', DERIVED),
  'chicken-thigh': row(0.52, 0.59, 0.65, 'derived', DERIVED),
  'chicken-drumstick': row(0.44, 0.5, 0.56, 'derived', DERIVED),
};

export const YIELD_CUTS: readonly string[] = Object.keys(YIELDS);

/** @returns undefined for a cut without a row: an unknown yield is not guessed */
export const edibleYield = (cut: CutId): EdibleYield | undefined => YIELDS[cut];

/** Mean and standard deviation of the share. */
export function yieldMoments({ share }: EdibleYield): { readonly mean: number; readonly sd: number } {
  return { mean: share.p50, sd: (share.p90 - share.p10) / (2 * NORMAL_P90_SD) };
}
