/** What a formula becomes: mixed, simmered, cold, in jars; the front of this room. */
import type { Formula, Range, Said } from '@pitwright/model';
import { exp } from '../numeric/elementary.ts';
import { batchPh, PH_SD, titratableAcidity } from './acidity.ts';
import { type Allergens, allergensOf } from './allergens.ts';
import { type Batch, batchMassG, batchOf } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { formulaLines, type OwnIngredients, type ResolvedLine } from './formulaLines.ts';
import { JAR_250, type JarSize, type Jars, jarsOf } from './jars.ts';
import { type Keeping, keeping } from './keeping.ts';
import { FRIDGE_C, type Looks, looks } from './look.ts';
import { bottomNotice } from './panBottom.ts';
import { pulpIndex } from './rheology.ts';
import { FOAM_ROOM, fillShare, type SimmerCurve, simmerCurve, simmerTable } from './simmer.ts';
import { heatingOf, simmerRange } from './simmerRange.ts';
import { batchDensity, batchWaterActivity, effectiveBrix, totalSolidsG } from './solution.ts';
import { type KitchenAir, kitchenOf, stoveOf } from './stove.ts';
import { waterForThickness } from './target.ts';
import { energyPer100g, type HeatWord, heatWord, saltPercent, scoville, sweetness } from './taste.ts';
import { unknownPhShare } from './unknowns.ts';

/** Yield stress of a brush-on glaze from the fridge [Pa]: 5 Pa when brushed on at 60 °C, class 2. */
export const GLAZE_YIELD_PA = 14;
/** Spread of the foreseen yield stress, log: before and after a plate test. */
const THICKNESS_SD = 0.4;
const PLATED_SD = 0.15;
const WEIGHED_SD = 0.05;
/** More of the batch than this with an unknown pH, and its pH is not said. */
const MOST_UNKNOWN = 0.02;

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
  /** Thickness from the fridge wanted, where the formula names no water to drive off [Pa at 5 °C]. */
  readonly yieldWantedPa?: number;
}

export interface Figures {
  readonly brix: number;
  readonly solidsPercent: number;
  readonly saltPercent: number;
  /** As acetic acid [g/100 g]. */
  readonly acidPercent: number;
  /** Missing where too much of it has no known pH. */
  readonly ph?: number;
  readonly phSd: number;
  readonly waterActivity?: number;
  /** Sucrose equivalent [g/100 g]. */
  readonly sweetness: number;
  readonly scoville: number;
  readonly heat: HeatWord;
  readonly pulpIndex: number;
  readonly densityKgM3: number;
  readonly kcalPer100g: number;
}

export interface SauceOutcome {
  readonly lines: readonly ResolvedLine[];
  readonly raw: Batch;
  readonly finished: Batch;
  readonly rawMassG: number;
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
  /** What was taken because nobody said, and what to mind. */
  readonly notices: readonly Said[];
}

export type OutcomeAnswer =
  | ({ readonly ok: true } & SauceOutcome)
  | { readonly ok: false; readonly problems: readonly Said[] };

export function figuresOf(b: Batch, lines: readonly ResolvedLine[]): Figures {
  const hasWater = b.waterG > 0;
  const isPhKnown = hasWater && unknownPhShare(lines) <= MOST_UNKNOWN;
  return {
    brix: effectiveBrix(b),
    solidsPercent: (100 * totalSolidsG(b)) / batchMassG(b),
    saltPercent: saltPercent(b),
    acidPercent: hasWater ? titratableAcidity(b) : 0,
    ...(isPhKnown && { ph: batchPh(b) }),
    phSd: PH_SD,
    ...(hasWater && { waterActivity: batchWaterActivity(b) }),
    sweetness: sweetness(b),
    scoville: scoville(b),
    heat: heatWord(scoville(b)),
    pulpIndex: pulpIndex(b),
    densityKgM3: batchDensity(b),
    kcalPer100g: energyPer100g(b),
  };
}

interface Goal {
  readonly waterOffG: number;
  readonly waterOffAt: (deviate: number) => number;
  readonly notices: readonly Said[];
}

/** How much water is to go, by the formula's own figure or by thickness, and how that figure moves with its doubt. */
function goalOf(formula: Formula, raw: Batch, options: OutcomeOptions): Goal | readonly Said[] {
  const told = formula.simmer?.evaporated;
  if (told !== undefined) {
    const offG = told.si * 1000;
    if (!(offG >= 0 && offG < raw.waterG))
      return [
        {
          id: 'sauce.boils-dry',
          params: { evaporated: told, water: { kind: 'mass', si: raw.waterG / 1000 } },
        },
      ];
    return { waterOffG: offG, waterOffAt: () => offG, notices: [] };
  }
  const factor = options.thicknessFactor ?? 1;
  const sd = options.thicknessFactor === undefined ? THICKNESS_SD : PLATED_SD;
  const wanted = { yieldStressPa: options.yieldWantedPa ?? GLAZE_YIELD_PA, temperatureC: FRIDGE_C };
  const offAt = (deviate: number): number | undefined => {
    const answer = waterForThickness(raw, { ...wanted, factor: factor * exp(sd * deviate) });
    return answer.reached ? answer.waterOffG : undefined;
  };
  const middle = waterForThickness(raw, { ...wanted, factor });
  if (!middle.reached)
    return { waterOffG: 0, waterOffAt: () => 0, notices: [{ id: 'sauce.never-thickens' }] };
  const anchors = [-2, -1, 0, 1, 2].map((z) => offAt(z) ?? 0.98 * raw.waterG);
  const waterOffAt = (deviate: number): number => {
    const place = Math.min(3.999, Math.max(0, deviate + 2));
    const i = Math.floor(place);
    return anchors[i]! + (anchors[i + 1]! - anchors[i]!) * (place - i);
  };
  return {
    waterOffG: middle.waterOffG,
    waterOffAt,
    notices: middle.isCandy ? [{ id: 'sauce.would-be-candy', level: 'caution' }] : [],
  };
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
  const raw = batchOf(lines);
  const rawMassG = batchMassG(raw);
  if (!(rawMassG > 0))
    return { ok: false, problems: [{ id: 'sauce.no-mass', params: { name: formula.name } }] };
  const { simmer } = formula;
  const goal = simmer === undefined ? undefined : goalOf(formula, raw, options);
  if (goal !== undefined && !('waterOffG' in goal)) return { ok: false, problems: goal };
  const waterOffG = goal?.waterOffG ?? 0;
  const finished = evaporate(raw, waterOffG);
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
  }
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
    keeping: keeping(lines, after.ph, simmer !== undefined),
    allergens: allergensOf(lines.map((line) => line.ingredient)),
    notices,
  };
}
