export { changesBetween } from './history/changes.ts';
export {
  type Change,
  compareEntries,
  type Entry,
  HISTORY_SCHEMA,
  type Path,
  type Subject,
} from './history/entry.ts';
export {
  emptyHistory,
  extendHistory,
  type History,
  type Kept,
  reduce,
  type State,
} from './history/history.ts';
export { redoTarget, undoTarget } from './history/undo.ts';
export {
  afterSeeing,
  bringBackEntry,
  createEntry,
  type Device,
  type EntryDraft,
  logEntry,
  redoEntry,
  removeEntry,
  setEntry,
  stampEntry,
  undoEntry,
} from './history/write.ts';
export * from './nouns.ts';
export type { Instant, NoticeLevel, Range, Said } from './said.ts';
export {
  findUnit,
  type Kind,
  kindsOfUnit,
  mayBeNegative,
  siSymbol,
  takesBareNumber,
  UNITS,
} from './units/kinds.ts';
export { fromSi, type Quantity, quantity, toSi } from './units/quantity.ts';
export { parseQuantity, type Reading } from './units/read.ts';
