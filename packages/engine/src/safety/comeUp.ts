import { COME_UP_S } from './rules/limits.ts';
import { withinLimit } from './ruleTemperature.ts';

export interface ComeUp {
  /** Injected, rolled, tenderised, stuffed or ground. */
  readonly isNonIntact: boolean;
  /** Time of the centre between 50 and 130 °F [s]. */
  readonly centreS: number;
  /** The same at the surface, where it is known. */
  readonly surfaceS?: number;
  /** A probe was pushed through raw surface at the start. */
  readonly hasEarlyProbe: boolean;
  /** Time between the same temperatures in an earlier warming [s]. */
  readonly earlierS: number;
  /** That warming met a lethal hold, so that the clock starts again. */
  readonly earlierWasLethal: boolean;
}

export type ComeUpVerdict = 'pass' | 'information' | 'caution' | 'fail';

/**
 * Whether meat warmed fast enough for Staphylococcus aureus, whose poison outlasts cooking.
 *
 * Intact pieces are judged at the surface. @source USDA FSIS, Revised Appendix A 2021; the surface as basis and the
 * early probe are an interpretation
 */
export function comeUpVerdict(given: ComeUp): ComeUpVerdict {
  const carriedS = given.earlierWasLethal ? 0 : given.earlierS;
  if (withinLimit(given.centreS + carriedS, COME_UP_S)) return 'pass';
  if (given.isNonIntact) return 'fail';
  const surfaceKept =
    given.surfaceS === undefined ? undefined : withinLimit(given.surfaceS + carriedS, COME_UP_S);
  if (surfaceKept === false) return 'fail';
  if (given.hasEarlyProbe) return 'caution';
  return surfaceKept ? 'information' : 'fail';
}
