import {
  changesBetween,
  createEntry,
  type EntryDraft,
  type State,
  type Subject,
  setEntry,
} from '@pitwright/model';
import { guessedWriting, type Writing } from './words.tsx';

const WRITING: Subject = { kind: 'setting', id: 'writing' };

/** How this person writes, once told. */
export function toldWriting(state: State): Writing | undefined {
  return state.settings.get(WRITING.id)?.document as Writing | undefined;
}

export const writingOf = (state: State): Writing => toldWriting(state) ?? guessedWriting(navigator.language);

/** The entry that tells it; none where nothing changes. */
export function writingEntry(state: State, writing: Writing): EntryDraft | undefined {
  const told = toldWriting(state);
  if (!told) return createEntry(WRITING, writing);
  const changes = changesBetween(told, writing);
  return changes.length > 0 ? setEntry(WRITING, changes) : undefined;
}
