import {
  changesBetween,
  createEntry,
  type EntryDraft,
  type State,
  type Subject,
  setEntry,
} from '@pitwright/model';
import { guessedWriting, type Writing } from './words.tsx';

/** Each device writes as its own hand does: another hand at the same server may use other units. */
const subjectOf = (device: string): Subject => ({ kind: 'setting', id: `writing.${device}` });

/** How the person at this device writes, once told. */
export function toldWriting(state: State, device: string): Writing | undefined {
  return state.settings.get(subjectOf(device).id)?.document as Writing | undefined;
}

export const writingOf = (state: State, device: string): Writing =>
  toldWriting(state, device) ?? guessedWriting(navigator.language);

/** The entry that tells it; none where nothing changes. */
export function writingEntry(state: State, device: string, writing: Writing): EntryDraft | undefined {
  const told = toldWriting(state, device);
  if (!told) return createEntry(subjectOf(device), writing);
  const changes = changesBetween(told, writing);
  return changes.length > 0 ? setEntry(subjectOf(device), changes) : undefined;
}
