import type { Quantity, Range } from '@pitwright/model';
import type { Printer } from '../printer.ts';

/** What a message may be given: the params of a `Said`. */
export type MessageParam = Quantity | Range | number | string;
export type MessageParams = Readonly<Record<string, MessageParam | undefined>>;

/**
 * One thing the tool says: its params by name, typed, and the printer of the reader's units, clock and names.
 * One cook to another: number, meaning, deed; present tense; no exclamation.
 */
export type Message<P extends MessageParams = MessageParams> = (params: P, print: Printer) => string;

/** Messages of one subject, by id (`subject.what-is-said`). Each keeps the type of its own params. */
// biome-ignore lint/suspicious/noExplicitAny: a bag of functions whose param types all differ
export type Messages = Readonly<Record<string, Message<any>>>;

/**
 * Declares the messages of one subject. Keeps ids and param types, so that the catalogue can be typed:
 * `export const sauceMessages = messages({ 'sauce.yield': (p: { mass: Quantity }, print) => … })`.
 */
export const messages = <M extends Messages>(declared: M): M => declared;
