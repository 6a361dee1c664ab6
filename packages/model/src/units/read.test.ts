import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { findUnit, type Kind, UNITS } from './kinds.ts';
import { fromSi, toSi } from './quantity.ts';
import { parseQuantity } from './read.ts';

const si = (text: string, kind: Kind): number => {
  const read = parseQuantity(text, kind);
  if (!read.ok) throw new Error(`${text}: ${read.problem.id}`);
  return read.quantity.si;
};
const problemOf = (text: string, kind: Kind): string | undefined => {
  const read = parseQuantity(text, kind);
  return read.ok ? undefined : read.problem.id;
};

// NIST Special Publication 811 (2008), appendix B.8: factors printed in bold are exact; the others to their 7 digits.
describe('factors of NIST SP 811, appendix B.8', () => {
  test.each([
    ['1 lb', 'mass', 0.45359237, 0],
    ['1 oz', 'mass', 2.834952e-2, 1e-6],
    ['1 in', 'length', 0.0254, 0],
    ['1 ft', 'length', 0.3048, 0],
    ['1 ft²', 'area', 9.290304e-2, 1e-15],
    ['1 in²', 'area', 6.4516e-4, 1e-15],
    ['1 gal', 'volume', 3.785412e-3, 1e-6],
    ['1 qt', 'volume', 9.463529e-4, 1e-6],
    ['1 pt', 'volume', 4.731765e-4, 1e-6],
    ['1 cup', 'volume', 2.365882e-4, 1e-6],
    ['1 fl oz', 'volume', 2.957353e-5, 1e-6],
    ['1 tbsp', 'volume', 1.478676e-5, 1e-6],
    ['1 tsp', 'volume', 4.928922e-6, 1e-6],
    ['1 atm', 'pressure', 101325, 0],
    ['1 bar', 'pressure', 1e5, 0],
    ['1 psi', 'pressure', 6894.757, 1e-6],
    ['1 mmHg', 'pressure', 133.3224, 1e-6],
    ['1 inHg', 'pressure', 3386.389, 1e-6],
    ['1 Btu', 'energy', 1055.056, 1e-6],
    ['1 kcal', 'energy', 4186.8, 0],
    ['1 kWh', 'energy', 3.6e6, 0],
    ['1 Btu/h', 'power', 0.2930711, 1e-6],
    ['1 Btu/lb', 'specific-energy', 2326, 1e-12],
    ['1 Btu/lb°F', 'specific-heat', 4186.8, 1e-12],
    ['1 Btu/hft²°F', 'coefficient', 5.678263, 1e-6],
    ['1 lb/ft³', 'density', 16.01846, 1e-6],
    ['1 ft³/lb', 'specific-volume', 6.242796e-2, 1e-6],
    ['1 mph', 'speed', 0.44704, 1e-15],
    ['1 km/h', 'speed', 0.2777778, 1e-6],
    ['1 cP', 'viscosity', 1e-3, 0],
    ['1 cSt', 'diffusivity', 1e-6, 0],
    ['32 °F', 'temperature', 273.15, 1e-15],
    ['0 °C', 'temperature', 273.15, 0],
    ['212 °F', 'temperature', 373.15, 1e-15],
    ['10 °F', 'difference', 5.555556, 1e-6],
  ] as [string, Kind, number, number][])('%s of %s is %d SI', (text, kind, expected, relative) => {
    expect(Math.abs(si(text, kind) / expected - 1)).toBeLessThanOrEqual(relative);
  });
});

describe('spellings', () => {
  test.each([
    ['121°C', 'temperature', 394.15],
    ['121 C', 'temperature', 394.15],
    ['1.2e3 g', 'mass', 1.2],
    ['1.2E3g', 'mass', 1.2],
    ['.5 kg', 'mass', 0.5],
    ['+2 kg', 'mass', 2],
    ['0.02', 'fraction', 0.02],
    ['2 1', 'fraction', 2],
    ['60 %', 'fraction', 0.6],
    ['12 g/100 g', 'fraction', 0.12],
    ['12 g/100g', 'fraction', 0.12],
    ['0.16 oz/lb', 'fraction', 0.01],
    ['5 1/min', 'rate', 5 / 60],
    ['3 W/m2K', 'coefficient', 3],
    ['3 W/m^2·K', 'coefficient', 3],
    ['3 W/m² K', 'coefficient', 3],
    ['0.5 W/m K', 'conductivity', 0.5],
    ['4 um', 'length', 4e-6],
    ['4 μm', 'length', 4e-6],
    ['4 µm', 'length', 4e-6],
    ['2 floz', 'volume', 2 * 2.95735295625e-5],
    ['2 Pa s', 'viscosity', 2],
    ['2 mPas', 'viscosity', 2e-3],
    ['2 Pa·s^n', 'consistency', 2],
    ['2 Pasⁿ', 'consistency', 2],
    ['−5 °C', 'temperature', 268.15],
  ] as [string, Kind, number][])('%s as %s', (text, kind, expected) => {
    expect(si(text, kind)).toBeCloseTo(expected, 12);
  });
});

describe('refused', () => {
  test.each([
    ['', 'mass', 'quantity.empty'],
    ['kg', 'mass', 'quantity.not-a-number'],
    ['1,000 kg', 'mass', 'quantity.not-a-number'],
    ['1,5 kg', 'mass', 'quantity.not-a-number'],
    ['NaN kg', 'mass', 'quantity.not-a-number'],
    ['Infinity kg', 'mass', 'quantity.not-a-number'],
    ['1e999 kg', 'mass', 'quantity.not-finite'],
    ['5', 'mass', 'quantity.unit-missing'],
    ['5. kg', 'mass', 'quantity.unit-unknown'],
    ['5 °C', 'mass', 'quantity.unit-of-other-kind'],
    ['5 fl oz', 'mass', 'quantity.unit-of-other-kind'],
    ['5 stone', 'mass', 'quantity.unit-unknown'],
    ['5 k g', 'mass', 'quantity.unit-unknown'],
    ['5 m in', 'time', 'quantity.unit-unknown'],
    ['5 KG', 'mass', 'quantity.unit-unknown'],
    ['5 kg 3 g', 'mass', 'quantity.unit-unknown'],
    ['-1 kg', 'mass', 'quantity.negative'],
    ['-300 °C', 'temperature', 'quantity.below-absolute-zero'],
  ] as [string, Kind, string][])('%j as %s: %s', (text, kind, id) => {
    expect(problemOf(text, kind)).toBe(id);
  });
});

test('every spelling of a kind names one unit, and one unit of each kind is SI', () => {
  for (const kind of Object.keys(UNITS) as Kind[]) {
    for (const unit of UNITS[kind]) expect(findUnit(kind, unit.symbol)).toBe(unit);
    expect(
      UNITS[kind].filter((unit) => unit.toSi === 1 && !('offset' in unit && unit.offset)).length,
    ).toBeGreaterThan(0);
  }
});

test('a value goes to SI and comes back in every unit', () => {
  const anyUnit = fc.constantFrom(
    ...(Object.keys(UNITS) as Kind[]).flatMap((kind) =>
      UNITS[kind].map((unit) => [kind, unit.symbol] as const),
    ),
  );
  fc.assert(
    fc.property(anyUnit, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), ([kind, unit], value) => {
      const back = fromSi(kind, toSi(kind, value, unit), unit);
      expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * (value + 1000));
    }),
  );
});

test('what is printed with all its digits is read back as the same quantity', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1e6, noNaN: true }),
      fc.constantFrom('kg', 'lb', 'oz', 'g'),
      (value, unit) => {
        expect(parseQuantity(`${value} ${unit}`, 'mass')).toEqual({
          ok: true,
          quantity: { kind: 'mass', si: toSi('mass', value, unit), writtenIn: unit },
        });
      },
    ),
  );
});
