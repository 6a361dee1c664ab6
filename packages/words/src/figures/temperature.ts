import { fromSi } from '@pitwright/model';
import { decimal } from './number.ts';

type Units = 'us' | 'metric';

const inDegrees = (kelvin: number, units: Units): number =>
  fromSi('temperature', kelvin, units === 'us' ? '°F' : '°C');

const sign = (units: Units): string => (units === 'us' ? '°F' : '°C');

/** A temperature held in K, to the degree. A dial is not read finer. */
export const temperature = (kelvin: number, units: Units): string =>
  `${decimal(inDegrees(kelvin, units))} ${sign(units)}`;

/** Two temperatures in K as a range, one unit behind it: `112–128 °C`. */
export function temperatureRange(lowK: number, highK: number, units: Units): string {
  const low = decimal(inDegrees(lowK, units));
  const high = decimal(inDegrees(highK, units));
  return low === high ? `${low} ${sign(units)}` : `${low}–${high} ${sign(units)}`;
}

/** A difference of temperatures in K, to the degree. */
export const difference = (kelvin: number, units: Units): string =>
  `${decimal(fromSi('difference', kelvin, units === 'us' ? '°F' : 'K'))} ${sign(units)}`;
