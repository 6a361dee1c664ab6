/** Rubs and brines: how much salt gets to the eater, from where, and how deep. */
import type { Said } from '@pitwright/model';
import { type Batch, type BatchLine, batchMassG, batchOf, saltG } from './batch.ts';
import { saltDepthM, saltDiffusivity, saltUptake, saltUptakeTimeS } from './meatSalt.ts';

/** Coating by look, grams per 100 cm² (common practice, no source). */
export const COATINGS = {
  dusting: { low: 0.8, middle: 1.3, high: 2 },
  light: { low: 2, middle: 3, high: 4 },
  full: { low: 4, middle: 5.5, high: 8 },
} as const;
export type Coating = keyof typeof COATINGS;

/** Rub for a surface by its coating [g]. */
export function rubForSurface(
  surfaceM2: number,
  coating: Coating,
): { low: number; middle: number; high: number } {
  const per = COATINGS[coating];
  const patches = surfaceM2 * 100;
  return { low: per.low * patches, middle: per.middle * patches, high: per.high * patches };
}

export interface RubSalt {
  /** Of the rub [1]. */
  readonly saltFraction: number;
  /** Of the edible meat [g per kg]; 8–15 is usual (judgement). */
  readonly saltPerKgEdible: number;
  readonly said: readonly Said[];
}

const USUAL_LOW = 8;
const USUAL_HIGH = 15;

/** Salt of a rub on this meat. @param boneShare of the raw mass, not eaten */
export function rubSalt(
  lines: readonly BatchLine[],
  rubG: number,
  meatKg: number,
  boneShare: number,
): RubSalt {
  const batch = batchOf(lines);
  const saltFraction = saltG(batch) / batchMassG(batch);
  const perKg = (rubG * saltFraction) / (meatKg * (1 - boneShare));
  const params = { salt: { kind: 'fraction', si: perKg / 1000 } } as const;
  const said: Said[] =
    perKg > USUAL_HIGH
      ? [{ id: 'sauce.rub-salty', params }]
      : perKg < USUAL_LOW
        ? [{ id: 'sauce.rub-mild', params }]
        : [{ id: 'sauce.rub-usual', params }];
  return { saltFraction, saltPerKgEdible: perKg, said };
}

export interface DryBrine {
  /** How deep the salt has come [m]. */
  readonly depthM: number;
  /** Of what an evenly salted piece would hold [1]. */
  readonly share: number;
  /** Until nine tenths of it is even [s]. */
  readonly evenS: number;
  readonly said: readonly Said[];
}

const EVEN = 0.9;
/** Salted through, for what a cook calls through. */
const THROUGH = 0.75;

/** Salt rubbed on both faces of a piece and left in the cold. */
export function dryBrine(thicknessM: number, timeS: number, temperatureC = 5): DryBrine {
  const diffusivity = saltDiffusivity(temperatureC);
  const share = saltUptake(thicknessM, 'both', diffusivity, timeS);
  const depthM = saltDepthM(diffusivity, timeS);
  const depth = { kind: 'length', si: Math.min(depthM, thicknessM / 2) } as const;
  return {
    depthM,
    share,
    evenS: saltUptakeTimeS(thicknessM, 'both', diffusivity, EVEN),
    said: [{ id: share >= THROUGH ? 'sauce.brine-through' : 'sauce.brine-outside', params: { depth } }],
  };
}

const saidOfStrength = (saltKg: number, waterKg: number): Said[] =>
  saltKg / ((waterKg + saltKg) / 1000) > NEUTRAL_KG_M3 ? [{ id: 'sauce.brine-draws-water' }] : [];

export interface BrineRecipe {
  readonly saltG: number;
  /** In the water before the meat goes in [1]. */
  readonly strength: number;
  /** To half and nine tenths of the goal [s]. */
  readonly halfS: number;
  readonly nineTenthsS: number;
  readonly said: readonly Said[];
}

/** Brines stronger than this draw water out of meat, weaker ones plump it. @source Springer chapter on meat salting, abstract (pork loin) */
const NEUTRAL_KG_M3 = 200;
const WATER_FRACTION = 0.72;

/**
 * Salt for a wet brine that ends at `target` in the water of meat and brine together, whatever the time.
 *
 * @param target  mass fraction in the water phase, 0.005 to 0.05
 */
export function equilibriumBrine(
  meatKg: number,
  waterKg: number,
  target: number,
  thicknessM: number,
  temperatureC = 4,
): BrineRecipe {
  if (!(target > 0 && target < 0.1)) throw new RangeError(`target must be in (0, 0.1), got ${target}`);
  if (!(meatKg > 0 && waterKg > 0)) throw new RangeError('meatKg and waterKg must be above 0');
  const saltKg = (target * (meatKg * WATER_FRACTION + waterKg)) / (1 - target);
  const diffusivity = saltDiffusivity(temperatureC);
  const strength = saltKg / (saltKg + waterKg);
  return {
    saltG: saltKg * 1000,
    strength,
    halfS: saltUptakeTimeS(thicknessM, 'both', diffusivity, 0.5),
    nineTenthsS: saltUptakeTimeS(thicknessM, 'both', diffusivity, EVEN),
    said: saidOfStrength(saltKg, waterKg),
  };
}

export interface BrineMade {
  readonly saltG: number;
  readonly waterKg: number;
  /** Salt of the brine itself [1]. */
  readonly strength: number;
  /** Salt in the water of meat and brine once even [1]; missing where no meat is in it. */
  readonly evenAt?: number;
  readonly nineTenthsS: number;
  readonly said: readonly Said[];
}

/**
 * What a brine as it is made does to the meat that lies in it.
 *
 * @param batch  the brine
 * @param meatKg  raw, in all
 * @param thicknessM  of the thickest place
 */
export function brineOf(batch: Batch, meatKg: number, thicknessM: number, temperatureC = 4): BrineMade {
  const salt = saltG(batch) / 1000;
  const waterKg = batch.waterG / 1000;
  return {
    saltG: salt * 1000,
    waterKg,
    strength: salt / (salt + waterKg),
    ...(meatKg > 0 && { evenAt: salt / (meatKg * WATER_FRACTION + waterKg + salt) }),
    nineTenthsS: saltUptakeTimeS(thicknessM, 'both', saltDiffusivity(temperatureC), EVEN),
    said: saidOfStrength(salt, waterKg),
  };
}

/**
 * Salt that meat has taken from a wet brine after a time [kg]: what it would hold once even, by how far it has come.
 *
 * @param meatKg raw, in all
 * @param thicknessM of the thickest place, wet on both faces
 */
export function saltFromBrineKg(
  brine: { readonly saltKg: number; readonly waterKg: number },
  meatKg: number,
  thicknessM: number,
  timeS: number,
  temperatureC = 4,
): number {
  const meatWaterKg = meatKg * WATER_FRACTION;
  const evenAt = brine.saltKg / (meatWaterKg + brine.waterKg + brine.saltKg);
  return saltUptake(thicknessM, 'both', saltDiffusivity(temperatureC), timeS) * evenAt * meatWaterKg;
}

/** One source of salt and what share of it ends up eaten. */
export interface SaltSource {
  readonly name: 'rub' | 'brine' | 'spritz' | 'glaze' | 'table' | 'enhanced';
  readonly saltG: number;
  readonly eatenShare: number;
}

/** Shares that stay on the meat (judgement): some rub falls off or runs down, much of a spritz drips. */
export const EATEN_SHARE: Readonly<Record<SaltSource['name'], number>> = {
  rub: 0.9,
  brine: 1,
  spritz: 0.5,
  glaze: 0.87,
  table: 1,
  enhanced: 1,
};

export interface SaltAtTable {
  readonly totalG: number;
  readonly perKgEdible: number;
  readonly perServingG: number;
  readonly parts: readonly { readonly name: SaltSource['name']; readonly eatenG: number }[];
  readonly said: readonly Said[];
}

/** Over this the sum is salty (judgement: 18 g per kg as served). */
const SALTY_PER_KG = 18;

/** All the salt that the eater gets. @param edibleKg cooked, without bone */
export function saltAtTable(sources: readonly SaltSource[], edibleKg: number, servings: number): SaltAtTable {
  const parts = sources.map(({ name, saltG: grams, eatenShare }) => ({ name, eatenG: grams * eatenShare }));
  const totalG = parts.reduce((sum, part) => sum + part.eatenG, 0);
  const perKgEdible = totalG / edibleKg;
  const most = [...parts].sort((a, b) => b.eatenG - a.eatenG)[0];
  return {
    totalG,
    perKgEdible,
    perServingG: totalG / servings,
    parts,
    said:
      perKgEdible > SALTY_PER_KG && most !== undefined
        ? [
            {
              id: 'sauce.salt-adds-up',
              params: { salt: { kind: 'fraction', si: perKgEdible / 1000 }, part: most.name },
            },
          ]
        : [],
  };
}
