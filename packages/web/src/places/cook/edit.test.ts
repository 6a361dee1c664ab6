// A stage that becomes another kind keeps the cook readable as a file. Evidence: law.
import { quantity, STAGE_KINDS, type Stage } from '@pitwright/model';
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
  const isWaiting = kind === 'rest' || kind === 'hold';
  const isWrapped = kind === 'foil' || kind === 'paper';
  expect(stage.note).toBe('kept');
  expect(stage.wrap).toBeUndefined();
  expect(stage.liquid !== undefined).toBe(isWrapped);
  expect(stage.spritz !== undefined).toBe(!isWrapped && !isWaiting);
  expect(stage.at !== undefined).toBe(isWaiting);
  expect(stage.pit !== undefined).toBe(!isWaiting);
  expect(stage.until.by === 'table').toBe(isWaiting);
});
