import type { AcidId } from '../../food/data/ingredients.ts';

/** pK at 25 °C, first to last, and molar mass [g/mol]. */
export interface AcidConstants {
  readonly pKs: readonly number[];
  readonly molarMassG: number;
}

/** @source Handbook values at 25 °C and zero ionic strength, from memory. */
export const ACID_CONSTANTS: Readonly<Record<AcidId, AcidConstants>> = {
  acetic: { pKs: [4.756], molarMassG: 60.052 },
  citric: { pKs: [3.128, 4.761, 6.396], molarMassG: 192.124 },
  malic: { pKs: [3.4, 5.11], molarMassG: 134.087 },
  lactic: { pKs: [3.86], molarMassG: 90.078 },
  tartaric: { pKs: [3.036, 4.366], molarMassG: 150.087 },
  phosphoric: { pKs: [2.148, 7.198, 12.35], molarMassG: 97.994 },
  gluconic: { pKs: [3.7], molarMassG: 196.155 },
  aconitic: { pKs: [2.8, 4.46, 6.3], molarMassG: 174.108 },
  quinic: { pKs: [3.46], molarMassG: 192.167 },
  chlorogenic: { pKs: [3.4], molarMassG: 354.31 },
};

/** −log of the ion product of water at 25 °C. */
export const WATER_PK = 13.995;
