import type { Printer } from './printer.ts';

/** A figure and its unit, a short hour and its minutes. */
const FIGURE_AND_UNIT = /(\d) (?=(?:°C|°F|%|kg|g|mg|lb|oz|mm|cm|m|mL|L|kW|W|h|min|s|in|Pa)(?![\p{L}\d]))/gu;
const HOURS_AND_MINUTES = /(\d\u00a0h) (?=\d)/g;

/** The same words, with each figure on one line with its unit. */
export const unbroken = (words: string): string =>
  words.replace(FIGURE_AND_UNIT, '$1\u00a0').replace(HOURS_AND_MINUTES, '$1\u00a0');

/** The same printer, for lines that break where they end: none of its figures parts from its unit. */
export const keepingUnits = (print: Printer): Printer =>
  Object.fromEntries(
    Object.entries(print).map(([name, one]) => [
      name,
      typeof one === 'function' ? (...given: unknown[]) => unbroken((one as Prints)(...given)) : one,
    ]),
  ) as unknown as Printer;

type Prints = (...given: unknown[]) => string;
