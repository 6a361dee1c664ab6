/** What the model of one piece is made of. Set S, fitted on the open measured cooks together with common-practice times. */
import type { Composition } from './tables.ts';

/** How one face of a piece takes heat and dries. */
export interface Face {
  /** A_f: share of the face that can evaporate [1]. */
  readonly evaporatingShare: number;
  /** Resistance to heat of a layer on it, a fat cap [m²K/W]; 0 bare. */
  readonly layerM2KW: number;
  /** Heat capacity of that layer, taken at the temperature of the meat beneath [J/m²K]. */
  readonly layerJM2K: number;
  /** h_c over that of the air round the piece [1]. */
  readonly convectionShare: number;
}

/** One piece as the solver sees it; per square metre of raw outer face. */
export interface MeatParameters {
  readonly composition: Composition;
  /** [kg/m³] raw */
  readonly densityKgM3: number;
  /** Shortest way from the thermal centre to the surface [m]. */
  readonly halfThicknessM: number;
  /** Area grows as r^(E − 1): 1 slab, 2 cylinder, 3 sphere, between for chunky pieces. */
  readonly dimensionality: number;
  /** A_f: share of the face that can evaporate [1]; of the open one where the faces are unlike. */
  readonly evaporatingShare: number;
  /** The other face where it is unlike: bone side, fat side, the side of the fire; missing: both faces alike. */
  readonly otherFace?: Face;
  /** et: porosity over tortuosity of the dry bark [1]. */
  readonly barkOpenness: number;
  /** delta_s: bark of this thickness lets half as much through [m]. */
  readonly barkSealingM: number;
  /** sigma_b: thickness of dried against raw [1]. */
  readonly barkShrinkage: number;
  /** k_b [W/mK] */
  readonly barkConductivityWmK: number;
  /** M_d: water that stays in the bark [kg/kg protein]. */
  readonly barkMoistureDryBasis: number;
  /** phi: share of the juice that reaches the surface, the rest drips [1]. */
  readonly juiceToSurfaceShare: number;
  /** m_0: film below which the surface is only partly wet [kg/m²]. */
  readonly filmReserveKgM2: number;
  /** Film above which juice runs off [kg/m²]. */
  readonly filmCapKgM2: number;
  /** Film when meat goes on [kg/m²]. */
  readonly filmStartKgM2: number;
  /** M_inf: water held when fully cooked [kg/kg protein]. */
  readonly finalHoldingDryBasis: number;
  /** T_mid: half of the held water is given up [°C]. */
  readonly releaseMidC: number;
  /** s [K] */
  readonly releaseWidthK: number;
  /** k_80: rate of release at 80 °C [1/s]. */
  readonly releaseRate80PerS: number;
  readonly emissivity: number;
  readonly startC: number;
}

/** Set S without what depends on the cut. @source fit of this model, see docs/models/meat.md; calibration */
export const SET_S = {
  barkOpenness: 0.012,
  barkSealingM: 1.8e-3,
  barkShrinkage: 0.55,
  barkConductivityWmK: 0.2,
  barkMoistureDryBasis: 0.12,
  filmReserveKgM2: 0.08,
  filmCapKgM2: 0.15,
  filmStartKgM2: 0.1,
  finalHoldingDryBasis: 1.52,
  releaseMidC: 66,
  releaseWidthK: 6.5,
  releaseRate80PerS: 2e-4,
  emissivity: 0.9,
} as const;

/** Round the piece at one moment; the plain record that the pit hands over. */
export interface Surroundings {
  gasC: number;
  /** Mean radiant temperature. */
  wallC: number;
  humidityRatio: number;
  convectionWm2K: number;
  pressurePa: number;
}

/** What lies between the surface and the air. */
export type Cover =
  | {
      readonly kind: 'open';
      /** R_p: resistance of paper to vapour [s/m]; 0 bare. */
      readonly vapourResistanceSM: number;
      /** Resistance of the cover to heat [m²K/W]; 0 bare. */
      readonly heatResistanceM2KW: number;
      /** Radiation that reaches the meat [1]; 1 bare. */
      readonly radiationShare: number;
      /** a_w of the film: 0.99 juice, 0.8–0.9 a sugar glaze. */
      readonly waterActivity: number;
    }
  | {
      readonly kind: 'foil';
      /** R_gap: air between foil and meat [m²K/W]. */
      readonly gapM2KW: number;
      /** l: share of the heat that leaves as steam through the folds [1]. */
      readonly leakShare: number;
    }
  | {
      /** Nothing evaporates: rest on a tray, in towels, in a box, in a warmer. */
      readonly kind: 'still';
      readonly transmittanceWm2K: number;
    };

export const BARE: Cover = {
  kind: 'open',
  vapourResistanceSM: 0,
  heatResistanceM2KW: 0,
  radiationShare: 1,
  waterActivity: 0.99,
};
/** Sugar holds the film's water back. @source a_w of sugar glazes 0.8–0.9, from memory */
export const GLAZED: Cover = { ...BARE, waterActivity: 0.85 };
export const FOIL: Cover = { kind: 'foil', gapM2KW: 0.05, leakShare: 0.03 };
/** Steam gets out at the folds. @source leak shares of loose and torn foil and of a covered pan from memory, weak */
export const FOIL_LOOSE: Cover = { kind: 'foil', gapM2KW: 0.08, leakShare: 0.1 };
export const FOIL_TORN: Cover = { kind: 'foil', gapM2KW: 0.05, leakShare: 0.3 };
/** Foil over a pan: closed, with steam, less tight than a wrap. */
export const PAN: Cover = { kind: 'foil', gapM2KW: 0.05, leakShare: 0.06 };
export const FOIL_WITH_LIQUID: Cover = { kind: 'foil', gapM2KW: 0.01, leakShare: 0.03 };
/** Uncoated paper; R_p = 3.55e6/WVTR [g/m²day at 38 °C, 90 %]. @source TAPPI T 464; the value of butcher's paper from memory */
const PAPER_OPEN = {
  kind: 'open',
  vapourResistanceSM: 3000,
  heatResistanceM2KW: 0.03,
  radiationShare: 0.8,
  waterActivity: 0.99,
} as const;
export const PAPER: Cover = PAPER_OPEN;
/** Dry, and soaked with grease, which lets little vapour through. @source from memory, weak */
export const PAPER_CLEAN: Cover = { ...PAPER_OPEN, vapourResistanceSM: 2000 };
export const PAPER_GREASY: Cover = { ...PAPER_OPEN, vapourResistanceSM: 10000 };
