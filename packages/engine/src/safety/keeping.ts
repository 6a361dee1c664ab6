import type { RulesProfile } from '@pitwright/model';
import {
  HOME_LOW_HOLD_C,
  HOT_DAY_C,
  HOT_HOLD_C,
  LEFTOVERS_C,
  LEFTOVERS_S,
  OUT_HOT_DAY_S,
  OUT_S,
  REHEAT_C,
  REHEAT_FOR_HOLDING_S,
  ROAST_TABLE_HOLD_C,
  UK_BELOW_HOT_HOLD_S,
} from './rules/limits.ts';
import { hundredthsF, withinLimit } from './ruleTemperature.ts';

export type KeepingVerdict = 'pass' | 'caution' | 'fail' | 'discard';

const atLeast = (celsius: number, limitC: number): boolean => hundredthsF(celsius) >= hundredthsF(limitC);
const atMost = (celsius: number, limitC: number): boolean => hundredthsF(celsius) <= hundredthsF(limitC);

/** Longest that food stays out of heat and cold in this air [s], added up; unknown air counts as mild. */
export const outLimitS = (airC: number | undefined): number =>
  airC !== undefined && !atMost(airC, HOT_DAY_C) ? OUT_HOT_DAY_S : OUT_S;

/** Food that was out of heat and cold. */
export const outVerdict = (timeS: number, airC: number | undefined): KeepingVerdict =>
  withinLimit(timeS, outLimitS(airC)) ? 'pass' : 'discard';

export interface HotHold {
  readonly profile: RulesProfile;
  /** Coldest point [°C]. */
  readonly coldestC: number;
  /** Cooked by the roast table. */
  readonly byRoastTable: boolean;
  /** How long it lay so low [s], where it is known. */
  readonly timeS?: number;
  readonly airC?: number;
}

/** Food kept hot. @returns undefined where a time is needed and was not told */
export function hotHoldVerdict({
  profile,
  coldestC,
  byRoastTable,
  timeS,
  airC,
}: HotHold): KeepingVerdict | undefined {
  const least = profile === 'cater-us' && byRoastTable ? ROAST_TABLE_HOLD_C : HOT_HOLD_C[profile];
  if (atLeast(coldestC, least)) return 'pass';
  if (profile === 'home-us' && atLeast(coldestC, HOME_LOW_HOLD_C)) return 'caution';
  if (profile === 'cater-us')
    // A breach of the rule at any time, and past the out-time nothing to keep.
    return timeS !== undefined && outVerdict(timeS, airC) === 'discard' ? 'discard' : 'fail';
  if (timeS === undefined) return undefined;
  if (profile === 'uk') return withinLimit(timeS, UK_BELOW_HOT_HOLD_S) ? 'pass' : 'discard';
  return outVerdict(timeS, airC);
}

/** Cooked leftovers in the cold. @returns undefined where what is told cannot decide */
export function leftoversVerdict(
  temperatureC: number | undefined,
  timeS: number | undefined,
): KeepingVerdict | undefined {
  if (temperatureC !== undefined && !atMost(temperatureC, LEFTOVERS_C)) return 'discard';
  if (timeS !== undefined && !withinLimit(timeS, LEFTOVERS_S)) return 'discard';
  return temperatureC === undefined || timeS === undefined ? undefined : 'pass';
}

/** Leftovers reheated, for hot holding within two hours where a time is told. */
export function reheatVerdict(
  profile: RulesProfile,
  coldestC: number,
  timeS: number | undefined,
): KeepingVerdict {
  if (!atLeast(coldestC, REHEAT_C[profile])) return 'fail';
  return timeS === undefined || withinLimit(timeS, REHEAT_FOR_HOLDING_S) ? 'pass' : 'fail';
}
