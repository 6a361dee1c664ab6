/** How long a simmer takes, as a range: the doubts of burner, air, flame and thickness, drawn from a seed. */
import type { Range } from '@pitwright/model';
import { Stream } from '../numeric/chance.ts';
import { exp } from '../numeric/elementary.ts';
import { rangeOf } from '../numeric/range.ts';
import { COOKTOP_SD } from './cooktop.ts';
import { STILL_AIR_SD } from './openSurface.ts';
import { type Heating, type Kitchen, type SimmerTable, simmerCurve } from './simmer.ts';
import { HEAT_UP_W, type Stove } from './stove.ts';

/** A flame that is held at a simmer: from a smile to bubbles all over [K below the boil]. */
const CALMEST_K = 5;
const LIVELIEST_K = 1;
const HEAT_UP_SD = 0.2;
const HELD_K = 3;
const MEMBERS = 80;

export interface SimmerDoubt {
  readonly table: SimmerTable;
  readonly stove: Stove;
  readonly kitchen: Kitchen;
  readonly startC: number;
  readonly seed: number;
  /** Water to drive off [g] for a standard normal deviate of the thickness. */
  readonly waterOffAt: (deviate: number) => number;
  /** Scale of all that leaves the pot, found by a weighing; its doubt replaces the burner's and the air's. */
  readonly weighed?: { readonly rateFactor: number; readonly sd: number };
}

/** How the pot is heated, by its middle values. */
export const heatingOf = (stove: Stove, factor = 1, heldK = HELD_K, heatUpNetW = HEAT_UP_W): Heating =>
  stove.netW === undefined
    ? { by: 'held', belowBoilK: heldK, heatUpNetW }
    : { by: 'power', netW: stove.netW * factor };

/** Time from a cold pot on the burner to the water being off [s]. */
export function simmerRange(given: SimmerDoubt): Range {
  const stream = (name: string): Stream => new Stream(given.seed, `sauce ${name}`);
  const [burner, air, flame, thick] = [stream('burner'), stream('air'), stream('flame'), stream('thickness')];
  const timesS = new Float64Array(MEMBERS);
  for (let member = 0; member < MEMBERS; member++) {
    const weighed = given.weighed;
    const rate = weighed ? weighed.rateFactor * exp(weighed.sd * air.normal(member)) : 1;
    const power = weighed ? rate : exp(COOKTOP_SD * burner.normal(member));
    const surface = weighed ? rate : exp(STILL_AIR_SD * air.normal(member));
    const heldK = LIVELIEST_K + (CALMEST_K - LIVELIEST_K) * flame.uniform(member);
    const heatUpW = HEAT_UP_W * exp(HEAT_UP_SD * burner.normal(member));
    const curve = simmerCurve(given.table, {
      pan: given.stove.pan,
      lid: given.stove.lid,
      kitchen: given.kitchen,
      startC: given.startC,
      heating: heatingOf(given.stove, power, weighed ? HELD_K : heldK, heatUpW),
      surfaceFactor: surface,
      waterOffG: given.waterOffAt(thick.normal(member)),
    });
    timesS[member] = curve.totalS;
  }
  return rangeOf(timesS);
}
