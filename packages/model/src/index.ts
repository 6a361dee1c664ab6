export type { Entry, Subject } from './history/entry.ts';
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
