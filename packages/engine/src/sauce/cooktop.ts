/** Heat from a burner into a pot, and what leaves the pot again. */
import { latentHeatJKg } from '../air/water.ts';

/**
 * Heat into the food over energy in, with its doubt (one σ, relative).
 * @source gas: MacKay, How much is inside hot water? part 4 (2008), 3.6 kW ring; electric: US DOE boiling tests as
 *   quoted; induction: ENERGY STAR as quoted by CalMTA. At low settings a gas ring stays within ±0.05.
 */
export const COOKTOP_EFFICIENCY = { gas: 0.37, electric: 0.74, induction: 0.845 } as const;
export type CooktopSource = keyof typeof COOKTOP_EFFICIENCY;
export const COOKTOP_SD = 0.12;

/** Bare metal sides at the simmer, with radiation [W/m²K]. */
const WALL_W_M2K = 11;

/** Heat lost by the wet wall of an open pan [W]: 60 W at the simmer for 26 cm with 10 cm wet. */
export const wallLossW = (diameterM: number, wetHeightM: number, sauceC: number, airC: number): number =>
  WALL_W_M2K * Math.PI * diameterM * wetHeightM * (sauceC - airC);

/** Water driven off at the boil [kg/s]: (P η − Q_wall)/h_fg; zero or less where the heat does not reach it. */
export const boilOffKgS = (powerW: number, efficiency: number, lossW: number, boilingC: number): number =>
  (powerW * efficiency - lossW) / latentHeatJKg(boilingC);

export interface SimmerTime {
  readonly heatingS: number;
  readonly totalS: number;
}

/** Heating from `startC` to the boil, then driving `evaporatedKg` off, the loss counted in both; ∞ where it never boils. */
export function simmerTime(given: {
  readonly massKg: number;
  readonly startC: number;
  readonly boilingC: number;
  readonly specificHeat: number;
  readonly evaporatedKg: number;
  readonly powerW: number;
  readonly efficiency: number;
  readonly lossW: number;
}): SimmerTime {
  const netW = given.powerW * given.efficiency - given.lossW;
  if (!(netW > 0)) return { heatingS: Infinity, totalS: Infinity };
  const heatingS = (given.massKg * given.specificHeat * Math.max(0, given.boilingC - given.startC)) / netW;
  return { heatingS, totalS: heatingS + (given.evaporatedKg * latentHeatJKg(given.boilingC)) / netW };
}

/** Share of the open rate that a lid lets go (judgement): tight 0.05–0.10, ajar 0.3–0.5. */
export const LID_SHARE = { open: 1, ajar: 0.4, tight: 0.075 } as const;
export type Lid = keyof typeof LID_SHARE;
