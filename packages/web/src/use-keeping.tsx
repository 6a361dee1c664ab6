import type { Cook, Entry, EntryDraft, Kept, State, Subject } from '@pitwright/model';
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
import { canRedo, canUndo, lastDone } from './keeping.ts';
import { noted } from './unwritten.ts';

interface Held {
  readonly journal: Journal;
  /** What could not be kept, until it is seen. */
  readonly fault: unknown;
  /** Resolves with whether the work was kept. */
  readonly note: (work: Promise<unknown>) => Promise<boolean>;
}

const KeepingContext = createContext<Held | undefined>(undefined);

export function KeepingProvider(props: { journal: Journal; children: ReactNode }) {
  const { journal } = props;
  const [fault, setFault] = useState<unknown>();
  const note = useCallback(async (work: Promise<unknown>) => {
    try {
      await work;
      setFault(undefined);
      return true;
    } catch (error) {
      setFault(error);
      return false;
    }
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

/** Why the last thing written was not kept; undefined where it was. */
export const useFault = (): unknown => useHeld().fault;

/** One cook that is kept and not removed. */
export function useCook(id: string): Kept<Cook> | undefined {
  const kept = useKept().cooks.get(id);
  return kept?.isRemoved ? undefined : kept;
}

export interface Keeper {
  /**
   * Writes down what one person did in one go. @returns whether it is on the disk; what was not is told on the strip.
   * Wait for it before leaving for what was written: a page that is left takes an unfinished write with it, and it is
   * written when the app is opened next.
   */
  readonly write: (...drafts: readonly EntryDraft[]) => Promise<boolean>;
  readonly undo: (subject?: Subject) => Promise<boolean>;
  readonly redo: (subject?: Subject) => Promise<boolean>;
  /** What undo would take back. */
  readonly lastDone: () => Entry | undefined;
  readonly canUndo: (subject?: Subject) => boolean;
  readonly canRedo: (subject?: Subject) => boolean;
}

export function useKeeper(): Keeper {
  const { journal, note } = useHeld();
  return useMemo(
    () => ({
      write: (...drafts) => note(noted(drafts, () => journal.write(...drafts))),
      undo: (subject) => note(journal.undo(subject)),
      redo: (subject) => note(journal.redo(subject)),
      lastDone: () => lastDone(journal),
      canUndo: (subject) => canUndo(journal, subject),
      canRedo: (subject) => canRedo(journal, subject),
    }),
    [journal, note],
  );
}
