/** Salt going into meat: how fast, how deep, and where it ends. */
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp } from '../numeric/elementary.ts';

/** Pork loin at 5 °C, the same for brines of 50–280 kg/m³; ±0.28. @source Springer chapter on meat salting, abstract */
const DIFFUSIVITY_5C = 1.9e-10;
/** From memory: 25 °C ×1.9, 60 °C ×4.8. */
const ACTIVATION = 22_000;

/** Diffusivity of sodium chloride in pork [m²/s], −2 to 80 °C. */
export const saltDiffusivity = (temperatureC: number): number =>
  DIFFUSIVITY_5C * exp((ACTIVATION / GAS_CONSTANT_JMOLK) * (1 / 278.15 - 1 / (temperatureC + 273.15)));

/** Thickness over which salt enters a slab from one face [m]. */
const pathM = (thicknessM: number, faces: 'both' | 'one'): number =>
  faces === 'both' ? thicknessM / 2 : thicknessM;

/** Below this Fourier number the series is slow and 2√(Dt/πL²) is exact to 1e-9. */
const SHORT_TIME = 0.05;

/** Share of equilibrium that a slab has taken up [1]. @source Crank, The Mathematics of Diffusion, plane sheet */
export function saltUptake(
  thicknessM: number,
  faces: 'both' | 'one',
  diffusivity: number,
  timeS: number,
): number {
  const path = pathM(thicknessM, faces);
  const fourier = (diffusivity * timeS) / (path * path);
  if (fourier < SHORT_TIME) return 2 * Math.sqrt(fourier / Math.PI);
  let left = 0;
  for (let n = 0; n < 40; n++) {
    const odd = (2 * n + 1) * Math.PI;
    const term = (8 / (odd * odd)) * exp((-odd * odd * fourier) / 4);
    left += term;
    if (term < 1e-16) break;
  }
  return 1 - left;
}

/** Time [s] until a slab has taken up `share` of equilibrium; bisection on the series. */
export function saltUptakeTimeS(
  thicknessM: number,
  faces: 'both' | 'one',
  diffusivity: number,
  share: number,
): number {
  if (!(share >= 0 && share < 1)) throw new RangeError(`share must be in [0, 1), got ${share}`);
  const path = pathM(thicknessM, faces);
  let low = 0;
  let high = (path * path) / diffusivity;
  while (saltUptake(thicknessM, faces, diffusivity, high) < share) high *= 2;
  while (high - low > 1e-12 * high && high > 0) {
    const middle = (low + high) / 2;
    if (saltUptake(thicknessM, faces, diffusivity, middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Depth that salt has reached [m]: 2√(Dt), 8 mm in a day at 5 °C. */
export const saltDepthM = (diffusivity: number, timeS: number): number => 2 * Math.sqrt(diffusivity * timeS);

export interface Brine {
  readonly meatKg: number;
  readonly waterFraction: number;
  readonly waterKg: number;
  readonly saltKg: number;
}

/** Mass fraction of salt once meat and brine agree: over everything, or over the water they share. */
export const brineEquilibrium = (b: Brine, basis: 'all' | 'water-phase'): number =>
  b.saltKg / ((basis === 'all' ? b.meatKg : b.meatKg * b.waterFraction) + b.waterKg + b.saltKg);
