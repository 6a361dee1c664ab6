import { cbrt, exp, log } from '../numeric/elementary.ts';
import type { Cut } from './cut.ts';

export interface PieceSize {
  /** Raw, with its bone [kg]. */
  readonly massKg: number;
  /** Of the model [m]. */
  readonly halfThicknessM: number;
  /** Doubt of ln(half thickness) of this piece. */
  readonly sdLn: number;
  /** Pieces that it is cooked as: a shoulder above 5.7 kg is two in one. */
  readonly lumps: number;
}

export const RULER_SD_LN = 0.06;
const RULER_WEIGHT = 3;
/** A "butt" above this is two muscles that cook side by side [kg]. @source fitted on measured cooks; calibration */
const ONE_SHOULDER_KG = 5.7;

/** Size of a piece from what a person can tell: mass, thickest place, both, or neither. */
export function pieceSize(cut: Cut, massKg: number | undefined, thicknessM: number | undefined): PieceSize {
  const lumps = cut.id === 'pork-shoulder' && massKg !== undefined && massKg > ONE_SHOULDER_KG ? 2 : 1;
  const fromMass = (kg: number): number => cut.halfThicknessM * cbrt(kg / lumps / cut.massKg);
  if (thicknessM === undefined)
    return {
      massKg: massKg ?? cut.massKg,
      halfThicknessM: fromMass(massKg ?? cut.massKg),
      sdLn: massKg === undefined ? cut.untoldSdLn : cut.massOnlySdLn,
      lumps,
    };
  const fromRuler = (cut.rulerFactor * thicknessM) / 2;
  if (massKg === undefined) {
    const ratio = fromRuler / cut.halfThicknessM;
    return {
      massKg: cut.massKg * ratio * ratio * ratio,
      halfThicknessM: fromRuler,
      sdLn: RULER_SD_LN,
      lumps,
    };
  }
  const mean = (RULER_WEIGHT * log(fromRuler) + log(fromMass(massKg))) / (RULER_WEIGHT + 1);
  return { massKg, halfThicknessM: exp(mean), sdLn: RULER_SD_LN, lumps };
}
