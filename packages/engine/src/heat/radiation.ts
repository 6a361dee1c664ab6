import { STEFAN_BOLTZMANN } from '../numeric/constants.ts';

/**
 * Radiation coefficient of a small grey body in large surroundings [W/m²K]: εσ(T₁² + T₂²)(T₁ + T₂), so that
 * coefficient × (T₁ − T₂) is the exact exchange.
 */
export function radiationWm2K(emissivity: number, surfaceC: number, surroundingsC: number): number {
  const T1 = surfaceC + 273.15;
  const T2 = surroundingsC + 273.15;
  return emissivity * STEFAN_BOLTZMANN * (T1 * T1 + T2 * T2) * (T1 + T2);
}

/**
 * View factor from one disc to a parallel one on its axis [1]: the share of what leaves the first that meets the second.
 *
 * @param distanceM between them, above 0
 * @source Howell, catalogue of configuration factors, C-41; Siegel & Howell
 */
export function discViewFactor(fromRadiusM: number, toRadiusM: number, distanceM: number): number {
  const from = fromRadiusM / distanceM;
  const to = toRadiusM / distanceM;
  const sum = 1 + from * from + to * to;
  // ½(S − √(S² − 4(r₂/r₁)²)) with both terms over R₁², written so that nothing cancels for a small first disc.
  return (2 * to * to) / (sum + Math.sqrt(sum * sum - 4 * from * from * to * to));
}
