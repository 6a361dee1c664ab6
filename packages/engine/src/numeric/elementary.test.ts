import { describe, expect, it } from 'vitest';
import { cbrt, cos, exp, expm1, log, log1p, pow, sin } from './elementary.ts';

// Exact in kind: compared against the platform's functions, themselves within 1 ulp.
const ULP = 2 ** -52;
const relative = (a: number, b: number) => (a === b ? 0 : Math.abs(a - b) / Math.abs(b));

describe('elementary functions', () => {
  it('exp and log stay within their stated error on 10⁵ points', () => {
    for (let i = 0; i < 100_000; i++) {
      const x = -700 + (1400 * i) / 99_999;
      expect(relative(exp(x), Math.exp(x))).toBeLessThan(2.5 * ULP);
      const y = Math.exp(x);
      if (Math.abs(x) > 1e-3) expect(relative(log(y), Math.log(y))).toBeLessThan(2.5 * ULP);
    }
  });

  it('sin and cos stay within 3 ulp of one', () => {
    for (let i = 0; i < 20_000; i++) {
      const x = -1000 + i * 0.1;
      expect(Math.abs(sin(x) - Math.sin(x))).toBeLessThan(3 * ULP);
      expect(Math.abs(cos(x) - Math.cos(x))).toBeLessThan(3 * ULP);
    }
  });

  it('answers the edges', () => {
    expect(exp(0)).toBe(1);
    expect(exp(1000)).toBe(Infinity);
    expect(exp(-1000)).toBe(0);
    expect(exp(Number.NaN)).toBeNaN();
    expect(relative(exp(-740), Math.exp(-740))).toBeLessThan(0.5);
    expect(log(0)).toBe(-Infinity);
    expect(log(-1)).toBeNaN();
    expect(log(1)).toBe(0);
    expect(relative(log(5e-324), Math.log(5e-324))).toBeLessThan(2 * ULP);
    expect(pow(2, 10)).toBeCloseTo(1024, 9);
    expect(cbrt(-27)).toBeCloseTo(-3, 14);
    expect(relative(log1p(1e-10), Math.log1p(1e-10))).toBeLessThan(4 * ULP);
    expect(relative(expm1(1e-10), Math.expm1(1e-10))).toBeLessThan(4 * ULP);
  });
});
