import type { Cook, Hand } from '@pitwright/model';
import { commonSpans, recurringSpans, type Span } from './clock.ts';

/** Sleep of a hand whose file tells none. @source common practice, no source */
const USUAL_SLEEP = { from: '23:00', to: '06:30' };

/** When one hand sleeps. */
export const asleepSpans = (hand: Hand, zone: string, horizon: Span): Span[] =>
  recurringSpans(hand.sleeps ?? USUAL_SLEEP, zone, horizon);

/** When nobody is awake. */
export const allAsleep = (cook: Cook, horizon: Span): Span[] =>
  commonSpans(cook.hands.map((hand) => asleepSpans(hand, cook.zone, horizon)));

/** When nobody is there: all asleep or away at once. */
export const allAbsent = (cook: Cook, horizon: Span): Span[] =>
  commonSpans(
    cook.hands.map((hand) => [
      ...asleepSpans(hand, cook.zone, horizon),
      ...(hand.away ?? []).flatMap((away) => recurringSpans(away, cook.zone, horizon)),
    ]),
  );
