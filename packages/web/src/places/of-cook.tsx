import type { Cook, Subject } from '@pitwright/model';
import { type ComponentType, useMemo } from 'react';
import { useParams } from 'wouter';
import { writingOf } from '../settings.ts';
import { useCook, useDevice, useKept } from '../use-keeping.tsx';
import { type Next, useWriter } from '../use-writer.ts';
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
  readonly keep: (next: Next<Cook>) => Promise<boolean>;
}

export function useCookWriter(cook: Cook): CookWriter {
  const subject = useMemo(() => ({ kind: 'cook' as const, id: cook.id }), [cook.id]);
  return { subject, keep: useWriter(subject, cook) };
}
