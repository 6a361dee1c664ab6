// A cut of one's own. Evidence: law (thicker is slower, skin dries less, fat is fat); conformity (a catalogue cut told by
// its own sides comes out as the catalogue has it).
import { quantity, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastCook } from '../forecast/cookForecast.ts';
import { exampleCook } from '../forecast/exampleCook.testing.ts';
import { findCut } from './cuts.ts';
import { ownCut } from './ownCut.ts';
import { pieceSize } from './size.ts';

const SIDES = { lengthM: 0.24, widthM: 0.18, thicknessM: 0.09 };
const shoulder = findCut('pork-shoulder')!;

test('a picnic told by the sides of the catalogue is the picnic', () => {
  const picnic = findCut('pork-picnic')!;
  const own = ownCut(picnic, { lengthM: 0.28, widthM: 0.17, thicknessM: 0.12, massKg: 3.6 });
  expect(own.halfThicknessM).toBeCloseTo(picnic.halfThicknessM, 9);
  expect(own.dimensionality).toBeCloseTo(picnic.dimensionality, 9);
  expect(own.composition).toEqual(picnic.composition);
  expect(own.evaporatingShare).toBe(picnic.evaporatingShare);
});

test('it is as thick as its ruler says, whatever it weighs', () => {
  for (const massKg of [1.5, 2.9, 6]) {
    const size = pieceSize(ownCut(shoulder, { ...SIDES, massKg }), massKg, SIDES.thicknessM);
    expect(size.halfThicknessM).toBeCloseTo((0.88 * 0.09) / 2, 9);
    expect(size.lumps).toBe(1);
  }
});

test('fat by eye moves fat and keeps the lean; skin closes the face', () => {
  const lean = ownCut(shoulder, { ...SIDES, fat: 'lean' }).composition;
  const fat = ownCut(shoulder, { ...SIDES, fat: 'fat' }).composition;
  expect(lean.fat).toBeCloseTo(0.07, 9);
  expect(fat.fat).toBeCloseTo(0.26, 9);
  expect(fat.water / fat.protein).toBeCloseTo(lean.water / lean.protein, 9);
  expect(fat.water + fat.protein + fat.fat + fat.ash).toBeCloseTo(1, 9);
  const face = (hasSkin: boolean) => ownCut(shoulder, { ...SIDES, hasSkin }).evaporatingShare;
  expect(face(true)).toBeLessThan(face(false));
});

test('a cook with it forecasts; thicker, or more like a ball, changes the time as it should', () => {
  const stages: readonly Stage[] = [
    { kind: 'bare', until: { by: 'core', temperature: quantity('temperature', 85, '°C') } },
  ];
  const median = (lengthMm: number, widthMm: number, thicknessMm: number): number => {
    const mm = (n: number) => quantity('length', n, 'mm');
    const own = { length: mm(lengthMm), width: mm(widthMm) };
    const cook = exampleCook('pork-shoulder', stages, { bite: 'firm', thickness: mm(thicknessMm), own });
    return forecastCook(cook, { members: 40, seed: 1 }).pieces[0]!.ready.p50;
  };
  const slab = median(400, 300, 60);
  expect(median(400, 300, 90)).toBeGreaterThan(slab);
  // Warmed from its ends too.
  expect(median(70, 65, 60)).toBeLessThan(slab);
});
