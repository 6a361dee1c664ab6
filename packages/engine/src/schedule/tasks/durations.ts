import type { CutId, Piece, Range } from '@pitwright/model';
import { MINUTE_S } from '../clock.ts';
import { familyOf } from '../rest-rules.ts';
import type { TaskKind } from '../types.ts';

/** Ten, fifty, ninety percent points in minutes, as a range in seconds. */
export const minutes = (p10: number, p50: number, p90: number): Range => ({
  p10: p10 * MINUTE_S,
  p50: p50 * MINUTE_S,
  p90: p90 * MINUTE_S,
  neverShare: 0,
});

/**
 * How long a job takes one pair of hands, whatever the number of pieces.
 * @source common practice, no source
 */
const FIXED: Partial<Record<TaskKind, Range>> = {
  buy: minutes(45, 60, 90),
  'make-sauce': minutes(15, 20, 30),
  'cool-sauce': minutes(20, 30, 45),
  'jar-sauce': minutes(5, 8, 12),
  'warm-sauce': minutes(5, 8, 10),
  'mix-rub': minutes(5, 8, 12),
  'mix-spritz': minutes(3, 4, 5),
  'mix-brine': minutes(8, 10, 15),
  'light-fire': minutes(10, 15, 20),
  'coal-bed': minutes(3, 5, 8),
  'light-oven': minutes(1, 2, 5),
  serve: minutes(4, 5, 10),
  clean: minutes(20, 30, 45),
  'chill-leftovers': minutes(10, 15, 25),
  'ash-out': minutes(5, 10, 15),
};

export function fixedDuration(kind: TaskKind): Range {
  const duration = FIXED[kind];
  if (!duration) throw new RangeError(`${kind} has no duration of its own`);
  return duration;
}

/**
 * Minutes for one item of a family: [short, middle, long].
 * @source common practice, no source
 */
const PER_ITEM: Partial<Record<TaskKind, Readonly<Record<string, readonly [number, number, number]>>>> = {
  'skin-and-trim': { rack: [3, 5, 8], large: [5, 8, 12], bird: [1, 1.5, 2.5], roast: [4, 6, 10] },
  'cut-in-two': { rack: [1, 2, 3], large: [3, 5, 8], bird: [1, 2, 3], roast: [3, 5, 8] },
  rub: { rack: [2, 2.5, 4], large: [3, 5, 8], bird: [0.5, 0.8, 1.2], roast: [3, 5, 8] },
  'out-of-fridge': { rack: [0.5, 1, 1.5], large: [1, 1.5, 2], bird: [0.2, 0.3, 0.5], roast: [1, 1.5, 2] },
  'meat-on': { rack: [0.7, 1, 2], large: [1, 2, 3], bird: [0.2, 0.4, 0.6], roast: [1, 2, 3] },
  look: { rack: [0.3, 0.5, 1], large: [0.5, 1, 2], bird: [0.1, 0.2, 0.3], roast: [0.5, 1, 2] },
  spritz: { rack: [0.3, 0.5, 1], large: [0.5, 1, 1.5], bird: [0.1, 0.2, 0.3], roast: [0.5, 1, 1.5] },
  wrap: { rack: [1.5, 2.5, 4], large: [3, 5, 8], bird: [0.5, 1, 1.5], roast: [3, 5, 8] },
  unwrap: { rack: [0.7, 1, 2], large: [1, 2, 4], bird: [0.3, 0.5, 0.8], roast: [1, 2, 4] },
  glaze: { rack: [1, 1.5, 2.5], large: [2, 3, 5], bird: [0.3, 0.5, 0.8], roast: [2, 3, 5] },
  'test-bite': { rack: [0.5, 0.8, 1.5], large: [1, 2, 3], bird: [0.3, 0.5, 0.8], roast: [1, 2, 3] },
  'to-oven': { rack: [1, 1.5, 2.5], large: [2, 4, 6], bird: [0.3, 0.5, 0.8], roast: [2, 4, 6] },
  'to-coals': { rack: [0.7, 1, 2], large: [2, 3, 5], bird: [0.3, 0.4, 0.6], roast: [2, 3, 5] },
  'take-off': { rack: [0.7, 1, 2], large: [2, 3, 5], bird: [0.3, 0.4, 0.6], roast: [2, 3, 5] },
  chill: { rack: [1, 2, 3], large: [3, 5, 10], bird: [0.5, 1, 1.5], roast: [2, 4, 8] },
  slice: { rack: [1.5, 2.5, 4], large: [7, 10, 15], bird: [0.3, 0.5, 1], roast: [8, 12, 20] },
};

/** A whole spare rack is squared as well as skinned. @source common practice, no source */
const SQUARING_MINUTES: readonly [number, number, number] = [4, 6, 10];

/** Briskets have their fat cut down before the rub goes on. @source common practice, no source */
const TRIMMING_MINUTES: readonly [number, number, number] = [8, 15, 25];
export const isTrimmed = (cut: CutId): boolean => cut.startsWith('brisket-');

/** One job for all items of these pieces: its minutes add up, never under two. */
export function jobDuration(kind: TaskKind, pieces: readonly Piece[]): Range {
  const table = PER_ITEM[kind];
  if (!table) throw new RangeError(`${kind} is no job on a piece`);
  const sum = [0, 0, 0];
  for (const piece of pieces) {
    const each = table[familyOf(piece.cut)]!;
    const more =
      kind === 'skin-and-trim' && piece.cut === 'spareribs'
        ? SQUARING_MINUTES
        : kind === 'rub' && isTrimmed(piece.cut)
          ? TRIMMING_MINUTES
          : [0, 0, 0];
    for (let k = 0; k < 3; k++) sum[k] = sum[k]! + piece.count * (each[k]! + more[k]!);
  }
  return minutes(Math.max(1, sum[0]!), Math.max(2, sum[1]!), Math.max(2, sum[2]!));
}

/** What the plan keeps free for a job: midway between its middle and its long duration, so that most fit [s]. */
export const plannedS = (duration: Range): number => (duration.p50 + duration.p90) / 2;
