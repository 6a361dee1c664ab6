/** Heat by conduction, convection, radiation, evaporation: limits, order and identities; figures are in validation/. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { humidityRatioFromVapour } from '../air/moistAir.ts';
import { saturationPressurePa } from '../air/saturation.ts';
import { latentHeatJKg } from '../air/water.ts';
import { wetBulbC } from '../air/wetBulb.ts';
import { answer } from '../calc/answer.ts';
import { CalcProblem } from '../calc/spec.ts';
import { bodyTheta, conductionSeries, halfSpaceRatio, timeToTheta } from './conduction.ts';
import { naturalNusselt } from './convection.ts';
import { eigenvalue, SERIES_SHAPES } from './eigenvalues.ts';
import { radiationWm2K } from './radiation.ts';
import { wetSurface } from './wetSurface.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyShape = fc.constantFrom(...SERIES_SHAPES);
const anyBiot = between(-4, 4).map((power) => 10 ** power);
const one = (shape: (typeof SERIES_SHAPES)[number], biot: number) => ({
  axes: [{ series: conductionSeries(shape, biot), lengthM: 1 }],
});

describe('conduction series', () => {
  it('has roots that rise, one in each interval', () => {
    fc.assert(
      fc.property(anyShape, anyBiot, fc.integer({ min: 1, max: 300 }), (shape, biot, n) => {
        const here = eigenvalue(shape, biot, n);
        const next = eigenvalue(shape, biot, n + 1);
        expect(next - here).toBeGreaterThan(Math.PI / 2);
        expect(next - here).toBeLessThan(1.6 * Math.PI);
      }),
    );
  });

  it('starts at 1 and falls with time', () => {
    fc.assert(
      fc.property(anyShape, anyBiot, between(1e-6, 2), between(1.01, 3), (shape, biot, fourier, more) => {
        const { theta } = conductionSeries(shape, biot);
        expect(theta(0)).toBe(1);
        expect(theta(fourier * more)).toBeLessThanOrEqual(theta(fourier) + 1e-10);
        expect(theta(fourier)).toBeLessThanOrEqual(1 + 1e-9);
      }),
    );
  });

  it('meets the half-space where little time has passed', () => {
    for (const shape of SERIES_SHAPES)
      for (const biot of [0.3, 3, 300]) {
        const fourier = 1e-5;
        const position = 0.995;
        const skin = halfSpaceRatio((1 - position) / (2 * Math.sqrt(fourier)), biot * Math.sqrt(fourier));
        expect(Math.abs(1 - conductionSeries(shape, biot).theta(fourier, position) - skin)).toBeLessThan(
          5e-3,
        );
      }
  });

  it('goes over into the half-space without a step', () => {
    for (const shape of SERIES_SHAPES) {
      const { theta } = conductionSeries(shape, 10);
      expect(Math.abs(theta(1.999e-6, 1) - theta(2.001e-6, 1))).toBeLessThan(2e-4);
    }
  });

  it('becomes a lump as Bi tends to zero', () => {
    const surfaceOverVolume = { slab: 1, cylinder: 2, sphere: 3 };
    for (const shape of SERIES_SHAPES) {
      const theta = conductionSeries(shape, 1e-3).theta(100);
      expect(Math.abs(theta - Math.exp(-1e-3 * surfaceOverVolume[shape] * 100))).toBeLessThan(1e-3);
    }
  });

  it('gives back the time to a θ', () => {
    fc.assert(
      fc.property(anyShape, anyBiot, between(0.02, 0.98), (shape, biot, theta) => {
        const body = one(shape, biot);
        const time = timeToTheta(body, 1e-7, theta);
        expect(Math.abs(bodyTheta(body, 1e-7, time) - theta)).toBeLessThan(1e-9);
      }),
    );
  });

  it('of a brick with two far faces is that of a slab', () => {
    const h = 'coefficient=15 W/m²K; conductivity=0.45 W/mK; diffusivity=1.3e-7 m²/s; time=1 h';
    const slab = answer('transient-conduction', `shape=slab; half-thickness=30 mm; ${h}`).value as number;
    const brick = answer(
      'transient-conduction',
      `shape=brick; half-thickness=30 mm; half-width=50 m; half-length=50 m; ${h}`,
    ).value as number;
    expect(brick).toBeCloseTo(slab, 6);
  });

  it.each([
    ['transient-conduction', 'shape=slab; biot=1; fourier=0.5; time=1 h'],
    ['transient-conduction', 'shape=slab; biot=1; coefficient=10 W/m²K; fourier=0.5'],
    ['transient-conduction', 'shape=brick; biot=1; fourier=0.5'],
    ['transient-conduction', 'shape=slab; biot=-1; fourier=0.5'],
    ['transient-conduction', 'shape=slab; half-width=1 cm; biot=1; fourier=0.5'],
    ['transient-conduction', 'shape=slab; biot=1; time=1 h; diffusivity=0.13 mm²/s'],
    [
      'conduction-time',
      'shape=slab; half-thickness=20 mm; biot=1; diffusivity=0.13 mm²/s; start=5 °C; surroundings=60 °C; to=60 °C',
    ],
    [
      'conduction-time',
      'shape=slab; half-thickness=20 mm; biot=1; diffusivity=0.13 mm²/s; start=5 °C; surroundings=60 °C; to=1 °C',
    ],
    [
      'conduction-time',
      'shape=slab; half-thickness=20 mm; biot=1; diffusivity=0.13 mm²/s; start=5 °C; surroundings=60 °C; from=40 °C; to=30 °C',
    ],
    [
      'conduction-time',
      'shape=slab; half-thickness=0 mm; biot=1; diffusivity=0.13 mm²/s; start=5 °C; surroundings=60 °C; to=30 °C',
    ],
    ['equivalent-dimensionality', 'beta1=3; beta2=2'],
    ['natural-convection', 'shape=plate-facing-up; correlation=laminar; rayleigh=1e6'],
    ['natural-convection', 'shape=vertical-plate; correlation=laminar; rayleigh=1e10'],
    ['wet-surface', 'gas-temperature=121 °C; humidity-ratio=0.02; convection-coefficient=8 W/m²K'],
    [
      'wet-surface',
      'gas-temperature=121 °C; humidity-ratio=0.02; convection-coefficient=8 W/m²K; emissivity=0.9; radiation-coefficient=8 W/m²K',
    ],
    ['step-response', 'time-constant=0 s; time=3 s'],
  ])('%s refuses %s', (calc, inputs) => expect(() => answer(calc, inputs)).toThrow(CalcProblem));
});

describe('surfaces', () => {
  it('radiation coefficient times difference is the difference of fourth powers', () => {
    fc.assert(
      fc.property(between(-40, 600), between(-40, 600), (a, b) => {
        const exchange = radiationWm2K(0.8, a, b) * (a - b);
        const exact = 0.8 * 5.670374419e-8 * ((a + 273.15) ** 4 - (b + 273.15) ** 4);
        expect(Math.abs(exchange - exact)).toBeLessThan(1e-8 * (1 + Math.abs(exact)));
      }),
    );
  });

  it('convection rises with the Rayleigh number', () => {
    fc.assert(
      fc.property(between(2, 11), between(0.01, 1), (power, more) => {
        for (const shape of ['horizontal-cylinder', 'vertical-plate', 'plate-facing-down'] as const)
          expect(naturalNusselt(shape, 10 ** (power + more), 0.7)).toBeGreaterThan(
            naturalNusselt(shape, 10 ** power, 0.7),
          );
      }),
    );
  });

  const surroundings = fc.record({
    gasC: between(60, 200),
    humidityRatio: between(0, 0.3),
    convectionWm2K: between(3, 40),
    radiationWm2K: between(0, 20),
    wetness: between(0.05, 1),
  });

  it('closes the balance of a wet surface', () => {
    fc.assert(
      fc.property(surroundings, (s) => {
        const state = wetSurface({ ...s, wallC: s.gasC - 20, pressurePa: 101_325, otherHeatWm2: 0 })!;
        const heat =
          s.convectionWm2K * (s.gasC - state.surfaceC) + s.radiationWm2K * (s.gasC - 20 - state.surfaceC);
        expect(Math.abs(heat - state.evaporationKgM2S * latentHeatJKg(state.surfaceC))).toBeLessThan(
          1e-4 * (1 + Math.abs(heat)),
        );
      }),
    );
  });

  // ASHRAE 2017 ch. 1: a ventilated wick without radiation reads close to the thermodynamic wet bulb.
  it('lies near the wet bulb without radiation, above it with', () => {
    fc.assert(
      fc.property(surroundings, (s) => {
        // Gas that is not supersaturated.
        const humidityRatio = Math.min(s.humidityRatio, saturatedAt(s.gasC));
        const wet = wetBulbC(s.gasC, humidityRatio, 101_325);
        const bare = {
          ...s,
          humidityRatio,
          wallC: s.gasC,
          pressurePa: 101_325,
          otherHeatWm2: 0,
          wetness: 1,
        };
        const still = wetSurface({ ...bare, radiationWm2K: 0 })!.surfaceC;
        expect(Math.abs(still - wet)).toBeLessThan(2.5);
        expect(wetSurface(bare)!.surfaceC).toBeGreaterThanOrEqual(still - 1e-9);
      }),
    );
  });

  it('dries to the mean of gas and walls', () => {
    const dry = wetSurface({
      gasC: 120,
      wallC: 80,
      humidityRatio: 0.02,
      convectionWm2K: 10,
      radiationWm2K: 10,
      pressurePa: 101_325,
      wetness: 0,
      otherHeatWm2: 0,
    })!;
    expect(dry.surfaceC).toBeCloseTo(100, 8);
    expect(dry.evaporationKgM2S).toBe(0);
  });
});

const saturatedAt = (gasC: number): number => {
  const pa = saturationPressurePa(Math.min(gasC, 95));
  return humidityRatioFromVapour(pa, 101_325);
};
