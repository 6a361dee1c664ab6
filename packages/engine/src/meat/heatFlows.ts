/**
 * The heat of a piece at one moment: what arrives and by which way, and what it is spent on. Per m² of raw outer face.
 *
 * Evaporation is the latent heat where water turns to vapour. The rest goes through the front and warms the meat: part of
 * it stays, part leaves again with the juice that the meat gives up, counted from the temperature of the raw piece, so
 * that convection + radiation + through still air = evaporation + warming + juice.
 */
import type { SurfaceFlows } from './surfaceFlows.ts';

/** [W/m²]; negative where a piece gives heat off. */
export interface HeatFlows {
  /** By the moving air. */
  convectionWm2: number;
  /** From the walls; in foil, from the walls to the foil. */
  radiationWm2: number;
  /** Rest and hold: through still air, towels, a box, both ways together, which the model does not part. */
  stillWm2: number;
  evaporationWm2: number;
  /** What the meat, its water and the layer on it hold more; negative where more leaves with juice than comes in. */
  warmingWm2: number;
  /** Carried off by juice, whether it drips or dries on the surface. */
  juiceWm2: number;
}

export const HEAT_WAYS = ['convectionWm2', 'radiationWm2', 'stillWm2'] as const satisfies (keyof HeatFlows)[];
export const HEAT_ENDS = ['evaporationWm2', 'warmingWm2', 'juiceWm2'] as const satisfies (keyof HeatFlows)[];

/** Of one half. */
export function heatOf(flows: SurfaceFlows): HeatFlows {
  const { fromAirWm2, convectionWm2, radiationWm2, isParted, withWaterWm2 } = flows;
  return {
    convectionWm2,
    radiationWm2,
    stillWm2: isParted ? 0 : fromAirWm2,
    evaporationWm2: flows.evaporatingWm2,
    warmingWm2: flows.intoMeatWm2 + flows.fromMiddleWm2 - withWaterWm2,
    juiceWm2: withWaterWm2,
  };
}

/** Mean of two halves. */
export function meanHeat(one: HeatFlows, other: HeatFlows): HeatFlows {
  const mean = (name: keyof HeatFlows): number => 0.5 * (one[name] + other[name]);
  return {
    convectionWm2: mean('convectionWm2'),
    radiationWm2: mean('radiationWm2'),
    stillWm2: mean('stillWm2'),
    evaporationWm2: mean('evaporationWm2'),
    warmingWm2: mean('warmingWm2'),
    juiceWm2: mean('juiceWm2'),
  };
}
