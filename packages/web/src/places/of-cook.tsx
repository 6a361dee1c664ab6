import { type Cook, changesBetween, type Subject, setEntry } from '@pitwright/model';
import { type ComponentType, useMemo } from 'react';
import { useParams } from 'wouter';
import { writingOf } from '../settings.ts';
import { useCook, useDevice, useKeeper, useKept } from '../use-keeping.tsx';
import { ReaderProvider } from '../words.tsx';
import { Gone } from './gone.tsx';

/** A place of the cook that its address names, printed on that cook's own wall clock; `Gone` where none is kept. */
export function ofCook(Sheet: ComponentType<{ cook: Cook }>): ComponentType {
  return function PlaceOfCook() {
    const { id = '' } = useParams();
    const kept = useCook(id);
    const state = useKept();
    const device = useDevice();
    if (!kept) return <Gone />;
    return (
      <ReaderProvider writing={writingOf(state, device)} zone={kept.document.zone}>
        <Sheet cook={kept.document} key={kept.id} />
      </ReaderProvider>
    );
  };
}

export interface CookWriter {
  readonly subject: Subject;
  /** Writes down what differs from the cook as it is kept, as one change. @returns whether it is on the disk */
  readonly keep: (next: Cook) => Promise<boolean>;
}

export function useCookWriter(cook: Cook): CookWriter {
  const keeper = useKeeper();
  const subject = useMemo(() => ({ kind: 'cook' as const, id: cook.id }), [cook.id]);
  const keep = async (next: Cook) => {
    const changes = changesBetween(cook, next);
    return changes.length === 0 || keeper.write(setEntry(subject, changes));
  };
  return { subject, keep };
}
