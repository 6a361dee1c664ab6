/** Foil, rest and hold: film and front stay as they are, juice goes to the pool. */
import { latentHeatJkg } from './heatContent.ts';
import type { Cover } from './parameters.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';

/** Radiation of the foil itself: it is bright [W/(m²·K)]. */
const FOIL_RADIATION = 0.8;

/** Air and walls as one temperature for the foil, whose bright side takes little of what glows [°C]. */
export const foilSeesC = (gasC: number, wallRiseK: number, convectionWm2K: number): number =>
  gasC + (wallRiseK * FOIL_RADIATION) / (convectionWm2K + FOIL_RADIATION);

/**
 * Fills `flows`. Inside the wrap the bark is soaked: no dry layer between surface and front.
 *
 * @param implicitS time over which the pool is implicit
 * @param layerM2KW of a layer on the face
 * @param poolKgM2 from which the stage sets out, with its juice
 * @param effective G_e [W/(m²·K)]
 * @param interiorC T_e
 */
export function solveClosedSurface(
  flows: SurfaceFlows,
  gasC: number,
  convectionWm2K: number,
  implicitS: number,
  cover: Exclude<Cover, { kind: 'open' }>,
  layerM2KW: number,
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
    outer = 1 / (1 / (convectionWm2K + FOIL_RADIATION) + cover.gapM2KW + layerM2KW);
    leakShare = cover.leakShare;
  } else outer = 1 / (1 / cover.transmittanceWm2K + layerM2KW);

  let surfaceC = (outer * gasC + inner * interiorC) / (outer + inner);
  let vented = 0;
  if (leakShare > 0 && poolKgM2 > 0 && gasC > interiorC) {
    const cut = outer * (1 - leakShare);
    const leakingC = (cut * gasC + inner * interiorC) / (cut + inner);
    const leak = (leakShare * outer * (gasC - leakingC)) / latentHeatJkg(leakingC);
    if (leak * implicitS <= poolKgM2) {
      surfaceC = leakingC;
      vented = leak;
    } else {
      vented = poolKgM2 / implicitS;
      surfaceC = (outer * gasC + inner * interiorC - vented * latentHeatJkg(leakingC)) / (outer + inner);
    }
  }
  let fromFront = 0;
  if (surfaceC > boilingC) {
    // Steam vents; what the pool cannot give comes from the meat.
    surfaceC = boilingC;
    const surplus = outer * (gasC - surfaceC) - inner * (surfaceC - interiorC);
    const steam = surplus / latentHeatJkg(surfaceC);
    const fromPool = steam * implicitS <= poolKgM2 ? steam : poolKgM2 / implicitS;
    fromFront = canDry ? steam - fromPool : 0;
    vented = fromPool;
  }
  flows.surfaceC = surfaceC;
  flows.frontC = surfaceC;
  flows.fromAirWm2 = outer * (gasC - surfaceC);
  flows.evaporatingWm2 = (vented + fromFront) * latentHeatJkg(surfaceC);
  flows.intoMeatWm2 = inner * (surfaceC - interiorC);
  flows.wetKgM2S = vented;
  flows.frontKgM2S = fromFront;
  flows.dryShare = 0;
  flows.browning = 0;
}
