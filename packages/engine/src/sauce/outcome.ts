/** What a formula becomes: mixed, simmered, cold, in jars; the front of this room. */
import { type Formula, madeFormula, type Range, type Said } from '@pitwright/model';
import { exp } from '../numeric/elementary.ts';
import { batchPh } from './acidity.ts';
import { type Allergens, allergensOf } from './allergens.ts';
import { addBatches, type Batch, batchMassG, potAndLate } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { type Figures, figuresOf } from './figures.ts';
import { formulaLines, lineSdG, type ResolvedLine } from './formulaLines.ts';
import { goalOf, PLATED_SD, THICKNESS_SD } from './goal.ts';
import { inversionRate, invert } from './inversion.ts';
import { JAR_250, type JarSize, type Jars, jarsOf } from './jars.ts';
import { type Keeping, keeping } from './keeping.ts';
import type { Labels } from './label.ts';
import { FRIDGE_C, type Looks, looks } from './look.ts';
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
import { waterToLoosenG } from './target.ts';
import { type Unknown, unknownsOf } from './unknowns.ts';

const WEIGHED_SD = 0.05;

export interface OutcomeOptions extends KitchenAir {
  readonly seed?: number;
  /** The person's own ingredients. */
  readonly labels?: Labels;
  readonly jar?: JarSize;
  /** [°C] of what goes into the pot. */
  readonly startC?: number;
  /** From a plate test: seen over foreseen. */
  readonly thicknessFactor?: number;
  /** From a weighing on the way: seen over foreseen. */
  readonly rateFactor?: number;
  /** Thickness from the fridge wanted, where the formula names no water to drive off [Pa at 5 °C]. */
  readonly yieldWantedPa?: number;
}

export interface SauceOutcome {
  readonly lines: readonly ResolvedLine[];
  /** In the pot from the start. */
  readonly raw: Batch;
  readonly finished: Batch;
  readonly rawMassG: number;
  /** One standard deviation, by spoon and scale [g]. */
  readonly rawMassSdG: number;
  readonly finishedMassG: number;
  /** Stirred in after the simmer; part of the finished mass [g]. */
  readonly lateMassG: number;
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
  /** In the pot before anything is stirred in, the others with it. */
  readonly looks: Looks;
  /** The same were the sauce a standard deviation thinner, and thicker, than foreseen. */
  readonly looksThinner: Looks;
  readonly looksThicker: Looks;
  /** Water that makes it look one class thinner from the fridge [g]; missing where it runs already. */
  readonly loosenG?: number;
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
  const resolved = formulaLines(formula, options.labels);
  if (!resolved.ok) return resolved;
  const { lines } = resolved;
  const { pot: raw, late } = potAndLate(lines);
  const rawMassG = batchMassG(raw);
  const lateMassG = batchMassG(late);
  if (!(rawMassG > 0))
    return {
      ok: false,
      problems: [{ id: lateMassG > 0 ? 'sauce.all-late' : 'sauce.no-mass', params: { name: formula.name } }],
    };
  const made = madeFormula(formula);
  const { simmer } = made;
  const goal = simmer === undefined ? undefined : goalOf(made, raw, late, options);
  if (goal !== undefined && !('waterOffG' in goal)) return { ok: false, problems: goal };
  const waterOffG = goal?.waterOffG ?? 0;
  let taken = evaporate(raw, waterOffG);
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
    notices.push(...bottomNotice(curve, stove, taken));
    pot = { simmerS, heatingS: curve.heatingS, curve };
    taken = invert(taken, invertedAlong(curve.points, raw, taken));
  }
  const finished = lateMassG > 0 ? addBatches(taken, late) : taken;
  const factor = options.thicknessFactor ?? 1;
  const sd = options.thicknessFactor === undefined ? THICKNESS_SD : PLATED_SD;
  const after = figuresOf(finished, lines);
  const loosenG = waterToLoosenG(finished, FRIDGE_C, factor);
  const finishedVolumeMl = (1000 * batchMassG(finished)) / batchDensity(finished);
  return {
    ok: true,
    lines,
    raw,
    finished,
    rawMassG,
    rawMassSdG: Math.sqrt(lines.reduce((sum, line) => sum + lineSdG(line) * lineSdG(line), 0)),
    finishedMassG: batchMassG(finished),
    lateMassG,
    waterOffG,
    finishedVolumeMl,
    jars: jarsOf(finished, options.jar ?? JAR_250),
    ...pot,
    before: figuresOf(raw, lines),
    after,
    looks: looks(taken, finished, factor),
    looksThinner: looks(taken, finished, factor * exp(-sd)),
    looksThicker: looks(taken, finished, factor * exp(sd)),
    ...(loosenG !== undefined && { loosenG }),
    keeping: keeping(lines, after.ph, (i) => simmer !== undefined && !lines[i]!.isLate),
    unknowns: unknownsOf(lines),
    allergens: allergensOf(lines.map((line) => line.ingredient)),
    notices,
  };
}
