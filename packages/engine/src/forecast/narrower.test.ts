// A narrower input does not widen the range beyond the sampling error of the members. Evidence: law.
import { type Cook, type Piece, quantity } from '@pitwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findCut } from '../meat/cuts.ts';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';

const MEMBERS = 80;
/**
 * Of ln(p90/p10): a 10 or 90 % point of n normal draws has sd 1.7 σ/√n, σ about 0.4, so two of them over 80 members 0.11;
 * both runs share most draws, and one and a half of that is left for what they do not.
 */
const SAMPLING = 0.16;

const cut = fc.constantFrom(
  'loin-back-ribs',
  'st-louis-ribs',
  'pork-shoulder',
  'brisket-whole',
  'chicken-whole',
);
const spread = (cook: Cook): number => {
  const { ready } = forecastCook(cook, { members: MEMBERS, seed: 3 }).pieces[0]!;
  return Math.log(ready.p90 / ready.p10);
};

test('mass, ruler, start temperature and a surer pit', () => {
  fc.assert(
    fc.property(cut, fc.integer({ min: 118, max: 140 }), (id, pitC) => {
      const known = findCut(id)!;
      const until = { by: 'core', temperature: quantity('temperature', 75, '°C') } as const;
      const cook = (told: Partial<Piece>, sdK: number): Cook => {
        const base = exampleCook(id, [{ kind: 'bare', until }], { bite: 'raw', ...told });
        return {
          ...base,
          pit: { ...base.pit, temperature: { ...quantity('temperature', pitC, '°C'), sd: sdK } },
        };
      };
      const mass = { mass: quantity('mass', known.massKg, 'kg') };
      const ruler = {
        ...mass,
        thickness: quantity('length', (2 * known.halfThicknessM * 1000) / 0.95, 'mm'),
      };
      const start = { ...ruler, start: quantity('temperature', 7, '°C') };
      const spreads = [cook({}, 6), cook(mass, 6), cook(ruler, 6), cook(start, 6), cook(start, 2)].map(
        spread,
      );
      for (let i = 1; i < spreads.length; i++) expect(spreads[i]!).toBeLessThan(spreads[i - 1]! + SAMPLING);
      // All of it together narrows.
      expect(spreads.at(-1)!).toBeLessThan(spreads[0]!);
    }),
    { numRuns: 6, seed: 31 },
  );
});
