// What another stage is, after what stands. Evidence: conformity.
import { isWaiting, type Piece, quantity, STAGE_KINDS, type Stage, type StageKind } from '@pitwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withNextStage } from './next-stage.ts';

const until = (kind: StageKind, by: 'clock' | 'bite' | 'bark' | 'table' | 'core' = 'clock'): Stage => ({
  kind,
  until:
    by === 'clock'
      ? { by, after: quantity('time', 60, 'min') }
      : by === 'bite'
        ? { by, bite: 'tender' }
        : by === 'core'
          ? { by, temperature: quantity('temperature', 74, '°C') }
          : { by },
});
const piece = (cut: Piece['cut'], stages: readonly Stage[]): Piece => ({
  id: 'a',
  letter: 'A',
  cut,
  count: 1,
  bite: 'tender',
  stages,
});
const told = (cut: Piece['cut'], ...stages: readonly Stage[]) =>
  withNextStage(piece(cut, stages)).map(({ kind, until: end }) => `${kind} ${end.by}`);

describe('after', () => {
  test('a bare stage until the bark: foil until the bite', () => {
    expect(told('pork-shoulder', until('bare', 'bark'), until('hold', 'table'))).toEqual([
      'bare bark',
      'foil bite',
      'hold table',
    ]);
  });
  test('foil that ends tender: ribs are glazed, then rest; a shoulder is kept warm, then rests first', () => {
    const foiled = [until('bare', 'bark'), until('foil', 'bite')];
    expect(told('st-louis-ribs', ...foiled).at(-1)).toBe('glazed clock');
    expect(told('st-louis-ribs', ...foiled, until('glazed')).at(-1)).toBe('rest table');
    expect(told('pork-shoulder', ...foiled).at(-1)).toBe('hold table');
    expect(told('pork-shoulder', ...foiled, until('hold', 'table')).slice(-2)).toEqual([
      'rest clock',
      'hold table',
    ]);
  });
  test('a rest until the table: it ends by the clock, and a warm hold takes over', () => {
    expect(told('brisket-whole', until('paper', 'bite'), until('rest', 'table'))).toEqual([
      'paper bite',
      'rest clock',
      'hold table',
    ]);
  });
  test('a bird at its core: it is brushed, not wrapped', () => {
    expect(told('chicken-leg', until('bare', 'core'))).toEqual(['bare core', 'glazed clock']);
  });
});

test('one stage more, those on the heat before those that wait, and only the last until the table', () => {
  const heat = fc.constantFrom(...STAGE_KINDS.filter((kind) => !isWaiting(kind)));
  const wait = fc.constantFrom(...STAGE_KINDS.filter(isWaiting));
  fc.assert(
    fc.property(
      fc.constantFrom('st-louis-ribs', 'pork-shoulder', 'chicken-leg', 'own') as fc.Arbitrary<Piece['cut']>,
      fc.array(heat, { minLength: 1, maxLength: 4 }),
      fc.array(wait, { maxLength: 3 }),
      (cut, hot, waiting) => {
        const stages = [
          ...hot.map((kind) => until(kind)),
          ...waiting.map((kind, k) => until(kind, k === waiting.length - 1 ? 'table' : 'clock')),
        ];
        const next = withNextStage(piece(cut, stages));
        expect(next.length).toBe(stages.length + 1);
        const firstWait = next.findIndex(({ kind }) => isWaiting(kind));
        if (firstWait >= 0) expect(next.slice(firstWait).every(({ kind }) => isWaiting(kind))).toBe(true);
        expect(next.slice(0, -1).some(({ until: end }) => end.by === 'table')).toBe(false);
      },
    ),
  );
});
