/**
 * Heat of vaporisation of water [J/kg].
 *
 * Quadratic through the steam tables, within 0.1 % from 0 to 120 °C and 0.4 % to 150 °C. No guard on the range:
 * called in inner loops, and smooth beyond it.
 * @source steam tables (IAPWS-95), fitted
 */
export function latentHeatJKg(temperatureC: number): number {
  return 1000 * (2500.9 - temperatureC * (2.301 + 0.00144 * temperatureC));
}
