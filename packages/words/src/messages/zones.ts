import type { Bite, Range } from '@pitwright/model';
import { biteName } from '../names/words.ts';
import type { Printer } from '../printer.ts';
import { messages } from './message.ts';

const span = ({ p10, p90 }: Range, print: Printer): string =>
  p90 < Infinity
    ? `in ${print.durationRangeS(p10, p90)}`
    : p10 < Infinity
      ? `in ${print.durationS(p10)} or more, and not always at all`
      : 'not at all';

/** Flat and point of a whole brisket. Shares 0 to 1. */
export const zonesMessages = messages({
  'zones.off-heat': (
    p: {
      bite: string;
      members: number;
      flatCore: Range;
      pointCore: Range;
      flatChance: number;
      pointChance: number;
    },
    print,
  ) =>
    `Off the heat the middle of the flat is at ${print.temperatureRangeC(p.flatCore.p10, p.flatCore.p90)}, of the point at ${print.temperatureRangeC(p.pointCore.p10, p.pointCore.p90)}; ${biteName(p.bite as Bite)} or softer: flat ${print.timesIn(p.flatChance, p.members)}, point ${print.timesIn(p.pointChance, p.members)}.`,
  'zones.probe': (p: { flatOff: Range; pointOff: Range }, print) =>
    `With the probe in the flat it comes off ${span(p.flatOff, print)}; with the probe in the point ${span(p.pointOff, print)}.`,
});
