/**
 * The open surface, bare or under paper: outer side T_s and front T_f by Newton with the exact Jacobian, the interior
 * already eliminated, q = G_e (T_f − T_e).
 */
import { STEFAN_BOLTZMANN } from '../numeric/constants.ts';
import { LATENT_SLOPE, latentHeatJkg } from './heatContent.ts';
import type { Cover, Face, MeatParameters, Surroundings } from './parameters.ts';
import type { SurfaceFlows } from './surfaceFlows.ts';
import { temperaturePower08 } from './tables.ts';
import { EvaporationDrive } from './vapour.ts';

// An imported name is looked up at every use where modules are not bundled; the loop reads its own.
const power08 = temperaturePower08;
const latentHeat = latentHeatJkg;
const LATENT_PER_K = LATENT_SLOPE;

const SPECIFIC_HEAT_GAS = 1030;
/** 0.85^(−2/3): Lewis factor of water vapour in air. */
const LEWIS = 1.1144254;
const GAS_CONSTANT_AIR = 287.05;
/** Diffusivity of vapour in air at 25 °C [m²/s]. */
const DIFFUSIVITY_25C = 2.6e-5;
const BARK_RESISTANCE_FLOOR_M = 1e-8;
const NEWTON_CAP_K = 12;
/** After a last step this small, taken linearly in the flows too, what is left is below 10⁻⁷ K. */
const NEWTON_CLOSE_K = 1e-3;
/** Enough for a crust that comes from the coals, 500 K above what it ends at. */
const MOST_ITERATIONS = 60;
/** Below the boiling point by so much, so that the drive stays finite [K]. */
const BELOW_BOILING_K = 0.02;

export class OpenSurface {
  readonly #drive = new EvaporationDrive();
  #share = 0;
  #reserve = 0;
  #convection = 0;
  #radiant = 0;
  #heatResistance = 0;
  #gasFilm = 0;
  #paper = 0;
  #throughBark = 0;
  #barkConductance = 0;
  #canDry = false;
  #highestFrontC = 0;

  /** What stays as it is within a step. @param barkM thickness of the bark @param canDry the front may move */
  configure(
    piece: MeatParameters,
    face: Face,
    around: Surroundings,
    cover: Extract<Cover, { kind: 'open' }>,
    boilingC: number,
    barkM: number,
    canDry: boolean,
  ): void {
    this.#drive.configure(around.pressurePa, around.humidityRatio, cover.waterActivity);
    this.#share = face.evaporatingShare;
    this.#reserve = piece.filmReserveKgM2;
    this.#convection = face.convectionShare * around.convectionWm2K;
    this.#radiant = 4 * STEFAN_BOLTZMANN * piece.emissivity * cover.radiationShare;
    this.#heatResistance = cover.heatResistanceM2KW + face.layerM2KW;
    this.#gasFilm = SPECIFIC_HEAT_GAS / (this.#convection * LEWIS);
    // 1/ρ = 287.05 T/P
    this.#paper = (cover.vapourResistanceSM * GAS_CONSTANT_AIR) / around.pressurePa;
    const sealing = barkM / piece.barkSealingM;
    this.#throughBark =
      ((1 + sealing * sealing) * barkM * GAS_CONSTANT_AIR * 298.15) /
      (around.pressurePa * piece.barkOpenness * DIFFUSIVITY_25C);
    this.#barkConductance = piece.barkConductivityWmK / Math.max(barkM, BARK_RESISTANCE_FLOOR_M);
    this.#canDry = canDry;
    this.#highestFrontC = boilingC - BELOW_BOILING_K;
  }

  /**
   * Fills `flows`, which holds the first guess of T_s and T_f.
   *
   * @param implicitS time over which the film is implicit
   * @param filmKgM2 from which the stage sets out, with its juice
   * @param effective G_e [W/(m²·K)]
   * @param interiorC T_e
   */
  solve(
    flows: SurfaceFlows,
    gasC: number,
    wallC: number,
    implicitS: number,
    filmKgM2: number,
    effective: number,
    interiorC: number,
  ): void {
    const drive = this.#drive;
    const share = this.#share;
    const reserve = this.#reserve;
    const convection = this.#convection;
    const radiant = this.#radiant;
    const heatResistance = this.#heatResistance;
    const gasFilm = this.#gasFilm;
    const paper = this.#paper;
    const throughBark = this.#throughBark;
    const barkConductance = this.#barkConductance;
    const canDry = this.#canDry;
    const highestFrontC = this.#highestFrontC;

    let surfaceC = flows.surfaceC;
    let frontC = flows.frontC;
    let fromAir = 0;
    let filmFlow = 0;
    let frontFlow = 0;
    let dryShare = 0;
    for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
      const meanK = 0.5 * (surfaceC + wallC) + 273.15;
      const squareK = meanK * meanK;
      const hr = radiant * squareK * meanK;
      const dhr = 1.5 * radiant * squareK;
      const outer = convection + hr;
      const cut = 1 / (1 + heatResistance * outer);
      fromAir = (convection * gasC + hr * wallC - outer * surfaceC) * cut;
      const dFromAir = (dhr * (wallC - surfaceC) - outer - fromAir * heatResistance * dhr) * cut;

      drive.at(surfaceC);
      const perFilm = 1 / (gasFilm + paper * (surfaceC + 273.15));
      const potential = drive.value * perFilm;
      const dPotential = (drive.slope - potential * paper) * perFilm;
      let wetness = 1;
      let dWetness = 0;
      if (potential > 0) {
        const needed = reserve + implicitS * potential;
        if (filmKgM2 < needed) {
          wetness = filmKgM2 / needed;
          dWetness = (-wetness * implicitS * dPotential) / needed;
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
          const perResistance = 1 / (gasFilm + paper * frontK + barkTerm);
          const flow = share * drive.value * perResistance;
          const dResistance = paper - (0.8 * barkTerm) / frontK;
          frontFlow = dryShare * flow;
          dFrontBySurface = -dWetness * flow;
          dFrontByFront = dryShare * (share * drive.slope - flow * dResistance) * perResistance;
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
      const perDeterminant = 1 / (a11 * a22 - a12 * a21);
      let dSurface = (r2 * a12 - r1 * a22) * perDeterminant;
      let dFront = (r1 * a21 - r2 * a11) * perDeterminant;
      dSurface = dSurface > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dSurface, -NEWTON_CAP_K);
      dFront = dFront > NEWTON_CAP_K ? NEWTON_CAP_K : Math.max(dFront, -NEWTON_CAP_K);
      if (frontC + dFront > highestFrontC) dFront = highestFrontC - frontC;
      surfaceC += dSurface;
      frontC += dFront;
      if (
        dSurface < NEWTON_CLOSE_K &&
        dSurface > -NEWTON_CLOSE_K &&
        dFront < NEWTON_CLOSE_K &&
        dFront > -NEWTON_CLOSE_K
      ) {
        fromAir += dFromAir * dSurface;
        filmFlow += dFilmFlow * dSurface;
        frontFlow += dFrontBySurface * dSurface + dFrontByFront * dFront;
        dryShare -= dWetness * dSurface;
        break;
      }
    }
    // The film cannot give more than there is, whatever the rounding.
    if (filmFlow * implicitS > filmKgM2 && filmFlow > 0) filmFlow = filmKgM2 > 0 ? filmKgM2 / implicitS : 0;
    const intoMeat = effective * (frontC - interiorC);
    // A cover or a layer in series passes the heat on: its outer side is the warmer by its resistance.
    let byConvection = convection * (gasC - surfaceC - heatResistance * fromAir);
    if (frontC >= highestFrontC) {
      // A front held under the boiling point takes no more than it conducts on and the bark lets through.
      const taken = latentHeat(surfaceC) * filmFlow + latentHeat(frontC) * frontFlow + intoMeat;
      byConvection *= taken / fromAir;
      fromAir = taken;
    }
    flows.surfaceC = surfaceC;
    flows.frontC = frontC;
    flows.fromAirWm2 = fromAir;
    flows.convectionWm2 = byConvection;
    flows.radiationWm2 = fromAir - byConvection;
    flows.isParted = true;
    flows.evaporatingWm2 = latentHeat(surfaceC) * filmFlow + latentHeat(frontC) * frontFlow;
    flows.intoMeatWm2 = intoMeat;
    flows.wetKgM2S = filmFlow;
    flows.frontKgM2S = frontFlow;
    flows.dryShare = dryShare;
  }
}
