import type { Piece, Said, Spritz } from '@pitwright/model';
import { type EpochS, instantOf, MINUTE_S, type Span } from '../clock.ts';
import { familyOf } from '../rest-rules.ts';
import { type DraftTask, draft } from './draft.ts';
import { jobDuration } from './durations.ts';

/** A piece in the open on the pit: it wants to be looked at. */
export interface BareSpan {
  readonly piece: Piece;
  readonly span: Span;
  /** As the stage tells it, and as the meat is foreseen with. */
  readonly spritz?: Spritz;
}

interface Rhythm {
  readonly first: readonly [number, number];
  readonly next: readonly [number, number];
}

/**
 * First look and the time between looks [min].
 * @source common practice, no source: first look at 60–90 min, then hourly; big cuts every two to three hours; birds
 *   half-hourly.
 */
const LOOKS: Readonly<Record<string, Rhythm>> = {
  rack: { first: [60, 90], next: [50, 75] },
  large: { first: [90, 150], next: [120, 180] },
  bird: { first: [25, 45], next: [25, 45] },
  roast: { first: [60, 90], next: [60, 90] },
};
/** Of the time told between two sprays, how much sooner a hand may come by. */
const SOONER_SHARE = 0.25;

function spritzRhythm({ every }: Spritz): Rhythm {
  const minutes = every.si / MINUTE_S;
  const window = [(1 - SOONER_SHARE) * minutes, minutes] as const;
  return { first: window, next: window };
}
/** No round in the last minutes before the piece is handled anyway. */
const NO_ROUND_BEFORE_END_S = 25 * MINUTE_S;

/**
 * The fewest rounds that give every piece its rhythm: each round waits for the piece that can wait least, and takes
 * along all that are due by then. Rounds that fall when nobody is there are left out; the watch of the fire stays.
 */
export function roundTasks(bare: readonly BareSpan[], absent: readonly Span[]): DraftTask[] {
  const open = bare.map(({ piece, span, spritz }) => {
    const rhythm = spritz ? spritzRhythm(spritz) : LOOKS[familyOf(piece.cut)]!;
    return {
      piece,
      isSpritzed: spritz !== undefined && spritz.amount.si > 0,
      rhythm,
      endS: span.toS - NO_ROUND_BEFORE_END_S,
      due: windowFrom(span.fromS, rhythm.first),
    };
  });
  const tasks: DraftTask[] = [];
  for (let guard = 0; guard < 200; guard++) {
    const waiting = open.filter((o) => o.due.fromS <= o.endS);
    if (!waiting.length) break;
    const atS = Math.min(...waiting.map((o) => Math.min(o.due.toS, o.endS)));
    const joined = waiting.filter((o) => o.due.fromS <= atS);
    const absence = absent.find((span) => atS >= span.fromS && atS < span.toS);
    if (absence) {
      for (const o of joined) o.due = windowFrom(absence.toS, [0, 30]);
      continue;
    }
    const round = tasks.length + 1;
    const pieces = joined.map((o) => o.piece);
    const kind = joined.some((o) => o.isSpritzed) ? 'spritz' : 'look';
    tasks.push(
      draft({
        kind,
        at: 'pit',
        subject: 'round',
        round,
        pieces,
        duration: jobDuration(kind, pieces),
        earliestS: Math.max(...joined.map((o) => o.due.fromS)),
        latestS: atS,
        sign: { id: kind === 'spritz' ? 'sign.crust-dry' : 'sign.colour' },
      }),
    );
    for (const o of joined) o.due = windowFrom(atS, o.rhythm.next);
  }
  return tasks;
}

/** Sprays that a stage tells and nobody is there for, in one statement for each span in the open. */
export function unattendedSprays(bare: readonly BareSpan[], absent: readonly Span[]): Said[] {
  return bare.flatMap(({ piece, span, spritz }): Said[] => {
    if (!spritz || !(spritz.amount.si > 0)) return [];
    const everyS = spritz.every.si;
    const missed: EpochS[] = [];
    for (let atS = span.fromS + everyS; atS < span.toS; atS += everyS)
      if (absent.some(({ fromS, toS }) => atS >= fromS && atS < toS)) missed.push(atS);
    if (missed.length === 0) return [];
    return [
      {
        id: 'schedule.spritz-unattended',
        params: {
          letter: piece.letter,
          every: spritz.every,
          count: missed.length,
          from: instantOf(missed[0]!),
          to: instantOf(missed.at(-1)!),
        },
      },
    ];
  });
}

const windowFrom = (fromS: EpochS, lagMinutes: readonly [number, number]): Span => ({
  fromS: fromS + lagMinutes[0] * MINUTE_S,
  toS: fromS + lagMinutes[1] * MINUTE_S,
});
