import { toSi } from '@pitwright/model';
import type { Printer } from '@pitwright/words';

/** Steps no finer than an estimate of a meal can carry [kg]: from a kilo or a pound on, and below it. */
const METRIC = { over: 1, step: 0.1, fine: 0.01 };
const US = { over: toSi('mass', 1, 'lb'), step: toSi('mass', 0.25, 'lb'), fine: toSi('mass', 0.5, 'oz') };

function rounded(kg: number, print: Printer): number {
  const { over, step, fine } = print.settings.units === 'us' ? US : METRIC;
  const by = kg >= over ? step : fine;
  return Math.round(kg / by) * by;
}

/** A foreseen mass, as one would say it. */
export const about = (kg: number, print: Printer): string => print.massKg(rounded(kg, print));

export const aboutRange = ({ p10, p90 }: { p10: number; p90: number }, print: Printer): string =>
  print.massRangeKg(rounded(p10, print), rounded(p90, print));
