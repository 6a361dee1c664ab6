// Days as a person writes them. Evidence: conformity; 12 September 2027 is a Sunday (calendar).
import { describe, expect, test } from 'vitest';
import { date } from './clock.ts';
import { readDay } from './read-day.ts';

const today = '2027-09-08';
const uk = { order: 'uk', today } as const;
const us = { order: 'us', today } as const;

describe('a day', () => {
  test.each([
    '12 September',
    'Sunday 12 September 2027',
    'September 12, 2027',
    'sep 12',
    '12th Sept',
    '12/9',
    '12.9.27',
    '12.09.2027',
    '2027-09-12',
    'sunday',
    'Sun',
  ])('%s is 12 September 2027', (text) => expect(readDay(text, uk)).toBe('2027-09-12'));

  test('figures alone are read in the order of the writer', () => {
    expect(readDay('9/12', us)).toBe('2027-09-12');
    expect(readDay('9/12', uk)).toBe('2027-12-09');
  });

  test('what is past this year comes next year; today is today', () => {
    expect(readDay('7 September', uk)).toBe('2028-09-07');
    expect(readDay('8 September', uk)).toBe('2027-09-08');
    expect(readDay('wednesday', uk)).toBe('2027-09-08');
  });

  test.each(['', 'soon', '31 February', '12', 'Monday 12 September 2027', '9 12 27 4', 'sep oct 3'])(
    '%j says none',
    (text) => expect(readDay(text, uk)).toBeUndefined(),
  );

  test('what is printed reads back, in both orders', () => {
    for (const order of ['us', 'uk'] as const)
      for (let day = 0; day < 400; day += 7) {
        const instant = new Date(Date.UTC(2027, 0, 1 + day, 12)).toISOString();
        const printed = date(instant, 'UTC', order, { year: true });
        expect(readDay(printed, { order, today })).toBe(instant.slice(0, 10));
      }
  });
});
