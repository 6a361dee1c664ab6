/** Sweet, salt and heat of a batch, per 100 g of what is in the pot. */
import { type Batch, batchMassG, saltG } from './batch.ts';
import { MALTOSE_FACTOR, SAUCE_FRUCTOSE_FACTOR, SAUCE_GLUCOSE_FACTOR } from './data/sweetness.ts';

export interface SweetnessFactors {
  readonly fructose: number;
  readonly glucose: number;
}
const SAUCE_FACTORS: SweetnessFactors = {
  fructose: SAUCE_FRUCTOSE_FACTOR,
  glucose: SAUCE_GLUCOSE_FACTOR,
};

/** Grams of sucrose as sweet as all the sugars of the batch. */
export const sweetnessG = (b: Batch, factors: SweetnessFactors = SAUCE_FACTORS): number =>
  b.sucroseG + factors.glucose * b.glucoseG + factors.fructose * b.fructoseG + MALTOSE_FACTOR * b.otherSugarG;

/** [g sucrose equivalent per 100 g] */
export const sweetness = (b: Batch, factors?: SweetnessFactors): number =>
  (100 * sweetnessG(b, factors)) / batchMassG(b);
/** Sodium × 2.5421 [g NaCl per 100 g]; 1.2–2.0 is usual for a table sauce (judgement). */
export const saltPercent = (b: Batch): number => (100 * saltG(b)) / batchMassG(b);
/** Scoville units of the batch; a lot of chile varies by a factor of two. */
export const scoville = (b: Batch): number => b.scovilleG / batchMassG(b);
export const energyPer100g = (b: Batch): number => (100 * b.energyKcal) / batchMassG(b);

export type HeatWord = 'none' | 'mild' | 'warm' | 'hot';
/** Judgement: under 100 none, to 400 mild, to 1200 warm; sugar and fat blunt it by 20–40 %. */
export const heatWord = (units: number): HeatWord =>
  units < 100 ? 'none' : units < 400 ? 'mild' : units <= 1200 ? 'warm' : 'hot';
