/** Moist air: inverse pairs, order, the energy identity of the wet bulb; its published values are in validation/. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer } from '../calc/answer.ts';
import { CalcProblem } from '../calc/spec.ts';
import { standardPressurePa } from './atmosphere.ts';
import { humidityRatioFromVapour, vapourPressurePa } from './moistAir.ts';
import { saturationPressurePa, saturationSlopePaPerK, saturationTemperatureC } from './saturation.ts';
import { latentHeatJKg } from './water.ts';
import { humidityRatioFromWetBulb, wetBulbC } from './wetBulb.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('saturation', () => {
  it('temperature and pressure undo each other', () => {
    fc.assert(
      fc.property(between(-100, 200), (t) => {
        expect(Math.abs(saturationTemperatureC(saturationPressurePa(t)) - t)).toBeLessThan(2e-8);
      }),
    );
  });

  it('rises with temperature, across freezing too', () => {
    fc.assert(
      fc.property(between(-100, 199), between(0.001, 1), (t, step) => {
        expect(saturationPressurePa(t + step)).toBeGreaterThan(saturationPressurePa(t));
      }),
    );
  });

  it('has the slope that its differences have', () => {
    fc.assert(
      fc.property(between(0.1, 199), (t) => {
        const difference = (saturationPressurePa(t + 1e-3) - saturationPressurePa(t - 1e-3)) / 2e-3;
        expect(Math.abs(saturationSlopePaPerK(t) / difference - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  it('refuses what is outside, and what is no number', () => {
    for (const t of [-100.1, 200.1, Number.NaN]) expect(() => saturationPressurePa(t)).toThrow(RangeError);
    for (const p of [0, -5, 2e6, Number.NaN]) expect(() => saturationTemperatureC(p)).toThrow(RangeError);
    expect(() => standardPressurePa(Number.NaN)).toThrow(RangeError);
  });

  // IAPWS R7-97(2012), Table 35: 500 K → 2.63889776 MPa is beyond; 372.755919 K ↔ 100 kPa is not.
  it('boils at 99.606 °C under 100 kPa', () => {
    expect(Math.abs(saturationTemperatureC(100_000) - 99.605919)).toBeLessThan(0.02);
  });

  // Clausius and Clapeyron with the ideal-gas volume; the vapour of a boiling kettle is 1.5 % from ideal.
  it('agrees with the latent heat through its slope', () => {
    for (const t of [10, 40, 70, 100]) {
      const T = t + 273.15;
      const heat = (461.5 * T * T * saturationSlopePaPerK(t)) / saturationPressurePa(t);
      expect(Math.abs(heat / latentHeatJKg(t) - 1)).toBeLessThan(0.02);
    }
  });
});

/** Any air of a pit or a yard that can be: dry bulb, humidity ratio up to saturation, pressure. */
const anyAir = fc
  .record({ t: between(-30, 200), share: between(0, 1), p: between(50_000, 120_000) })
  .map(({ t, share, p }) => {
    const most = Math.min(saturationPressurePa(t), 0.85 * p);
    return { t, W: humidityRatioFromVapour(share * most, p), p };
  });

describe('wet bulb', () => {
  it('lies between dew point and dry bulb', () => {
    fc.assert(
      fc.property(anyAir, ({ t, W, p }) => {
        const wet = wetBulbC(t, W, p);
        expect(wet).toBeLessThanOrEqual(t);
        const pa = vapourPressurePa(W, p);
        // Over ice the wick's latent heat differs from the frost point's by the constants' rounding.
        if (pa > 1) expect(wet).toBeGreaterThanOrEqual(saturationTemperatureC(pa) - 1e-2);
      }),
    );
  });

  it('gives its humidity ratio back: the energy identity closes', () => {
    fc.assert(
      fc.property(anyAir, ({ t, W, p }) => {
        const wet = wetBulbC(t, W, p);
        const back = humidityRatioFromWetBulb(t, wet, p);
        expect(Math.abs(back - W)).toBeLessThan(1e-6 * (1 + W));
      }),
    );
  });

  it('rises with humidity', () => {
    fc.assert(
      fc.property(between(20, 200), between(0, 0.5), between(0.0005, 0.01), (t, W, more) => {
        const p = 101_325;
        fc.pre(vapourPressurePa(W + more, p) < saturationPressurePa(t));
        expect(wetBulbC(t, W + more, p)).toBeGreaterThan(wetBulbC(t, W, p));
      }),
    );
  });

  it('is the dry bulb in saturated air', () => {
    const W = humidityRatioFromVapour(saturationPressurePa(40), 101_325);
    expect(wetBulbC(40, W, 101_325)).toBeCloseTo(40, 9);
  });
});

describe('air that cannot be', () => {
  test('two humidities', 'humidity-ratio', 'dry-bulb=30 °C; relative-humidity=50 %; dew-point=10 °C');
  test('no humidity', 'humidity-ratio', 'dry-bulb=30 °C');
  test('no dry bulb', 'wet-bulb', 'humidity-ratio=0.01');
  test('no dry bulb for a relative humidity', 'dew-point', 'relative-humidity=50 %');
  test('too much vapour', 'wet-bulb', 'dry-bulb=121 °C; relative-humidity=60 %');
  test('supersaturated', 'wet-bulb', 'dry-bulb=10 °C; humidity-ratio=0.02');
  test('wet bulb above dry bulb', 'humidity-ratio', 'dry-bulb=20 °C; wet-bulb=21 °C');
  test('dew point above dry bulb', 'humidity-ratio', 'dry-bulb=20 °C; dew-point=21 °C');
  test('wet bulb below that of dry air', 'humidity-ratio', 'dry-bulb=100 °C; wet-bulb=5 °C');
  test('wet bulb at boiling', 'humidity-ratio', 'dry-bulb=150 °C; wet-bulb=99 °C; pressure=80 kPa');
  test('vapour heavier than the air', 'humidity-ratio', 'vapour-pressure=110 kPa');
  test('relative humidity above boiling', 'relative-humidity', 'dry-bulb=121 °C; humidity-ratio=0.02');
  test('dew point of dry air', 'dew-point', 'humidity-ratio=0');

  function test(what: string, calc: string, inputs: string) {
    it(what, () => expect(() => answer(calc, inputs)).toThrow(CalcProblem));
  }
});
