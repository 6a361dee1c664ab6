// What a runner is handed after a piece that could not be reckoned comes out as from a new runner. Evidence: law.
import { expect, test } from 'vitest';
import { relativeSofteningRate } from '../tender/dose.ts';
import { AIR, NO_WORDS, PIECE } from './onePiece.testing.ts';
import { BARE, type MeatParameters } from './parameters.ts';
import { ENSEMBLE_SETTINGS, PieceRunner } from './run.ts';
import type { StagePlan } from './stagePlan.ts';

const stagesIn = (gasC: number): StagePlan[] => [
  { kind: 'bare', cover: BARE, air: { ...AIR, gasC }, trigger: { by: 'clock', afterS: 2 * 3600 } },
];
const otherFace = { evaporatingShare: 0.47, layerM2KW: 0.004, layerJM2K: 3000, convectionShare: 0.8 };

/** Outcome, and the heat of the last step: what a ledger is told. */
const runOn = (runner: PieceRunner, piece: MeatParameters, gasC: number) => {
  const outcome = runner.run(piece, stagesIn(gasC), { stretch: 1, wordDoses: NO_WORDS });
  return { outcome, heat: runner.solver.lastHeat(), state: runner.solver.state.slice() };
};

test.each([
  { of: 'like faces', piece: PIECE },
  { of: 'unlike faces', piece: { ...PIECE, otherFace } },
])('a member that is not a number leaves nothing to the next one: $of', ({ piece }) => {
  const shared = new PieceRunner(ENSEMBLE_SETTINGS, relativeSofteningRate);
  runOn(shared, { ...piece, otherFace }, NaN);
  expect(shared.solver.lastHeat().convectionWm2).toBeNaN();
  const anew = runOn(new PieceRunner(ENSEMBLE_SETTINGS, relativeSofteningRate), piece, 121);
  const after = runOn(shared, piece, 121);
  expect(after.outcome).toEqual(anew.outcome);
  expect(after.heat).toEqual(anew.heat);
  expect(Object.values(after.heat).every(Number.isFinite)).toBe(true);
});
