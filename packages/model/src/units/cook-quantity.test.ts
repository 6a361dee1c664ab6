import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printCookQuantity, readCookQuantity } from './cook-quantity.ts';
import type { Kind } from './kinds.ts';
import { type Quantity, toSi } from './quantity.ts';

const read = (text: string, kind: Kind): Quantity => {
  const result = readCookQuantity(text, kind);
  if (!result.ok) throw new Error(`${text}: ${result.problem.id}`);
  return result.quantity;
};
const problemOf = (text: string, kind: Kind): string | undefined => {
  const result = readCookQuantity(text, kind);
  return result.ok ? undefined : result.problem.id;
};

// Pound, inch and US gallon as NIST SP 811 (2008), appendix B.8, gives them; all else is arithmetic.
const POUND_KG = 0.45359237;
const CUP_M3 = (231 * 0.0254 ** 3) / 16;

describe('as a cook writes it: its value and its canonical print', () => {
  test.each([
    ['250 °F', 'temperature', 394.2611111111111, '250 °F'],
    ['250F', 'temperature', 394.2611111111111, '250 °F'],
    ['1.2 kg', 'mass', 1.2, '1.2 kg'],
    ['1,2 kg', 'mass', 1.2, '1.2 kg'],
    ['0,125 kg', 'mass', 0.125, '0.125 kg'],
    ['2 lb 10 oz', 'mass', (42 / 16) * POUND_KG, '2 lb 10 oz'],
    ['2lb 10oz', 'mass', (42 / 16) * POUND_KG, '2 lb 10 oz'],
    ['2 pounds 10 1/2 ounces', 'mass', (42.5 / 16) * POUND_KG, '2 lb 10 1/2 oz'],
    ['3 lbs', 'mass', 3 * POUND_KG, '3 lb'],
    ['2½ cups', 'volume', 2.5 * CUP_M3, '2 1/2 cups'],
    ['2 ½ cups', 'volume', 2.5 * CUP_M3, '2 1/2 cups'],
    ['2.5 cups', 'volume', 2.5 * CUP_M3, '2 1/2 cups'],
    ['1 cup', 'volume', CUP_M3, '1 cup'],
    ['½ cup', 'volume', CUP_M3 / 2, '1/2 cup'],
    ['2 1/2 tsp', 'volume', (2.5 * CUP_M3) / 48, '2 1/2 tsp'],
    ['3/2 tsp', 'volume', (1.5 * CUP_M3) / 48, '1 1/2 tsp'],
    ['1⁄3 cup', 'volume', CUP_M3 / 3, '1/3 cup'],
    ['4 fl. oz', 'volume', CUP_M3 / 2, '4 fl oz'],
    ['25 mm', 'length', 0.025, '25 mm'],
    ['7/8"', 'length', 0.022225, '7/8 in'],
    ['1 h 30 min', 'time', 5400, '1 h 30 min'],
    ['1h30min', 'time', 5400, '1 h 30 min'],
    ['90 min', 'time', 5400, '90 min'],
    ['1.5 hours', 'time', 5400, '1.5 h'],
    ['1 1/2 h', 'time', 5400, '1.5 h'],
    ['1 d 2 h', 'time', 93600, '1 d 2 h'],
    ['−5 °C', 'temperature', 268.15, '-5 °C'],
    ['18 km/h', 'speed', 5, '18 km/h'],
    ['0.6 m2', 'area', 0.6, '0.6 m²'],
  ] as [string, Kind, number, string][])('%s', (text, kind, si, print) => {
    const quantity = read(text, kind);
    expect(quantity.si).toBeCloseTo(si, 12);
    expect(printCookQuantity(quantity)).toBe(print);
  });
});

test('a doubt is one standard deviation in the unit of the value', () => {
  expect(read('15 K ± 5 K', 'difference')).toEqual({ kind: 'difference', si: 15, writtenIn: 'K', sd: 5 });
  expect(read('250 °F +/- 18 °F', 'temperature').sd).toBeCloseTo(10, 12);
  expect(printCookQuantity(read('121 °C ± 8 °C', 'temperature'))).toBe('121 °C ± 8 K');
  expect(printCookQuantity(read('8 lb 4 oz ± 6 oz', 'mass'))).toBe('8 lb 4 oz ± 6 oz');
});

describe('refused', () => {
  test.each([
    ['', 'mass', 'quantity.empty'],
    ['heavy', 'mass', 'quantity.not-a-number'],
    ['3.6', 'mass', 'quantity.unit-missing'],
    ['1,200 g', 'mass', 'quantity.thousands'],
    ['1.200,5 g', 'mass', 'quantity.not-a-number'],
    ['1 200 g', 'mass', 'quantity.not-a-number'],
    ['1e3 g', 'mass', 'quantity.unit-unknown'],
    ['1/7 cup', 'volume', 'quantity.fraction'],
    ['1 0/2 cups', 'volume', 'quantity.fraction'],
    ['1 5/4 cups', 'volume', 'quantity.fraction'],
    ['1.2345678901 kg', 'mass', 'quantity.digits'],
    ['1 h 90 min', 'time', 'quantity.compound-part'],
    ['1.5 lb 4 oz', 'mass', 'quantity.compound-part'],
    ['2 lb 16 oz', 'mass', 'quantity.compound-part'],
    ['10 oz 2 lb', 'mass', 'quantity.compound'],
    ['1 kg 200 g', 'mass', 'quantity.compound'],
    ['225-250 °F', 'temperature', 'quantity.range'],
    ['225 °F to 250 °F', 'temperature', 'quantity.range'],
    ['15 K ± 9 °F', 'difference', 'quantity.doubt'],
    ['15 ± 5 K', 'difference', 'quantity.unit-missing'],
    ['15 K ± 5', 'difference', 'quantity.doubt'],
    ['15 K ± 5 K ± 5 K', 'difference', 'quantity.doubt'],
    ['-1 kg', 'mass', 'quantity.negative'],
    ['-500 °F', 'temperature', 'quantity.below-absolute-zero'],
    ['2 cups', 'mass', 'quantity.unit-of-other-kind'],
  ] as [string, Kind, string][])('%j as %s: %s', (text, kind, id) => {
    expect(problemOf(text, kind)).toBe(id);
  });
});

const UNITS_OF_A_KITCHEN: readonly (readonly [Kind, string])[] = [
  ['mass', 'kg'],
  ['mass', 'g'],
  ['mass', 'lb'],
  ['mass', 'oz'],
  ['mass', 'lb oz'],
  ['volume', 'cup'],
  ['volume', 'tsp'],
  ['volume', 'mL'],
  ['length', 'mm'],
  ['length', 'in'],
  ['length', 'ft in'],
  ['time', 'min'],
  ['time', 'h min'],
  ['time', 'h min s'],
  ['temperature', '°C'],
  ['temperature', '°F'],
  ['difference', '°F'],
];

test('any value, whoever made it, prints as a text that is read, near it, and prints the same again', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...UNITS_OF_A_KITCHEN),
      fc.double({ min: 1e-4, max: 900, noNaN: true }),
      ([kind, writtenIn], value) => {
        const smallest = writtenIn.split(' ').at(-1)!;
        const si = toSi(kind, value, smallest);
        const print = printCookQuantity({ kind, si, writtenIn });
        const again = read(print, kind);
        expect(Math.abs(again.si - si)).toBeLessThanOrEqual(1e-8 * Math.abs(si));
        expect(printCookQuantity(again)).toBe(print);
      },
    ),
    { numRuns: 2000 },
  );
});
