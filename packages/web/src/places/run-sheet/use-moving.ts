import type { Cook } from '@pitwright/model';
import { useEffect, useState } from 'react';
import { usePause } from '../../parts/pause.ts';
import { toStep } from '../cook/edit.ts';
import { type Job, msOf } from './jobs.ts';
import { moveJob, setAt } from './move.ts';

/** A job as a hand holds it, before the rest has been placed round it. */
export interface Held {
  readonly id: string;
  readonly atMs: number;
  readonly isWritten: boolean;
}

export interface Moving {
  readonly held: Held | undefined;
  /** By keys: several presses close together are one change, undone as one. */
  readonly nudge: (job: Job, byMs: number) => void;
  readonly drag: (job: Job, toMs: number) => void;
  readonly drop: (job: Job) => void;
}

/** Moving one job along time: it stays with the hand until the plan has come round it. */
export function useMoving(cook: Cook, isSettled: boolean, keep: (cook: Cook) => void): Moving {
  const [held, setHeld] = useState<Held>();
  const pause = usePause();
  const [written, setWritten] = useState<{ job: Job; atMs: number }>();

  useEffect(() => {
    if (!written || !isSettled) return;
    const at = setAt(cook, written.job.task);
    if (at === undefined || msOf(at) !== toStep(written.atMs)) return;
    setWritten(undefined);
    setHeld((now) => (now?.isWritten ? undefined : now));
  }, [written, isSettled, cook]);

  const write = (job: Job, atMs: number) => {
    setHeld({ id: job.task.id, atMs, isWritten: true });
    setWritten({ job, atMs });
    keep(moveJob(cook, job.task, atMs));
  };
  const standsAt = (job: Job): number => (held?.id === job.task.id ? held.atMs : msOf(job.placed.startAt));

  return {
    held,
    nudge: (job, byMs) => {
      const atMs = toStep(standsAt(job) + byMs);
      setHeld({ id: job.task.id, atMs, isWritten: false });
      pause.before(() => write(job, atMs));
    },
    drag: (job, toMs) => setHeld({ id: job.task.id, atMs: toStep(toMs), isWritten: false }),
    drop: (job) => {
      const atMs = standsAt(job);
      if (atMs === msOf(job.placed.startAt)) setHeld(undefined);
      else write(job, atMs);
    },
  };
}
