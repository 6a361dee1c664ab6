import type { Cook, Said } from '@pitwright/model';
import type { Conflict, Task } from './types.ts';

/** Letters of pieces as they are read aloud: `A`, `A and B`, `A, B and C`. */
export const lettersOf = (cook: Cook, pieceIds: readonly string[]): string => {
  const letters = pieceIds.map((id) => cook.pieces.find((piece) => piece.id === id)?.letter ?? id);
  const last = letters.at(-1) ?? '';
  return letters.length < 2 ? last : `${letters.slice(0, -1).join(', ')} and ${last}`;
};

/** Conflicts with their tasks said by kind and letters in place of ids. */
export function named(conflicts: readonly Conflict[], tasks: readonly Task[], cook: Cook): Conflict[] {
  const say = (said: Said): Said => ({ ...said, params: namedParams(said.params ?? {}, tasks, cook) });
  return conflicts.map((conflict) => ({
    ...conflict,
    demands: conflict.demands.map((demand) => ({ ...demand, said: say(demand.said) })),
    wayOut: conflict.wayOut.map(({ demandId, buys }) => ({ demandId, buys: say(buys) })),
  }));
}

function namedParams(
  { task: taskId, after: afterId, ...rest }: NonNullable<Said['params']>,
  tasks: readonly Task[],
  cook: Cook,
): NonNullable<Said['params']> {
  const task = tasks.find((one) => one.id === taskId);
  const after = tasks.find((one) => one.id === afterId);
  return {
    ...rest,
    ...(task && { job: task.kind, pieces: lettersOf(cook, task.pieceIds) }),
    ...(after && { afterJob: after.kind, afterPieces: lettersOf(cook, after.pieceIds) }),
    ...(afterId !== undefined && !after && { after: afterId }),
  };
}
