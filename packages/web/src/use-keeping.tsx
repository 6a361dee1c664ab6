import type { Cook, EntryDraft, Kept, State, Subject } from '@pitwright/model';
import type { Journal } from '@pitwright/store';
import {
  createContext,
  type ReactNode,
  use,
  useCallback,
  useMemo,
  useState,
  useSyncExternalStore,
} from 'react';
import { canRedo, canUndo } from './keeping.ts';

interface Held {
  readonly journal: Journal;
  /** What could not be kept, until it is seen. */
  readonly fault: unknown;
  readonly note: (work: Promise<unknown>) => void;
}

const KeepingContext = createContext<Held | undefined>(undefined);

export function KeepingProvider(props: { journal: Journal; children: ReactNode }) {
  const { journal } = props;
  const [fault, setFault] = useState<unknown>();
  const note = useCallback((work: Promise<unknown>) => {
    work.then(
      () => setFault(undefined),
      (error: unknown) => setFault(error),
    );
  }, []);
  const held = useMemo(() => ({ journal, fault, note }), [journal, fault, note]);
  return <KeepingContext value={held}>{props.children}</KeepingContext>;
}

function useHeld(): Held {
  const held = use(KeepingContext);
  if (!held) throw new Error('nothing is kept outside of KeepingProvider');
  return held;
}

/** What is kept, as it stands now. */
export function useKept(): State {
  const { journal } = useHeld();
  return useSyncExternalStore(journal.watch, () => journal.state);
}

/** The id of this device, as its entries carry it. */
export const useDevice = (): string => useHeld().journal.store.device;

export const useFault = (): unknown => useHeld().fault;

/** One cook that is kept and not removed. */
export function useCook(id: string): Kept<Cook> | undefined {
  const kept = useKept().cooks.get(id);
  return kept?.isRemoved ? undefined : kept;
}

export interface Keeper {
  /** Writes down what one person did in one go. */
  readonly write: (...drafts: readonly EntryDraft[]) => void;
  readonly undo: (subject?: Subject) => void;
  readonly redo: (subject?: Subject) => void;
  readonly canUndo: (subject?: Subject) => boolean;
  readonly canRedo: (subject?: Subject) => boolean;
}

export function useKeeper(): Keeper {
  const { journal, note } = useHeld();
  return useMemo(
    () => ({
      write: (...drafts) => note(journal.write(...drafts)),
      undo: (subject) => note(journal.undo(subject)),
      redo: (subject) => note(journal.redo(subject)),
      canUndo: (subject) => canUndo(journal, subject),
      canRedo: (subject) => canRedo(journal, subject),
    }),
    [journal, note],
  );
}
