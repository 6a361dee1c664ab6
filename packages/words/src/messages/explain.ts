import type { Quantity } from '@pitwright/model';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const ZERO_CELSIUS_K = 273.15;

interface Heat {
  readonly watts: number;
  readonly dries: Quantity;
  readonly core: Quantity;
}

const celsius = (temperature: Quantity, print: Printer): string =>
  print.temperatureC(temperature.si - ZERO_CELSIUS_K);

/** A share as a cook says it; the ledger has the figure. */
function sharePart({ si }: Quantity): string {
  if (si >= 0.9) return 'Nearly all its heat';
  if (si >= 0.6) return 'Most of its heat';
  if (si >= 0.4) return 'Half its heat';
  return si >= 0.15 ? 'Some of its heat' : 'Hardly any of its heat';
}

/** What the coals give of all the heat, in the same words. */
const coalsPart = (share: number): string =>
  share >= 0.75 ? 'nearly all its heat' : share >= 0.5 ? 'most of its heat' : 'a good part of its heat';

/** An instant, or a time since meat-on where no hour is set. */
const when = (until: Quantity | string, print: Printer): string =>
  typeof until === 'string' ? print.aboutClock(until) : print.elapsedS(until.si);

/** `rises 9 °C an hour`, `falls 6 °C an hour`, `stands still` under half a degree. */
function rises({ si }: Quantity, print: Printer): string {
  if (Math.abs(si) < 0.5) return 'stands still';
  return `${si > 0 ? 'rises' : 'falls'} ${print.differenceK(Math.abs(si))} an hour`;
}

/** Why a piece is where it is: what holds it back now, and when that ends. One plain sentence each. */
export const explainMessages = messages({
  'explain.warms': (p: Heat & { surface: Quantity }, print) =>
    `It warms from the outside in: surface ${celsius(p.surface, print)}, middle ${celsius(p.core, print)}.`,
  'explain.stall': (p: Heat & { until: Quantity | string; ends: string }, print) =>
    `The stall: juice comes out and drying it off takes ${sharePart(p.dries).toLowerCase()}. The middle hangs at ${celsius(p.core, print)} until about ${when(p.until, print)}; ${STALL_ENDS[p.ends] ?? p.ends} ends it sooner.`,
  'explain.dries': (p: Heat & { rise: Quantity; until?: Quantity | string }, print) =>
    `${sharePart(p.dries)} dries it; the middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}.`,
  'explain.coals': (
    p: Heat & { watts: number; coals: number; turned: number; side: Quantity; rise: Quantity },
    print,
  ) =>
    `${p.turned > 0 ? 'Over the coals, turned' : 'Over the coals'}: ${coalsPart(p.coals / p.watts)} shines up from them. The side towards them is at ${celsius(p.side, print)}, the middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}.`,
  'explain.wrapped': (p: Heat & { rise: Quantity }, print) =>
    `In foil next to nothing dries: the middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}. Only its thickness holds it back.`,
  'explain.held': (p: Heat & { ends: string }, print) =>
    `Drying through the bark takes ${sharePart(p.dries).toLowerCase()}: the middle stays at ${celsius(p.core, print)}. That does not end by itself; ${STALL_ENDS[p.ends] ?? p.ends} ends it.`,
  'explain.rests': (p: { core: Quantity; surface: Quantity }, print) =>
    `Off the heat: surface ${celsius(p.surface, print)}, middle ${celsius(p.core, print)} and falling; it goes on softening while it is hot.`,
  'explain.evens-out': (p: { core: Quantity; surface: Quantity }, print) =>
    `Off the heat: the outside, ${celsius(p.surface, print)}, still warms the middle, now ${celsius(p.core, print)}.`,
});

/** What would end it, by what the piece lies in. */
const STALL_ENDS: Readonly<Record<string, string>> = {
  foil: 'foil, or a hotter pit,',
  'foil-over': 'foil over the paper, or a hotter pit,',
  'tight-foil': 'tighter foil, or a hotter pit,',
};
