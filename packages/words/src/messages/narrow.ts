import type { Quantity } from '@pitwright/model';
import { messages } from './message.ts';

const MEASURE: Readonly<Record<string, string>> = {
  'grate-probe': 'A probe at the grate beside the meat, and the pit held by it,',
  ruler: 'A ruler on its thickest place',
  scales: 'Its weight',
  'start-probe': 'The temperature in its middle as it goes on',
};

/** Which one measurement would narrow the range of a piece most. */
export const narrowMessages = messages({
  'narrow.most': (p: { measure: string; now: Quantity; after: Quantity }, print) =>
    `${MEASURE[p.measure] ?? p.measure} would narrow its range most: 8 in 10 within ${print.durationS(p.after.si)}, now ${print.durationS(p.now.si)}.`,
  'narrow.brings-in': (p: { measure: string; after: Quantity }, print) =>
    `${MEASURE[p.measure] ?? p.measure} would bring its late end into sight: 8 in 10 within ${print.durationS(p.after.si)}.`,
  'narrow.none': () =>
    'No single measurement narrows its range by much: what is left is how one piece and one day differ from another.',
});
