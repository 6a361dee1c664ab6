/** Heat and water through one surface during a step, as the surface equations leave them. */
export class SurfaceFlows {
  /** outer side of the bark, and where water evaporates [°C] */
  surfaceC = 0;
  frontC = 0;
  /** from the air, spent evaporating, into the meat [W/m²] */
  fromAirWm2 = 0;
  evaporatingWm2 = 0;
  intoMeatWm2 = 0;
  /** from the film, or from the pool inside a wrap [kg/(m²·s)] */
  wetKgM2S = 0;
  /** through the bark, from the front [kg/(m²·s)] */
  frontKgM2S = 0;
  /** of the surface without a film [1] */
  dryShare = 0;
}
