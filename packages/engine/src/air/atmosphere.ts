import { pow } from '../numeric/elementary.ts';

/** Standard atmosphere at sea level [Pa]. */
export const SEA_LEVEL_PA = 101325;

/**
 * Air pressure of the standard atmosphere [Pa].
 *
 * @param altitudeM −5000 to 11 000 m
 * @throws RangeError outside
 * @source ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 3
 */
export function standardPressurePa(altitudeM: number): number {
  if (!(altitudeM >= -5000 && altitudeM <= 11000))
    throw new RangeError(`altitudeM must be in [-5000, 11000], got ${altitudeM}`);
  return SEA_LEVEL_PA * pow(1 - 2.25577e-5 * altitudeM, 5.2559);
}
