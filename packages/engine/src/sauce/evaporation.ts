/** Driving off water, and what goes with it. */
import { log, pow } from '../numeric/elementary.ts';
import { batchPh } from './acidity.ts';
import type { Batch } from './batch.ts';
import { undissociatedFraction } from './chargeBalance.ts';

/** Relative volatility against water at the simmer, dilute: ethanol from memory; acetic acid ±0.1, its undissociated part only. */
export const ETHANOL_VOLATILITY = 10;
export const ACETIC_VOLATILITY = 0.65;

/** Share of a volatile left when `waterLeft` of the water is left (Rayleigh). */
export const rayleighLeft = (waterLeft: number, volatility: number): number =>
  waterLeft <= 0 ? 0 : pow(waterLeft, volatility);

const ETHANOL_KCAL_PER_G = 6.93;
const ACETIC_KCAL_PER_G = 3;
/** Water share lost in one step, small enough that the pH may stand still in it. */
const LARGEST_STEP = 0.05;

/**
 * The batch after `waterG` of its water was driven off; ethanol and acetic acid follow it by Rayleigh's law.
 *
 * @param waterG  Water to drive off [g], from 0 to less than the water there is; else RangeError
 */
export function evaporate(batch: Batch, waterG: number): Batch {
  if (!(waterG >= 0 && (waterG < batch.waterG || waterG === 0)))
    throw new RangeError(`waterG must be in [0, ${batch.waterG}), got ${waterG}`);
  if (waterG === 0) return batch;
  const steps = Math.ceil(-log(1 - waterG / batch.waterG) / LARGEST_STEP);
  const keep = pow(1 - waterG / batch.waterG, 1 / steps);
  let b = batch;
  for (let step = 0; step < steps; step++) {
    const neutral = b.acidsG.acetic > 0 ? undissociatedFraction('acetic', batchPh(b)) : 0;
    const aceticLeft = rayleighLeft(keep, ACETIC_VOLATILITY * neutral);
    const ethanolLeft = rayleighLeft(keep, ETHANOL_VOLATILITY);
    const acetic = b.acidsG.acetic * aceticLeft;
    const lostKcal =
      ETHANOL_KCAL_PER_G * b.ethanolG * (1 - ethanolLeft) + ACETIC_KCAL_PER_G * (b.acidsG.acetic - acetic);
    b = {
      ...b,
      waterG: step === steps - 1 ? batch.waterG - waterG : b.waterG * keep,
      ethanolG: b.ethanolG * ethanolLeft,
      acidsG: { ...b.acidsG, acetic },
      vinegarAceticG: b.vinegarAceticG * aceticLeft,
      energyKcal: b.energyKcal - lostKcal,
    };
  }
  return b;
}
