import { describe, expect, test } from 'vitest';
import { saltWaterActivity, sucroseWaterActivity } from './waterActivity.ts';

describe('water activity of solutions', () => {
  // Robinson & Stokes, Electrolyte Solutions (1959), from memory; Greenspan (1977) for the saturated one.
  test.each([
    [0.5, 0.98355, 0.002],
    [1, 0.96686, 0.002],
    [1.203, 0.96, 0.002],
    [3, 0.89318, 0.002],
    [4, 0.85138, 0.002],
    [6.146, 0.7529, 0.003],
  ])('sodium chloride %d mol/kg', (molality, expected, within) => {
    expect(Math.abs(saltWaterActivity(molality) - expected)).toBeLessThanOrEqual(within);
  });

  // Greenspan 1977, over the saturated brine; its strength from handbook solubilities (35.65 and 36.69 g in 100 g).
  test.each([
    [6.1, 0, 0.7551],
    [6.278, 50, 0.7443],
  ])('saturated brine of %d mol/kg at %d °C', (molality, celsius, expected) => {
    expect(Math.abs(saltWaterActivity(molality, celsius) - expected)).toBeLessThanOrEqual(0.006);
  });

  // Food-microbiology handbooks, from memory: 0.96 at 39.66 %, 0.98 at 25.5 %.
  test.each([
    [0.3966, 0.96],
    [0.255, 0.98],
  ])('sucrose %d at 25 °C', (fraction, expected) => {
    expect(Math.abs(sucroseWaterActivity(fraction, 25) - expected)).toBeLessThanOrEqual(0.003);
  });

  test('pure water is 1, and what is no fraction is refused', () => {
    expect(sucroseWaterActivity(0, 60)).toBe(1);
    expect(saltWaterActivity(0)).toBe(1);
    expect(() => sucroseWaterActivity(Number.NaN, 25)).toThrow(RangeError);
    expect(() => saltWaterActivity(-1)).toThrow(RangeError);
  });
});
