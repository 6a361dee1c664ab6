import { humidityRatioFromVapour } from './moistAir.ts';
import { SATURATION_FROM_C, saturationPressurePa, saturationTemperatureC } from './saturation.ts';

/** How far below boiling the search for a wet bulb starts [K]: at boiling itself the ratio is infinite. */
const BELOW_BOILING_K = 0.001;
const TOLERANCE_K = 1e-9;

const saturatedRatio = (temperatureC: number, pressurePa: number): number =>
  humidityRatioFromVapour(saturationPressurePa(temperatureC), pressurePa);

/**
 * Energy missing at a trial wet bulb [kJ/kg]: increasing in the trial temperature, zero at the wet bulb.
 * With `ice` the wick is frozen.
 */
function shortfall(trialC: number, dryBulbC: number, W: number, pressurePa: number, ice: boolean): number {
  const Ws = saturatedRatio(trialC, pressurePa);
  return ice
    ? (2830 - 0.24 * trialC) * Ws - 1.006 * (dryBulbC - trialC) - W * (2830 + 1.86 * dryBulbC - 2.1 * trialC)
    : (2501 - 2.326 * trialC) * Ws -
        1.006 * (dryBulbC - trialC) -
        W * (2501 + 1.86 * dryBulbC - 4.186 * trialC);
}

/**
 * Humidity ratio of air whose thermodynamic wet bulb is known; negative where no air is so dry.
 *
 * @throws RangeError where the wet bulb is at or above boiling at this pressure
 * @source ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 33 (liquid) and 35 (ice, from memory)
 */
export function humidityRatioFromWetBulb(dryBulbC: number, wetBulbC: number, pressurePa: number): number {
  const Ws = saturatedRatio(wetBulbC, pressurePa);
  return wetBulbC >= 0
    ? ((2501 - 2.326 * wetBulbC) * Ws - 1.006 * (dryBulbC - wetBulbC)) /
        (2501 + 1.86 * dryBulbC - 4.186 * wetBulbC)
    : ((2830 - 0.24 * wetBulbC) * Ws - 1.006 * (dryBulbC - wetBulbC)) /
        (2830 + 1.86 * dryBulbC - 2.1 * wetBulbC);
}

/**
 * Thermodynamic wet bulb [°C], also far above boiling; below 0 °C that of a frozen wick.
 *
 * Trial temperatures never reach boiling, where the saturated ratio turns negative: a search that lets them
 * pass it returns the dry bulb for hot humid air.
 * @param humidityRatio not above saturation at the dry bulb (the dry bulb is answered there)
 * @throws RangeError where an argument is not a number or the dry bulb lies outside −100…400 °C
 * @source ASHRAE Handbook Fundamentals 2017, ch. 1 eq. 33 and 35; Illinois method (Dowell & Jarratt 1971)
 */
export function wetBulbC(dryBulbC: number, humidityRatio: number, pressurePa: number): number {
  if (!(dryBulbC >= SATURATION_FROM_C && dryBulbC <= 400))
    throw new RangeError(`dryBulbC must be in [-100, 400], got ${dryBulbC}`);
  if (!(humidityRatio >= 0)) throw new RangeError(`humidityRatio must be at least 0, got ${humidityRatio}`);
  const top = Math.min(dryBulbC, saturationTemperatureC(pressurePa) - BELOW_BOILING_K);
  const ice = top < 0 || shortfall(0, dryBulbC, humidityRatio, pressurePa, false) > 0;
  let lo = ice ? SATURATION_FROM_C : 0;
  let hi = ice ? Math.min(top, 0) : top;
  let fLo = shortfall(lo, dryBulbC, humidityRatio, pressurePa, ice);
  let fHi = shortfall(hi, dryBulbC, humidityRatio, pressurePa, ice);
  if (fHi <= 0) return hi;
  if (fLo >= 0) return lo;
  while (hi - lo > 5) {
    const middle = 0.5 * (lo + hi);
    const f = shortfall(middle, dryBulbC, humidityRatio, pressurePa, ice);
    if (f > 0) {
      hi = middle;
      fHi = f;
    } else {
      lo = middle;
      fLo = f;
    }
  }
  let kept = 0;
  for (let i = 0; i < 60 && hi - lo > TOLERANCE_K; i++) {
    const trial = hi - (fHi * (hi - lo)) / (fHi - fLo);
    const f = shortfall(trial, dryBulbC, humidityRatio, pressurePa, ice);
    if (f === 0) return trial;
    if (f > 0) {
      if (hi - trial < TOLERANCE_K) return trial;
      hi = trial;
      fHi = f;
      if (kept === 1) fLo *= 0.5;
      kept = 1;
    } else {
      if (trial - lo < TOLERANCE_K) return trial;
      lo = trial;
      fLo = f;
      if (kept === -1) fHi *= 0.5;
      kept = -1;
    }
  }
  return 0.5 * (lo + hi);
}
