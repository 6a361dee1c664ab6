/** Stefan–Boltzmann constant [W/m²K⁴], exact in the SI of 2019. */
export const STEFAN_BOLTZMANN = 5.670374419e-8;

/**
 * Radiation coefficient of a small grey body in large surroundings [W/m²K]: εσ(T₁² + T₂²)(T₁ + T₂), so that
 * coefficient × (T₁ − T₂) is the exact exchange.
 */
export function radiationWm2K(emissivity: number, surfaceC: number, surroundingsC: number): number {
  const T1 = surfaceC + 273.15;
  const T2 = surroundingsC + 273.15;
  return emissivity * STEFAN_BOLTZMANN * (T1 * T1 + T2 * T2) * (T1 + T2);
}
