/** Foil, rest and hold: film and front stay as they are, juice goes to the pool. */
import { latentHeatJkg } from './heatContent.ts';
import type { Cover } from './parameters.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';

/** Radiation of the foil itself: it is bright [W/(m²·K)]. @source from memory: bright aluminium 0.04–0.07, of it 4 εσT³ at 120 °C */
const FOIL_RADIATION_WM2K = 0.8;

/**
 * Fills `flows`. Inside the wrap the bark is soaked: no dry layer between surface and front.
 *
 * @param wallRiseK of walls that foil sees over the air
 * @param implicitS time over which the pool is implicit
 * @param layerM2KW of a layer on the face
 * @param poolKgM2 from which the stage sets out, with its juice
 * @param effective G_e [W/(m²·K)]
 * @param interiorC T_e
 */
export function solveClosedSurface(
  flows: SurfaceFlows,
  airC: number,
  wallRiseK: number,
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
  let radiantShare = 0;
  const isFoil = cover.kind === 'foil';
  if (isFoil) {
    radiantShare = FOIL_RADIATION_WM2K / (convectionWm2K + FOIL_RADIATION_WM2K);
    outer = 1 / (1 / (convectionWm2K + FOIL_RADIATION_WM2K) + cover.gapM2KW + layerM2KW);
    leakShare = cover.leakShare;
  } else outer = 1 / (1 / cover.transmittanceWm2K + layerM2KW);

  // Air and walls as one temperature: bright foil takes little of what glows.
  const gasC = airC + radiantShare * wallRiseK;
  let surfaceC = (outer * gasC + inner * interiorC) / (outer + inner);
  let vented = 0;
  let perKg = 0;
  if (leakShare > 0 && poolKgM2 > 0 && gasC > interiorC) {
    const cut = outer * (1 - leakShare);
    const leakingC = (cut * gasC + inner * interiorC) / (cut + inner);
    const leak = (leakShare * outer * (gasC - leakingC)) / latentHeatJkg(leakingC);
    if (leak * implicitS <= poolKgM2) {
      surfaceC = leakingC;
      perKg = latentHeatJkg(leakingC);
      vented = leak;
    } else {
      vented = poolKgM2 / implicitS;
      perKg = latentHeatJkg(leakingC);
      surfaceC = (outer * gasC + inner * interiorC - vented * perKg) / (outer + inner);
    }
  }
  let fromFront = 0;
  let spare = 0;
  if (surfaceC > boilingC) {
    // Steam vents; what the pool cannot give comes from the meat.
    surfaceC = boilingC;
    const surplus = outer * (gasC - surfaceC) - inner * (surfaceC - interiorC);
    perKg = latentHeatJkg(surfaceC);
    const steam = surplus / perKg;
    const fromPool = steam * implicitS <= poolKgM2 ? steam : poolKgM2 / implicitS;
    if (canDry) fromFront = steam - fromPool;
    // A piece dried to its middle takes no more than the pool.
    else spare = surplus - fromPool * perKg;
    vented = fromPool;
  }
  flows.surfaceC = surfaceC;
  flows.frontC = surfaceC;
  const fromAir = outer * (gasC - surfaceC) - spare;
  const radiation = radiantShare * fromAir + radiantShare * convectionWm2K * wallRiseK;
  flows.fromAirWm2 = fromAir;
  flows.radiationWm2 = radiation;
  flows.convectionWm2 = isFoil ? fromAir - radiation : 0;
  flows.isParted = isFoil;
  flows.evaporatingWm2 = (vented + fromFront) * perKg;
  flows.intoMeatWm2 = inner * (surfaceC - interiorC);
  flows.wetKgM2S = vented;
  flows.frontKgM2S = fromFront;
  flows.dryShare = 0;
  flows.browning = 0;
}
