import type { Night, Stretch } from '@pitwright/draw';
import type { CookPlan } from '@pitwright/engine';
import type { Cook, Hand } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';
import { HORIZON_DEG, sunAltitudeDeg, sunEvents } from '../../light/sun.ts';

const HOUR_S = 3600;
const DAY_MS = 86_400_000;
/** Shorter gaps are not worth a fold. */
const LEAST_GAP_S = 2 * HOUR_S;
/** Hours with nothing on the pit and no job: a twelfth of the scale. */
const EMPTY_SCALE = 1 / 12;
/** Room kept round what happens. */
const MARGIN_S = 1200;

type Span = Pick<Stretch, 'fromS' | 'toS'>;
type QuietSpan = Span & { readonly scale?: number };

/** East longitude: the place's own, or that of the zone's standard time, good to half an hour of sun. */
function longitudeOf(cook: Cook): number {
  if (cook.place?.longitude !== undefined) return cook.place.longitude;
  const january = Temporal.PlainDate.from({ year: 2027, month: 1, day: 1 }).toZonedDateTime(cook.zone);
  const july = Temporal.PlainDate.from({ year: 2027, month: 7, day: 1 }).toZonedDateTime(cook.zone);
  const standardNs = Math.min(january.offsetNanoseconds, july.offsetNanoseconds);
  return (standardNs / 3.6e12) * 15;
}

/** Nights between two instants [s], where the latitude is known. */
export function nightsOf(cook: Cook, fromS: number, toS: number): Night[] {
  const latitude = cook.place?.latitude;
  if (latitude === undefined) return [];
  const events = sunEvents(fromS * 1000 - DAY_MS, toS * 1000 + DAY_MS, latitude, longitudeOf(cook));
  const nights: Night[] = [];
  for (const [index, event] of events.entries()) {
    if (event.kind !== 'set') continue;
    const after = events.slice(index + 1);
    const rise = after.find((next) => next.kind === 'rise');
    const dark = after.find((next) => next.kind === 'dark');
    const dawn = after.find((next) => next.kind === 'dawn');
    if (!rise || !dark || !dawn) continue;
    nights.push({
      sunsetS: event.at / 1000,
      darkFromS: dark.at / 1000,
      darkToS: dawn.at / 1000,
      sunriseS: rise.at / 1000,
    });
  }
  return nights.filter((night) => night.sunriseS > fromS && night.sunsetS < toS);
}

/** Hours in which a hand sleeps, as spans between two instants [s]. */
export function sleepOf(hand: Hand | undefined, zone: string, fromS: number, toS: number): Span[] {
  const sleeps = hand?.sleeps;
  if (!sleeps) return [];
  const spans: Span[] = [];
  let day = Temporal.Instant.fromEpochMilliseconds(fromS * 1000)
    .toZonedDateTimeISO(zone)
    .toPlainDate();
  const at = (date: Temporal.PlainDate, hour: string) =>
    date.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from(hour) }).epochMilliseconds /
    1000;
  day = day.subtract({ days: 1 });
  while (at(day, '00:00') < toS) {
    const start = at(day, sleeps.from);
    const end = at(sleeps.to > sleeps.from ? day : day.add({ days: 1 }), sleeps.to);
    spans.push({ fromS: start, toS: end });
    day = day.add({ days: 1 });
  }
  return spans;
}

/**
 * Stretches in which nothing needs the eye, to be drawn folded: hours of sleep, and long gaps without a job while
 * nothing is on the pit. Round each job and each change some room stays unfolded.
 */
export function quietOf(cook: Cook, plan: CookPlan, fromS: number, toS: number): QuietSpan[] {
  const seconds = (instant: string) => Date.parse(instant) / 1000;
  const busy: Span[] = plan.placed
    .filter((placed) => placed.handIds.length > 0)
    .map((placed) => ({ fromS: seconds(placed.startAt) - MARGIN_S, toS: seconds(placed.endAt) + MARGIN_S }));
  const onPit: Span[] = plan.pieces.map((piece) => ({
    fromS: seconds(piece.onAt) - MARGIN_S,
    toS: seconds(plan.table.until) + HOUR_S,
  }));
  const isLong = (span: Span) => span.toS - span.fromS >= LEAST_GAP_S;
  const empty = gapsBetween([...busy, ...onPit], fromS, toS).filter(isLong);
  const asleep = sleepOf(cook.hands[0], cook.zone, fromS, toS)
    .flatMap((span) => gapsBetween([...busy, ...empty], Math.max(fromS, span.fromS), Math.min(toS, span.toS)))
    .filter(isLong);
  return [...empty.map((span) => ({ ...span, scale: EMPTY_SCALE })), ...asleep];
}

function gapsBetween(busy: readonly Span[], fromS: number, toS: number): Span[] {
  const gaps: Span[] = [];
  let edge = fromS;
  for (const span of [...busy].sort((a, b) => a.fromS - b.fromS)) {
    if (span.fromS > edge) gaps.push({ fromS: edge, toS: Math.min(span.fromS, toS) });
    edge = Math.max(edge, span.toS);
    if (edge >= toS) return gaps.filter((gap) => gap.toS > gap.fromS);
  }
  gaps.push({ fromS: edge, toS });
  return gaps.filter((gap) => gap.toS > gap.fromS);
}

/** Whether the sun is down at the cook's place now; undefined where the latitude is not known. */
export function isDarkAt(cook: Cook): (() => boolean) | undefined {
  const latitude = cook.place?.latitude;
  if (latitude === undefined) return undefined;
  const longitude = longitudeOf(cook);
  return () => sunAltitudeDeg(Date.now(), latitude, longitude) < HORIZON_DEG;
}
