// Laws of one piece: mass and energy close, signs and orders hold, results are continuous. Evidence: law; the
// wet-surface temperatures are exact solutions of the surface balance.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { relativeSofteningRate } from '../tender/dose.ts';
import { ANY_STAGE, anyPiece } from './anyPiece.testing.ts';
import { AIR, bareStage, NO_WORDS, PIECE, runner, runPiece } from './onePiece.testing.ts';
import { BARE, type Cover, FOIL, type MeatParameters, PAPER } from './parameters.ts';
import { PieceSolver } from './solver.ts';
import type { AirPlan, StagePlan } from './stagePlan.ts';

const bare = (air: Partial<AirPlan>, untilC: number, cover: Cover = BARE): StagePlan =>
  bareStage(air, untilC, { cover });
const hoursTo = (piece: Partial<MeatParameters>, air: Partial<AirPlan>, toC: number): number =>
  runPiece(piece, [bare(air, toC)], toC).reachS / 3600;

describe('water and energy close to 1e-6', () => {
  test('over every random sequence of stages, at sea level and at 2,500 m', () => {
    fc.assert(
      fc.property(
        anyPiece,
        fc.array(fc.record(ANY_STAGE), { minLength: 1, maxLength: 6 }),
        fc.constantFrom(101325, 74700),
        (given, stages, pressurePa) => {
          const solver = new PieceSolver(12, relativeSofteningRate);
          solver.begin({ ...PIECE, ...given });
          let before: Cover | undefined;
          for (const one of stages) {
            if (before?.kind === 'foil' && one.cover.kind === 'open') solver.openWrap();
            before = one.cover;
            if (one.spritzKgM2) solver.spritz(one.spritzKgM2);
            if (one.pouredKgM2) solver.pour(one.pouredKgM2);
            for (let leftS = one.minutes * 60; leftS > 0; leftS -= 120)
              solver.step(Math.min(120, leftS), { ...one, wallC: one.gasC - 3, pressurePa }, one.cover);
          }
          expect(Math.abs(solver.waterClosure())).toBeLessThan(1e-6);
          expect(Math.abs(solver.energyClosure())).toBeLessThan(1e-6);
          expect(solver.coreC).toBeGreaterThan(0);
          expect(solver.coreC).toBeLessThan(100.5);
        },
      ),
      { numRuns: 60, seed: 20270912 },
    );
  });
});

describe('a wet surface settles where the surface balance puts it', () => {
  // A film too thick to dry, no juice: surface temperature by hand from the balance, ± 0.1 K.
  test.each([
    [107, 0.02, 0.9, 46.6],
    [121, 0.05, 0.9, 54.6],
    [135, 0.05, 0.9, 56.7],
    [121, 0.15, 0, 62.6],
  ])('air %d °C, W %d, ε %d: %d °C', (gasC, humidityRatio, emissivity, expectedC) => {
    const solver = new PieceSolver(12, relativeSofteningRate);
    solver.begin({
      ...PIECE,
      halfThicknessM: 0.005,
      dimensionality: 1,
      evaporatingShare: 1,
      emissivity,
      filmStartKgM2: 50,
      filmCapKgM2: 100,
      juiceToSurfaceShare: 0,
    });
    const around = { gasC, wallC: gasC, humidityRatio, convectionWm2K: 8, pressurePa: 101325 };
    for (let i = 0; i < 240; i++) solver.step(120, around, { ...BARE, waterActivity: 1 } as Cover);
    expect(Math.abs(solver.surfaceC - expectedC)).toBeLessThan(0.1);
  });
});

describe('orders that hold for any piece', () => {
  const size = fc.double({ min: 0.012, max: 0.055, noNaN: true });
  const pit = fc.double({ min: 100, max: 150, noNaN: true });
  const toC = fc.double({ min: 50, max: 85, noNaN: true });
  const few = { numRuns: 25, seed: 12 };

  test('thicker is slower', () => {
    fc.assert(
      fc.property(size, pit, toC, (halfThicknessM, gasC, level) => {
        const thin = hoursTo({ halfThicknessM }, { gasC }, level);
        expect(hoursTo({ halfThicknessM: 1.05 * halfThicknessM }, { gasC }, level)).toBeGreaterThan(thin);
      }),
      few,
    );
  });

  test('a hotter pit is faster, moving air is faster', () => {
    fc.assert(
      fc.property(size, pit, toC, (halfThicknessM, gasC, level) => {
        const still = hoursTo({ halfThicknessM }, { gasC }, level);
        expect(hoursTo({ halfThicknessM }, { gasC: gasC + 4 }, level)).toBeLessThan(still);
        expect(hoursTo({ halfThicknessM }, { gasC, convectionWm2K: 9 }, level)).toBeLessThan(still);
      }),
      few,
    );
  });

  test('tight foil at the stall never delays', () => {
    fc.assert(
      fc.property(size, pit, fc.double({ min: 62, max: 76, noNaN: true }), (halfThicknessM, gasC, wrapC) => {
        const open = runPiece({ halfThicknessM }, [bare({ gasC }, wrapC), bare({ gasC }, 90)], 90).reachS;
        const wrapped = runPiece(
          { halfThicknessM },
          [bare({ gasC }, wrapC), bare({ gasC }, 90, FOIL)],
          90,
        ).reachS;
        expect(wrapped).toBeLessThanOrEqual(open);
      }),
      few,
    );
  });

  test('paper that breathes freely is not faster than bare', () => {
    const loose: Cover = { ...PAPER, vapourResistanceSM: 1000 } as Cover;
    const bareH = runPiece({}, [bare({}, 74), bare({}, 93)]).reachS;
    expect(runPiece({}, [bare({}, 74), bare({}, 93, loose)]).reachS).toBeGreaterThanOrEqual(bareH);
  });

  test('more humid air gives a warmer wet surface', () => {
    const surfaceAt = (humidityRatio: number): number => {
      const outcome = runPiece({}, [
        { ...bare({ humidityRatio }, 0), trigger: { by: 'clock', afterS: 1800 } },
      ]);
      return outcome.surfaceC[0]!;
    };
    const surfaces = [0.02, 0.05, 0.1, 0.2].map(surfaceAt);
    for (let i = 1; i < surfaces.length; i++) expect(surfaces[i]!).toBeGreaterThan(surfaces[i - 1]!);
  });

  test('a warm hold never hardens: the dose only grows', () => {
    const hold = (hours: number): StagePlan => ({
      kind: 'hold',
      cover: { kind: 'still', transmittanceWm2K: 6 },
      air: { ...AIR, isPit: false, gasC: 65, lagS: 0 },
      trigger: { by: 'clock', afterS: hours * 3600 },
    });
    const doses = [1, 2, 4, 8].map((hours) => runPiece({}, [bare({}, 88), hold(hours)]).doseH[1]!);
    for (let i = 1; i < doses.length; i++) expect(doses[i]!).toBeGreaterThan(doses[i - 1]!);
  });
});

describe('results are continuous in their inputs', () => {
  test('one part in ten thousand of thickness, pit, wrap and start moves the finish by less than one in five hundred', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.012, max: 0.055, noNaN: true }),
        fc.double({ min: 110, max: 140, noNaN: true }),
        fc.double({ min: 60, max: 78, noNaN: true }),
        (halfThicknessM, gasC, wrapC) => {
          const finish = (h: number, g: number, w: number): number =>
            runPiece({ halfThicknessM: h }, [bare({ gasC: g }, w), bare({ gasC: g }, 92, FOIL)], 92).reachS;
          const at = finish(halfThicknessM, gasC, wrapC);
          for (const near of [
            finish(halfThicknessM * 1.0001, gasC, wrapC),
            finish(halfThicknessM, gasC * 1.0001, wrapC),
            finish(halfThicknessM, gasC, wrapC * 1.0001),
          ])
            expect(Math.abs(near / at - 1)).toBeLessThan(0.002);
        },
      ),
      { numRuns: 25, seed: 5 },
    );
  });

  test('a stage that ends at a core temperature ends at that temperature', () => {
    const outcome = runPiece({}, [bare({}, 71.3), bare({}, 90, FOIL)]);
    expect(Math.abs(outcome.coreC[0]! - 71.3)).toBeLessThan(1e-3);
    expect(Math.abs(outcome.coreC[1]! - 90)).toBeLessThan(1e-3);
  });
});

describe('the stall', () => {
  const slowestKPerH = (gasC: number, fromC: number, toC: number): number => {
    let slowest = Infinity;
    let previousS = 0;
    let previousC = PIECE.startC;
    runner.run(PIECE, [{ ...bare({ gasC }, 0), trigger: { by: 'clock', afterS: 20 * 3600 } }], {
      stretch: 1,
      wordDoses: NO_WORDS,
      onStep: (clockS, _stage, solver) => {
        const rise = (3600 * (solver.coreC - previousC)) / (clockS - previousS);
        if (previousC > fromC && solver.coreC < toC) slowest = Math.min(slowest, rise);
        previousS = clockS;
        previousC = solver.coreC;
      },
    });
    return slowest;
  };
  test('is there at 107 °C and hardly any at 135 °C', () => {
    expect(slowestKPerH(107, 60, 80)).toBeLessThan(2.6);
    expect(slowestKPerH(135, 60, 80)).toBeGreaterThan(3);
  });

  test('a hotter pit lets no second level stand at 80–93 °C', () => {
    expect(slowestKPerH(135, 80, 93)).toBeGreaterThan(4);
  });
});

test('an ordinary packer at 107 °C is done within 13–18 h (common practice, no source)', () => {
  const hours = hoursTo({ halfThicknessM: 0.0384 }, { gasC: 107, lagS: 432 }, 93);
  expect(hours).toBeGreaterThan(13);
  expect(hours).toBeLessThan(18);
});
