import { changesBetween, type Subject, setEntry } from '@pitwright/model';
import { useKeeper } from './use-keeping.tsx';

/** Writes down what differs from a document as it is kept, as one change. @returns whether it is on the disk */
export function useWriter<T>(subject: Subject, document: T): (next: T) => Promise<boolean> {
  const keeper = useKeeper();
  return async (next) => {
    const changes = changesBetween(document, next);
    return changes.length === 0 || keeper.write(setEntry(subject, changes));
  };
}
