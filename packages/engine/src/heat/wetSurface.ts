import { WATER_TO_AIR } from '../air/moistAir.ts';
import { saturationPressurePa, saturationTemperatureC } from '../air/saturation.ts';
import { latentHeatJKg } from '../air/water.ts';
import { log, pow } from '../numeric/elementary.ts';
import { radiationWm2K } from './radiation.ts';

/** Specific heat of the moist gas in the film [J/kgK]. */
const FILM_SPECIFIC_HEAT = 1030;
/** Lewis number of water vapour in air, α/D. */
const LEWIS = 0.85;
const LEWIS_FACTOR = pow(LEWIS, -2 / 3) / FILM_SPECIFIC_HEAT;

/**
 * Water leaving a wholly wet surface [kg/m²s]; negative where it condenses.
 *
 * Film theory with the Spalding number: near boiling the outward stream itself carries vapour, hence the logarithm.
 * @param vapourPa vapour pressure at the surface, below the air pressure
 * @source Chilton & Colburn analogy, Spalding 1960
 */
export function evaporationKgM2S(
  convectionWm2K: number,
  vapourPa: number,
  humidityRatio: number,
  pressurePa: number,
): number {
  // (1 − Y∞)/(1 − Ys) with Y the mass fraction of vapour, written without cancellation near boiling.
  const drySurface = (pressurePa - vapourPa) / (pressurePa - (1 - WATER_TO_AIR) * vapourPa);
  return convectionWm2K * LEWIS_FACTOR * log(1 / ((1 + humidityRatio) * drySurface));
}

export interface WetSurface {
  readonly gasC: number;
  readonly wallC: number;
  readonly humidityRatio: number;
  readonly convectionWm2K: number;
  /** Radiation to the walls: a coefficient, or the emissivity with the coefficient at the temperature found. */
  readonly radiationWm2K?: number;
  readonly emissivity?: number;
  readonly pressurePa: number;
  /** Share of the surface that is wet, 0 to 1. */
  readonly wetness: number;
  /** Heat from elsewhere into the surface [W/m²]; heat conducted inward is negative. */
  readonly otherHeatWm2: number;
  /** Something behind it, as the bottom of a pan: heat by its coefficient and temperature. */
  readonly backing?: { readonly coefficientWm2K: number; readonly temperatureC: number };
}

export interface WetSurfaceState {
  readonly surfaceC: number;
  /** Over the whole surface, dry and wet share together. */
  readonly evaporationKgM2S: number;
}

/**
 * Steady temperature of a wet surface: convection, radiation and other heat against evaporation.
 *
 * @returns undefined where the balance lies below 0 °C (a frozen surface is not modelled)
 * @throws RangeError where a number is missing
 */
export function wetSurface(given: WetSurface): WetSurfaceState | undefined {
  const dry = given.wetness === 0;
  const boilingC = saturationTemperatureC(given.pressurePa);
  const { backing = { coefficientWm2K: 0, temperatureC: given.gasC } } = given;
  const massFlux = (surfaceC: number): number =>
    dry
      ? 0
      : given.wetness *
        evaporationKgM2S(
          given.convectionWm2K,
          saturationPressurePa(surfaceC),
          given.humidityRatio,
          given.pressurePa,
        );
  const heatWm2 = (surfaceC: number): number =>
    given.convectionWm2K * (given.gasC - surfaceC) +
    (given.radiationWm2K ?? radiationWm2K(given.emissivity!, surfaceC, given.wallC)) *
      (given.wallC - surfaceC) +
    given.otherHeatWm2 +
    backing.coefficientWm2K * (backing.temperatureC - surfaceC);
  const surplus = (surfaceC: number): number =>
    heatWm2(surfaceC) - massFlux(surfaceC) * latentHeatJKg(surfaceC);
  let lo = 0;
  // A dry surface may be hotter than gas and walls by what other heat needs.
  let hi = dry
    ? Math.max(given.gasC, given.wallC, backing.temperatureC) +
      Math.max(0, given.otherHeatWm2) / given.convectionWm2K
    : boilingC;
  if (!(surplus(lo) >= 0)) {
    if (Number.isNaN(surplus(lo))) throw new RangeError('wetSurface: a number is missing');
    return undefined;
  }
  // The surplus falls steadily and tends to −∞ at boiling, so plain bisection never evaluates the end.
  for (let i = 0; i < 60 && hi - lo > 1e-10 * (1 + hi); i++) {
    const middle = 0.5 * (lo + hi);
    if (surplus(middle) > 0) lo = middle;
    else hi = middle;
  }
  const surfaceC = 0.5 * (lo + hi);
  // By the heat that it takes: near boiling the flux hangs on the last digits of the temperature.
  return { surfaceC, evaporationKgM2S: dry ? 0 : heatWm2(surfaceC) / latentHeatJKg(surfaceC) };
}
