// A piece with unlike faces: bone side, fat side, the side of the fire. Evidence: exact (slab with two Biot numbers);
// law (like faces give the half piece, ledgers close, orders hold, results are continuous).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductivityWmK } from '../food/choiOkos.ts';
import { relativeSofteningRate } from '../tender/dose.ts';
import { NO_WORDS, runner, PIECE as SLAB } from './onePiece.testing.ts';
import { BARE, type Cover, type Face, FOIL, GLAZED, type MeatParameters, PAPER } from './parameters.ts';
import { PieceSolver } from './solver.ts';
import type { StagePlan } from './stagePlan.ts';

const PIECE: MeatParameters = {
  ...SLAB,
  halfThicknessM: 0.016,
  dimensionality: 1.03,
  evaporatingShare: 1,
};
const OPEN: Face = { evaporatingShare: 1, layerM2KW: 0, layerJM2K: 0, convectionShare: 1 };
const AROUND = { gasC: 121, wallC: 120, humidityRatio: 0.045, convectionWm2K: 7.5, pressurePa: 101325 };
const STILL: Cover = { kind: 'still', transmittanceWm2K: 9 };

const stage = (cover: Cover, trigger: StagePlan['trigger']): StagePlan => ({
  kind: 'bare',
  cover,
  air: { ...AROUND, isPit: true, lagS: 400, wallDropK: 1 },
  trigger,
});
const run = (piece: Partial<MeatParameters>, stages: readonly StagePlan[]) =>
  runner.run({ ...PIECE, ...piece }, stages, {
    stretch: 1,
    wordDoses: NO_WORDS,
  });
const secondsTo = (otherFace: Partial<Face>, toC = 88, cover = BARE): number =>
  run({ otherFace: { ...OPEN, ...otherFace } }, [stage(cover, { by: 'core', temperatureC: toC })]).endS[0]!;

test('faces told alike give what the half piece gives', () => {
  const stages = [
    stage(BARE, { by: 'core', temperatureC: 70 }),
    stage(FOIL, { by: 'clock', afterS: 3600 }),
    stage(GLAZED, { by: 'clock', afterS: 1200 }),
  ];
  const half = run({}, stages);
  const both = run({ otherFace: OPEN }, stages);
  for (let s = 0; s < stages.length; s++)
    for (const figure of ['endS', 'coreC', 'surfaceC', 'lossShare', 'barkM'] as const)
      expect(Math.abs(both[figure][s]! / half[figure][s]! - 1), figure).toBeLessThan(1e-7);
});

describe('conduction from two sides', () => {
  /**
   * θ in a slab of thickness 1 between two faces, Biot numbers on that thickness; position from the lower face.
   * @source Carslaw & Jaeger 1959, § 3.11
   */
  function theta(lower: number, upper: number, fourier: number, position: number): number {
    const miss = (b: number): number =>
      (b * b - lower * upper) * Math.sin(b) - b * (lower + upper) * Math.cos(b);
    let sum = 0;
    for (let n = 0; n < 60; n++) {
      // One root in each half turn.
      let low = n * Math.PI + 1e-9;
      let high = (n + 1) * Math.PI - 1e-9;
      for (let i = 0; i < 200; i++) {
        const middle = 0.5 * (low + high);
        if (miss(low) * miss(middle) <= 0) high = middle;
        else low = middle;
      }
      const b = 0.5 * (low + high);
      const shape = (x: number): number => Math.cos(b * x) + (lower / b) * Math.sin(b * x);
      const mean = Math.sin(b) / b + (lower / (b * b)) * (1 - Math.cos(b));
      const square =
        0.5 * (1 + Math.sin(2 * b) / (2 * b)) +
        (lower / (b * b)) * Math.sin(b) ** 2 +
        0.5 * (lower / b) ** 2 * (1 - Math.sin(2 * b) / (2 * b));
      sum += (mean / square) * shape(position) * Math.exp(-b * b * fourier);
    }
    return sum;
  }

  test.each([
    [1, 0.2],
    [5, 0.5],
    [2, 0.02],
  ])(
    'Biot %d on one face and %d on the other: within 0.003 of θ at 12 cells, a third of it at 24',
    (biot, other) => {
      const startC = 20;
      const airC = 20.01;
      const halfThicknessM = 0.04;
      const { water, protein, fat, ash } = PIECE.composition;
      const k = 0.95 * conductivityWmK({ ...PIECE.composition, carbohydrate: 0, fibre: 0 }, startC);
      const diffusivity = k / (1035 * (2010 * protein + 1990 * (fat + ash) + 4186 * water));
      const perBiot = k / (2 * halfThicknessM);
      const worstAt = (cells: number): number => {
        const solver = new PieceSolver(cells, relativeSofteningRate);
        solver.begin({
          ...PIECE,
          halfThicknessM,
          dimensionality: 1,
          releaseRate80PerS: 0,
          startC,
          otherFace: { ...OPEN, layerM2KW: 1 / (other * perBiot) - 1 / (biot * perBiot) },
        });
        const depths = solver.cellDepths();
        const stepS = (0.0025 * 4 * halfThicknessM * halfThicknessM) / diffusivity;
        const around = { ...AROUND, gasC: airC, wallC: airC };
        let worst = 0;
        for (let n = 1; n <= 300; n++) {
          solver.step(stepS, around, { kind: 'still', transmittanceWm2K: biot * perBiot });
          if (n < 20 || n % 20 !== 0) continue;
          const missAt = (temperatureC: number, position: number): number =>
            Math.abs((airC - temperatureC) / (airC - startC) - theta(other, biot, n * 0.0025, position));
          for (let i = 0; i < cells; i++) {
            worst = Math.max(worst, missAt(solver.cellC(i), 0.5 * (1 + depths[i]!)));
            worst = Math.max(worst, missAt(solver.otherCellC(i), 0.5 * (1 - depths[i]!)));
          }
        }
        return worst;
      };
      const coarse = worstAt(12);
      expect(coarse).toBeLessThan(0.003);
      expect(worstAt(24)).toBeLessThan(0.4 * coarse);
    },
  );
});

test('water and energy close to 1e-6 in both halves, whatever the faces and the stages', () => {
  const face = fc.record({
    evaporatingShare: fc.double({ min: 0, max: 1, noNaN: true }),
    layerM2KW: fc.double({ min: 0, max: 0.1, noNaN: true }),
    layerJM2K: fc.double({ min: 0, max: 4e4, noNaN: true }),
    convectionShare: fc.double({ min: 0.2, max: 2, noNaN: true }),
  });
  const part = fc.record({
    cover: fc.constantFrom<Cover>(BARE, GLAZED, PAPER, FOIL, STILL),
    minutes: fc.integer({ min: 1, max: 200 }),
    gasC: fc.double({ min: 15, max: 200, noNaN: true }),
    spritzKgM2: fc.constantFrom(0, 0.1),
    riseK: fc.double({ min: -40, max: 400, noNaN: true }),
  });
  fc.assert(
    fc.property(
      face,
      fc.double({ min: 0.006, max: 0.04, noNaN: true }),
      fc.array(part, { minLength: 1, maxLength: 5 }),
      (otherFace, halfThicknessM, parts) => {
        const solver = new PieceSolver(12, relativeSofteningRate);
        solver.begin({ ...PIECE, halfThicknessM, otherFace });
        let before: Cover | undefined;
        for (const { cover, minutes, gasC, spritzKgM2, riseK } of parts) {
          solver.faceFire(0, riseK);
          if (before?.kind === 'foil' && cover.kind === 'open') solver.openWrap();
          before = cover;
          solver.spritz(spritzKgM2);
          for (let leftS = minutes * 60; leftS > 0; leftS -= 120)
            solver.step(Math.min(120, leftS), { ...AROUND, gasC, wallC: gasC - 3 }, cover);
        }
        expect(Math.abs(solver.waterClosure())).toBeLessThan(1e-6);
        expect(Math.abs(solver.energyClosure())).toBeLessThan(1e-6);
        expect(solver.coreC).toBeGreaterThan(0);
        expect(solver.coreC).toBeLessThan(100.5);
      },
    ),
    { numRuns: 40, seed: 6 },
  );
});

describe('orders', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  test('the less one face dries, the sooner the middle is there', () => {
    fc.assert(
      fc.property(share, share, (a, b) => {
        fc.pre(Math.abs(a - b) > 0.02);
        const [less, more] = a < b ? [a, b] : [b, a];
        expect(secondsTo({ evaporatingShare: less })).toBeLessThan(secondsTo({ evaporatingShare: more }));
      }),
      { numRuns: 15, seed: 1 },
    );
  });

  test('a layer on one face delays, the thicker the more', () => {
    const times = [0, 0.01, 0.03, 0.06].map((layerM2KW) =>
      secondsTo({ layerM2KW, layerJM2K: 1e5 * layerM2KW }),
    );
    for (let i = 1; i < times.length; i++) expect(times[i]!).toBeGreaterThan(times[i - 1]!);
  });

  test('air that moves on one side hastens', () => {
    expect(secondsTo({ convectionShare: 1.5 })).toBeLessThan(secondsTo({}));
  });

  const overCoals = (riseK: number, isOnOpenFace = false, turnEveryS = Infinity) =>
    runner.run(
      { ...PIECE, otherFace: OPEN },
      [
        {
          ...stage(BARE, { by: 'core', temperatureC: 88 }),
          fire: { riseK, isOnOpenFace, absorbedWm2: 0, turnEveryS },
        },
      ],
      { stretch: 1, wordDoses: [Infinity, Infinity, Infinity, Infinity] },
    ).endS[0]!;

  test('coals before one face hasten, the hotter the more, whichever face it is', () => {
    expect(overCoals(0)).toBe(secondsTo({}));
    expect(overCoals(100)).toBeLessThan(overCoals(0));
    expect(overCoals(200)).toBeLessThan(overCoals(100));
    // Alike faces: the middle cannot tell which of them it is.
    expect(Math.abs(overCoals(150, true) / overCoals(150, false) - 1)).toBeLessThan(1e-4);
  });

  test('the side towards the coals browns darker and dries deeper, turned both do', () => {
    const after = (turnEveryS: number) => {
      overCoals(150, false, turnEveryS);
      const { browningH, otherBrowningH, barkM, otherBarkM } = runner.solver;
      return { browningH, otherBrowningH, barkM, otherBarkM };
    };
    const lies = after(Infinity);
    expect(lies.otherBrowningH).toBeGreaterThan(3 * lies.browningH);
    expect(lies.otherBarkM).toBeGreaterThan(lies.barkM);
    const turned = after(240);
    expect(turned.browningH).toBeGreaterThan(lies.browningH);
    expect(turned.otherBrowningH).toBeLessThan(lies.otherBrowningH);
    // Turned often, they differ less than a side that lies from one that does not.
    expect(Math.abs(Math.log(turned.otherBrowningH / turned.browningH))).toBeLessThan(
      Math.log(lies.otherBrowningH / lies.browningH),
    );
  });

  test('between the bodies that have either face all round', () => {
    const alike = (evaporatingShare: number): number =>
      run({ evaporatingShare }, [stage(BARE, { by: 'core', temperatureC: 88 })]).endS[0]!;
    const both = secondsTo({ evaporatingShare: 0.4 });
    expect(both).toBeGreaterThan(alike(0.4));
    expect(both).toBeLessThan(alike(1));
  });
});

test('results are continuous in what the other face is', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      fc.double({ min: 0, max: 0.05, noNaN: true }),
      (evaporatingShare, layerM2KW) => {
        const at = secondsTo({ evaporatingShare, layerM2KW });
        expect(
          Math.abs(secondsTo({ evaporatingShare: evaporatingShare + 1e-4, layerM2KW }) / at - 1),
        ).toBeLessThan(0.002);
        expect(Math.abs(secondsTo({ evaporatingShare, layerM2KW: layerM2KW + 1e-5 }) / at - 1)).toBeLessThan(
          0.002,
        );
      },
    ),
    { numRuns: 20, seed: 2 },
  );
});
