// Unlike faces of a rack. Evidence: law; conformity (bone side 30 to 50 % of the open side).
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from '../forecast/cookForecast.ts';
import { exampleCook } from '../forecast/exampleCook.testing.ts';
import { catalogueOfCuts, findCut } from './cuts.ts';
import { facesOf, hasFatCap, hasMembrane, hasUnlikeFaces } from './faces.ts';
import { bareStage, bodyOf, NO_WORDS, runner } from './onePiece.testing.ts';
import type { RunOutcome } from './outcome.ts';
import type { MeatParameters } from './parameters.ts';

const BARE: readonly Stage[] = [{ kind: 'bare', until: { by: 'clock', after: quantity('time', 3, 'h') } }];

describe('the membrane', () => {
  test('told on or off brackets what is untold, and the bone side dries 30 to 50 % of the open side', () => {
    const rack = findCut('loin-back-ribs')!;
    const boneSide = (told: { hasMembrane?: boolean }): number =>
      facesOf(rack, rack.evaporatingShare, 0.015, told).otherFace!.evaporatingShare;
    expect(boneSide({ hasMembrane: true })).toBeCloseTo(0.322, 9);
    expect(boneSide({})).toBeCloseTo(0.472, 9);
    expect(boneSide({ hasMembrane: false })).toBeCloseTo(0.502, 9);
  });

  test('left on warms the rack sooner, in every try: less dries, so less heat is spent', () => {
    const of = (membrane: boolean) => {
      const cook = exampleCook('loin-back-ribs', BARE, { bite: 'firm', membrane });
      return forecastCook(cook, { members: 40, seed: 2 }).pieces[0]!;
    };
    const on = of(true).columns.stageCoreC;
    const off = of(false).columns.stageCoreC;
    on.forEach((coreC, row) => {
      expect(coreC).toBeGreaterThan(off[row]!);
    });
  });

  test('means nothing on a cut without one, and that is said', () => {
    for (const cut of catalogueOfCuts())
      if (!hasMembrane(cut))
        expect(facesOf(cut, 0.7, 0.02, { hasMembrane: true })).toEqual(facesOf(cut, 0.7, 0.02, {}));
    const { notUsed } = forecastCook(exampleCook('brisket-flat', BARE, { membrane: false }), {
      members: 1,
      seed: 1,
    });
    expect(notUsed).toEqual([{ id: 'day.membrane-not-used', params: { letter: 'A' } }]);
  });
});

describe('faces', () => {
  const done = (piece: MeatParameters, gasC: number): RunOutcome =>
    runner.run(piece, [bareStage({ gasC }, 0, { trigger: { by: 'dose', doseH: 1 } })], {
      stretch: 1,
      wordDoses: NO_WORDS,
    });

  test('take the time of the one body that was fitted, within 0.5 %', () => {
    for (const cut of catalogueOfCuts())
      for (const gasC of [107, 135]) {
        if (!hasUnlikeFaces(cut)) continue;
        const body = bodyOf(cut, 6);
        const faces = facesOf(cut, cut.evaporatingShare, cut.halfThicknessM, {});
        const ratio = done({ ...body, ...faces }, gasC).endS[0]! / done(body, gasC).endS[0]!;
        expect(Math.abs(ratio - 1), `${cut.id} at ${gasC}`).toBeLessThan(0.005);
      }
  });

  test('stay shares, whatever the fitted one is drawn to be, and grow with it', () => {
    for (const cut of catalogueOfCuts()) {
      let before = -1;
      for (const share of [0.1, 0.3, 0.4, 0.5, 0.7, 0.92, 1]) {
        const { evaporatingShare, otherFace } = facesOf(cut, share, 0.02, {});
        const other = otherFace?.evaporatingShare ?? evaporatingShare;
        expect(Math.min(evaporatingShare, other)).toBeGreaterThanOrEqual(0);
        expect(Math.max(evaporatingShare, other)).toBeLessThanOrEqual(1);
        expect(evaporatingShare + other).toBeGreaterThan(before);
        before = evaporatingShare + other;
        expect(otherFace !== undefined).toBe(hasUnlikeFaces(cut));
      }
    }
  });
});

describe('the fat cap', () => {
  const of = (mm: number) =>
    forecastCook(exampleCook('brisket-flat', BARE, { fatCap: quantity('length', mm, 'mm') }), {
      members: 40,
      seed: 2,
    });

  test('the thicker, the less of its side dries; beyond the usual 6 mm it takes the place of meat', () => {
    const flat = findCut('brisket-flat')!;
    const faces = [0, 3, 6, 9, 12].map((mm) => facesOf(flat, 0.92, 0.0225, { fatCapM: mm / 1000 }));
    expect(faces[0]).toEqual({
      evaporatingShare: 1,
      halfThicknessM: 0.0225,
      otherFace: { evaporatingShare: 1, layerM2KW: 0, layerJM2K: 0, convectionShare: 1 },
    });
    expect(faces[2]!.otherFace!.evaporatingShare).toBeCloseTo(1 - 0.16 + 0.8 * 0.08 ** 2, 9);
    for (let i = 1; i < faces.length; i++)
      expect(faces[i]!.otherFace!.evaporatingShare).toBeLessThan(faces[i - 1]!.otherFace!.evaporatingShare);
    for (const i of [3, 4]) {
      expect(faces[i]!.halfThicknessM).toBeLessThan(faces[i - 1]!.halfThicknessM);
      expect(faces[i]!.otherFace!.layerM2KW).toBeGreaterThan(faces[i - 1]!.otherFace!.layerM2KW);
    }
  });

  test('told thick it keeps the heat off in most tries; and it is used', () => {
    const usual = of(6);
    expect(usual.notUsed).toEqual([]);
    const capped = of(12).pieces[0]!.columns.stageCoreC;
    const colder = usual.pieces[0]!.columns.stageCoreC.filter((coreC, row) => capped[row]! < coreC);
    // Where hardly anything dries beneath it, sealing outweighs the layer.
    expect(colder.length).toBeGreaterThan(0.8 * capped.length);
  });

  test('means nothing on a cut without one, and that is said', () => {
    for (const cut of catalogueOfCuts())
      if (!hasFatCap(cut))
        expect(facesOf(cut, 0.7, 0.02, { fatCapM: 0.01 })).toEqual(facesOf(cut, 0.7, 0.02, {}));
    const { notUsed } = forecastCook(
      exampleCook('pork-shoulder', BARE, { fatCap: quantity('length', 5, 'mm') }),
      { members: 1, seed: 1 },
    );
    expect(notUsed).toEqual([{ id: 'day.fat-cap-not-used', params: { letter: 'A' } }]);
  });
});
