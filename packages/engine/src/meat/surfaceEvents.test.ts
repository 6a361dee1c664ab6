// Spritz, looks under the lid, wraps and ends by loss: ledgers close, orders hold, results are continuous. Evidence: law.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bareStage, RACK, runner, runPiece } from './onePiece.testing.ts';
import {
  BARE,
  type Cover,
  FOIL,
  FOIL_LOOSE,
  FOIL_TORN,
  FOIL_WITH_LIQUID,
  type MeatParameters,
  PAN,
  PAPER_CLEAN,
  PAPER_GREASY,
} from './parameters.ts';
import { PIT_KINDS } from './pitKinds.ts';
import type { AirPlan, StagePlan } from './stagePlan.ts';

const hours = 3600;
const bare = (told: Partial<StagePlan> = {}, air: Partial<AirPlan> = {}): StagePlan =>
  bareStage({ opening: PIT_KINDS.kettle.opening, ...air }, 88, told);
const run = (stages: readonly StagePlan[], piece: Partial<MeatParameters> = {}) =>
  runPiece({ ...RACK, ...piece }, stages);
const finishS = (told: Partial<StagePlan>, air?: Partial<AirPlan>): number => run([bare(told, air)]).endS[0]!;

const amount = fc.double({ min: 0, max: 0.2, noNaN: true });
const every = fc.double({ min: 600, max: 5400, noNaN: true });

describe('spritz', () => {
  test('water and energy close whatever is sprayed and however often', () => {
    fc.assert(
      fc.property(amount, every, (kgM2, everyS) => {
        run([
          bare({ spritz: { kgM2, everyS } }),
          bare({ cover: FOIL, trigger: { by: 'clock', afterS: hours } }),
        ]);
        expect(Math.abs(runner.solver.waterClosure())).toBeLessThan(1e-6);
        expect(Math.abs(runner.solver.energyClosure())).toBeLessThan(1e-6);
      }),
      { numRuns: 30, seed: 3 },
    );
  });

  test('delays the finish, the more the wetter; a look alone delays it too', () => {
    const left = finishS({});
    const looked = finishS({ spritz: { kgM2: 0, everyS: 1800 } });
    const sprayed = finishS({ spritz: { kgM2: 0.1, everyS: 1800 } });
    expect(looked).toBeGreaterThan(left);
    expect(sprayed).toBeGreaterThan(looked);
    // A 30 g spritz takes about five minutes of the meat's heat each time (latent heat of water): no more than that.
    expect(sprayed - looked).toBeLessThan((looked / 1800) * 15 * 60);
  });

  test('results are continuous in the amount, and in the time between where no end is crossed', () => {
    fc.assert(
      fc.property(amount, every, (kgM2, everyS) => {
        const stage = (k: number, e: number): StagePlan =>
          bare({ spritz: { kgM2: k, everyS: e }, trigger: { by: 'clock', afterS: 2.5 * everyS } });
        const core = (k: number, e: number): number =>
          run([stage(k, e), bare({ trigger: { by: 'clock', afterS: hours } })]).coreC[1]!;
        const at = core(kgM2, everyS);
        expect(Math.abs(core(kgM2 + 1e-5, everyS) - at)).toBeLessThan(0.05);
        expect(Math.abs(core(kgM2, everyS * 1.0001) - at)).toBeLessThan(0.05);
      }),
      { numRuns: 25, seed: 4 },
    );
  });

  test('a spritz just before the end of a stage moves the next one little', () => {
    const finish = (afterS: number): number =>
      run([bare({ spritz: { kgM2: 0.1, everyS: 1800 }, trigger: { by: 'clock', afterS } }), bare()]).endS[1]!;
    const jumpS = Math.abs(finish(5401) - finish(5399));
    expect(jumpS).toBeGreaterThan(0);
    expect(jumpS).toBeLessThan(15 * 60);
  });
});

describe('wraps', () => {
  const wrapped = (cover: Cover): number =>
    run([bare({ trigger: { by: 'core', temperatureC: 70 } }), bare({ cover })], { halfThicknessM: 0.038 })
      .endS[1]!;

  test('the more steam gets out of foil, the later; none later than bare', () => {
    const order = [FOIL_WITH_LIQUID, FOIL, PAN, FOIL_LOOSE, FOIL_TORN, BARE].map(wrapped);
    for (let i = 1; i < order.length; i++) expect(order[i]!).toBeGreaterThan(order[i - 1]!);
  });

  test('grease closes paper', () => {
    expect(wrapped(PAPER_GREASY)).toBeLessThan(wrapped(PAPER_CLEAN));
  });
});

test('a stage that ends by loss ends at that loss', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.03, max: 0.25, noNaN: true }), (lossShare) => {
      expect(run([bare({ trigger: { by: 'loss', lossShare } })]).lossShare[0]!).toBeCloseTo(lossShare, 5);
    }),
    { numRuns: 20, seed: 8 },
  );
});

test('a pit that creeps up is faster, one that sinks slower; without drift nothing changes', () => {
  expect(finishS({}, { driftKPerH: 3 })).toBeLessThan(finishS({}));
  expect(finishS({}, { driftKPerH: -3 })).toBeGreaterThan(finishS({}));
  expect(finishS({}, { driftKPerH: 0 })).toBe(finishS({}));
});
