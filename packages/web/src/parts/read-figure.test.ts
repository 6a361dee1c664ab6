// What a hand writes into a field, with the unit or without. Evidence: conformity.
import { PIECE_LIMITS, PIT_LIMITS, printCookQuantity } from '@pitwright/model';
import { expect, test } from 'vitest';
import { readFigure } from './read-figure.ts';

test.each([
  ['225', 'temperature', PIT_LIMITS.temperature, 'us', '225 °F'],
  ['120', 'temperature', PIT_LIMITS.temperature, 'metric', '120 °C'],
  ['107 C', 'temperature', PIT_LIMITS.temperature, 'us', '107 °C'],
  ['12 lb', 'mass', PIECE_LIMITS.mass, 'metric', '12 lb'],
  ['8', 'fraction', PIECE_LIMITS.solution, 'us', '8 %'],
  ['0', 'length', PIECE_LIMITS.fatCap, 'metric', '0 mm'],
  ['0', 'length', PIECE_LIMITS.fatCap, 'us', '0 in'],
] as const)('%s as %s is read, and shown with its unit', (written, kind, limits, units, print) => {
  const figure = readFigure(written, kind, limits, units);
  expect(figure.ok && printCookQuantity(figure.quantity)).toBe(print);
});

test.each([
  ['200 lb', 'mass', PIECE_LIMITS.mass, 'us', 'outside'],
  ['700 °F', 'temperature', PIT_LIMITS.temperature, 'us', 'outside'],
  ['30', 'temperature', PIT_LIMITS.temperature, 'us', 'outside'],
  ['9', 'length', PIECE_LIMITS.thickness, 'metric', 'unread'],
  ['3.6', 'mass', PIECE_LIMITS.mass, 'metric', 'unread'],
  ['12', 'mass', PIECE_LIMITS.mass, 'us', 'unread'],
  ['twelve', 'mass', PIECE_LIMITS.mass, 'us', 'unread'],
  ['-3 lb', 'mass', PIECE_LIMITS.mass, 'us', 'unread'],
  ['', 'mass', PIECE_LIMITS.mass, 'us', 'unread'],
] as const)('%s as %s is not', (written, kind, limits, units, why) => {
  expect(readFigure(written, kind, limits, units)).toEqual({ ok: false, why });
});
