/** Steady balances of a pit: fuel, air, water. */

/** Specific heat of the gas that leaves [J/kgK]. */
const GAS_J_KGK = 1020;
/** Heat taken by water that evaporates in the pit, in this lump [J/kg]. */
const EVAPORATION_J = 2.33e6;

export interface FuelDemand {
  /** Heat through walls and into the firebox skin, taken by rain, given by the sun [W]. */
  readonly wallW: number;
  readonly fireboxW: number;
  readonly rainW: number;
  readonly sunW: number;
  readonly evaporationKgS: number;
  readonly netJKg: number;
  readonly efficiency: number;
  readonly excessAirRatio: number;
  readonly airRatio: number;
  /** Exhaust over the air outside [K]. */
  readonly exhaustRiseK: number;
}

/**
 * Fuel that holds a pit steady [kg/s]; ±30 % before it is fitted.
 * @returns undefined where the exhaust carries off more than the fuel gives: close down the air
 */
export function steadyFuelKgS(d: FuelDemand): number | undefined {
  const perKg = d.efficiency * d.netJKg - (d.excessAirRatio * d.airRatio + 1) * GAS_J_KGK * d.exhaustRiseK;
  if (!(perKg > 0)) return undefined;
  return (d.wallW + d.fireboxW + d.rainW - d.sunW + EVAPORATION_J * d.evaporationKgS) / perKg;
}

export interface PitWater {
  readonly fuelKgS: number;
  readonly airRatio: number;
  readonly excessAirRatio: number;
  /** Water leaving per kg fuel. */
  readonly waterRatio: number;
  readonly efficiency: number;
  readonly ambientHumidityRatio: number;
  readonly evaporationKgS: number;
}

/** Steady humidity ratio of the pit air; undefined where no dry gas is left to hold it. */
export function pitHumidityRatio(w: PitWater): number | undefined {
  const airKgS = w.excessAirRatio * w.airRatio * w.fuelKgS;
  const dryKgS = airKgS + w.fuelKgS * (1 - w.waterRatio);
  if (!(dryKgS > 0)) return undefined;
  return (
    (airKgS * w.ambientHumidityRatio + w.efficiency * w.fuelKgS * w.waterRatio + w.evaporationKgS) / dryKgS
  );
}
