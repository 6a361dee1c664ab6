/**
 * The open surface, bare or under paper: outer side T_s and front T_f by Newton with the exact Jacobian, the interior
 * already eliminated, q = G_e (T_f − T_e).
 */
import { LATENT_SLOPE, latentHeatJkg } from './heatContent.ts';
import type { Cover, MeatParameters, Surroundings } from './parameters.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';
import { temperaturePower08 } from './tables.ts';
import { EvaporationDrive } from './vapour.ts';

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const power08 = temperaturePower08;
const latentHeat = latentHeatJkg;
const LATENT_PER_K = LATENT_SLOPE;

const STEFAN_BOLTZMANN = 5.670374419e-8;
const SPECIFIC_HEAT_GAS = 1030;
/** 0.85^(−2/3): Lewis factor of water vapour in air. */
const LEWIS = 1.1144254;
const GAS_CONSTANT_AIR = 287.05;
/** Diffusivity of vapour in air at 25 °C [m²/s]. */
const DIFFUSIVITY_25C = 2.6e-5;
const BARK_RESISTANCE_FLOOR_M = 1e-6;
const NEWTON_CAP_K = 12;
const NEWTON_CLOSE_K = 1e-6;
/** Below the boiling point by so much, so that the drive stays finite [K]. */
const BELOW_BOILING_K = 0.02;

export class OpenSurface {
  readonly #drive = new EvaporationDrive();

  /**
   * Fills `flows`, which holds the first guess of T_s and T_f.
   *
   * @param filmKgM2 at the begin
   * @param barkM thickness of the bark
   * @param effective G_e [W/(m²·K)]
   * @param interiorC T_e
   */
  solve(
    flows: SurfaceFlows,
    piece: MeatParameters,
    stepS: number,
    around: Surroundings,
    cover: Extract<Cover, { kind: 'open' }>,
    boilingC: number,
    filmKgM2: number,
    barkM: number,
    canDry: boolean,
    effective: number,
    interiorC: number,
  ): void {
    const barkConductance = piece.barkConductivityWmK / Math.max(barkM, BARK_RESISTANCE_FLOOR_M);
    const drive = this.#drive;
    drive.configure(around.pressurePa, around.humidityRatio, cover.waterActivity);
    const share = piece.evaporatingShare;
    const perMass = SPECIFIC_HEAT_GAS / (around.convectionWm2K * LEWIS);
    // 1/ρ = 287.05 T/P
    const paper = (cover.vapourResistanceSM * GAS_CONSTANT_AIR) / around.pressurePa;
    const sealing = 1 + (barkM / piece.barkSealingM) * (barkM / piece.barkSealingM);
    const throughBark =
      (sealing * barkM * GAS_CONSTANT_AIR * 298.15) /
      (around.pressurePa * piece.barkOpenness * DIFFUSIVITY_25C);
    const reserve = piece.filmReserveKgM2;
    const convection = around.convectionWm2K;
    const radiant = 4 * STEFAN_BOLTZMANN * piece.emissivity * cover.radiationShare;
    const wallC = around.wallC;
    const highestFrontC = boilingC - BELOW_BOILING_K;

    let { surfaceC, frontC } = flows;
    let fromAir = 0;
    let filmFlow = 0;
    let frontFlow = 0;
    let dryShare = 0;
    for (let iteration = 0; iteration < 30; iteration++) {
      const meanK = 0.5 * (surfaceC + wallC) + 273.15;
      const hr = radiant * meanK * meanK * meanK;
      const dhr = (1.5 * hr) / meanK;
      const outer = convection + hr;
      const supply = convection * around.gasC + hr * wallC - outer * surfaceC;
      const cut = 1 + cover.heatResistanceM2KW * outer;
      fromAir = supply / cut;
      const dFromAir = (dhr * (wallC - surfaceC) - outer - fromAir * cover.heatResistanceM2KW * dhr) / cut;

      drive.at(surfaceC);
      const filmResistance = perMass + paper * (surfaceC + 273.15);
      const potential = drive.value / filmResistance;
      const dPotential = (drive.slope - potential * paper) / filmResistance;
      let wetness = 1;
      let dWetness = 0;
      if (potential > 0) {
        const needed = reserve + stepS * potential;
        if (filmKgM2 < needed) {
          wetness = filmKgM2 / needed;
          dWetness = (-wetness * stepS * dPotential) / needed;
        }
      }
      dryShare = 1 - wetness;
      // Steam condenses on fat and bone side too.
      const open = potential > 0 ? share : 1;
      filmFlow = wetness * open * potential;
      const dFilmFlow = open * (wetness * dPotential + dWetness * potential);

      frontFlow = 0;
      let dFrontBySurface = 0;
      let dFrontByFront = 0;
      if (canDry && wetness < 1) {
        drive.at(frontC);
        if (drive.value > 0) {
          const frontK = frontC + 273.15;
          const barkTerm = throughBark / power08(frontK);
          const resistance = perMass + paper * frontK + barkTerm;
          const flow = (share * drive.value) / resistance;
          const dResistance = paper - (0.8 * barkTerm) / frontK;
          frontFlow = (1 - wetness) * flow;
          dFrontBySurface = -dWetness * flow;
          dFrontByFront = ((1 - wetness) * (share * drive.slope - flow * dResistance)) / resistance;
        }
      }
      const latentSurface = latentHeat(surfaceC);
      const latentFront = latentHeat(frontC);
      const throughBarkHeat = barkConductance * (surfaceC - frontC);
      const intoMeat = effective * (frontC - interiorC);
      const r1 = fromAir - latentSurface * filmFlow - throughBarkHeat;
      const r2 = throughBarkHeat - latentFront * frontFlow - intoMeat;
      const a11 = dFromAir + LATENT_PER_K * filmFlow - latentSurface * dFilmFlow - barkConductance;
      const a12 = barkConductance;
      const a21 = barkConductance - latentFront * dFrontBySurface;
      const a22 = -barkConductance + LATENT_PER_K * frontFlow - latentFront * dFrontByFront - effective;
      const determinant = a11 * a22 - a12 * a21;
      let dSurface = (-r1 * a22 + r2 * a12) / determinant;
      let dFront = (-r2 * a11 + r1 * a21) / determinant;
      dSurface = dSurface > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dSurface, -NEWTON_CAP_K);
      dFront = dFront > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dFront, -NEWTON_CAP_K);
      surfaceC += dSurface;
      frontC += dFront;
      if (frontC > highestFrontC) frontC = highestFrontC;
      if (
        dSurface < NEWTON_CLOSE_K &&
        dSurface > -NEWTON_CLOSE_K &&
        ((dFront < NEWTON_CLOSE_K && dFront > -NEWTON_CLOSE_K) || frontC === highestFrontC)
      )
        break;
    }
    flows.surfaceC = surfaceC;
    flows.frontC = frontC;
    flows.fromAirWm2 = fromAir;
    flows.evaporatingWm2 = latentHeat(surfaceC) * filmFlow + latentHeat(frontC) * frontFlow;
    flows.intoMeatWm2 = effective * (frontC - interiorC);
    flows.wetKgM2S = filmFlow;
    flows.frontKgM2S = frontFlow;
    flows.dryShare = dryShare;
  }
}
