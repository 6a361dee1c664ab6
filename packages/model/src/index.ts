export { ownKey } from './file/label.ts';
export { type OwnMisfit, ownMisfit } from './file/own-cut.ts';
export { printCookFile } from './file/print.ts';
export type { FileProblem } from './file/problem.ts';
export { type CookDocument, type CookFileReading, MOST_CHARACTERS, readCookFile } from './file/read.ts';
export type { Private } from './file/share.ts';
export { slug } from './file/slug.ts';
export { changesBetweenLines } from './formula/difference.ts';
export { chosenVariant, lostChanges, madeCook, madeFormula } from './formula/made.ts';
export { changesBetween } from './history/changes.ts';
export type { Change, Entry, Path, Subject } from './history/entry.ts';
export { foundingEntry } from './history/founding.ts';
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
  redoEntries,
  removeEntry,
  setEntry,
  stampEntry,
  undoEntries,
} from './history/write.ts';
export { type Limits, PIECE_LIMITS, PIT_LIMITS, STAGE_LIMITS, withinLimits } from './limits.ts';
export * from './nouns.ts';
export type { Instant, NoticeLevel, Range, Said } from './said.ts';
export { readShareLink, type SharedCook, type ShareLink, shareLink } from './share/link.ts';
export { printCookQuantity, readCookQuantity } from './units/cook-quantity.ts';
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
