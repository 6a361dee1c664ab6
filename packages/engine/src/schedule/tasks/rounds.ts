import type { Formula, Piece } from '@pitwright/model';
import { type EpochS, MINUTE_S, type Span } from '../clock.ts';
import { familyOf } from '../rest-rules.ts';
import { type DraftTask, draft } from './draft.ts';
import { jobDuration } from './durations.ts';
import { isFor } from './formulas.ts';

/** A piece in the open on the pit: it wants to be looked at. */
export interface BareSpan {
  readonly piece: Piece;
  readonly span: Span;
}

interface Rhythm {
  readonly first: readonly [number, number];
  readonly next: readonly [number, number];
}

/**
 * First look and the time between looks [min].
 * @source common practice, no source: first look at 60–90 min, then hourly; spritz every 45–60 min once the crust
 *   is dry; big cuts every two to three hours; birds half-hourly.
 */
const LOOKS: Readonly<Record<string, Rhythm>> = {
  rack: { first: [60, 90], next: [50, 75] },
  large: { first: [90, 150], next: [120, 180] },
  bird: { first: [25, 45], next: [25, 45] },
  roast: { first: [60, 90], next: [60, 90] },
};
const SPRITZ: Rhythm = { first: [60, 90], next: [45, 60] };
/** No round in the last minutes before the piece is handled anyway. */
const NO_ROUND_BEFORE_END_S = 25 * MINUTE_S;

/**
 * The fewest rounds that give every piece its rhythm: each round waits for the piece that can wait least, and takes
 * along all that are due by then. Rounds that fall when nobody is there are left out; the watch of the fire stays.
 */
export function roundTasks(
  bare: readonly BareSpan[],
  formulas: readonly Formula[],
  absent: readonly Span[],
): DraftTask[] {
  const spritz = formulas.filter((formula) => formula.kind === 'spritz');
  const open = bare.map(({ piece, span }) => {
    const isSpritzed = spritz.some((formula) => isFor(formula, piece));
    const rhythm = isSpritzed && familyOf(piece.cut) === 'rack' ? SPRITZ : LOOKS[familyOf(piece.cut)]!;
    return {
      piece,
      isSpritzed,
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

const windowFrom = (fromS: EpochS, lagMinutes: readonly [number, number]): Span => ({
  fromS: fromS + lagMinutes[0] * MINUTE_S,
  toS: fromS + lagMinutes[1] * MINUTE_S,
});
