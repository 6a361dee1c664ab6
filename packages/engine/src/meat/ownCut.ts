/**
 * A cut that the catalogue does not have, from what a person can measure: its sides for size and shape, skin and fat by
 * eye for its faces and its composition, all else from the nearest cut of the catalogue.
 */
import type { OwnFat } from '@pitwright/model';
import { finiteVolumeExponent } from '../heat/dimensionality.ts';
import type { Cut } from './cut.ts';
import { mix } from './cutFamilies.ts';
import type { Composition } from './tables.ts';

export interface OwnSides {
  readonly lengthM: number;
  readonly widthM: number;
  /** At the thickest place [m]. */
  readonly thicknessM: number;
  readonly massKg?: number;
  readonly hasSkin?: boolean;
  readonly fat?: OwnFat;
}

/** U L/k of an unwrapped piece of 30–60 mm half thickness: 8–15 W/m²K, 0.45 W/mK. */
const BIOT = 1;
/** Of the block round it, where nobody weighed it. @source from memory: brisket 0.4, shoulder 0.6, racks near 1 */
const FILLS = 0.65;
const MEAT_KG_M3 = 1060;
/** Nobody has cooked it before: as for cuts known by their ruler alone. */
const LEVEL_SD_LN = 0.06;

/** Fat of the meat without bone and skin. @source USDA tables from memory: brisket flat 7 %, shoulder 17 %, point and spareribs 24 % */
const FAT_SHARE: Readonly<Record<OwnFat, number>> = { lean: 0.07, marbled: 0.17, fat: 0.26 };
/** Bone of a cut whose nearest has none, where it is told to have. @source from memory: 9 (shoulder) to 30 % (ribs) */
const BONE_SHARE = 0.15;

/** Skin lets little through. @source calibrated on legs and hams, and on birds; without it as big cuts, as a skinned breast */
const OPEN_FACE = {
  skin: { meat: 0.6, poultry: 0.54 },
  bare: { meat: 0.92, poultry: 0.75 },
} as const;
const JUICE_OUT = { skin: 0.37, bare: 0.57 } as const;

/** More or less fat, the lean in it as it was. */
function withFat({ water, protein, fat, ash }: Composition, share: number): Composition {
  const lean = (1 - share) / (1 - fat);
  return mix(water * lean, protein * lean, share, ash * lean);
}

function faces(like: Cut, hasSkin: boolean | undefined): Partial<Cut> {
  // The bones of a rack lie on one side, whatever is told of skin.
  if (hasSkin === undefined || like.tissue.endsWith('ribs')) return {};
  const side = hasSkin ? 'skin' : 'bare';
  return {
    evaporatingShare: OPEN_FACE[side][like.isPoultry ? 'poultry' : 'meat'],
    ...(like.isPoultry && { juiceToSurfaceShare: JUICE_OUT[side] }),
  };
}

/** The cut as its owner measured it. @param like nearest of the catalogue */
export function ownCut(like: Cut, sides: OwnSides): Cut {
  const { lengthM, widthM, thicknessM } = sides;
  return {
    ...like,
    ...faces(like, sides.hasSkin),
    id: 'own',
    composition: sides.fat ? withFat(like.composition, FAT_SHARE[sides.fat]) : like.composition,
    // As thick as its ruler says: a mass adds nothing to that here.
    massKg: sides.massKg ?? FILLS * MEAT_KG_M3 * lengthM * widthM * thicknessM,
    halfThicknessM: (like.rulerFactor * thicknessM) / 2,
    dimensionality: finiteVolumeExponent('brick', widthM / thicknessM, lengthM / thicknessM, BIOT),
    boneShare: like.boneShare || BONE_SHARE,
    fitSdLn: LEVEL_SD_LN,
  };
}
