import { changesBetween, type Subject, setEntry } from '@pitwright/model';
import { useRef } from 'react';
import { useKeeper } from './use-keeping.tsx';

/** The document as it is to be; or what a press does to it, for presses that come faster than they are written down. */
export type Next<T> = T | ((now: T) => T);

/** Writes down what differs from a document as it is kept, as one change. @returns whether it is on the disk */
export function useWriter<T extends object>(
  subject: Subject,
  document: T,
): (next: Next<T>) => Promise<boolean> {
  const keeper = useKeeper();
  /** What will be kept once all that is being written is on the disk. */
  const ahead = useRef<T>(undefined);
  return async (next) => {
    const from = typeof next === 'function' ? (ahead.current ?? document) : document;
    const to = typeof next === 'function' ? next(from) : next;
    const changes = changesBetween(from, to);
    if (changes.length === 0) return true;
    ahead.current = to;
    const isKept = await keeper.write(setEntry(subject, changes));
    if (ahead.current === to) ahead.current = undefined;
    return isKept;
  };
}
