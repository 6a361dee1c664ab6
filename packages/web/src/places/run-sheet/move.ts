import type { Task } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { freeStart, moveStart, toStep } from '../cook/edit.ts';

/** The piece that a job puts on the pit: its start is a thing of the piece, set in the same way on its band. */
const putsOn = (cook: Cook, task: Task) =>
  task.kind === 'meat-on' && task.pieceIds.length === 1
    ? cook.pieces.find((piece) => piece.id === task.pieceIds[0])
    : undefined;

/** When a hand set this job, if one did. */
export const setAt = (cook: Cook, task: Task): string | undefined =>
  putsOn(cook, task)?.onAt ?? cook.pinned?.[task.id];

/** The job starts here; the plan places the rest round it. */
export function moveJob(cook: Cook, task: Task, atMs: number): Cook {
  const piece = putsOn(cook, task);
  if (piece) return moveStart(cook, piece.id, atMs);
  const at = new Date(toStep(atMs)).toISOString().replace('.000Z', 'Z');
  return { ...cook, pinned: { ...cook.pinned, [task.id]: at } };
}

/** The plan places the job again. */
export function letGo(cook: Cook, task: Task): Cook {
  const piece = putsOn(cook, task);
  if (piece) return freeStart(cook, piece.id);
  const { [task.id]: _, ...others } = cook.pinned ?? {};
  return { ...cook, pinned: others };
}
