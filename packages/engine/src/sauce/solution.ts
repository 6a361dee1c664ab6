/** A batch as a solution and a liquid: water activity, density, specific heat, solids. */

import { ACIDS } from '../food/data/ingredients.ts';
import { saltWaterActivity } from '../food/waterActivity.ts';
import { exp } from '../numeric/elementary.ts';
import { acidsTotalG, type Batch, batchMassG, saltG, sugarsG } from './batch.ts';
import { ACID_CONSTANTS } from './data/acids.ts';

const MOLAR_G = {
  water: 18.0153,
  disaccharide: 342.297,
  hexose: 180.156,
  ethanol: 46.068,
  nacl: 58.443,
  kcl: 74.551,
};

/** √K of Ross's form. @source functional form Baeza et al., Food Bioprocess Technol. 3 (2010); K from memory */
const ROOT_K = { sucrose: Math.sqrt(6.47), hexose: Math.sqrt(2.25), maltose: Math.sqrt(4.54) };

/** Highest molality the salt equation holds for; a stronger brine is saturated. */
const SATURATED_MOLALITY = 6.146;

/** One standard deviation of the water activity of a sauce. */
export const WATER_ACTIVITY_SD = 0.008;

/** Temperature of the sugars' constants [K]. */
const ROSS_K = 298.15;

/**
 * Water activity [1] by temperature [°C], by Ross's product of sugars and salts; NaN without water. Good to ±0.01.
 * Ash beyond the salt counts as potassium chloride. What sugars hold back, ln γ, weakens as 1/T, as in a syrup.
 */
export function waterActivityOf(b: Batch): (temperatureC: number) => number {
  if (!(b.waterG > 0)) return () => Number.NaN;
  const moles = {
    water: b.waterG / MOLAR_G.water,
    sucrose: b.sucroseG / MOLAR_G.disaccharide,
    glucose: b.glucoseG / MOLAR_G.hexose,
    fructose: b.fructoseG / MOLAR_G.hexose,
    maltose: b.otherSugarG / MOLAR_G.disaccharide,
    ethanol: b.ethanolG / MOLAR_G.ethanol,
    acids: ACIDS.reduce((sum, acid) => sum + b.acidsG[acid] / ACID_CONSTANTS[acid].molarMassG, 0),
  };
  const total = Object.values(moles).reduce((sum, n) => sum + n, 0);
  const roots =
    (ROOT_K.sucrose * moles.sucrose +
      ROOT_K.hexose * (moles.glucose + moles.fructose) +
      ROOT_K.maltose * moles.maltose) /
    total;
  const otherAshG = Math.max(0, b.ashG - saltG(b));
  const molality = (saltG(b) / MOLAR_G.nacl + otherAshG / MOLAR_G.kcl) / (b.waterG / 1000);
  const brine = Math.min(molality, SATURATED_MOLALITY);
  return (temperatureC) =>
    (moles.water / total) *
    exp((-roots * roots * ROSS_K) / (temperatureC + 273.15)) *
    saltWaterActivity(brine, temperatureC);
}

/** Water activity [1] at 25 °C. */
export const batchWaterActivity = (b: Batch): number => waterActivityOf(b)(25);

/** [kg/m³] at 20 °C. @source Choi–Okos type component densities, from memory */
const DENSITY = {
  water: 998,
  carbohydrate: 1594,
  fibre: 1306,
  protein: 1320,
  fat: 920,
  ash: 2419,
  ethanol: 789,
  acetic: 1050,
};

/** Density of the mixed batch at 20 °C, free of bubbles and lumps [kg/m³]. */
export function batchDensity(b: Batch): number {
  const insideAcidsG = acidsTotalG(b) - b.vinegarAceticG;
  const carbohydrateG = sugarsG(b) + b.restG + insideAcidsG;
  const volume =
    b.waterG / DENSITY.water +
    carbohydrateG / DENSITY.carbohydrate +
    b.fibreG / DENSITY.fibre +
    b.proteinG / DENSITY.protein +
    b.fatG / DENSITY.fat +
    b.ashG / DENSITY.ash +
    b.ethanolG / DENSITY.ethanol +
    b.vinegarAceticG / DENSITY.acetic;
  return batchMassG(b) / volume;
}

/** Specific heat [J/kgK] from composition. @source Choi–Okos type, constant with temperature, from memory */
export function batchSpecificHeat(b: Batch): number {
  const carbohydrateG = sugarsG(b) + b.restG + acidsTotalG(b);
  const heat =
    4180 * b.waterG +
    2000 * b.proteinG +
    2000 * b.fatG +
    1550 * carbohydrateG +
    1850 * b.fibreG +
    1100 * b.ashG +
    2440 * b.ethanolG;
  return heat / batchMassG(b);
}

/** All but water, ethanol and the acetic acid of vinegars [g]. */
export const totalSolidsG = (b: Batch): number => batchMassG(b) - b.waterG - b.ethanolG - b.vinegarAceticG;

/** °Brix that a refractometer would read [g per 100 g of serum]: sugars, acids and ash over themselves and the water. */
export function effectiveBrix(b: Batch): number {
  const dissolvedG = sugarsG(b) + acidsTotalG(b) + b.ashG;
  return (100 * dissolvedG) / (dissolvedG + b.waterG);
}
