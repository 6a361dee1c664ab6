/** Which member to show a person as "what will happen": one that is near the median in all it does. */
import { quantile } from './ensemble/range.ts';
import type { PieceColumns } from './types.ts';

/** Members this far from the middle of the order of finish are as good as the median [1]. */
const NEAR_MEDIAN = 0.1;
/** Stages that end sooner are held to their median as if they took so long [s]. */
const LEAST_S = 3600;

/**
 * Of the members that finish about the median, the one whose stages end nearest to their own medians: else a map would
 * show a wrap hours away from where the plan has it.
 *
 * @param byFinish members, first to finish first
 * @param itemOf the item of a member that its clock goes by
 */
export function typicalMember(
  columns: PieceColumns,
  byFinish: readonly number[],
  itemOf: (member: number) => number,
): number {
  const last = byFinish.length - 1;
  const near = byFinish.slice(
    Math.round((0.5 - NEAR_MEDIAN) * last),
    Math.round((0.5 + NEAR_MEDIAN) * last) + 1,
  );
  const endS = (member: number, stage: number): number =>
    columns.stageEndS[(member * columns.items + itemOf(member)) * columns.stages + stage]!;
  const medianS = Array.from({ length: columns.stages }, (_, stage) =>
    quantile(Float64Array.from(byFinish, (member) => endS(member, stage)).sort(), 0.5),
  );
  const departure = (member: number): number =>
    medianS.reduce((sum, usualS, stage) => {
      const atS = endS(member, stage);
      if (!(usualS < Infinity) || !(atS < Infinity)) return atS === usualS ? sum : Infinity;
      const off = (atS - usualS) / Math.max(usualS, LEAST_S);
      return sum + off * off;
    }, 0);
  let best = byFinish[Math.round(0.5 * last)]!;
  let least = departure(best);
  for (const member of near) {
    const off = departure(member);
    if (off < least) {
      best = member;
      least = off;
    }
  }
  return best;
}
