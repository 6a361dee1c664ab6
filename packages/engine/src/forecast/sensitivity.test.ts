// Which measurement would narrow the range most. Evidence: law.
import { type Cook, type Piece, quantity, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';
import { type Measure, sensitivityOf } from './sensitivity.ts';

const STAGES: readonly Stage[] = [
  { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 93, '°C') } },
];
const MASS = { mass: quantity('mass', 6, 'kg') };
const THICKNESS = { thickness: quantity('length', 88, 'mm') };
const START = { start: quantity('temperature', 4, '°C') };

const MEMBERS = 60;
const brisket = (told: Partial<Piece>, pit: Partial<Cook['pit']> = {}) => {
  const cook = exampleCook('brisket-whole', STAGES, { bite: 'firm', ...told });
  const whole = { ...cook, pit: { ...cook.pit, gauge: 'lid' as const, ...pit } };
  return sensitivityOf(whole, forecastCook(whole, { members: MEMBERS, seed: 9 }))[0]!;
};
const measures = (told: Partial<Piece>, pit: Partial<Cook['pit']> = {}): Measure[] =>
  brisket(told, pit)
    .narrowings.map(({ measure }) => measure)
    .sort();

/** Of a width of 60 members with common draws, three sigma. */
const SAMPLING = 0.08;

test('knowing more does not widen the range, and the best comes first', () => {
  const { widthS, narrowings } = brisket({});
  expect(narrowings).toHaveLength(4);
  narrowings.forEach((narrowing, i) => {
    expect(narrowing.widthS).toBeLessThan(widthS * (1 + SAMPLING));
    if (i > 0) expect(narrowing.widthS).toBeGreaterThanOrEqual(narrowings[i - 1]!.widthS);
  });
});

test('of a piece of which only the mass is told, a ruler narrows more than scales would have', () => {
  const untold = brisket({});
  const width = (measure: Measure): number =>
    untold.narrowings.find((one) => one.measure === measure)!.widthS;
  expect(width('ruler')).toBeLessThan(width('scales'));
  expect(width('scales')).toBeLessThan(untold.widthS);
});

test('what is told already is not asked for', () => {
  expect(measures({})).toEqual(['grate-probe', 'ruler', 'scales', 'start-probe']);
  expect(measures(MASS)).toEqual(['grate-probe', 'ruler', 'start-probe']);
  expect(measures({ ...MASS, ...THICKNESS, ...START })).toEqual(['grate-probe']);
  expect(measures({ ...THICKNESS, ...START }, { gauge: 'grate' })).toEqual([]);
});

test('on a pit told by its lid a probe at the grate is the best once the piece is measured', () => {
  const { said } = brisket({ ...MASS, ...THICKNESS, ...START });
  expect(said).toMatchObject({ id: 'narrow.most', params: { measure: 'grate-probe' } });
});

test('where all is told, it says that nothing is left to measure', () => {
  const { said } = brisket({ ...THICKNESS, ...START }, { gauge: 'grate' });
  expect(said).toMatchObject({ id: 'narrow.none' });
});

test('a piece whose late end never comes promises nothing that does not come', () => {
  const { widthS, said, narrowings } = brisket(MASS, { temperature: quantity('temperature', 85, '°C') });
  expect(widthS).toBe(Infinity);
  expect(narrowings.every((one) => one.widthS === Infinity)).toBe(true);
  expect(said).toBeUndefined();
});
