/** What a formula becomes: mixed, simmered, cold, in jars; the front of this room. */
import type { Formula, Range, Said } from '@pitwright/model';
import { exp } from '../numeric/elementary.ts';
import { batchPh } from './acidity.ts';
import { type Allergens, allergensOf } from './allergens.ts';
import { addBatches, type Batch, batchMassG, batchOf } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { type Figures, figuresOf } from './figures.ts';
import { formulaLines, lineSdG, type OwnIngredients, type ResolvedLine } from './formulaLines.ts';
import { goalOf, PLATED_SD, THICKNESS_SD } from './goal.ts';
import { inversionRate, invert } from './inversion.ts';
import { JAR_250, type JarSize, type Jars, jarsOf } from './jars.ts';
import { type Keeping, keeping } from './keeping.ts';
import { type Looks, looks } from './look.ts';
import { bottomNotice } from './panBottom.ts';
import {
  FOAM_ROOM,
  fillShare,
  type SimmerCurve,
  type SimmerPoint,
  simmerCurve,
  simmerTable,
} from './simmer.ts';
import { heatingOf, simmerRange } from './simmerRange.ts';
import { batchDensity } from './solution.ts';
import { type KitchenAir, kitchenOf, stoveOf } from './stove.ts';
import { type Unknown, unknownsOf } from './unknowns.ts';

const WEIGHED_SD = 0.05;

export interface OutcomeOptions extends KitchenAir {
  readonly seed?: number;
  readonly own?: OwnIngredients;
  readonly jar?: JarSize;
  /** [°C] of what goes into the pot. */
  readonly startC?: number;
  /** From a plate test: seen over foreseen. */
  readonly thicknessFactor?: number;
  /** From a weighing on the way: seen over foreseen. */
  readonly rateFactor?: number;
  /** Places of the lines that go in after the simmer, from 0. */
  readonly late?: readonly number[];
  /** Thickness from the fridge wanted, where the formula names no water to drive off [Pa at 5 °C]. */
  readonly yieldWantedPa?: number;
}

export interface SauceOutcome {
  readonly lines: readonly ResolvedLine[];
  readonly raw: Batch;
  readonly finished: Batch;
  readonly rawMassG: number;
  /** One standard deviation, by spoon and scale [g]. */
  readonly rawMassSdG: number;
  readonly finishedMassG: number;
  readonly waterOffG: number;
  readonly finishedVolumeMl: number;
  readonly jars: Jars;
  /** From a cold pot to the target [s]; missing where nothing is simmered. */
  readonly simmerS?: Range;
  /** Part of it until it simmers [s], at middle values. */
  readonly heatingS?: number;
  /** The middle run, for the curve. */
  readonly curve?: SimmerCurve;
  readonly before: Figures;
  readonly after: Figures;
  readonly looks: Looks;
  /** The same were the sauce a standard deviation thinner, and thicker, than foreseen. */
  readonly looksThinner: Looks;
  readonly looksThicker: Looks;
  readonly keeping: Keeping;
  readonly allergens: Allergens;
  /** What the rows and labels leave out. */
  readonly unknowns: readonly Unknown[];
  /** What was taken because nobody said, and what to mind. */
  readonly notices: readonly Said[];
}

export type OutcomeAnswer =
  | ({ readonly ok: true } & SauceOutcome)
  | { readonly ok: false; readonly problems: readonly Said[] };

/** Share of the sucrose that acid splits along the simmer [1]; ±50 %. */
function invertedAlong(points: readonly SimmerPoint[], raw: Batch, finished: Batch): number {
  const ph = (batchPh(raw) + batchPh(finished)) / 2;
  if (!Number.isFinite(ph)) return 0;
  let exponent = 0;
  for (let i = 1; i < points.length; i++)
    exponent += inversionRate(ph, points[i]!.sauceC) * (points[i]!.timeS - points[i - 1]!.timeS);
  return 1 - exp(-exponent);
}

/**
 * What this formula becomes in this kitchen. Never a number where something is wrong: every problem at once.
 *
 * @param formula  lines by mass or volume, and how it is simmered
 * @param options  altitude [m], air of the kitchen, a seed for the range of minutes, corrections measured so far
 */
export function sauceOutcome(formula: Formula, options: OutcomeOptions = {}): OutcomeAnswer {
  const resolved = formulaLines(formula, options.own);
  if (!resolved.ok) return resolved;
  const { lines } = resolved;
  const late = new Set(options.late ?? []);
  const raw = batchOf(lines.filter((_, i) => !late.has(i)));
  const lateBatch = batchOf(lines.filter((_, i) => late.has(i)));
  const rawMassG = batchMassG(raw);
  if (!(rawMassG > 0))
    return { ok: false, problems: [{ id: 'sauce.no-mass', params: { name: formula.name } }] };
  const { simmer } = formula;
  const goal = simmer === undefined ? undefined : goalOf(formula, raw, options);
  if (goal !== undefined && !('waterOffG' in goal)) return { ok: false, problems: goal };
  const waterOffG = goal?.waterOffG ?? 0;
  let finished = evaporate(raw, waterOffG);
  const notices: Said[] = [...(goal?.notices ?? [])];
  let pot: Pick<SauceOutcome, 'simmerS' | 'heatingS' | 'curve'> = {};
  if (simmer !== undefined && goal !== undefined) {
    const stove = stoveOf(simmer);
    const kitchen = kitchenOf(options);
    const share = fillShare(raw, stove.pan);
    const volume = { kind: 'volume', si: rawMassG / 1000 / batchDensity(raw) } as const;
    if (share > 1) {
      const holds = { kind: 'volume', si: (volume.si / share) * FOAM_ROOM } as const;
      return { ok: false, problems: [{ id: 'sauce.pan-overflows', params: { volume, holds } }] };
    }
    if (share > FOAM_ROOM)
      notices.push({ id: 'sauce.no-room-for-foam', level: 'caution', params: { volume } });
    notices.push(...stove.assumed);
    const startC = options.startC ?? 20;
    const mostOffG = Math.max(waterOffG, goal.waterOffAt(-2), goal.waterOffAt(2));
    const table = simmerTable(raw, mostOffG, kitchen.pressurePa);
    const rate = options.rateFactor ?? 1;
    const curve = simmerCurve(table, {
      pan: stove.pan,
      lid: stove.lid,
      kitchen,
      startC,
      heating: heatingOf(stove, rate),
      surfaceFactor: rate,
      waterOffG,
    });
    const simmerS = simmerRange({
      table,
      stove,
      kitchen,
      startC,
      seed: options.seed ?? 1,
      waterOffAt: goal.waterOffAt,
      ...(options.rateFactor !== undefined && { weighed: { rateFactor: rate, sd: WEIGHED_SD } }),
    });
    if (simmerS.neverShare > 0)
      notices.push({
        id: 'sauce.may-never-get-there',
        level: 'caution',
        params: { never: simmerS.neverShare },
      });
    notices.push(...bottomNotice(curve, stove, finished));
    pot = { simmerS, heatingS: curve.heatingS, curve };
    finished = invert(finished, invertedAlong(curve.points, raw, finished));
  }
  if (late.size > 0) finished = addBatches(finished, lateBatch);
  const factor = options.thicknessFactor ?? 1;
  const sd = options.thicknessFactor === undefined ? THICKNESS_SD : PLATED_SD;
  const after = figuresOf(finished, lines);
  const finishedVolumeMl = (1000 * batchMassG(finished)) / batchDensity(finished);
  return {
    ok: true,
    lines,
    raw,
    finished,
    rawMassG,
    rawMassSdG: Math.sqrt(lines.reduce((sum, line) => sum + lineSdG(line) * lineSdG(line), 0)),
    finishedMassG: batchMassG(finished),
    waterOffG,
    finishedVolumeMl,
    jars: jarsOf(finished, options.jar ?? JAR_250),
    ...pot,
    before: figuresOf(raw, lines),
    after,
    looks: looks(finished, factor),
    looksThinner: looks(finished, factor * exp(-sd)),
    looksThicker: looks(finished, factor * exp(sd)),
    keeping: keeping(lines, after.ph, (i) => simmer !== undefined && !late.has(i)),
    unknowns: unknownsOf(lines),
    allergens: allergensOf(lines.map((line) => line.ingredient)),
    notices,
  };
}
