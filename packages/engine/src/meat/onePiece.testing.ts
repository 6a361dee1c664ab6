/** One piece in ordinary air, as the laws of a piece are tried on it, and the piece that solvers are compared on. */
import { relativeSofteningRate } from '../tender/dose.ts';
import type { Cut } from './cut.ts';
import type { RunOutcome, WordDoses } from './outcome.ts';
import { BARE, type MeatParameters, SET_S } from './parameters.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from './run.ts';
import type { AirPlan, StagePlan } from './stagePlan.ts';
import { rawDensityKgM3 } from './tables.ts';

/** A slab of brisket. */
export const PIECE: MeatParameters = {
  ...SET_S,
  composition: { water: 0.62, protein: 0.185, fat: 0.185, ash: 0.01 },
  densityKgM3: 1035,
  halfThicknessM: 0.038,
  dimensionality: 1.06,
  evaporatingShare: 0.92,
  juiceToSurfaceShare: 0.57,
  startC: 6,
};
/** Thin, and half closed by its bone side. */
export const RACK: Partial<MeatParameters> = {
  halfThicknessM: 0.016,
  dimensionality: 1.04,
  evaporatingShare: 0.7,
};
/** An ordinary piece of the cut as one body, its faces alike. */
export const bodyOf = (cut: Cut, startC: number): MeatParameters => ({
  ...SET_S,
  composition: cut.composition,
  densityKgM3: rawDensityKgM3(cut.composition),
  halfThicknessM: cut.halfThicknessM,
  dimensionality: cut.dimensionality,
  evaporatingShare: cut.evaporatingShare,
  juiceToSurfaceShare: cut.juiceToSurfaceShare,
  startC,
});
export const AIR: AirPlan = {
  isPit: true,
  gasC: 121,
  lagS: 400,
  wallDropK: 1,
  humidityRatio: 0.045,
  convectionWm2K: 7.5,
  pressurePa: 101325,
};

export const NO_WORDS: WordDoses = [Infinity, Infinity, Infinity, Infinity];
export const runner = new PieceRunner(ENSEMBLE_SETTINGS, relativeSofteningRate);

/** Bare until the centre comes to `untilC`, unless told otherwise. */
export const bareStage = (
  air: Partial<AirPlan>,
  untilC: number,
  told: Partial<StagePlan> = {},
): StagePlan => ({
  kind: 'bare',
  cover: BARE,
  air: { ...AIR, ...air },
  trigger: { by: 'core', temperatureC: untilC },
  ...told,
});

export const runPiece = (
  piece: Partial<MeatParameters>,
  stages: readonly StagePlan[],
  reachC = 93,
): RunOutcome => runner.run({ ...PIECE, ...piece }, stages, { stretch: 1, wordDoses: NO_WORDS, reachC });
