/**
 * Thickness of a sauce as a yield-stress fluid, τ = τ0 + K γ̇ⁿ, from its pulp and its syrup.
 * A priori ±40 % in τ0; one plate test leaves ±15 %.
 */
import { GAS_CONSTANT_JMOLK } from '../numeric/constants.ts';
import { exp, pow } from '../numeric/elementary.ts';
import { type Batch, batchMassG } from './batch.ts';
import { effectiveBrix } from './solution.ts';
import { sucroseViscosityMPas } from './syrup.ts';

const REFERENCE_K = 298.15;

/** Reference ketchup at 25 °C. @source Higgs & Norrington (1971), as tabulated in food rheology handbooks, from memory */
const KETCHUP_YIELD_PA = 32;
const KETCHUP_CONSISTENCY = 18.7;
const KETCHUP_INDEX = 0.27;
/** Serum of ketchup at 25 °C [mPa·s]. */
const KETCHUP_SERUM_MPAS = 13.5;
/** From the same ketchup, 25 to 95 °C. */
const YIELD_ACTIVATION_J_PER_MOL = 14500;
const YIELD_EXPONENT = 2.6;
const CONSISTENCY_EXPONENT = 2.2;
/** Pectin of tomato thickens the serum: f = 1 + 3.8 P, from serum 12–15 mPa·s. */
const PECTIN = 3.8;
/** Below this pulp index n climbs straight to 1. */
const FULL_PULP = 0.4;
const NO_PULP = 0.15;
/** The syrup equation ends at 80 % solids. */
const HIGHEST_BRIX = 80;

export interface Rheology {
  /** τ0 [Pa] */
  readonly yieldStressPa: number;
  /** K [Pa·sⁿ] */
  readonly consistency: number;
  /** n [1] */
  readonly index: number;
}

/** τ0(T)/τ0(25 °C): 4.6 times as much at 5 °C as at 95 °C. */
const yieldTemperatureFactor = (temperatureC: number): number =>
  exp((YIELD_ACTIVATION_J_PER_MOL / GAS_CONSTANT_JMOLK) * (1 / (temperatureC + 273.15) - 1 / REFERENCE_K));

function flowIndex(pulpIndex: number): number {
  if (pulpIndex >= FULL_PULP) return KETCHUP_INDEX;
  if (pulpIndex <= NO_PULP) return 1;
  return 1 + ((KETCHUP_INDEX - 1) * (pulpIndex - NO_PULP)) / (FULL_PULP - NO_PULP);
}

/**
 * Thickness from pulp index, effective Brix and temperature.
 *
 * @param pulpIndex  P, ketchup 1; 0 to 4
 * @param brix  [g per 100 g], 0 to 80; in a syrup without pulp the serum carries the whole viscosity
 * @param factor  what a plate test found over what was foreseen
 * @source exponents near 2.5 follow practice with tomato concentrates (from memory)
 */
export function sauceRheology(pulpIndex: number, brix: number, temperatureC: number, factor = 1): Rheology {
  const serum =
    sucroseViscosityMPas(Math.min(brix, HIGHEST_BRIX) / 100, temperatureC) * (1 + PECTIN * pulpIndex);
  const index = flowIndex(pulpIndex);
  return {
    yieldStressPa:
      factor * KETCHUP_YIELD_PA * pow(pulpIndex, YIELD_EXPONENT) * yieldTemperatureFactor(temperatureC),
    consistency:
      factor *
      KETCHUP_CONSISTENCY *
      pow(pulpIndex, CONSISTENCY_EXPONENT) *
      pow(serum / KETCHUP_SERUM_MPAS, index),
    index,
  };
}

/** Pulp potency over mass [1]. */
export const pulpIndex = (b: Batch): number => b.pulpG / batchMassG(b);

/** Weak acid and heat take about half of what starch gives; a gum keeps all of it (judgement). */
const THICKENER_LEFT = 0.55;

/**
 * Thickness of a batch: pulp and syrup, the bare syrup's own viscosity where there is hardly any pulp, and what
 * starch and gums add.
 */
export function batchRheology(b: Batch, temperatureC: number, factor = 1): Rheology {
  const p = pulpIndex(b);
  const brix = effectiveBrix(b);
  const pulpy = sauceRheology(p, brix, temperatureC, factor);
  const syrupPas = sucroseViscosityMPas(Math.min(brix, HIGHEST_BRIX) / 100, temperatureC) / 1000;
  const thickenerPa = (THICKENER_LEFT * b.thickenerPaG) / batchMassG(b);
  return {
    yieldStressPa: pulpy.yieldStressPa + factor * thickenerPa * yieldTemperatureFactor(temperatureC),
    consistency: Math.max(pulpy.consistency, syrupPas),
    index: pulpy.index,
  };
}

/** Shear stress over shear rate [Pa·s]. */
export const apparentViscosity = (r: Rheology, shearRate: number): number =>
  shearStress(r, shearRate) / shearRate;
/** [Pa] */
export const shearStress = (r: Rheology, shearRate: number): number =>
  r.yieldStressPa + r.consistency * pow(shearRate, r.index);

/** Newtonian shear rate at the wall of a round spout, 4Q/(πr³) [1/s]. */
export const wallShearRate = (flowM3PerS: number, radiusM: number): number =>
  (4 * flowM3PerS) / (Math.PI * radiusM * radiusM * radiusM);
