import { useSyncExternalStore } from 'react';
import { onSyncState, syncState } from '../sync-state.ts';
import { useWords } from '../words.tsx';

/** Whether other hands see what is written here: a few quiet words, and none before it is known. */
export function InStep() {
  const { text } = useWords();
  const state = useSyncExternalStore(onSyncState, syncState);
  if (!state || state.phase === 'exchanging') return null;
  const { phase, waiting, refused } = state;
  return (
    <span className="in-step" role="status">
      {phase === 'none' ? text('web.sync.none') : text(`web.sync.${phase}`, { waiting })}
      {refused > 0 ? <> {text('web.sync.refused', { refused })}</> : null}
    </span>
  );
}
