// What is remarked on beside a field, and what is not. Evidence: conformity; masses common practice, no source.
import { expect, test } from 'vitest';
import { cuts } from './cuts.ts';
import { ordinaryMassKg } from './ordinary.ts';

const LB_KG = 0.45359237;

test.each([
  ['brisket-flat', 12 * LB_KG, false],
  ['brisket-flat', 7 * LB_KG, true],
  ['brisket-whole', 14 * LB_KG, true],
  ['pork-shoulder', 9 * LB_KG, true],
  ['loin-back-ribs', 2.5 * LB_KG, true],
  ['loin-back-ribs', 6 * LB_KG, false],
  ['turkey-whole', 24 * LB_KG, true],
  ['chicken-leg', 3 * LB_KG, false],
])('%s of %f kg: ordinary is %s', (cut, massKg, isOrdinary) => {
  const { min, max } = ordinaryMassKg(cut)!;
  expect(massKg >= min && massKg <= max).toBe(isOrdinary);
});

test('every cut of the catalogue lies in its own range; a cut of one’s own has none', () => {
  for (const { id, massKg } of cuts()) {
    const { min, max } = ordinaryMassKg(id)!;
    expect(massKg > min && massKg < max).toBe(true);
  }
  expect(ordinaryMassKg('own')).toBeUndefined();
});
