// The catalogue of cuts: whole, sourced, and every cut forecasts. Evidence: published refuse (USDA SR28, IMPS); conformity.
import { CATALOGUE_CUTS, quantity, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastCook } from '../forecast/cookForecast.ts';
import { exampleCook } from '../forecast/exampleCook.testing.ts';
import { cutFacts, SOURCED } from './cutSources.ts';
import { catalogueOfCuts, findCut } from './cuts.ts';

const STAGES: readonly Stage[] = [
  { kind: 'bare', until: { by: 'clock', after: quantity('time', 1.5, 'h') } },
  { kind: 'foil', until: { by: 'core', temperature: quantity('temperature', 75, '°C') } },
  { kind: 'rest', until: { by: 'table' } },
];

const FACTS = CATALOGUE_CUTS.map((cut) => cutFacts(cut)!);

test('every figure of every cut has its source', () => {
  for (const { cut, sources } of FACTS)
    for (const figure of SOURCED) expect(sources[figure].source, `${cut.id} ${figure}`).toMatch(/\w{3}/);
});

test('bone shares lie within the published refuse', () => {
  for (const { cut, refuse } of FACTS) {
    const [low, high] = refuse ?? [0, 0];
    expect(cut.boneShare, cut.id).toBeGreaterThanOrEqual(low);
    expect(cut.boneShare, cut.id).toBeLessThanOrEqual(high);
  }
});

test('shares sum to one, and no lump is thicker than its mass allows', () => {
  for (const cut of catalogueOfCuts()) {
    const { water, protein, fat, ash } = cut.composition;
    expect(water + protein + fat + ash, cut.id).toBeCloseTo(1, 9);
    // A ball is the thickest way to lay out a mass: radius (3 m / 4 π ρ)^⅓ at 1000 kg/m³ or more.
    expect(cut.halfThicknessM, cut.id).toBeLessThan(Math.cbrt((3 * cut.massKg) / (4 * Math.PI * 1000)));
    expect(cut.dimensionality, cut.id).toBeLessThan(3);
  }
});

test.each(CATALOGUE_CUTS.map((cut) => [cut]))('%s forecasts, and a thicker one takes longer', (id) => {
  const median = (massKg: number): number => {
    const cook = exampleCook(id, STAGES, { bite: 'firm', mass: quantity('mass', massKg, 'kg') });
    return forecastCook(cook, { members: 9, seed: 1 }).pieces[0]!.ready.p50;
  };
  const { massKg } = findCut(id)!;
  const usual = median(massKg);
  expect(usual).toBeGreaterThan(600);
  expect(usual).toBeLessThan(24 * 3600);
  expect(median(1.4 * massKg)).toBeGreaterThanOrEqual(usual);
});
