import type { Quantity } from '@pitwright/model';
import { messages } from './message.ts';

/** Words parted by `|`, as a list: `a, b or c`. */
const oneOf = (words: string): string => {
  const list = words.split('|');
  return list.length < 2 ? words : `${list.slice(0, -1).join(', ')} or ${list[list.length - 1]}`;
};
const allOf = (words: string): string => {
  const list = words.split('|');
  return list.length < 2 ? words : `${list.slice(0, -1).join(', ')} and ${list[list.length - 1]}`;
};

/**
 * What a calc cannot compute: one sentence that names the input first, and what would be right.
 * The figures stand in SI beside the unit a calc is asked in, whatever the reader's system.
 */
const celsius = (q: Quantity): string => `${Number((q.si - 273.15).toPrecision(6))} °C`;
const kilopascal = (q: Quantity): string => `${Number((q.si / 1000).toPrecision(6))} kPa`;
const percent = (q: Quantity): string => `${Number((q.si * 100).toPrecision(6))} %`;

interface OfInput {
  readonly input: string;
}

export const calcMessages = messages({
  'calc.unknown-calc': (p: OfInput) => `${p.input}: no calc has this name, calc --list names them all`,
  'calc.unknown-output': (p: OfInput & { calc: string; names: string }) =>
    `${p.input}: ${p.calc} has no such output, ask for ${oneOf(p.names)}`,
  'calc.unknown-key': (p: OfInput & { calc: string; names: string }) =>
    `${p.input}: ${p.calc} takes no such input, it takes ${oneOf(p.names)}`,
  'calc.missing': (p: OfInput) => `${p.input}: this is missing, give it as ${p.input}=value`,
  'calc.none-of': (p: OfInput & { names: string }) =>
    `${p.input}: nothing given here, give exactly one of ${oneOf(p.names)}`,
  'calc.more-than-one-of': (p: OfInput & { given: string; names: string }) =>
    `${p.input}: ${allOf(p.given)} are given together, give exactly one of ${oneOf(p.names)}`,
  'calc.not-here': (p: OfInput & { reason: string }) => `${p.input}: leave it out, ${p.reason}`,
  'calc.give-too': (p: OfInput & { reason: string }) => `${p.input}: give it, ${p.reason}`,
  'calc.impossible': (p: OfInput & { reason: string }) => `${p.input}: ${p.reason}`,

  'calc.no-equals': (p: OfInput) => `${p.input}: an input is written key=value, parted by semicolons`,
  'calc.no-key': (p: OfInput) => `${p.input}: the key before the equals sign is missing, write key=value`,
  'calc.twice': (p: OfInput) => `${p.input}: this key stands twice, give it once`,
  'calc.open-quote': (p: OfInput) => `${p.input}: the quote is not closed, close it or leave both out`,
  'calc.after-quote': (p: OfInput & { rest: string }) =>
    `${p.input}: “${p.rest}” stands after the closing quote, put a semicolon before the next input`,

  'calc.empty': (p: OfInput) => `${p.input}: nothing is written after the equals sign, give a value`,
  'calc.not-a-number': (p: OfInput & { text: string; units: string }) =>
    `${p.input}: “${p.text}” is not a number with a unit, write one with a decimal point in ${oneOf(p.units.replaceAll(', ', '|'))}`,
  'calc.not-finite': (p: OfInput) => `${p.input}: this is too large for a number, give a finite one`,
  'calc.negative': (p: OfInput & { kind: string }) =>
    `${p.input}: a ${p.kind} is never negative, give zero or more`,
  'calc.below-absolute-zero': (p: OfInput) =>
    `${p.input}: nothing is colder than -273.15 °C, give a temperature above it`,
  'calc.unit-missing': (p: OfInput & { units: string }) =>
    `${p.input}: the unit is missing, write one of ${oneOf(p.units.replaceAll(', ', '|'))}`,
  'calc.unit-of-other-kind': (p: OfInput & { unit: string; kind: string; other: string; units: string }) =>
    `${p.input}: ${p.unit} is a unit of ${p.other}, this is a ${p.kind}, write ${oneOf(p.units.replaceAll(', ', '|'))}`,
  'calc.unit-unknown': (p: OfInput & { unit: string; units: string }) =>
    p.units === ''
      ? `${p.input}: “${p.unit}” is no unit known here, the contract lists them by kind`
      : `${p.input}: “${p.unit}” is no unit known here, write one of ${oneOf(p.units.replaceAll(', ', '|'))}`,
  'calc.out-of-range': (p: OfInput & { text: string; limits: string }) =>
    `${p.input}: ${p.text} is out of range, give ${p.limits}, ends included`,
  'calc.no-such-word': (p: OfInput & { text: string; words: string }) =>
    `${p.input}: there is no “${p.text}”, write ${oneOf(p.words)}`,

  'calc.not-a-pair': (p: OfInput & { text: string; first: string; second: string }) =>
    `${p.input}: “${p.text}” should be a ${p.first} and a ${p.second}, each with its unit`,
  'calc.empty-item': (p: OfInput) => `${p.input}: an item is empty, write one between each two bars`,
  'calc.curve-of-one': (p: OfInput) =>
    `${p.input}: one point is no curve, give at least two, such as 0 min 54.4 °C | 60 min 65.6 °C`,
  'calc.times-not-increasing': (p: OfInput & { text: string }) =>
    `${p.input}: the time at “${p.text}” is not after the one before it, let the times increase`,
  'calc.no-amount': (p: OfInput & { text: string }) =>
    `${p.input}: “${p.text}” should be a key of the catalogue with a mass or a volume, such as ketchup 480 g`,
  'calc.unknown-ingredient': (p: OfInput & { text: string }) =>
    `${p.input}: the catalogue has no “${p.text}”, give a key that it has and never guess one`,
  'calc.no-density': (p: OfInput & { text: string }) =>
    `${p.input}: the density of ${p.text} is not known, give a mass`,

  'calc.outside-validity': (p: OfInput & { reason: string }) =>
    `${p.input}: these inputs lie outside what its equations hold for (${p.reason}), stay within their ranges`,
  'calc.not-from-these': (p: OfInput & { calc: string }) =>
    `${p.input}: ${p.calc} cannot tell it from these inputs, give the others it needs`,
  'calc.not-finite-answer': (p: OfInput & { calc: string }) =>
    `${p.input}: ${p.calc} has no finite answer for these inputs, change them`,

  'calc.air-no-such-relative-humidity': (
    p: OfInput & { relativeHumidity: Quantity; dryBulb: Quantity; pressure: Quantity },
  ) =>
    `${p.input}: no air at ${kilopascal(p.pressure)} can hold ${percent(p.relativeHumidity)} at ${celsius(p.dryBulb)}, give the humidity ratio`,
  'calc.air-over-saturation': (p: OfInput & { dryBulb: Quantity }) =>
    `${p.input}: air at ${celsius(p.dryBulb)} cannot hold so much water, give less of it or a warmer dry bulb`,
  'calc.air-over-pressure': (p: OfInput & { pressure: Quantity }) =>
    `${p.input}: its vapour would press as hard as the whole air of ${kilopascal(p.pressure)}, give less`,
  'calc.air-above-dry-bulb': (p: OfInput) =>
    `${p.input}: it cannot lie above the dry bulb, give one at or below it`,
  'calc.air-too-dry': (p: OfInput) =>
    `${p.input}: not even dry air has so low a wet bulb at this dry bulb, give a higher one`,
  'calc.air-above-boiling': (p: OfInput & { dryBulb: Quantity; pressure: Quantity }) =>
    `${p.input}: ${celsius(p.dryBulb)} lies above boiling at ${kilopascal(p.pressure)}, where relative humidity means nothing, ask for the humidity ratio`,
  'calc.air-no-dew-point': (p: OfInput) =>
    `${p.input}: air so dry has no dew point above -100 °C, give some vapour`,
  'calc.below-first-printed': (p: OfInput & { rule: string; first: Quantity }) =>
    `${p.input}: ${p.rule} prints no time below ${celsius(p.first)}, give that or more`,
  'calc.fractions-do-not-add': (p: OfInput & { sum: number }) =>
    `${allOf(p.input)}: these add to ${Number(p.sum.toPrecision(6))}, let them add to 0.97..1.03`,
});
