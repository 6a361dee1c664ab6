/** Filling jars. */
import { type Batch, batchMassG } from './batch.ts';
import { batchDensity } from './solution.ts';

export interface JarSize {
  readonly volumeMl: number;
  readonly headspaceMl: number;
}
export const JAR_250: JarSize = { volumeMl: 250, headspaceMl: 12 };

export interface Jars {
  readonly size: JarSize;
  /** Full ones. */
  readonly full: number;
  /** Left for a part jar, or for tasting [mL]. */
  readonly restMl: number;
  /** Stays on pan, spoon and funnel [g]. */
  readonly lostG: number;
}

/** On the wall and the spoon, once a batch, and once a jar (middle of 15–25 g and 8–12 g, judgement). */
const BATCH_LOSS_G = 20;
const JAR_LOSS_G = 10;

export function jarsOf(batch: Batch, size: JarSize): Jars {
  const density = batchDensity(batch) / 1000;
  const roomMl = size.volumeMl - size.headspaceMl;
  if (!(roomMl > 0)) throw new RangeError(`a jar must hold more than its headspace, got ${size.volumeMl} mL`);
  const leftG = Math.max(0, batchMassG(batch) - BATCH_LOSS_G);
  const full = Math.floor(leftG / (roomMl * density + JAR_LOSS_G));
  const restG = leftG - full * (roomMl * density + JAR_LOSS_G);
  return {
    size,
    full,
    restMl: restG / density,
    lostG: Math.min(batchMassG(batch), BATCH_LOSS_G) + full * JAR_LOSS_G,
  };
}
