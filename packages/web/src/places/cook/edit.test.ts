// A stage that becomes another kind keeps the cook readable as a file. Evidence: law.
import { isWaiting, quantity, STAGE_KINDS, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { asKind } from './edit.ts';

const full: Stage = {
  kind: 'bare',
  until: { by: 'table' },
  pit: quantity('temperature', 121, '°C'),
  at: quantity('temperature', 65, '°C'),
  liquid: quantity('volume', 60, 'mL'),
  wrap: 'loose',
  spritz: { amount: quantity('mass', 20, 'g'), every: quantity('time', 30, 'min') },
  note: 'kept',
};

test.each(STAGE_KINDS)('as %s it has only what that kind knows', (kind) => {
  const stage = asKind(full, kind);
  const isWrapped = kind === 'foil' || kind === 'paper';
  expect(stage.note).toBe('kept');
  expect(stage.wrap).toBeUndefined();
  expect(stage.liquid !== undefined).toBe(isWrapped);
  expect(stage.spritz !== undefined).toBe(!isWrapped && !isWaiting(kind));
  expect(stage.at !== undefined).toBe(isWaiting(kind) && kind !== 'chill');
  expect(stage.pit !== undefined).toBe(!isWaiting(kind));
  expect(stage.until.by === 'table').toBe(isWaiting(kind));
});

test('between a warm hold and a chill neither the place nor its air is carried over', () => {
  const warm: Stage = { kind: 'hold', in: 'oven', at: full.at!, until: { by: 'table' } };
  expect(asKind(warm, 'chill')).toEqual({ kind: 'chill', until: { by: 'table' } });
  const cold: Stage = {
    kind: 'chill',
    in: 'ice-bath',
    at: quantity('temperature', 1, '°C'),
    until: warm.until,
  };
  expect(asKind(cold, 'hold')).toEqual({ kind: 'hold', until: { by: 'table' } });
  expect(asKind(warm, 'rest')).toEqual({ ...warm, kind: 'rest' });
});
