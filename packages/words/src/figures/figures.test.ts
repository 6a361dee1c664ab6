/** Printing of figures. Expected values by hand from the exact factors (NIST SP 811) and the rules in each file. */
import { quantity } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printer } from '../printer.ts';
import { writtenQuantity } from '../quantity.ts';
import { METRIC, US } from '../settings.ts';
import { chance, timesIn } from './chance.ts';
import { clock, clockRange, date } from './clock.ts';
import { duration, durationRange, elapsed } from './duration.ts';
import { length } from './length.ts';
import { mass, massRange } from './mass.ts';
import { decimal, fraction, listed } from './number.ts';
import { temperature, temperatureRange } from './temperature.ts';
import { volume } from './volume.ts';

const LISBON = { clock: '24', zone: 'Europe/Lisbon' } as const;
const TWELVE = { clock: '12', zone: 'Europe/Lisbon' } as const;

test('figures: thousands parted, zeros dropped, a true minus, no minus nought', () => {
  expect([decimal(1506), decimal(1.25, 2), decimal(3.6, 2), decimal(-18), decimal(-0.2)]).toEqual([
    '1,506',
    '1.25',
    '3.6',
    '−18',
    '0',
  ]);
  expect(() => decimal(Number.NaN)).toThrow(RangeError);
});

test('fractions in the reach of a spoon: quarters by sign, thirds and eighths spelled', () => {
  expect([
    fraction(2.5, 4),
    fraction(0.25, 4),
    fraction(1 / 3, 3),
    fraction(0.375, 8),
    fraction(3, 4),
  ]).toEqual(['2 ½', '¼', '1/3', '3/8', '3']);
});

test('temperatures to the degree in either system', () => {
  expect(temperature(394.261111, 'metric')).toBe('121 °C');
  expect(temperature(394.261111, 'us')).toBe('250 °F');
  expect(temperatureRange(385.15, 401.15, 'metric')).toBe('112–128 °C');
});

test('masses as a kitchen scale shows them', () => {
  expect([0.0003, 0.0042, 0.275, 1.25, 14.03].map((kg) => mass(kg, 'metric'))).toEqual([
    '0.3 g',
    '4 g',
    '275 g',
    '1.25 kg',
    '14 kg',
  ]);
  // 2 lb 10 oz = 42 oz = 1.190680 kg exactly by the international pound.
  expect(mass(1.19068, 'us')).toBe('2 lb 10 oz');
  expect([0.004, 0.0283495, 0.2, 0.45359237].map((kg) => mass(kg, 'us'))).toEqual([
    '4 g',
    '1 oz',
    '7 oz',
    '1 lb',
  ]);
  expect(massRange(5.2, 6.6, 'metric')).toBe('5.2–6.6 kg');
});

test('volumes as spoons and cups, or a jug', () => {
  // US legal cup of 236.588 mL, teaspoon of 4.92892 mL.
  expect([2.5 * 236.588e-6, 4.929e-6, 29.57e-6, 78.86e-6].map((m3) => volume(m3, 'us'))).toEqual([
    '2 ½ cups',
    '1 tsp',
    '2 tbsp',
    '1/3 cup',
  ]);
  expect([30e-6, 592e-6, 0.94e-3].map((m3) => volume(m3, 'metric'))).toEqual(['30 mL', '590 mL', '940 mL']);
  // A quarter of a cup, three tablespoons, one and a half: as a jug and a spoon measure them.
  expect([59.147e-6, 44.36e-6, 22.18e-6].map((m3) => volume(m3, 'metric'))).toEqual([
    '60 mL',
    '45 mL',
    '22 mL',
  ]);
  expect(volume(62e-6, 'metric', { isAsWritten: true })).toBe('62 mL');
});

test('lengths as a ruler shows them', () => {
  expect([length(0.027, 'metric'), length(0.027, 'us'), length(0.24, 'metric'), length(3, 'us')]).toEqual([
    '27 mm',
    '1 1/8 in',
    '24 cm',
    '10 ft',
  ]);
});

test('durations as a cook says them', () => {
  expect([duration(26 * 60), duration(7800), duration(57600), duration(420)]).toEqual([
    '25 min',
    '2 h 10',
    '16 h',
    '7 min',
  ]);
  expect([duration(86400), duration(4 * 86400)]).toEqual(['24 h', '4 days']);
  expect(elapsed(7800 + 120)).toBe('2 h 12 in');
  expect([durationRange(1200, 2100), durationRange(10200, 11700)]).toEqual(['20–35 min', '2 h 50–3 h 15']);
  expect(() => duration(Infinity)).toThrow(RangeError);
});

test('clock times stand on the wall of the cook’s zone, in either style', () => {
  // Lisbon is UTC+1 in September (IANA tz database).
  expect(clock('2027-09-12T12:30:00Z', LISBON)).toBe('13:30');
  expect(clock('2027-09-12T12:30:00Z', TWELVE)).toBe('1:30 pm');
  expect(clockRange('2027-09-12T11:34:00Z', '2027-09-12T12:41:00Z', LISBON)).toBe('12:35–13:40');
  expect(clockRange('2027-09-12T10:34:00Z', '2027-09-12T11:41:00Z', TWELVE)).toBe('11:35 am–12:40 pm');
  expect(clockRange('2027-09-12T11:34:00Z', '2027-09-12T12:41:00Z', TWELVE)).toBe('12:35–1:40 pm');
  expect(date('2027-09-12T12:30:00Z', 'Europe/Lisbon', 'uk')).toBe('Sunday 12 September');
});

test('the hour that falls twice says which it is', () => {
  // Lisbon falls back on 31 October 2027 at 02:00 summer time: 01:30 comes at 00:30Z and at 01:30Z.
  expect(clock('2027-10-31T00:30:00Z', LISBON)).toBe('01:30 (the first)');
  expect(clock('2027-10-31T01:30:00Z', LISBON)).toBe('01:30 (the second)');
});

describe('chances', () => {
  test('are rounded to fives below a thousand members and never certain', () => {
    expect([chance(0.88, 200), chance(0.88, 1000), chance(1, 200), chance(0, 200), chance(1, 4000)]).toEqual([
      '90 %',
      '88 %',
      'over 95 %',
      'under 5 %',
      'over 99 %',
    ]);
    expect([timesIn(0.88, 200), timesIn(0.85, 200), timesIn(0.09, 200), timesIn(1, 200)]).toEqual([
      '9 times in 10',
      '17 times in 20',
      'once in 10',
      'more than 19 times in 20',
    ]);
  });
});

test('a quantity comes back in the unit it was written in', () => {
  expect(writtenQuantity(quantity('temperature', 250, '°F'))).toBe('250 °F');
  expect(writtenQuantity({ kind: 'mass', si: 1.19067997125, writtenIn: 'lb oz' })).toBe('2 lb 10 oz');
  expect(writtenQuantity(quantity('volume', 1.5, 'cup'))).toBe('1 ½ cups');
  expect(writtenQuantity({ ...quantity('temperature', 121, '°C'), sd: 8 })).toBe('121 °C');
  const kept = printer({ ...METRIC, keepWritten: true });
  expect(kept.quantity(quantity('temperature', 250, '°F'))).toBe('250 °F');
  expect(printer(METRIC).quantity(quantity('temperature', 250, '°F'))).toBe('121 °C');
  expect(printer(US).quantity(quantity('mass', 1, 'kg'))).toBe('2 lb 3 oz');
});

test('whatever was written in one unit prints back as written', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99999 }),
      fc.constantFrom(['mass', 'lb'], ['mass', 'g'], ['length', 'mm'], ['volume', 'mL'], ['time', 'min']),
      (thousandths, [kind, unit]) => {
        const value = thousandths / 100;
        expect(writtenQuantity(quantity(kind as 'mass', value, unit!)).replace(',', '')).toBe(
          `${value} ${unit}`,
        );
      },
    ),
  );
});

test('lists are said as one says them', () => {
  expect([listed([]), listed(['B']), listed(['B', 'C']), listed(['B', 'C', 'D'])]).toEqual([
    '',
    'B',
    'B and C',
    'B, C and D',
  ]);
});
