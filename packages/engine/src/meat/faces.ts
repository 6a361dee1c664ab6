/**
 * Unlike faces: a rack is open meat on one side and bones under a membrane on the other; a belly has its skin side, a
 * brisket its fat cap. Both faces are stepped, each with its own share that dries (solver.ts).
 *
 * The fit knows one share A_f for the whole piece. The open face dries fully, the other one so much that the piece takes
 * the time that was fitted: s = 2 A_f − 1 + 0.8 (1 − A_f)², a little above what gives the same mean, for a face that
 * dries half as much warms sooner by less than it saves. What is told of the other face moves s.
 *
 * @source s of racks 0.3 to 0.5, common practice, no source: the membrane holds water back, bare intercostal meat does
 * not; untold lies near pulled off, as most racks are (calibration: the fitted share of racks gives 0.47)
 */
import type { FireSide } from '@pitwright/model';
import type { Cut } from './cut.ts';
import type { Face, MeatParameters } from './parameters.ts';

/** What a person tells of the other face. */
export interface OtherFaceTold {
  /** Racks: the membrane is left on. */
  readonly hasMembrane?: boolean;
  /** Brisket: fat left on one side [m], 0 trimmed bare. */
  readonly fatCapM?: number;
}

/** How far the membrane left on lowers s of a rack, and pulled off raises it: to 0.32 and 0.5. */
const MEMBRANE_ON = -0.15;
const MEMBRANE_OFF = 0.03;
/** Of the piece of one body whose faces are to take its time, from loin back to plate ribs at 107–135 °C within 0.4 %. */
const TIME_KEPT = 0.8;
/**
 * Cap of a brisket as usually trimmed, which fitted thickness and share stand for; only what is thicker is a layer of its
 * own, in the place of meat [m]. @source common practice, no source: 6 mm
 */
const USUAL_CAP_M = 6e-3;
/** Of fat [W/(m·K)], [J/(m³·K)]: 925 kg/m³ × (2.2 kJ/(kg·K) + melting, 100 J/g, over the 88 K from fridge to done). @source Choi & Okos 1986; melting from memory */
const FAT_CONDUCTIVITY = 0.17;
const FAT_CAPACITY = 925 * (2200 + 100e3 / 88);

const SHEETS_WITH_BONE_SIDE: ReadonlySet<string> = new Set(['lamb-rack', 'lamb-breast']);

/** Slabs of ribs; strips of cartilage and lamb ribs carry no membrane that matters. */
export const hasMembrane = (cut: Cut): boolean => cut.tissue.endsWith('ribs') && cut.id !== 'rib-tips';
/** Flat enough that the side with the fat is a face of its own, and sold with it. */
export const hasFatCap = (cut: Cut): boolean => cut.id.startsWith('brisket-');
/** Its sides are unlike though nothing is told. */
export const hasUnlikeFaces = (cut: Cut): boolean =>
  hasMembrane(cut) || SHEETS_WITH_BONE_SIDE.has(cut.id) || cut.id === 'pork-belly';

/** What the face is that is not open meat; `other-side` where nothing but what lies round it makes it another. */
export type OtherSide = 'bone-side' | 'fat-side' | 'skin-side' | 'other-side';

/** Of a piece whose faces are unlike. */
export function otherSideOf(cut: Cut): OtherSide {
  if (hasMembrane(cut) || SHEETS_WITH_BONE_SIDE.has(cut.id)) return 'bone-side';
  if (cut.isPoultry) return 'bone-side';
  if (hasFatCap(cut)) return 'fat-side';
  return cut.id === 'pork-belly' ? 'skin-side' : 'other-side';
}

/**
 * The faces of a piece and what of its half thickness is meat.
 *
 * @param share A_f, mean of the faces
 * @param halfThicknessM with the fat on it
 */
export function facesOf(
  cut: Cut,
  share: number,
  halfThicknessM: number,
  told: OtherFaceTold,
): Pick<MeatParameters, 'evaporatingShare' | 'halfThicknessM' | 'otherFace'> {
  const capM = hasFatCap(cut) ? told.fatCapM : undefined;
  if (capM === undefined && !hasUnlikeFaces(cut)) return { evaporatingShare: share, halfThicknessM };
  const dry = 1 - share;
  const other = 1 - 2 * dry + TIME_KEPT * dry * dry;
  // So little dries that the open face must fall short as well.
  const evaporatingShare = other < 0 ? 1 + other : 1;
  if (capM === undefined) {
    const isTold = hasMembrane(cut) && told.hasMembrane !== undefined;
    const shift = isTold ? (told.hasMembrane ? MEMBRANE_ON : MEMBRANE_OFF) : 0;
    return { evaporatingShare, halfThicknessM, otherFace: bareFace(clamp(other + shift)) };
  }
  // A bare side dries like the other one, and the thicker the cap the less; the usual cap is in the fit.
  const dries = clamp(1 - (1 - other) * (capM / USUAL_CAP_M));
  const overM = Math.min(Math.max(capM - USUAL_CAP_M, 0), halfThicknessM);
  return {
    evaporatingShare,
    halfThicknessM: halfThicknessM - 0.5 * overM,
    otherFace: {
      ...bareFace(dries),
      layerM2KW: overM / FAT_CONDUCTIVITY,
      layerJM2K: overM * FAT_CAPACITY,
    },
  };
}

const bareFace = (evaporatingShare: number): Face => ({
  evaporatingShare,
  layerM2KW: 0,
  layerJM2K: 0,
  convectionShare: 1,
});

const BACKS: Readonly<Record<OtherSide, FireSide | 'other'>> = {
  'bone-side': 'bone',
  'fat-side': 'fat',
  'skin-side': 'skin',
  'other-side': 'other',
};
/** The same in the words for a side that lies over coals. */
export const backOf = (cut: Cut): FireSide | 'other' => BACKS[otherSideOf(cut)];

/** Both faces of a piece, though they are alike: one of them is to see the coals. */
export const withBothFaces = (meat: MeatParameters): MeatParameters =>
  meat.otherFace ? meat : { ...meat, otherFace: bareFace(meat.evaporatingShare) };

/** Whether that side is the open face, whose bark and colour are told: a bird's skin, the meat of anything else. */
export const isOpenFace = (cut: Cut, side: FireSide): boolean => side === (cut.isPoultry ? 'skin' : 'meat');

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
