import type { PitType } from '@pitwright/model';

/** What the meat meets in a kind of pit, where nothing better is known. */
export interface PitKind {
  /** h_c at the meat [W/m²K]; doubt of ln h_c 0.25. */
  readonly convectionWm2K: number;
  /** W with meat in [kg/kg]. */
  readonly humidityRatio: number;
  /** Of ln W. */
  readonly humiditySdLn: number;
  /** Mean radiant temperature below the air [K]. */
  readonly wallDropK: number;
  /** From cook to cook [K]. */
  readonly wallDropSdK: number;
  /** Time constant of warm-up [s]. */
  readonly lagS: number;
  /** What a look or a spritz costs. */
  readonly opening: Opening;
}

/** The air at the meat just after lid or door were open for half a minute or a minute, and its way back. */
export interface Opening {
  /** Below what it was [K]. */
  readonly dropK: number;
  /** Time constant of the way back [s]. */
  readonly recoverS: number;
}

/** The walls stay: within 5 K after 3 min. @source 2–5 min, from memory */
const DOOR: Opening = { dropK: 60, recoverS: 75 };
/** Half of the walls is gone: within 5 K after 7 min. @source 5–10 min, from memory */
const LID: Opening = { dropK: 60, recoverS: 170 };

export const CONVECTION_SD_LN = 0.25;
/** A pan of water, of ln W. */
export const WATER_PAN_LN = 0.35;

const BARE_STEEL = { wallDropK: 1, wallDropSdK: 6 };
const INSULATED = { wallDropK: 0.2, wallDropSdK: 3 };
const H = 3600;

/**
 * @source humidity from the pit's balance of fuel, air and water; h_c from mixed cross flow over a cylinder; wall and
 * spreads calibrated on measured cooks
 */
export const PIT_KINDS: Readonly<Record<PitType, PitKind>> = {
  electric: {
    convectionWm2K: 6,
    humidityRatio: 0.065,
    humiditySdLn: 0.5,
    lagS: 0.35 * H,
    opening: DOOR,
    ...INSULATED,
  },
  bullet: {
    convectionWm2K: 6.5,
    humidityRatio: 0.09,
    humiditySdLn: 0.5,
    lagS: 0.1 * H,
    opening: LID,
    ...BARE_STEEL,
  },
  kettle: {
    convectionWm2K: 6,
    humidityRatio: 0.07,
    humiditySdLn: 0.5,
    lagS: 0.1 * H,
    opening: LID,
    ...BARE_STEEL,
  },
  drum: {
    convectionWm2K: 6.5,
    humidityRatio: 0.055,
    humiditySdLn: 0.5,
    lagS: 0.1 * H,
    opening: LID,
    ...BARE_STEEL,
  },
  gas: {
    convectionWm2K: 6.5,
    humidityRatio: 0.035,
    humiditySdLn: 0.5,
    lagS: 0.1 * H,
    opening: LID,
    ...BARE_STEEL,
  },
  ceramic: {
    convectionWm2K: 6,
    humidityRatio: 0.08,
    humiditySdLn: 0.45,
    lagS: 0.1 * H,
    opening: LID,
    ...INSULATED,
  },
  cabinet: {
    convectionWm2K: 7,
    humidityRatio: 0.065,
    humiditySdLn: 0.45,
    lagS: 0.1 * H,
    opening: DOOR,
    ...INSULATED,
  },
  offset: {
    convectionWm2K: 8.5,
    humidityRatio: 0.024,
    humiditySdLn: 0.3,
    lagS: 0.05 * H,
    opening: DOOR,
    ...BARE_STEEL,
  },
  pellet: {
    convectionWm2K: 10,
    humidityRatio: 0.02,
    humiditySdLn: 0.3,
    lagS: 0.1 * H,
    opening: DOOR,
    ...BARE_STEEL,
  },
  oven: {
    convectionWm2K: 14,
    humidityRatio: 0.02,
    humiditySdLn: 0.3,
    lagS: 0.05 * H,
    opening: DOOR,
    ...INSULATED,
  },
  unknown: {
    convectionWm2K: 7.5,
    humidityRatio: 0.045,
    humiditySdLn: 0.6,
    lagS: 0.12 * H,
    opening: LID,
    ...BARE_STEEL,
  },
};

/** How far the air at the meat lies from what is told [K]: what is known of it, and the doubt from cook to cook. */
export interface GaugeError {
  readonly biasK: number;
  readonly sdK: number;
}

export const GRATE_PROBE: GaugeError = { biasK: 0, sdK: 3 };
/** A controller steers by a probe of its own inside the cooker. */
const CONTROLLER: GaugeError = { biasK: 0, sdK: 6 };
/** A dial in the lid, or a figure told without saying where it was read: the air by the cold meat below is colder. */
const DIAL: GaugeError = { biasK: -5, sdK: 6 };
/** Kinds of pit whose set-point a controller holds. */
const CONTROLLED: ReadonlySet<PitType> = new Set(['electric', 'pellet', 'oven']);

/**
 * Error of a told pit temperature, by where it was read and what holds it.
 *
 * @source calibrated on measured cooks, two levels, five folds (docs/models/measured.md)
 */
export function gaugeError(type: PitType, gauge: 'grate' | 'lid' | 'set-point'): GaugeError {
  if (gauge === 'grate') return GRATE_PROBE;
  return gauge === 'set-point' && CONTROLLED.has(type) ? CONTROLLER : DIAL;
}
