import type { Range } from '@pitwright/model';

const LOG_ODDS_90 = 2.1972245773362196;

/**
 * Chance that the piece is still in the stage at `atS`, from the range of its end: a logistic through the 10, 50
 * and 90 % points, each side with its own spread. Never below the share that never gets there.
 * Where the median or the 90 % point is never, the chance falls straight from 90 % at `p10` to that share at `horizonS`.
 */
export function stillIn(atS: number, end: Range, horizonS: number): number {
  const { p10, p50, p90, neverShare } = end;
  if (!Number.isFinite(p10)) return 1;
  if (p90 <= p10) return atS < p50 ? 1 : neverShare;
  if (!Number.isFinite(p50) || !Number.isFinite(p90)) {
    const left = Math.max(1, Math.min(Number.isFinite(p50) ? p50 : horizonS, horizonS) - p10);
    if (atS <= p10) return logistic((LOG_ODDS_90 * (p10 - atS)) / left + LOG_ODDS_90);
    const share = Math.min(1, (atS - p10) / Math.max(1, horizonS - p10));
    return Math.max(neverShare, 0.9 + (neverShare - 0.9) * share);
  }
  const spread = Math.max(1, atS < p50 ? p50 - p10 : p90 - p50);
  return Math.max(neverShare, logistic((LOG_ODDS_90 * (p50 - atS)) / spread));
}

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
