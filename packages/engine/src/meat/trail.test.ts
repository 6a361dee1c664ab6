// A run that sets out from a kept state ends in the same bits as one from the beginning. Evidence: law.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { relativeSofteningRate } from '../tender/dose.ts';
import { AIR, PIECE, RACK } from './onePiece.testing.ts';
import {
  BARE,
  type Cover,
  FOIL,
  FOIL_WITH_LIQUID,
  GLAZED,
  type MeatParameters,
  PAPER,
} from './parameters.ts';
import { PIT_KINDS } from './pitKinds.ts';
import { ENSEMBLE_SETTINGS, PieceRunner, type RunOptions } from './run.ts';
import type { StagePlan, StageTrigger } from './stagePlan.ts';
import { Trail } from './trail.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const settings = { ...ENSEMBLE_SETTINGS, horizonS: 12 * 3600, tailS: 2 * 3600 };
const following = new PieceRunner(settings, relativeSofteningRate);
const anew = new PieceRunner(settings, relativeSofteningRate);

const BONE_SIDE = {
  evaporatingShare: 0.47,
  layerM2KW: 0.004,
  layerJM2K: 3000,
  convectionShare: 0.8,
};
const pieces = fc.constantFrom<MeatParameters>(
  PIECE,
  { ...PIECE, ...RACK },
  { ...PIECE, ...RACK, otherFace: BONE_SIDE },
);

const STILL: Cover = { kind: 'still', transmittanceWm2K: 6 };
const triggers = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({
      by: fc.constant('clock' as const),
      afterS: fc.oneof(fc.constant(0), between(60, 4 * 3600)),
    }),
  },
  { weight: 2, arbitrary: fc.record({ by: fc.constant('core' as const), temperatureC: between(20, 95) }) },
  fc.record({ by: fc.constant('surface' as const), temperatureC: between(40, 110) }),
  fc.record({ by: fc.constant('bark' as const), thicknessM: between(1e-4, 2e-3) }),
  fc.record({ by: fc.constant('loss' as const), lossShare: between(0.02, 0.35) }),
  fc.record({ by: fc.constant('dose' as const), doseH: between(0.01, 0.6) }),
  fc.constant<StageTrigger>({ by: 'table' }),
);
const airs = fc.record({
  gasC: between(60, 160),
  isPit: fc.boolean(),
  driftKPerH: fc.constantFrom(0, 6, -4),
  opening: fc.constantFrom(undefined, PIT_KINDS.kettle.opening),
});
const spritzes = fc.option(fc.record({ kgM2: between(0.005, 0.15), everyS: between(600, 3600) }), {
  nil: undefined,
});
const fires = fc.option(
  fc.record({
    isOnOpenFace: fc.boolean(),
    riseK: between(10, 120),
    absorbedWm2: fc.constant(500),
    turnEveryS: fc.constantFrom(900, 2000, Infinity),
  }),
  { nil: undefined },
);
const stages: fc.Arbitrary<StagePlan> = fc
  .record({
    cover: fc.constantFrom(BARE, FOIL, FOIL_WITH_LIQUID, GLAZED, PAPER, STILL),
    air: airs,
    trigger: triggers,
    spritz: spritzes,
    fire: fires,
    pouredKgM2: fc.constantFrom(0, 0.3),
    glaze: fc.constantFrom(undefined, { waterKgM2: 0.11, solidsKgM2: 0.14 }),
  })
  .map(({ cover, air: { gasC, isPit, driftKPerH, opening }, trigger, spritz, fire, pouredKgM2, glaze }) => ({
    kind: cover === STILL ? 'rest' : 'bare',
    cover,
    air: { ...AIR, gasC: cover === STILL ? gasC - 40 : gasC, isPit, driftKPerH, ...(opening && { opening }) },
    trigger,
    pouredKgM2,
    ...(spritz && { spritz }),
    ...(fire && { fire }),
    ...(glaze && { glaze }),
  }));

/** A stage of the sequence ends otherwise, or is another one altogether. */
const moves = fc.record({
  at: fc.nat({ max: 3 }),
  to: fc.oneof({ weight: 5, arbitrary: triggers }, { weight: 1, arbitrary: stages }),
});
const moved = (sequence: readonly StagePlan[], { at, to }: { at: number; to: StageTrigger | StagePlan }) => {
  const index = at % sequence.length;
  return sequence.with(index, 'trigger' in to ? to : { ...sequence[index]!, trigger: to });
};

/** Holds a run along the trail against one from the beginning. */
function sameBits(piece: MeatParameters, sequence: readonly StagePlan[], options: RunOptions, trail: Trail) {
  const resumed = following.run(piece, sequence, { ...options, trail });
  const whole = anew.run(piece, sequence, options);
  expect(resumed).toEqual(whole);
  const { stateLength } = anew.solver;
  expect(following.solver.state.slice(0, stateLength)).toEqual(anew.solver.state.slice(0, stateLength));
}

test('moved stages end in the same bits, whatever was moved before', () => {
  fc.assert(
    fc.property(
      pieces,
      fc.array(stages, { minLength: 1, maxLength: 4 }),
      fc.array(moves, { minLength: 1, maxLength: 4 }),
      between(0.7, 1.4),
      (piece, begun, changes, stretch) => {
        const options: RunOptions = {
          stretch,
          wordDoses: [0.05, 0.2, 0.5, Infinity],
          reachC: 71,
          lastHeatStage: begun.length > 1 ? begun.length - 2 : 0,
          tailDoseH: 0.5,
        };
        const trail = new Trail();
        let sequence: readonly StagePlan[] = begun;
        sameBits(piece, sequence, options, trail);
        for (const change of changes) {
          sequence = moved(sequence, change);
          sameBits(piece, sequence, options, trail);
        }
      },
    ),
    { numRuns: 80, seed: 4 },
  );
});

const wrapAfter = (afterS: number): StagePlan[] => [
  {
    kind: 'bare',
    cover: BARE,
    air: { ...AIR, opening: PIT_KINDS.kettle.opening },
    trigger: { by: 'clock', afterS },
    spritz: { kgM2: 0.05, everyS: 2700 },
  },
  { kind: 'foil', cover: FOIL, air: AIR, trigger: { by: 'core', temperatureC: 88 }, pouredKgM2: 0.2 },
];
const options: RunOptions = { stretch: 1, wordDoses: [Infinity, Infinity, Infinity, Infinity] };
const stepsOf = (piece: MeatParameters, afterS: number, trail?: Trail): number => {
  let steps = 0;
  following.run(piece, wrapAfter(afterS), { ...options, ...(trail && { trail }), onStep: () => steps++ });
  return steps;
};

test('a wrap that is moved by five minutes spares the steps before it', () => {
  const piece = { ...PIECE, ...RACK, otherFace: BONE_SIDE };
  const trail = new Trail();
  stepsOf(piece, 3 * 3600, trail);
  for (const afterS of [2.9 * 3600, 3.1 * 3600]) {
    const whole = stepsOf(piece, afterS);
    expect(stepsOf(piece, afterS, trail)).toBeLessThan(0.7 * whole);
    sameBits(piece, wrapAfter(afterS), options, trail);
  }
});

test('another piece, another stretch or another number of stages begins at the beginning', () => {
  const trail = new Trail();
  sameBits(PIECE, wrapAfter(7200), options, trail);
  sameBits({ ...PIECE, startC: 7 }, wrapAfter(7200), options, trail);
  sameBits({ ...PIECE, startC: 7 }, wrapAfter(7200), { ...options, stretch: 1.1 }, trail);
  sameBits({ ...PIECE, startC: 7 }, wrapAfter(7200).slice(0, 1), options, trail);
});
