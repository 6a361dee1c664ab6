/** Turns draws into what the solver steps: parameters of the meat and stages with their air. */
import {
  outerFaceM2,
  type ResolvedFire,
  type ResolvedPiece,
  type ResolvedPit,
  type ResolvedStage,
  sideRadiusM,
} from '../../day/resolve.ts';
import { coalsFluxWm2, wallRiseK } from '../../fire/coals.ts';
import { facesOf, withBothFaces } from '../../meat/faces.ts';
import type { WordDoses } from '../../meat/outcome.ts';
import { type Cover, type MeatParameters, SET_S } from '../../meat/parameters.ts';
import { PIT_KINDS } from '../../meat/pitKinds.ts';
import type { AirPlan, FaceFire, StagePlan, StageTrigger } from '../../meat/stagePlan.ts';
import { exp } from '../../numeric/elementary.ts';
import { doseWhereBegins, knownWord, SOFTENING } from '../../tender/bite.ts';
import { type CookDraw, movedShare, type PieceDraws, SPREAD } from './draws.ts';

export interface Member {
  readonly meat: MeatParameters;
  readonly stages: readonly StagePlan[];
  readonly stretch: number;
  readonly k95PerH: number;
  readonly wordDoses: WordDoses;
  /** Of the browning: doubt of rate and grade; the rub is not in it [1]. */
  readonly browningFactor: number;
}

const clamp = (x: number, low: number, high: number): number => (x < low ? low : Math.min(x, high));

/** One item of a piece as one member has it. */
export function memberOf(
  piece: ResolvedPiece,
  pit: ResolvedPit,
  cook: CookDraw,
  draws: PieceDraws,
  member: number,
  item: number,
): Member {
  const own = draws.item(member, item);
  const { cut } = piece;
  const softening = SOFTENING[cut.tissue];
  const k95PerH = softening.k95PerH * exp(softening.sdLn * own.softening);
  const share = cut.juiceToSurfaceShare;
  const juiceFitLogit = (cut.isPoultry ? SPREAD.juiceFitPoultry : SPREAD.juiceFit) / (share * (1 - share));
  const meat: MeatParameters = {
    ...SET_S,
    composition: cut.composition,
    densityKgM3: piece.densityKgM3,
    dimensionality: cut.dimensionality,
    ...facesOf(
      cut,
      clamp(cut.evaporatingShare + SPREAD.face * draws.face(member), 0.1, 1),
      piece.size.halfThicknessM * exp(cut.fitSdLn * cook.thickness + piece.size.sdLn * own.thickness),
      piece.otherFace,
    ),
    juiceToSurfaceShare: movedShare(share, juiceFitLogit * cook.juice + SPREAD.juiceLogit * own.juice),
    barkOpenness:
      SET_S.barkOpenness * exp(SPREAD.opennessFitLn * cook.openness + SPREAD.opennessLn * own.openness),
    barkSealingM: SET_S.barkSealingM * exp(SPREAD.sealingLn * cook.sealing),
    barkShrinkage: SET_S.barkShrinkage + SPREAD.shrinkage * cook.shrinkage,
    filmReserveKgM2: SET_S.filmReserveKgM2 * exp(SPREAD.reserveLn * cook.reserve),
    finalHoldingDryBasis: clamp(
      SET_S.finalHoldingDryBasis +
        SPREAD.finalHoldingFit * cook.finalHolding +
        SPREAD.finalHolding * own.finalHolding,
      0.8,
      2.2,
    ),
    releaseMidC: SET_S.releaseMidC + SPREAD.releaseMidK * cook.releaseMid,
    releaseWidthK: clamp(SET_S.releaseWidthK + SPREAD.releaseWidthK * cook.releaseWidth, 3, 12),
    releaseRate80PerS: SET_S.releaseRate80PerS * exp(SPREAD.releaseRateLn * cook.releaseRate),
    startC: piece.startC.mean + piece.startC.sd * draws.start(member),
  };
  const dose = (word: Parameters<typeof doseWhereBegins>[1]): number =>
    doseWhereBegins(cut.tissue, word, k95PerH);
  return {
    meat: piece.stages.some(({ fire }) => fire) ? withBothFaces(meat) : meat,
    stages: stagesOf(piece, pit, cook, draws, member, (bite) => dose(knownWord(cut.tissue, bite))),
    stretch: draws.stretch(member),
    k95PerH,
    browningFactor: exp(SPREAD.browningLn * own.browning),
    wordDoses: [dose('clean-bite'), dose('tender'), dose('falls-off'), dose('pulls-apart')],
  };
}

function stagesOf(
  piece: ResolvedPiece,
  pit: ResolvedPit,
  cook: CookDraw,
  draws: PieceDraws,
  member: number,
  doseFor: (bite: Parameters<typeof doseWhereBegins>[1]) => number,
): StagePlan[] {
  const shiftK =
    Math.sqrt(pit.gasSdK * pit.gasSdK + SPREAD.pitFitK * SPREAD.pitFitK) * cook.pit +
    piece.placeOffsetK.mean +
    piece.placeOffsetK.sd * cook.hotPlace;
  const pitAir: AirPlan = {
    isPit: true,
    gasC: 0,
    lagS: pit.kind.lagS,
    wallDropK:
      pit.kind.wallDropK +
      Math.sqrt(pit.kind.wallDropSdK * pit.kind.wallDropSdK + SPREAD.wallFitK * SPREAD.wallFitK) * cook.wall,
    humidityRatio: pit.humidityRatio * exp(pit.humiditySdLn * cook.humidity),
    convectionWm2K: pit.kind.convectionWm2K * exp(SPREAD.convectionLn * cook.convection),
    pressurePa: pit.pressurePa,
    opening: pit.kind.opening,
    ...(pit.driftKPerH !== 0 && { driftKPerH: pit.driftKPerH }),
  };
  const oven = PIT_KINDS.oven;
  const ovenAir: AirPlan = {
    isPit: false,
    gasC: 0,
    lagS: 0,
    wallDropK: oven.wallDropK,
    humidityRatio: oven.humidityRatio,
    convectionWm2K: oven.convectionWm2K * exp(SPREAD.convectionLn * cook.convection),
    pressurePa: pit.pressurePa,
  };
  const face = outerFaceM2(piece);
  const sideM = sideRadiusM(piece);
  return piece.stages.map((stage) => ({
    kind: stage.kind,
    cover: drawnCover(stage.cover, draws, member),
    air: airOf(stage, pit, pitAir, ovenAir, shiftK, SPREAD.ovenK * cook.oven),
    ...(stage.fire && {
      fire: drawnFire(stage.fire, sideM, stage.gasC + shiftK, pitAir.wallDropK, draws, member),
    }),
    trigger: triggerOf(stage, doseFor),
    pouredKgM2: stage.pouredKg / face,
    ...(stage.spritz && { spritz: { kgM2: stage.spritz.kg / face, everyS: stage.spritz.everyS } }),
    ...(stage.isGlazed && { glaze: GLAZE }),
  }));
}

function drawnFire(
  fire: ResolvedFire,
  pieceRadiusM: number,
  gasC: number,
  wallDropK: number,
  draws: PieceDraws,
  member: number,
): FaceFire {
  const { isOnOpenFace, turnEveryS, bedRadiusM, distanceM, between } = fire;
  const wallC = gasC - wallDropK;
  const seen = {
    pieceRadiusM,
    bedRadiusM,
    distanceM: distanceM * exp(fire.sizeSdLn * draws.bed(member)),
    bedC: Math.max(fire.bedC.mean + fire.bedC.sd * draws.coals(member), wallC),
    ...(between && { between }),
  };
  const fluxWm2 = coalsFluxWm2(seen, wallC, gasC);
  return {
    isOnOpenFace,
    riseK: wallRiseK(fluxWm2, wallC),
    absorbedWm2: SET_S.emissivity * fluxWm2,
    turnEveryS,
  };
}

const MOST_LEAK = 0.6;

/** Paper and foil are wrapped by hand: each wrap its own. */
function drawnCover(cover: Cover, draws: PieceDraws, member: number): Cover {
  if (cover.kind === 'foil')
    return {
      ...cover,
      gapM2KW: cover.gapM2KW * exp(SPREAD.foilGapLn * draws.wrap(member)),
      leakShare: clamp(cover.leakShare * exp(SPREAD.foilLeakLn * draws.wrapLeak(member)), 0, MOST_LEAK),
    };
  if (cover.kind === 'open' && cover.vapourResistanceSM > 0)
    return {
      ...cover,
      vapourResistanceSM: cover.vapourResistanceSM * exp(SPREAD.paperLn * draws.wrap(member)),
    };
  return cover;
}

/** One thin coat: 0.25 kg/m², a little over half of it solids. @source common practice, no source: 60–90 mL a rack in one or two coats */
const GLAZE = { waterKgM2: 0.11, solidsKgM2: 0.14 };

function airOf(
  stage: ResolvedStage,
  pit: ResolvedPit,
  pitAir: AirPlan,
  ovenAir: AirPlan,
  pitShiftK: number,
  ovenShiftK: number,
): AirPlan {
  if (stage.place === 'pit') {
    const air = { ...pitAir, gasC: stage.gasC + pitShiftK };
    if (!stage.curve) return air;
    const { timesS, temperaturesC } = stage.curve;
    return { ...air, curve: { timesS, temperaturesC: temperaturesC.map((c) => c + pit.biasK + pitShiftK) } };
  }
  if (stage.place === 'oven')
    return { ...ovenAir, opening: PIT_KINDS.oven.opening, gasC: stage.gasC + ovenShiftK };
  return { ...ovenAir, gasC: stage.gasC };
}

function triggerOf(
  stage: ResolvedStage,
  doseFor: (bite: Parameters<typeof doseWhereBegins>[1]) => number,
): StageTrigger {
  const { trigger } = stage;
  return trigger.by === 'bite' ? { by: 'dose', doseH: doseFor(trigger.bite) } : trigger;
}
