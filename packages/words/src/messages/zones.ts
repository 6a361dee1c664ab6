import type { Bite, Range } from '@pitwright/model';
import { biteName } from '../names/words.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const hourAt = (onAt: string, seconds: number): string =>
  new Date(Date.parse(onAt) + 1000 * seconds).toISOString();

/** By the hour where it is known when the piece goes on, else as times since. */
function span({ p10, p90 }: Range, onAt: string | undefined, print: Printer): string {
  if (!(p10 < Infinity)) return 'not at all';
  if (onAt === undefined)
    return p90 < Infinity
      ? `in ${print.durationRangeS(p10, p90)}`
      : `in ${print.durationS(p10)} or more, and not always at all`;
  return p90 < Infinity
    ? print.clockRange(hourAt(onAt, p10), hourAt(onAt, p90))
    : `from ${print.aboutClock(hourAt(onAt, p10))} on, and not always at all`;
}

interface Two {
  readonly first: string;
  readonly second: string;
  /** When the piece goes on. */
  readonly onAt?: string;
}
interface Ready extends Two {
  readonly firstReady: Range;
  readonly secondReady: Range;
}

const bothReady = (p: Ready, print: Printer): string =>
  `The ${p.first} is ready ${span(p.firstReady, p.onAt, print)}, the ${p.second} ${span(p.secondReady, p.onAt, print)}`;

/** Muscles of one piece: flat and point, breast and thigh. Times from meat-on, shares 0 to 1. */
export const zonesMessages = messages({
  'zones.decides': (p: Ready & { decides: string }, print) =>
    `${bothReady(p, print)}: the ${p.decides} decides.`,
  'zones.together': (p: Ready, print) => `${bothReady(p, print)}: neither waits long for the other.`,
  'zones.off-heat': (
    p: Two & {
      bite: string;
      members: number;
      firstCore: Range;
      secondCore: Range;
      firstChance: number;
      secondChance: number;
    },
    print,
  ) =>
    `Off the heat the middle of the ${p.first} is at ${print.temperatureRangeC(p.firstCore.p10, p.firstCore.p90)}, of the ${p.second} at ${print.temperatureRangeC(p.secondCore.p10, p.secondCore.p90)}; ${biteName(p.bite as Bite)} or softer: ${p.first} ${print.timesIn(p.firstChance, p.members)}, ${p.second} ${print.timesIn(p.secondChance, p.members)}.`,
  'zones.probe': (p: Two & { firstOff: Range; secondOff: Range }, print) =>
    `With the probe in the ${p.first} it comes off ${span(p.firstOff, p.onAt, print)}; with the probe in the ${p.second} ${span(p.secondOff, p.onAt, print)}.`,
});
