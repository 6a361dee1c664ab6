/** Foil, rest and hold: film and front stay as they are, juice goes to the pool. */
import { latentHeatJkg } from './heatContent.ts';
import type { Cover, Surroundings } from './parameters.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';

/** Radiation of the foil itself: it is bright [W/(m²·K)]. */
const FOIL_RADIATION = 0.8;

/**
 * Fills `flows`. Inside the wrap the bark is soaked: no dry layer between surface and front.
 *
 * @param poolKgM2 at the begin
 * @param effective G_e [W/(m²·K)]
 * @param interiorC T_e
 */
export function solveClosedSurface(
  flows: SurfaceFlows,
  stepS: number,
  around: Surroundings,
  cover: Exclude<Cover, { kind: 'open' }>,
  boilingC: number,
  poolKgM2: number,
  canDry: boolean,
  effective: number,
  interiorC: number,
): void {
  const inner = effective;
  let outer: number;
  let leakShare = 0;
  if (cover.kind === 'foil') {
    outer = 1 / (1 / (around.convectionWm2K + FOIL_RADIATION) + cover.gapM2KW);
    leakShare = cover.leakShare;
  } else outer = cover.transmittanceWm2K;

  let surfaceC = (outer * around.gasC + inner * interiorC) / (outer + inner);
  let vented = 0;
  if (leakShare > 0 && poolKgM2 > 0 && around.gasC > interiorC) {
    const cut = outer * (1 - leakShare);
    const leakingC = (cut * around.gasC + inner * interiorC) / (cut + inner);
    const leak = (leakShare * outer * (around.gasC - leakingC)) / latentHeatJkg(leakingC);
    if (leak * stepS <= poolKgM2) {
      surfaceC = leakingC;
      vented = leak;
    } else {
      vented = poolKgM2 / stepS;
      surfaceC =
        (outer * around.gasC + inner * interiorC - vented * latentHeatJkg(leakingC)) / (outer + inner);
    }
  }
  let fromFront = 0;
  if (surfaceC > boilingC) {
    // Steam vents; what the pool cannot give comes from the meat.
    surfaceC = boilingC;
    const surplus = outer * (around.gasC - surfaceC) - inner * (surfaceC - interiorC);
    const steam = surplus / latentHeatJkg(surfaceC);
    const fromPool = steam * stepS <= poolKgM2 ? steam : poolKgM2 / stepS;
    fromFront = canDry ? steam - fromPool : 0;
    vented = fromPool;
  }
  flows.surfaceC = surfaceC;
  flows.frontC = surfaceC;
  flows.fromAirWm2 = outer * (around.gasC - surfaceC);
  flows.evaporatingWm2 = (vented + fromFront) * latentHeatJkg(surfaceC);
  flows.intoMeatWm2 = inner * (surfaceC - interiorC);
  flows.wetKgM2S = vented;
  flows.frontKgM2S = fromFront;
  flows.dryShare = 0;
}
