/** Mass fractions of a food; they need not add to exactly one where a function says so. */
export interface Composition {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  readonly carbohydrate: number;
  readonly fibre: number;
  readonly ash: number;
}

export const COMPONENTS = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;
export type Component = (typeof COMPONENTS)[number];

/** Second-degree polynomial in °C: constant, linear and quadratic coefficient. */
type Quadratic = readonly [number, number, number];

/**
 * Properties of pure components, 0 to 150 °C. The slope of fat's conductivity is −2.7604e-4 (some prints give ten
 * times that, and a conductivity that turns negative near 65 °C); water's specific heat starts at 4.1762, the original.
 * @source Choi & Okos 1986; table of Ibarz & Barbosa-Cánovas; fibre's specific heat from memory
 */
const DENSITY_KGM3: Readonly<Record<Component, Quadratic>> = {
  water: [997.18, 3.1439e-3, -3.7574e-3],
  protein: [1329.9, -0.5184, 0],
  fat: [925.59, -0.41757, 0],
  carbohydrate: [1599.1, -0.31046, 0],
  fibre: [1311.5, -0.36589, 0],
  ash: [2423.8, -0.28063, 0],
};
const SPECIFIC_HEAT_KJKGK: Readonly<Record<Component, Quadratic>> = {
  water: [4.1762, -9.0864e-5, 5.4731e-6],
  protein: [2.0082, 1.2089e-3, -1.3129e-6],
  fat: [1.9842, 1.4733e-3, -4.8008e-6],
  carbohydrate: [1.5488, 1.9625e-3, -5.9399e-6],
  fibre: [1.8459, 1.8306e-3, -4.6509e-6],
  ash: [1.0926, 1.8896e-3, -3.6817e-6],
};
const CONDUCTIVITY_WMK: Readonly<Record<Component, Quadratic>> = {
  water: [0.57109, 1.7625e-3, -6.7036e-6],
  protein: [0.17881, 1.1958e-3, -2.7178e-6],
  fat: [0.18071, -2.7604e-4, -1.7749e-7],
  carbohydrate: [0.20141, 1.3874e-3, -4.3312e-6],
  fibre: [0.18331, 1.2497e-3, -3.1683e-6],
  ash: [0.32962, 1.4011e-3, -2.9069e-6],
};

/** Across muscle fibres the conductivity is 5 to 10 % lower than along them. */
export const ACROSS_FIBRES = 0.94;

const at = (q: Quadratic, t: number): number => q[0] + t * (q[1] + t * q[2]);

/** Density of a pure component [kg/m³]. */
export const componentDensityKgM3 = (component: Component, temperatureC: number): number =>
  at(DENSITY_KGM3[component], temperatureC);

/** Conductivity of a pure component [W/mK]. */
export const componentConductivityWmK = (component: Component, temperatureC: number): number =>
  at(CONDUCTIVITY_WMK[component], temperatureC);

/** Density of the mixture [kg/m³]: volumes add. The fractions add to one. */
export function densityKgM3(food: Composition, temperatureC: number): number {
  let volume = 0;
  for (const component of COMPONENTS) {
    const fraction = food[component];
    if (fraction !== 0) volume += fraction / at(DENSITY_KGM3[component], temperatureC);
  }
  return 1 / volume;
}

/** Specific heat of the mixture [J/kgK], by mass. The fractions add to one. */
export function specificHeatJkgK(food: Composition, temperatureC: number): number {
  let sum = 0;
  for (const component of COMPONENTS) {
    const fraction = food[component];
    if (fraction !== 0) sum += fraction * at(SPECIFIC_HEAT_KJKGK[component], temperatureC);
  }
  return 1000 * sum;
}

/**
 * Conductivity along the fibres [W/mK]: the parallel law, by volume. Only the proportions of the fractions count,
 * so a food that has lost water may be given as it stands.
 */
export function conductivityWmK(food: Composition, temperatureC: number): number {
  let volume = 0;
  let sum = 0;
  for (const component of COMPONENTS) {
    const fraction = food[component];
    if (fraction === 0) continue;
    const v = fraction / at(DENSITY_KGM3[component], temperatureC);
    volume += v;
    sum += v * at(CONDUCTIVITY_WMK[component], temperatureC);
  }
  return sum / volume;
}

/** Thermal diffusivity along the fibres [m²/s]. The fractions add to one. */
export function diffusivityM2S(food: Composition, temperatureC: number): number {
  return (
    conductivityWmK(food, temperatureC) /
    (densityKgM3(food, temperatureC) * specificHeatJkgK(food, temperatureC))
  );
}
