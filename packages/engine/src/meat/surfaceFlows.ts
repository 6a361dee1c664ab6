/** Heat and water through one surface, as the surface equations leave them; or summed over the stages of a step. */
export class SurfaceFlows {
  /** outer side of the bark, and where water evaporates [°C] */
  surfaceC = 0;
  frontC = 0;
  /** from the air, spent evaporating, into the meat [W/m²] */
  fromAirWm2 = 0;
  evaporatingWm2 = 0;
  intoMeatWm2 = 0;
  /** of what comes from the air: by moving air and from the walls [W/m²]; both 0 where the cover does not part them */
  convectionWm2 = 0;
  radiationWm2 = 0;
  /** the cover tells convection and radiation apart */
  isParted = true;
  /** carried off by the water that leaves the cells in the step, above the start of the piece [W/m²] */
  withWaterWm2 = 0;
  /** from the other half through the middle [W/m²] */
  fromMiddleWm2 = 0;
  /** from the film, or from the pool inside a wrap [kg/(m²·s)] */
  wetKgM2S = 0;
  /** through the bark, from the front [kg/(m²·s)] */
  frontKgM2S = 0;
  /** of the surface without a film [1] */
  dryShare = 0;
  /** browning in an hour [1] */
  browning = 0;

  /** As before the first step of a piece: what was NaN would outlive its weight of 0. */
  clear(): void {
    this.fromAirWm2 = 0;
    this.evaporatingWm2 = 0;
    this.intoMeatWm2 = 0;
    this.convectionWm2 = 0;
    this.radiationWm2 = 0;
    this.withWaterWm2 = 0;
    this.fromMiddleWm2 = 0;
    this.wetKgM2S = 0;
    this.frontKgM2S = 0;
    this.dryShare = 0;
    this.browning = 0;
  }

  /** Takes on the flows of one stage. @param weight of that stage in the step; the first one clears what was there */
  gather(stage: SurfaceFlows, weight: number, isFirst: boolean): void {
    const kept = isFirst ? 0 : 1;
    this.surfaceC = stage.surfaceC;
    this.frontC = stage.frontC;
    this.fromAirWm2 = kept * this.fromAirWm2 + weight * stage.fromAirWm2;
    this.evaporatingWm2 = kept * this.evaporatingWm2 + weight * stage.evaporatingWm2;
    this.convectionWm2 = kept * this.convectionWm2 + weight * stage.convectionWm2;
    this.radiationWm2 = kept * this.radiationWm2 + weight * stage.radiationWm2;
    this.isParted = stage.isParted;
    this.intoMeatWm2 = kept * this.intoMeatWm2 + weight * stage.intoMeatWm2;
    this.fromMiddleWm2 = kept * this.fromMiddleWm2 + weight * stage.fromMiddleWm2;
    this.wetKgM2S = kept * this.wetKgM2S + weight * stage.wetKgM2S;
    this.frontKgM2S = kept * this.frontKgM2S + weight * stage.frontKgM2S;
    this.browning = kept * this.browning + weight * stage.browning;
  }
}
