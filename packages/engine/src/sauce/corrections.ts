/** Three cheap measurements that mend the forecast: the pan's tare, one weighing on the way, a puddle on a plate. */
import type { Formula, Range, Said } from '@pitwright/model';
import { normalQuantile } from '../numeric/chance.ts';
import { exp } from '../numeric/elementary.ts';
import type { Batch } from './batch.ts';
import { PLATE_VOLUME_M3 } from './look.ts';
import { type OutcomeOptions, type SauceOutcome, sauceOutcome } from './outcome.ts';
import { batchRheology } from './rheology.ts';
import { simmerCurve, simmerTable } from './simmer.ts';
import { heatingOf } from './simmerRange.ts';
import { batchDensity } from './solution.ts';
import { plateYieldStressPa } from './spread.ts';
import { kitchenOf, stoveOf } from './stove.ts';
import { waterForMass } from './target.ts';

type Answered<T> = ({ readonly ok: true } & T) | { readonly ok: false; readonly problems: readonly Said[] };
const wrong = (id: string, params: Said['params'] = {}): { ok: false; problems: Said[] } => ({
  ok: false,
  problems: [{ id, params }],
});

/** Grams of sauce in a pan weighed full, by its tare. */
export function contentsG(weighedG: number, tareG: number): Answered<{ readonly massG: number }> {
  if (!(weighedG > tareG && tareG > 0))
    return wrong('sauce.tare-over-weight', {
      weighed: { kind: 'mass', si: weighedG / 1000 },
      tare: { kind: 'mass', si: tareG / 1000 },
    });
  return { ok: true, massG: weighedG - tareG };
}

/** Log spread of the time that is left, once one weighing has set the rate. */
const LEFT_SD = 0.05;
const LEAST_RATE = 0.1;
const MOST_RATE = 10;

export interface AfterWeighing {
  /** Give it to `sauceOutcome` as `rateFactor`. */
  readonly rateFactor: number;
  /** From the weighing to the target [s]. */
  readonly leftS: Range;
  readonly outcome: SauceOutcome;
}

/**
 * What one weighing on the way says: the rate that gives this mass at this time, and the minutes left with it.
 *
 * @param atS  since the cold pot went on [s]
 * @param massG  of the sauce, without the pan
 */
export function afterWeighing(
  formula: Formula,
  options: OutcomeOptions,
  atS: number,
  massG: number,
): Answered<AfterWeighing> {
  const before = sauceOutcome(formula, options);
  if (!before.ok) return before;
  if (formula.simmer === undefined || before.curve === undefined) return wrong('sauce.nothing-simmers');
  if (!(massG < before.rawMassG && atS > 0))
    return wrong('sauce.nothing-gone-yet', { mass: { kind: 'mass', si: before.rawMassG / 1000 } });
  const goneG = waterForMass(before.raw, massG);
  if (goneG === undefined || goneG >= before.waterOffG)
    return wrong('sauce.already-there', {
      mass: { kind: 'mass', si: (before.finishedMassG - before.lateMassG) / 1000 },
    });
  const stove = stoveOf(formula.simmer);
  const kitchen = kitchenOf(options);
  const table = simmerTable(before.raw, before.waterOffG, kitchen.pressurePa);
  const timeTo = (rate: number, waterOffG: number): number =>
    simmerCurve(table, {
      pan: stove.pan,
      lid: stove.lid,
      kitchen,
      startC: options.startC ?? 20,
      heating: heatingOf(stove, rate),
      surfaceFactor: rate,
      waterOffG,
    }).totalS;
  let [low, high] = [LEAST_RATE, MOST_RATE];
  if (timeTo(high, goneG) > atS) return wrong('sauce.weighing-too-fast');
  for (let i = 0; i < 40 && high / low > 1 + 1e-6; i++) {
    const middle = Math.sqrt(low * high);
    if (timeTo(middle, goneG) > atS) low = middle;
    else high = middle;
  }
  const rateFactor = high;
  const after = sauceOutcome(formula, { ...options, rateFactor });
  if (!after.ok) return after;
  const leftS = Math.max(0, timeTo(rateFactor, before.waterOffG) - atS);
  const spread = exp(normalQuantile(0.9) * LEFT_SD);
  return {
    ok: true,
    rateFactor,
    leftS: { p10: leftS / spread, p50: leftS, p90: leftS * spread, neverShare: leftS === Infinity ? 1 : 0 },
    outcome: after,
  };
}

export interface Plate {
  /** Of the puddle after a minute [m]. */
  readonly diameterM: number;
  /** Of the sauce on the plate [°C]. */
  readonly temperatureC: number;
  readonly volumeM3?: number;
}

const STRANGE = 5;

/** Seen over foreseen yield stress, to keep with the recipe and give to `sauceOutcome` as `thicknessFactor`. */
export function factorFromPlate(
  finished: Batch,
  plate: Plate,
): Answered<{ readonly factor: number; readonly yieldStressPa: number; readonly doubts: readonly Said[] }> {
  if (!(plate.diameterM > 0.01 && plate.diameterM < 0.5))
    return wrong('sauce.plate-size', { diameter: { kind: 'length', si: plate.diameterM } });
  const foreseen = batchRheology(finished, plate.temperatureC).yieldStressPa;
  if (!(foreseen > 0)) return wrong('sauce.plate-no-yield');
  const seen = plateYieldStressPa(plate.volumeM3 ?? PLATE_VOLUME_M3, batchDensity(finished), plate.diameterM);
  const factor = seen / foreseen;
  const isStrange = factor > STRANGE || factor < 1 / STRANGE;
  return {
    ok: true,
    factor,
    yieldStressPa: seen,
    doubts: isStrange ? [{ id: 'sauce.plate-strange', params: { factor } }] : [],
  };
}
