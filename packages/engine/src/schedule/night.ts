import type { Cook, Piece } from '@pitwright/model';
import { type EpochS, HOUR_S, MINUTE_S, overlapS, type Span } from './clock.ts';
import { heatStages } from './rest-rules.ts';
import { fireRuleOf } from './tasks/fire.ts';

/** A fire that wants somebody more often than this lets nobody sleep between. */
const SLEEPLESS_REACH_S = 90 * MINUTE_S;
/** One waking for a fire that lasts longer. @source common practice, no source */
const WAKING_S = 15 * MINUTE_S;

/** Whether the fire keeps somebody up for as long as it burns. */
export const isSleepless = (cook: Cook): boolean => {
  const { reachS } = fireRuleOf(cook.pit);
  return reachS !== undefined && reachS < SLEEPLESS_REACH_S;
};

/** Whether the piece leaves the fire for the kitchen oven before it is done. */
export const finishesInOven = (piece: Piece): boolean =>
  heatStages(piece).some((stage) => stage.in === 'oven');

/**
 * Sleep that a lit fire costs [s]: all of it where somebody must be within reach every 40 minutes; where it lasts for
 * hours, one waking each time. Hands that sleep at different hours relieve each other.
 */
export function watchAsleepS(cook: Cook, lit: Span, asleep: readonly Span[]): number {
  const { reachS } = fireRuleOf(cook.pit);
  if (reachS === undefined) return 0;
  return asleep.reduce((sum, span) => {
    const lost = overlapS(span, lit);
    if (lost === 0) return sum;
    return sum + (reachS < SLEEPLESS_REACH_S ? lost : Math.floor(lost / reachS) * WAKING_S);
  }, 0);
}

/** From lighting to the first meat, as the price of a night reckons it. */
const LIGHT_BEFORE_S = 1.25 * HOUR_S;

/** Sleep that chosen starts cost: the watch, and the jobs of starting that fall into it [s]. */
export function nightPriceOf(
  cook: Cook,
  asleep: readonly Span[],
  starts: readonly { readonly onS: EpochS; readonly offHeatS: number }[],
): number {
  if (!starts.length) return 0;
  const lit = {
    fromS: Math.min(...starts.map((start) => start.onS)) - LIGHT_BEFORE_S,
    toS: Math.max(...starts.map((start) => start.onS + start.offHeatS)),
  };
  // Beside a fire that costs the sleep anyway a start in the dark still weighs: it is the worse hour for it.
  const jobs = starts.filter((start) =>
    asleep.some((span) => start.onS >= span.fromS && start.onS < span.toS),
  );
  return watchAsleepS(cook, lit, asleep) + jobs.length * WAKING_S;
}
