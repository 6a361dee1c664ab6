import { type OutcomeAnswer, type OutcomeOptions, sauceOutcome } from '@pitwright/engine/sauce';
import type { Formula } from '@pitwright/model';

/** Formulas as they were a while ago are kept, so that undo and a second look at a swap are at once. */
const MOST_KEPT = 24;
const kept = new Map<string, OutcomeAnswer>();

/** `sauceOutcome`, worked out once for each formula and kitchen. */
export function outcomeOf(formula: Formula, options: OutcomeOptions = {}): OutcomeAnswer {
  const key = JSON.stringify([formula, options]);
  const answer = kept.get(key) ?? sauceOutcome(formula, options);
  // Last used stands last.
  kept.delete(key);
  kept.set(key, answer);
  if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
  return answer;
}
