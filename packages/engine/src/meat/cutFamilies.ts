/**
 * What cuts have in common: composition of lean and fat without bone, and the figures of a family.
 *
 * @source composition: USDA tables from memory, ± 3 points of water and fat between carcasses; family figures: fitted on
 * measured cooks and common-practice times (calibration)
 */
import type { Composition } from './tables.ts';

/** Percentages of raw meat as shares that sum to 1. */
export const mix = (water: number, protein: number, fat: number, ash: number): Composition => {
  const sum = water + protein + fat + ash;
  return { water: water / sum, protein: protein / sum, fat: fat / sum, ash: ash / sum };
};

export const LOIN_RIBS = mix(65, 19, 15, 1);
export const SPARERIBS = mix(60, 15.5, 23.5, 0.8);
export const SHOULDER = mix(65, 17, 17, 0.9);
export const BRISKET = mix(62, 18.5, 18.5, 0.9);
export const FLAT = mix(71, 21, 7, 1);
export const POINT = mix(58, 17, 24, 0.8);
export const SHORT_RIB = mix(49, 14.5, 36, 0.7);
export const BEEF_BACK_RIB = mix(58, 17, 24, 0.8);
export const CHUCK = mix(64, 18.5, 16.5, 0.9);
export const RIB_ROAST = mix(55, 16.5, 27.5, 0.8);
export const LAMB_SHOULDER = mix(60, 16.6, 21.5, 0.9);
export const LAMB_LEG = mix(65, 18, 16, 0.9);
export const HAM = mix(63, 17.5, 18.5, 0.9);
export const CHICKEN = mix(66, 18.6, 15, 0.8);
export const CHICKEN_BREAST = mix(75, 22.5, 2.6, 1);
export const TURKEY = mix(70, 21.6, 6.5, 1);

const common = {
  isPoultry: false,
  isCollagenRich: false,
  hasBone: false,
  boneShare: 0,
  juiceToSurfaceShare: 0.57,
};
export const ribs = {
  ...common,
  isCollagenRich: true,
  hasBone: true,
  boneShare: 0.3,
  evaporatingShare: 0.7,
  rulerFactor: 1.05,
  massOnlySdLn: 0.15,
  untoldSdLn: 0.2,
  fitSdLn: 0.06,
  dimensionality: 1.03,
};
export const bigCut = {
  ...common,
  isCollagenRich: true,
  evaporatingShare: 0.92,
  massOnlySdLn: 0.12,
  untoldSdLn: 0.18,
  fitSdLn: 0.03,
};
export const roast = {
  ...common,
  evaporatingShare: 0.6,
  rulerFactor: 0.95,
  massOnlySdLn: 0.15,
  untoldSdLn: 0.2,
  fitSdLn: 0.04,
};
export const poultry = {
  ...common,
  tissue: 'poultry',
  isPoultry: true,
  hasBone: true,
  evaporatingShare: 0.54,
  juiceToSurfaceShare: 0.37,
  rulerFactor: 0.95,
  massOnlySdLn: 0.1,
  untoldSdLn: 0.15,
  fitSdLn: 0.06,
} as const;
