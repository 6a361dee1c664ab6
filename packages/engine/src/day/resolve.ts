/**
 * What the day knows of a cook before any chance is drawn: every figure in SI, every gap filled from the cut, the kind of
 * pit and the kitchen, every stage with its cover and its air.
 */

import {
  type Bite,
  type Cook,
  type DirectHeat,
  type FireShield,
  type FireSide,
  isWaiting,
  type Piece,
  type PitPlace,
  type PitType,
  type Quantity,
  type Said,
  type Stage,
  type StageKind,
  type Wrap,
} from '@pitwright/model';
import { standardPressurePa } from '../air/atmosphere.ts';
import { BED_C } from '../fire/coals.ts';
import type { Cut } from '../meat/cut.ts';
import { findCut } from '../meat/cuts.ts';
import { barkSetM, wrapsAtFinger } from '../meat/eaten.ts';
import { backOf, hasFatCap, hasMembrane, isOpenFace, type OtherFaceTold } from '../meat/faces.ts';
import { ownCut } from '../meat/ownCut.ts';
import {
  BARE,
  type Cover,
  FOIL,
  FOIL_LOOSE,
  FOIL_TORN,
  FOIL_WITH_LIQUID,
  GLAZED,
  PAN,
  PAPER,
  PAPER_CLEAN,
  PAPER_GREASY,
} from '../meat/parameters.ts';
import { gaugeError, PIT_KINDS, type PitKind, WATER_PAN_LN } from '../meat/pitKinds.ts';
import { type PieceSize, pieceSize } from '../meat/size.ts';
import type { AirPlan, StageTrigger } from '../meat/stagePlan.ts';
import { rawDensityKgM3 } from '../meat/tables.ts';
import { ZERO_CELSIUS_K } from '../numeric/constants.ts';
import { SURROUNDINGS } from '../sauce/cooling.ts';
import { rubSugarShare } from './rubSugar.ts';
import { withSolution } from './solution.ts';
import { isSpritzUntold, spritzOf } from './spritz.ts';

/** A figure with its doubt: normal with this sd. */
export interface Doubtful {
  readonly mean: number;
  readonly sd: number;
}

export interface ResolvedPit {
  readonly kind: PitKind;
  /** Told temperature, less what the gauge is known to be off: steady air in the middle of the grate [°C]. */
  readonly gasC: number;
  /** Doubt of that [K]. */
  readonly gasSdK: number;
  /** Of the gauge alone: what to take off a temperature told for one stage [K]. */
  readonly biasK: number;
  /** Shift of ln W, and its doubt. */
  readonly humidityRatio: number;
  readonly humiditySdLn: number;
  readonly pressurePa: number;
  /** Creeps by so much in an hour [K/h]; 0 steady. */
  readonly driftKPerH: number;
}

export type StagePlace = 'pit' | 'oven' | 'room';

/** What ends the stage; the bite becomes a dose once the piece's own softening is drawn. */
export type ResolvedTrigger =
  | Exclude<StageTrigger, { by: 'dose' }>
  | { readonly by: 'bite'; readonly bite: Bite };

export interface ResolvedStage {
  readonly kind: StageKind;
  readonly place: StagePlace;
  readonly cover: Cover;
  /** Steady air of the place before draws [°C]. */
  readonly gasC: number;
  /** Told course of the pit's air in place of `gasC`. */
  readonly curve?: AirPlan['curve'];
  readonly trigger: ResolvedTrigger;
  /** Liquid put into the wrap, for one item [kg]. */
  readonly pouredKg: number;
  readonly isGlazed: boolean;
  /** Sprayed on one item each time. */
  readonly spritz?: { readonly kg: number; readonly everyS: number };
  /** Coals that one side of it sees. */
  readonly fire?: ResolvedFire;
}

export interface ResolvedFire {
  readonly isOnOpenFace: boolean;
  /** Name of the face that is not the open one. */
  readonly otherSide: FireSide | 'other';
  readonly bedRadiusM: number;
  readonly distanceM: number;
  /** Doubt of the logarithm of their ratio. */
  readonly sizeSdLn: number;
  readonly bedC: Doubtful;
  readonly between?: FireShield;
  /** ∞: it lies as it is [s]. */
  readonly turnEveryS: number;
}

export interface ResolvedPiece {
  readonly id: string;
  readonly items: number;
  readonly cut: Cut;
  readonly size: PieceSize;
  readonly densityKgM3: number;
  readonly boneShare: number;
  readonly startC: Doubtful;
  /** Warmer than the middle of the grate [K]. */
  readonly placeOffsetK: Doubtful;
  readonly bite: Bite;
  readonly stages: readonly ResolvedStage[];
  /** Sugars in the rub that is for it [1]; 0 without one. */
  readonly rubSugarShare: number;
  /** Membrane and fat cap. */
  readonly otherFace: OtherFaceTold;
}

export interface ResolvedCook {
  readonly pit: ResolvedPit;
  readonly pieces: readonly ResolvedPiece[];
  /** Answers that were asked and are not used yet. */
  readonly notUsed: readonly Said[];
}

/** Radius of the disc that has the area of one side of it, seen from below [m]. */
export function sideRadiusM({ size, densityKgM3 }: ResolvedPiece): number {
  return Math.sqrt(size.massKg / (densityKgM3 * 2 * size.halfThicknessM * Math.PI));
}

/** Raw outer face of one item [m²]; meat without its bone. */
export function outerFaceM2(piece: ResolvedPiece): number {
  const meatKg = piece.size.massKg * (1 - piece.boneShare);
  return (meatKg * piece.cut.dimensionality) / (piece.densityKgM3 * piece.size.halfThicknessM);
}

const ROOM_C = 20;
/** @source still air on a tray 9, towels 0.8–1.5, moving air of a warmer 6 W/m²K; from memory */
const TRAY: Cover = { kind: 'still', transmittanceWm2K: 9 };
const BOX: Cover = { kind: 'still', transmittanceWm2K: 1.2 };
const WARMER: Cover = { kind: 'still', transmittanceWm2K: 6 };
const WARMER_C = 65;

/** Told start is a fridge's or a probe's; untold meat is 7 ± 3 °C. Calibrated on measured cooks. */
export const START_TOLD_SD_K = 1;
const START_UNTOLD: Doubtful = { mean: 7, sd: 3 };
/** A told hot or cool end without its own doubt: half of it. */
const PLACE_SD_SHARE = 0.5;
const PLACE_UNTOLD: Readonly<Record<PitPlace, Doubtful>> = {
  hot: { mean: 15, sd: 8 },
  middle: { mean: 0, sd: 0 },
  cool: { mean: -10, sd: 6 },
};

export interface PitTold {
  readonly type: PitType;
  readonly temperatureC: number;
  /** Doubt that the person gave [K]. */
  readonly sdK?: number;
  readonly gauge: 'grate' | 'lid' | 'set-point';
  readonly hasWaterPan: boolean;
  readonly altitudeM: number;
  readonly humidityRatio?: number;
  readonly driftKPerH?: number;
}

const HUMIDITY_TOLD_SD_LN = 0.1;

export function resolvePit(told: PitTold): ResolvedPit {
  const kind = PIT_KINDS[told.type];
  const gauge = gaugeError(told.type, told.gauge);
  const pan = told.hasWaterPan && told.type !== 'bullet' ? WATER_PAN_LN : 0;
  return {
    kind,
    gasC: told.temperatureC + gauge.biasK,
    gasSdK: told.sdK ?? gauge.sdK,
    biasK: gauge.biasK,
    humidityRatio: told.humidityRatio ?? kind.humidityRatio * (pan ? WATER_PAN_FACTOR : 1),
    humiditySdLn: told.humidityRatio === undefined ? kind.humiditySdLn : HUMIDITY_TOLD_SD_LN,
    pressurePa: standardPressurePa(told.altitudeM),
    driftKPerH: told.driftKPerH ?? 0,
  };
}

/** e^0.35 */
const WATER_PAN_FACTOR = 1.4190675485932573;

export interface PieceTold {
  readonly id: string;
  readonly items: number;
  readonly cut: Cut;
  readonly massKg?: number;
  readonly thicknessM?: number;
  readonly hasBone?: boolean;
  /** Solution added, of the meat's own mass [1]. */
  readonly solutionShare?: number;
  readonly otherFace?: OtherFaceTold;
  readonly startC?: number;
  readonly placeOffsetK: Doubtful;
  readonly bite: Bite;
  readonly stages: readonly ResolvedStage[];
  readonly rubSugarShare?: number;
}

const boneShareOf = (cut: Cut, toldBone: boolean | undefined): number =>
  (toldBone ?? cut.hasBone) ? cut.boneShare : 0;

export function resolvePiece(told: PieceTold): ResolvedPiece {
  const cut = told.solutionShare ? withSolution(told.cut, told.solutionShare) : told.cut;
  return {
    id: told.id,
    items: told.items,
    cut,
    size: pieceSize(cut, told.massKg, told.thicknessM),
    densityKgM3: rawDensityKgM3(cut.composition),
    boneShare: boneShareOf(cut, told.hasBone),
    startC: told.startC === undefined ? START_UNTOLD : { mean: told.startC, sd: START_TOLD_SD_K },
    placeOffsetK: told.placeOffsetK,
    bite: told.bite,
    stages: told.stages,
    rubSugarShare: told.rubSugarShare ?? 0,
    otherFace: told.otherFace ?? {},
  };
}

/** Cover of a cooking stage. */
export function coverOf(kind: StageKind, hasLiquid: boolean, wrap?: Wrap): Cover {
  switch (kind) {
    case 'foil':
      return foilOf(hasLiquid, wrap);
    case 'paper':
      return wrap === 'clean' ? PAPER_CLEAN : wrap === 'greasy' ? PAPER_GREASY : PAPER;
    case 'glazed':
      return GLAZED;
    default:
      return BARE;
  }
}

function foilOf(hasLiquid: boolean, wrap: Wrap | undefined): Cover {
  if (wrap === 'loose') return FOIL_LOOSE;
  if (wrap === 'torn') return FOIL_TORN;
  if (wrap === 'pan') return PAN;
  return hasLiquid ? FOIL_WITH_LIQUID : FOIL;
}

/** Off the heat: the air or water round the piece and what keeps it warm or takes its heat. */
export function restingPlace(
  kind: StageKind,
  atC: number | undefined,
  place?: Stage['in'],
): { readonly cover: Cover; readonly gasC: number } {
  if (kind === 'chill') {
    const { coefficientWm2K, temperatureC } = SURROUNDINGS[place === 'ice-bath' ? 'ice-bath' : 'fridge'];
    return { cover: { kind: 'still', transmittanceWm2K: coefficientWm2K }, gasC: atC ?? temperatureC };
  }
  const where = place ?? (kind === 'rest' ? 'tray' : atC === undefined ? 'box' : 'warmer');
  if (where === 'box') return { cover: BOX, gasC: atC ?? ROOM_C };
  if (where === 'tray') return { cover: TRAY, gasC: atC ?? ROOM_C };
  return { cover: WARMER, gasC: atC ?? WARMER_C };
}

function resolveTrigger(stage: Stage, cut: Cut, boneShare: number): ResolvedTrigger {
  const { until } = stage;
  switch (until.by) {
    case 'clock':
      return { by: 'clock', afterS: until.after.si };
    case 'core':
      return { by: 'core', temperatureC: until.temperature.si - ZERO_CELSIUS_K };
    case 'surface':
      return { by: 'surface', temperatureC: until.temperature.si - ZERO_CELSIUS_K };
    case 'bark':
      return { by: 'bark', thicknessM: barkSetM(cut) };
    case 'loss':
      // Bone loses nothing.
      return { by: 'loss', lossShare: until.share.si / (1 - boneShare) };
    case 'bite':
      return { by: 'bite', bite: until.bite };
    case 'table':
      return { by: 'table' };
  }
}

const OVEN_UNTOLD_C = 121;

function resolveStages(
  cook: Cook,
  piece: Piece,
  cut: Cut,
  boneShare: number,
  pit: ResolvedPit,
): ResolvedStage[] {
  const { kitchen } = cook;
  let pitGasC = pit.gasC;
  let ovenC = kitchen.ovenTemperature ? kitchen.ovenTemperature.si - ZERO_CELSIUS_K : OVEN_UNTOLD_C;
  return piece.stages.map((stage) => {
    const spritz = spritzOf(cook, piece, stage);
    const atC = stage.at && stage.at.si - ZERO_CELSIUS_K;
    const toldC = stage.pit && stage.pit.si - ZERO_CELSIUS_K;
    const pouredKg = stage.liquid ? stage.liquid.si * 1000 : 0;
    const shared = {
      kind: stage.kind,
      trigger: resolveTrigger(stage, cut, boneShare),
      pouredKg,
      ...(spritz && { spritz: { kg: massKgOf(spritz.amount), everyS: spritz.every.si } }),
      isGlazed: stage.kind === 'glazed',
      ...(stage.direct && { fire: resolveFire(stage.direct, cut) }),
    };
    if (isWaiting(stage.kind))
      return { ...shared, place: 'room', ...restingPlace(stage.kind, atC, stage.in) };
    const cover = coverOf(stage.kind, pouredKg > 0, stage.wrap);
    if (stage.in === 'oven') {
      ovenC = toldC ?? atC ?? ovenC;
      return { ...shared, place: 'oven', cover, gasC: ovenC };
    }
    if (toldC !== undefined) pitGasC = toldC + pit.biasK;
    return { ...shared, place: 'pit', cover, gasC: pitGasC };
  });
}

/** Bed of coals that nobody measured, and the doubt of a distance and of a bed told by eye [m], [1]. */
const BED_UNTOLD_M = 0.3;
const BED_UNTOLD_SD_LN = 0.25;
const BY_EYE_SD_LN = 0.1;

function resolveFire(direct: DirectHeat, cut: Cut): ResolvedFire {
  const bedSdLn = direct.across ? BY_EYE_SD_LN : BED_UNTOLD_SD_LN;
  return {
    isOnOpenFace: isOpenFace(cut, direct.side),
    otherSide: isOpenFace(cut, direct.side) ? backOf(cut) : direct.side,
    bedRadiusM: (direct.across?.si ?? BED_UNTOLD_M) / 2,
    distanceM: direct.distance.si,
    sizeSdLn: Math.sqrt(BY_EYE_SD_LN * BY_EYE_SD_LN + bedSdLn * bedSdLn),
    bedC: BED_C[direct.coals ?? 'untold'],
    ...(direct.between && { between: direct.between }),
    turnEveryS: direct.turn?.si ?? Infinity,
  };
}

/** A volume as water [kg]. */
const massKgOf = (amount: Quantity<'mass'> | Quantity<'volume'>): number =>
  amount.kind === 'mass' ? amount.si : 1000 * amount.si;

function placeOffset(piece: Piece, cook: Cook): Doubtful {
  const place = piece.place ?? 'middle';
  const told = place === 'hot' ? cook.pit.hotEnd : place === 'cool' ? cook.pit.coolEnd : undefined;
  if (!told) return PLACE_UNTOLD[place];
  const sign = place === 'hot' ? 1 : -1;
  return { mean: sign * told.si, sd: told.sd ?? PLACE_SD_SHARE * told.si };
}

/** By what a cook knows that the bark of this piece is ready to be wrapped. */
export const barkTest = (piece: Piece): 'finger' | 'nail' =>
  wrapsAtFinger(cutOf(piece)) ? 'finger' : 'nail';

/** Of the catalogue, or its owner's by its sides. */
function cutOf({ cut, own, thickness, mass }: Piece): Cut {
  const like = findCut(cut);
  if (!like) throw new RangeError(`cut must be in the catalogue, got ${cut}`);
  if (!own || !thickness) return like;
  return ownCut(like, {
    lengthM: own.length.si,
    widthM: own.width.si,
    thicknessM: thickness.si,
    ...(mass && { massKg: mass.si }),
    ...(own.skin !== undefined && { hasSkin: own.skin }),
    ...(own.fat && { fat: own.fat }),
  });
}

/** The cook as the day steps it. @throws RangeError on a cut that the catalogue does not know */
export function resolveCook(cook: Cook): ResolvedCook {
  const pit = resolvePit({
    type: cook.pit.type,
    temperatureC: cook.pit.temperature.si - ZERO_CELSIUS_K,
    ...(cook.pit.temperature.sd !== undefined && { sdK: cook.pit.temperature.sd }),
    gauge: cook.pit.gauge,
    hasWaterPan: cook.pit.waterPan ?? false,
    altitudeM: cook.place?.altitude?.si ?? 0,
    driftKPerH: cook.pit.driftPerHour?.si ?? 0,
  });
  const pieces = cook.pieces.map((piece) => {
    const cut = cutOf(piece);
    return resolvePiece({
      id: piece.id,
      items: piece.count,
      cut,
      ...(piece.mass && { massKg: piece.mass.si }),
      ...(piece.thickness && { thicknessM: piece.thickness.si }),
      ...(piece.bone !== undefined && { hasBone: piece.bone }),
      otherFace: {
        ...(piece.membrane !== undefined && { hasMembrane: piece.membrane }),
        ...(piece.fatCap && { fatCapM: piece.fatCap.si }),
      },
      ...(piece.solution && { solutionShare: piece.solution.si }),
      ...(piece.start && { startC: piece.start.si - ZERO_CELSIUS_K }),
      placeOffsetK: placeOffset(piece, cook),
      bite: piece.bite,
      stages: resolveStages(cook, piece, cut, boneShareOf(cut, piece.bone), pit),
      rubSugarShare: rubSugarShare(cook, piece.id),
    });
  });
  return { pit, pieces, notUsed: notUsed(cook) };
}

function notUsed(cook: Cook): Said[] {
  const said: Said[] = [];
  if (cook.weather) said.push({ id: 'day.weather-not-used' });
  if (cook.pit.steel) said.push({ id: 'day.steel-not-used' });
  if (cook.pit.fuel) said.push({ id: 'day.fuel-not-used' });
  for (const piece of cook.pieces)
    if (isSpritzUntold(cook, piece))
      said.push({ id: 'day.spritz-not-used', params: { letter: piece.letter } });
  for (const piece of cook.pieces) {
    const { letter, membrane, fatCap } = piece;
    const cut = cutOf(piece);
    if (membrane !== undefined && !hasMembrane(cut))
      said.push({ id: 'day.membrane-not-used', params: { letter } });
    if (fatCap && !hasFatCap(cut)) said.push({ id: 'day.fat-cap-not-used', params: { letter } });
  }
  return said;
}
