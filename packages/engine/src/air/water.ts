/**
 * Heat of vaporisation of water [J/kg].
 *
 * Cubic through the steam tables, within 0.01 % from 0 to 150 °C. No guard on the range: called in inner loops, and
 * smooth beyond it.
 * @source steam tables (IAPWS-95), fitted
 */
export function latentHeatJKg(temperatureC: number): number {
  return (
    1000 * (2500.9 - temperatureC * (2.38171 - temperatureC * (7.48294e-4 - 1.378928e-5 * temperatureC)))
  );
}
