/** Tare, one weighing, a puddle: what they mend and what they refuse. */
import { type Formula, quantity } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { afterWeighing, contentsG, factorFromPlate } from './corrections.ts';
import { sauceOutcome } from './outcome.ts';
import { batchRheology } from './rheology.ts';
import { batchDensity } from './solution.ts';
import { plateDiameterM } from './spread.ts';

const g = (ingredient: string, value: number) => ({ ingredient, amount: quantity('mass', value, 'g') });
const formula: Formula = {
  id: 'f',
  name: 'Sauce',
  kind: 'sauce',
  lines: [g('ketchup', 500), g('vinegar_cider_5', 150), g('sugar_brown_packed', 180), g('cola', 400)],
  simmer: {
    evaporated: quantity('mass', 350, 'g'),
    panDiameter: quantity('length', 24, 'cm'),
    panHeight: quantity('length', 14, 'cm'),
  },
};
const made = sauceOutcome(formula);
if (!made.ok) throw new Error('the formula is sound');

describe('one weighing on the way', () => {
  const midway = made.curve!.points.find((point) => point.waterOffG > 170)!;

  test('as foreseen, it changes nothing', () => {
    const after = afterWeighing(formula, {}, midway.timeS, midway.massG);
    expect(after.ok && after.rateFactor).toBeCloseTo(1, 1);
  });

  test('half the loss at that time: it takes about twice as long, and the range narrows', () => {
    const half = made.rawMassG - (made.rawMassG - midway.massG) / 2;
    const after = afterWeighing(formula, {}, midway.timeS, half);
    if (!after.ok) throw new Error(after.problems[0]!.id);
    expect(after.rateFactor).toBeLessThan(0.75);
    const total = midway.timeS + after.leftS.p50;
    expect(total).toBeGreaterThan(1.5 * made.curve!.totalS);
    // 5 % of the time that is left, at ten and ninety percent (1.2816 standard deviations).
    expect(after.leftS.p90 / after.leftS.p10).toBeCloseTo(Math.exp(2 * 1.2816 * 0.05), 3);
  });

  test('nothing gone, already there, too good to be true: said', () => {
    const ids = (at: number, mass: number) => {
      const after = afterWeighing(formula, {}, at, mass);
      return after.ok ? [] : after.problems.map((p) => p.id);
    };
    expect(ids(600, made.rawMassG + 1)).toEqual(['sauce.nothing-gone-yet']);
    expect(ids(600, made.finishedMassG - 5)).toEqual(['sauce.already-there']);
    expect(ids(5, made.rawMassG - 300)).toEqual(['sauce.weighing-too-fast']);
  });
});

describe('a puddle on a plate', () => {
  test('gives back the factor that the sauce has', () => {
    for (const factor of [0.6, 1, 1.7]) {
      const diameterM = plateDiameterM(
        15e-6,
        batchDensity(made.finished),
        factor * batchRheology(made.finished, 8).yieldStressPa,
      );
      const read = factorFromPlate(made.finished, { diameterM, temperatureC: 8 });
      expect(read.ok && read.factor).toBeCloseTo(factor, 9);
      const again = sauceOutcome(formula, { thicknessFactor: factor });
      expect(again.ok && again.looks.fridge.yieldStressPa / made.looks.fridge.yieldStressPa).toBeCloseTo(
        factor,
        9,
      );
    }
  });

  test('its doubt narrows from 40 to 15 %', () => {
    const tested = sauceOutcome(formula, { thicknessFactor: 1 });
    if (!tested.ok) throw new Error();
    const span = (o: typeof tested) =>
      o.looksThicker.fridge.yieldStressPa / o.looksThinner.fridge.yieldStressPa;
    expect(span(tested)).toBeCloseTo(Math.exp(2 * 0.15), 6);
    expect(span(made as typeof tested)).toBeCloseTo(Math.exp(2 * 0.4), 6);
  });

  test('an odd puddle is asked about', () => {
    const read = factorFromPlate(made.finished, { diameterM: 0.025, temperatureC: 5 });
    expect(read.ok && read.doubts.map((d) => d.id)).toEqual(['sauce.plate-strange']);
    const none = factorFromPlate(made.finished, { diameterM: 0, temperatureC: 5 });
    expect(none.ok).toBe(false);
  });
});

test('the tare of the pan', () => {
  expect(contentsG(2950, 1800)).toEqual({ ok: true, massG: 1150 });
  expect(contentsG(1500, 1800).ok).toBe(false);
  expect(contentsG(Number.NaN, 1800).ok).toBe(false);
});
