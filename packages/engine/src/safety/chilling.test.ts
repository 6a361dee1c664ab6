// Chilling of cooked pieces. Evidence: exact (series of slab, cylinder, sphere; Carslaw & Jaeger 1959), conformity
// (the meat's own solver), law; the advice to slice, spread and use ice is USDA FSIS.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { catalogueOfCuts, findCut } from '../meat/cuts.ts';
import { bodyOf, NO_WORDS, runner } from '../meat/onePiece.testing.ts';
import type { StagePlan } from '../meat/stagePlan.ts';
import { CHILLERS, chilling, spreadInPan, wholePiece } from './chilling.ts';

test('a slab, a cylinder and a sphere of one thickness cool in the order of their surface', () => {
  const of = (dimensionality: number): number =>
    chilling({ halfThicknessM: 0.04, dimensionality }, 'fridge', 60).bothStagesS;
  expect(of(1)).toBeGreaterThan(of(1.5));
  expect(of(1.5)).toBeGreaterThan(of(2));
  expect(of(2)).toBeGreaterThan(of(3));
});

// Slab, Bi → 0: θ = exp(−h t/(ρ c L)); ρ c = k/α = 0.45/1.3e-7 J/m³K, h 8 W/m²K, fridge 4 °C, L 2 mm.
test('a thin layer follows Newton’s law of cooling', () => {
  const capacity = (0.45 / 1.3e-7) * 0.002;
  const expectedS = (Math.log((57.222 - 4) / (21.111 - 4)) * capacity) / 8;
  expect(Math.abs(chilling(spreadInPan(0.002), 'fridge', 60).firstStageS / expectedS - 1)).toBeLessThan(0.02);
});

test('the meat’s own solver, let cool in still air, agrees within a sixth', () => {
  for (const id of ['loin-back-ribs', 'brisket-flat', 'pork-shoulder', 'chicken-breast']) {
    const cut = findCut(id)!;
    const down = (temperatureC: number): StagePlan => ({
      kind: 'rest',
      cover: { kind: 'still', transmittanceWm2K: 8 },
      air: {
        isPit: false,
        gasC: 4,
        lagS: 0,
        wallDropK: 0,
        humidityRatio: 0.004,
        convectionWm2K: 8,
        pressurePa: 101325,
      },
      trigger: { by: 'core', temperatureC },
    });
    const { endS } = runner.run(bodyOf(cut, 60), [down(57.2222), down(21.1111)], {
      stretch: 1,
      wordDoses: NO_WORDS,
    });
    const ours = chilling(wholePiece(cut), 'fridge', 60).firstStageS;
    expect(Math.abs((endS[1]! - endS[0]!) / ours - 1), id).toBeLessThan(1 / 6);
  }
});

test('a whole shoulder in the fridge breaks the rule; pulled and spread 2 cm deep before a fan, or sliced in ice, it keeps it', () => {
  expect(chilling(wholePiece(findCut('pork-shoulder')!), 'fridge', 70).verdict).toBe('fail');
  expect(chilling(spreadInPan(0.02), 'fan-fridge', 70).verdict).toBe('pass');
  expect(chilling({ halfThicknessM: 0.02, dimensionality: 1 }, 'ice-bath', 70).verdict).toBe('pass');
});

test('thicker is slower, ice is faster than a fridge, and no figure is lost', () => {
  const anyCut = fc.constantFrom(...catalogueOfCuts());
  fc.assert(
    fc.property(anyCut, fc.integer({ min: 58, max: 100 }), (cut, startC) => {
      const times = CHILLERS.map(
        (around) => chilling(wholePiece(cut, cut.massKg), around, startC).firstStageS,
      );
      times.forEach((timeS, i) => {
        expect(timeS).toBeGreaterThan(0);
        expect(timeS).toBeLessThan(Infinity);
        if (i > 0) expect(timeS).toBeLessThan(times[i - 1]!);
      });
      expect(chilling(wholePiece(cut, 1.3 * cut.massKg), 'fridge', startC).firstStageS).toBeGreaterThan(
        times[0]!,
      );
    }),
    { numRuns: 40 },
  );
});

test.each([57, 101, Number.NaN])('a start of %d °C is refused', (startC) => {
  expect(() => chilling(spreadInPan(0.05), 'fridge', startC)).toThrow(RangeError);
});
