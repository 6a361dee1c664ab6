import { changesBetween, createEntry, setEntry } from '@pitwright/model';
import { useKeeper, useKept } from '../use-keeping.tsx';

/** Something a household keeps beside its cooks, by name. It comes into being with its first change. */
export function useSetting<T extends object>(id: string, empty: T): readonly [T, (next: T) => void] {
  const keeper = useKeeper();
  const kept = useKept().settings.get(id)?.document as T | undefined;
  const subject = { kind: 'setting' as const, id };
  const change = (next: T) => {
    const changes = changesBetween(kept ?? empty, next);
    if (changes.length === 0) return;
    const set = setEntry(subject, changes);
    if (kept) keeper.write(set);
    else keeper.write(createEntry(subject, empty), set);
  };
  return [kept ?? empty, change];
}
