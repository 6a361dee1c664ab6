import type { Said } from '@pitwright/model';
import { Temporal } from 'temporal-polyfill';
import { clock, clockRange, shortWeekday } from './figures/clock.ts';
import { decimal } from './figures/number.ts';
import { printer } from './printer.ts';
import { say } from './say.ts';
import type { PrintSettings } from './settings.ts';

const instantOf = (atS: number): string =>
  Temporal.Instant.fromEpochMilliseconds(Math.round(atS * 1000)).toString();

const toF = (celsius: number): number => celsius * 1.8 + 32;
const toC = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const everyTen = Array.from({ length: 10 }, (_, i) => (i + 1) * 10);
const everyTwentyF = Array.from({ length: 9 }, (_, i) => 40 + i * 20);

/** The reader's words for drawings: `Voice` of packages/draw. Times are seconds since 1970 UTC. */
export function chartVoice(settings: PrintSettings) {
  const print = printer(settings);
  const isUs = settings.units === 'us';
  const wall = (atS: number) =>
    Temporal.Instant.fromEpochMilliseconds(Math.round(atS * 1000)).toZonedDateTimeISO(settings.zone);
  const twelve = (hour: number): number => ((hour + 11) % 12) + 1;
  return {
    say: (said: Said) => say(said, print),
    clock: (atS: number) => clock(instantOf(atS), settings),
    clockRange: (fromS: number, toS: number) => clockRange(instantOf(fromS), instantOf(toS), settings),
    hour: (atS: number) => {
      const { hour } = wall(atS);
      return settings.clock === '24'
        ? `${String(hour).padStart(2, '0')}:00`
        : `${twelve(hour)} ${hour < 12 ? 'am' : 'pm'}`;
    },
    shortHour: (atS: number) => {
      const { hour } = wall(atS);
      return String(settings.clock === '24' ? hour : twelve(hour));
    },
    day: (atS: number) => shortWeekday(instantOf(atS), settings.zone),
    wallMinutes: (atS: number) => {
      const { hour, minute } = wall(atS);
      return hour * 60 + minute;
    },
    duration: (seconds: number) => print.durationS(seconds),
    degrees: (celsius: number) => decimal(isUs ? toF(celsius) : celsius),
    temperatureC: (celsius: number) => print.temperatureC(celsius),
    isolines: isUs
      ? everyTwentyF.map((f) => ({ celsius: toC(f), figure: String(f) }))
      : everyTen.map((c) => ({ celsius: c, figure: String(c) })),
    lengthM: (metres: number) => print.lengthM(metres),
    chance: (share: number, members: number) => print.chance(share, members),
  };
}
