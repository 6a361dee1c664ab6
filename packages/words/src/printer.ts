import type { Kind, Quantity } from '@pitwright/model';
import { fromSi } from '@pitwright/model';
import { chance, timesIn } from './figures/chance.ts';
import { clock, clockRange, date, dayKey, shortWeekday, weekday } from './figures/clock.ts';
import { duration, durationRange, elapsed } from './figures/duration.ts';
import { length } from './figures/length.ts';
import { mass, massRange } from './figures/mass.ts';
import { count, decimal } from './figures/number.ts';
import { difference, temperature, temperatureRange } from './figures/temperature.ts';
import { volume } from './figures/volume.ts';
import { cutName } from './names/cuts.ts';
import { writtenQuantity } from './quantity.ts';
import type { PrintSettings } from './settings.ts';

const ZERO_CELSIUS_K = 273.15;

/** Everything that turns a figure into the reader's words; made once per reader by `printer`. */
export interface Printer {
  readonly settings: PrintSettings;
  /** Any quantity in the reader's system, or as written where the settings keep that. */
  readonly quantity: (q: Quantity) => string;
  /** [°C] */
  readonly temperatureC: (celsius: number) => string;
  readonly temperatureRangeC: (lowC: number, highC: number) => string;
  readonly differenceK: (kelvin: number) => string;
  readonly massKg: (kg: number) => string;
  readonly massRangeKg: (lowKg: number, highKg: number) => string;
  readonly volumeM3: (m3: number) => string;
  readonly lengthM: (m: number) => string;
  readonly durationS: (seconds: number) => string;
  /** To the minute. */
  readonly exactDurationS: (seconds: number) => string;
  readonly durationRangeS: (lowS: number, highS: number) => string;
  /** `2 h 10 in` */
  readonly elapsedS: (seconds: number) => string;
  /** UTC instant → the cook's wall clock, to the minute. */
  readonly clock: (instant: string) => string;
  /** Rounded to 5 minutes, as a foreseen time is said. */
  readonly aboutClock: (instant: string) => string;
  readonly clockRange: (from: string, to: string) => string;
  readonly weekday: (instant: string) => string;
  readonly shortWeekday: (instant: string) => string;
  readonly date: (instant: string) => string;
  readonly dayKey: (instant: string) => string;
  /** `90 %` */
  readonly chance: (share: number, members: number) => string;
  /** `9 times in 10` */
  readonly timesIn: (share: number, members: number) => string;
  readonly number: (value: number, decimals?: number) => string;
  readonly count: (n: number) => string;
  readonly cut: (cut: string, many?: number) => string;
}

const OTHER_US: Partial<Record<Kind, string>> = { speed: 'mph', area: 'in²', power: 'Btu/h', energy: 'Btu' };
const OTHER_METRIC: Partial<Record<Kind, string>> = { speed: 'm/s', area: 'cm²', power: 'W', energy: 'kJ' };

function systemQuantity(q: Quantity, units: 'us' | 'metric'): string {
  switch (q.kind) {
    case 'temperature':
      return temperature(q.si, units);
    case 'difference':
      return difference(q.si, units);
    case 'mass':
      return mass(q.si, units);
    case 'volume':
      return volume(q.si, units, { isAsWritten: /^m?L$/.test(q.writtenIn ?? '') });
    case 'length':
      return length(q.si, units);
    case 'time':
    case 'dose-time':
      return duration(q.si, { exact: true });
    case 'fraction':
      return `${decimal(q.si * 100, 1)} %`;
    default: {
      const unit = (units === 'us' ? OTHER_US : OTHER_METRIC)[q.kind];
      return unit ? `${significant(fromSi(q.kind, q.si, unit))} ${unit}` : writtenQuantity(q);
    }
  }
}

/** Three significant figures. */
const significant = (value: number): string =>
  decimal(value, Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2);

/** The printer of one reader's settings. */
export function printer(settings: PrintSettings): Printer {
  const { units, zone } = settings;
  return {
    settings,
    quantity: (q) => (settings.keepWritten && q.writtenIn ? writtenQuantity(q) : systemQuantity(q, units)),
    temperatureC: (c) => temperature(c + ZERO_CELSIUS_K, units),
    temperatureRangeC: (a, b) => temperatureRange(a + ZERO_CELSIUS_K, b + ZERO_CELSIUS_K, units),
    differenceK: (k) => difference(k, units),
    massKg: (kg) => mass(kg, units),
    massRangeKg: (a, b) => massRange(a, b, units),
    volumeM3: (m3) => volume(m3, units),
    lengthM: (m) => length(m, units),
    durationS: (s) => duration(s),
    exactDurationS: (s) => duration(s, { exact: true }),
    durationRangeS: durationRange,
    elapsedS: elapsed,
    clock: (instant) => clock(instant, settings),
    aboutClock: (instant) => clock(instant, settings, { toMinutes: 5 }),
    clockRange: (from, to) => clockRange(from, to, settings),
    weekday: (instant) => weekday(instant, zone),
    shortWeekday: (instant) => shortWeekday(instant, zone),
    date: (instant) => date(instant, zone, settings.clock === '12' ? 'us' : 'uk'),
    dayKey: (instant) => dayKey(instant, zone),
    chance,
    timesIn,
    number: decimal,
    count,
    cut: (cut, many = 1) => cutName(cut, settings.names, many),
  };
}
