/** Acidity of a batch: what a strip would read, and what the tongue goes by. */
import { acidMolalities, type Batch, batchMassG } from './batch.ts';
import { acidCharge, phOf, tenToThe } from './chargeBalance.ts';
import { ACID_CONSTANTS, WATER_PK } from './data/acids.ts';

/** One standard deviation of a computed pH: ±0.15 of the model. Shown to one decimal, never finer. */
export const PH_SD = 0.15;

/** pH at 25 °C by charge balance; NaN where there is no water to be sour in. */
export function batchPh(batch: Batch): number {
  if (!(batch.waterG > 0)) return Number.NaN;
  return phOf(acidMolalities(batch), batch.strongIonsEq / (batch.waterG / 1000));
}

/** End point of the titration. */
const TITRATED_PH = 8.2;

/** Equivalents of base that bring the batch to pH 8.2 [eq], negative in one that is alkaline already. */
export function titratableEq(batch: Batch): number {
  const waterKg = batch.waterG / 1000;
  if (!(waterKg > 0)) return Number.NaN;
  const acids = acidCharge(acidMolalities(batch), TITRATED_PH);
  return (acids + tenToThe(TITRATED_PH - WATER_PK) - tenToThe(-TITRATED_PH)) * waterKg - batch.strongIonsEq;
}

/** Titratable acidity as acetic acid [g per 100 g of batch]. Sourness follows this more than the pH (from memory). */
export const titratableAcidity = (batch: Batch): number =>
  (100 * titratableEq(batch) * ACID_CONSTANTS.acetic.molarMassG) / batchMassG(batch);
