import type { Quantity, StageKind } from '@pitwright/model';
import { decimal } from '../figures/number.ts';
import { stageName } from '../names/words.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const ZERO_CELSIUS_K = 273.15;

/** What arrives and what it is spent on [W], as the ledger has it. */
interface Heat {
  readonly watts: number;
  readonly driesW: number;
  /** Share by the moving air, the rest radiation; missing where the two are not parted. */
  readonly byAir?: Quantity;
  readonly core: Quantity;
}

interface Until {
  readonly until?: Quantity | string;
  /** What comes then: a kind of stage, or the stall. */
  readonly next?: StageKind | 'stall' | 'coals';
}

const celsius = (temperature: Quantity, print: Printer): string =>
  print.temperatureC(temperature.si - ZERO_CELSIUS_K);

/** Model figures are told no finer than they are good for: to 5 W from 50 W on. */
const told = (value: number): number =>
  Math.abs(value) < 50 ? Math.round(value) : 5 * Math.round(value / 5);
const watts = (value: number): string => `${decimal(told(value))} W`;

const PARTS: readonly (readonly [least: number, words: string])[] = [
  [0.9, 'nearly all'],
  [0.71, 'three quarters'],
  [0.58, 'two thirds'],
  [0.42, 'half'],
  [0.29, 'a third'],
  [0.17, 'a quarter'],
  [0, 'hardly any'],
];
const part = (share: number): string => PARTS.find(([least]) => share >= least)![1];

/** `210 W arrive, three quarters by the moving air` */
function arrives({ watts: total, byAir }: Heat): string {
  const by = byAir && byAir.si >= 0.17 ? `, ${part(byAir.si)} by the moving air` : '';
  return `${watts(total)} arrive${by}`;
}

/** `21 W dry it`; below nothing steam condenses on it and brings heat. */
const dries = ({ driesW }: Heat): string =>
  driesW <= -1 ? `${watts(-driesW)} more from steam that condenses on it` : `${watts(driesW)} dry it`;

/** `26 W warm it`: what is left of all that arrives, as both are told. */
const warms = ({ watts: total, driesW }: Heat): string =>
  `${watts(Math.max(0, told(total) - told(driesW)))} warm it`;

/** What the coals give of all the heat, in the same words. */
const coalsPart = (share: number): string =>
  share >= 0.75 ? 'nearly all its heat' : share >= 0.5 ? 'most of its heat' : 'a good part of its heat';

/** An instant, or a time since meat-on where no hour is set. */
const when = (until: Quantity | string, print: Printer): string =>
  typeof until === 'string' ? print.aboutClock(until) : print.elapsedS(until.si);

/** ` The stall begins about 03:10.` */
function change({ until, next }: Until, print: Printer): string {
  if (until === undefined) return '';
  if (next === 'stall') return ` The stall begins about ${when(until, print)}.`;
  if (next === 'coals') return ` Next, over the coals, about ${when(until, print)}.`;
  return next
    ? ` Next, ${stageName(next)}, about ${when(until, print)}.`
    : ` That ends about ${when(until, print)}.`;
}

/** `rises 9 °C an hour`, `falls 6 °C an hour`, `stands still` under half a degree. */
function rises({ si }: Quantity, print: Printer): string {
  if (Math.abs(si) < 0.5) return 'stands still';
  return `${si > 0 ? 'rises' : 'falls'} ${print.differenceK(Math.abs(si))} an hour`;
}

/** ` and gives off 12 W` */
const givesOff = (into: number): string => (into <= -1 ? ` It gives off ${watts(-into)}.` : '');

/** Why a piece is where it is: what holds it back now, and when that ends. Two plain sentences at most, with figures. */
export const explainMessages = messages({
  'explain.warms': (p: Heat & Until & { surface: Quantity }, print) =>
    `Its thickness holds it back: ${arrives(p)}; ${dries(p)}, ${warms(p)}. Surface ${celsius(p.surface, print)}, middle ${celsius(p.core, print)}.${change(p, print)}`,
  'explain.stall': (p: Heat & { until: Quantity | string; ends: string }, print) =>
    `The stall: ${arrives(p)}, and ${watts(p.driesW)} dry its juice off; ${warms(p)}. The middle hangs at ${celsius(p.core, print)} until about ${when(p.until, print)}; ${STALL_ENDS[p.ends] ?? p.ends} ends it sooner.`,
  'explain.dries': (p: Heat & Until & { rise: Quantity }, print) =>
    `${arrives(p)}; ${dries(p)}, ${warms(p)}. The middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}.${change(p, print)}`,
  'explain.wrapped': (p: Heat & Until & { rise: Quantity }, print) =>
    `In foil next to nothing dries: ${arrives(p)}, ${warms(p)}. The middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}; only its thickness holds it back.${change(p, print)}`,
  'explain.coals': (
    p: Heat & Until & { coals: number; turned: number; side: Quantity; rise: Quantity },
    print,
  ) =>
    `${p.turned > 0 ? 'Over the coals, turned' : 'Over the coals'}: ${coalsPart(p.coals / p.watts)} shines up from them; ${watts(p.driesW)} of ${watts(p.watts)} dry it, ${warms(p)}. The side towards them is at ${celsius(p.side, print)}, the middle, ${celsius(p.core, print)}, ${rises(p.rise, print)}.${change(p, print)}`,
  'explain.held': (p: Heat & Until & { ends: string }, print) => {
    const isLosing = told(p.driesW) > told(p.watts);
    const spent = isLosing
      ? `takes ${watts(p.driesW)}, more than the ${watts(p.watts)} that arrive: the middle falls from`
      : `takes ${watts(p.driesW)} of the ${watts(p.watts)} that arrive: the middle stays at`;
    const ends =
      p.until === undefined
        ? ` That does not end by itself; ${STALL_ENDS[p.ends] ?? p.ends} ends it.`
        : change(p, print);
    return `Drying through the bark ${spent} ${celsius(p.core, print)}.${ends}`;
  },
  'explain.rests': (p: { core: Quantity; surface: Quantity; watts: number }, print) =>
    `Off the heat: surface ${celsius(p.surface, print)}, middle ${celsius(p.core, print)} and falling; it goes on softening while it is hot.${givesOff(p.watts)}`,
  'explain.evens-out': (p: { core: Quantity; surface: Quantity; watts: number }, print) =>
    `Off the heat: the outside, ${celsius(p.surface, print)}, still warms the middle, now ${celsius(p.core, print)}.${givesOff(p.watts)}`,
});

/** What would end it, by what the piece lies in. */
const STALL_ENDS: Readonly<Record<string, string>> = {
  foil: 'foil, or a hotter pit,',
  'foil-over': 'foil over the paper, or a hotter pit,',
  'tight-foil': 'tighter foil, or a hotter pit,',
};
