import type { Quantity } from '@pitwright/model';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const MEASURE: Readonly<Record<string, string>> = {
  'grate-probe': 'a probe at the grate beside the meat, and the pit held by it,',
  ruler: 'a ruler on its thickest place',
  scales: 'its weight',
  'start-probe': 'the temperature in its middle as it goes on',
};

const measureName = (measure: string): string => MEASURE[measure] ?? measure;

interface Narrows {
  readonly measure: string;
  readonly after: Quantity;
  readonly next?: string;
  readonly nextAfter?: Quantity;
}

const first = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const andNext = ({ next, nextAfter }: Narrows, print: Printer): string =>
  next && nextAfter ? `; ${measureName(next)} to ${print.durationS(nextAfter.si)}` : '';

/** Which one measurement would narrow the range of a piece most. Ranges are 8 in 10. */
export const narrowMessages = messages({
  'narrow.most': (p: Narrows & { now: Quantity }, print) =>
    `${first(measureName(p.measure))} would narrow its range most, from ${print.durationS(p.now.si)} to ${print.durationS(p.after.si)}${andNext(p, print)}.`,
  'narrow.brings-in': (p: Narrows, print) =>
    `${first(measureName(p.measure))} would bring its late end into sight: a range of ${print.durationS(p.after.si)}${andNext(p, print)}.`,
  'narrow.none': () =>
    'No single measurement narrows its range by much: what is left is how one piece and one day differ from another.',
});
