import { GRAVITY_MS2 } from '../numeric/constants.ts';
import { cbrt, pow } from '../numeric/elementary.ts';

export const NATURAL_SHAPES = [
  'horizontal-cylinder',
  'vertical-plate',
  'plate-facing-up',
  'plate-facing-down',
] as const;
export type NaturalShape = (typeof NATURAL_SHAPES)[number];

/** Above this Rayleigh number the layer over an up-facing hot plate is turbulent. */
const PLATE_TURBULENT_RAYLEIGH = 2e7;
/** Squire and Eckert's form is for laminar layers. */
export const LAMINAR_RAYLEIGH = 1e9;

/** Rayleigh number from the size [m], the difference [K], expansion [1/K], viscosity [m²/s] and Prandtl number. */
export function rayleighNumber(
  lengthM: number,
  deltaK: number,
  expansionPerK: number,
  viscosityM2S: number,
  prandtl: number,
): number {
  return (
    (GRAVITY_MS2 * expansionPerK * Math.abs(deltaK) * lengthM * lengthM * lengthM * prandtl) /
    (viscosityM2S * viscosityM2S)
  );
}

const churchillChu = (Ra: number, Pr: number, still: number, prandtlScale: number): number => {
  const root = still + (0.387 * pow(Ra, 1 / 6)) / pow(1 + pow(prandtlScale / Pr, 9 / 16), 8 / 27);
  return root * root;
};

/**
 * Nusselt number of natural convection. The length is the diameter, the height, or area over perimeter; the plates'
 * names say where a face warmer than the air looks.
 * @source Churchill & Chu 1975 (cylinder, vertical plate); 0.54 Ra^¼, 0.14 Ra^⅓ above 2e7 (from memory) and
 *   0.27 Ra^¼ as in Çengel, Heat Transfer, ch. 9
 */
export function naturalNusselt(shape: NaturalShape, Ra: number, Pr: number): number {
  switch (shape) {
    case 'horizontal-cylinder':
      return churchillChu(Ra, Pr, 0.6, 0.559);
    case 'vertical-plate':
      return churchillChu(Ra, Pr, 0.825, 0.492);
    case 'plate-facing-up':
      return Ra <= PLATE_TURBULENT_RAYLEIGH ? 0.54 * pow(Ra, 0.25) : 0.14 * cbrt(Ra);
    case 'plate-facing-down':
      return 0.27 * pow(Ra, 0.25);
  }
}

/** Laminar vertical plate. @source Squire & Eckert, as in Lienhard, A Heat Transfer Textbook, ex. 8.1 */
export function laminarVerticalNusselt(Ra: number, Pr: number): number {
  return 0.678 * pow((Ra * Pr) / (0.952 + Pr), 0.25);
}

/** Cylinder in cross flow, Re·Pr above 0.2. @source Churchill & Bernstein 1977, from memory */
export function crossFlowNusselt(Re: number, Pr: number): number {
  return (
    0.3 +
    ((0.62 * Math.sqrt(Re) * cbrt(Pr)) / pow(1 + pow(0.4 / Pr, 2 / 3), 0.25)) *
      pow(1 + pow(Re / 282000, 5 / 8), 4 / 5)
  );
}

/** Natural and forced convection together [W/m²K]: the cube root of the sum of cubes. */
export function mixedConvectionWm2K(naturalWm2K: number, forcedWm2K: number): number {
  return cbrt(naturalWm2K * naturalWm2K * naturalWm2K + forcedWm2K * forcedWm2K * forcedWm2K);
}
