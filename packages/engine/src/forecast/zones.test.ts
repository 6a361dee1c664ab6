// A whole brisket as flat and point. Evidence: law; common practice (the thin flat comes to a temperature before the
// point, and is the muscle that dries out).
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.ts';
import { zonesOf } from './zones.ts';

const untilCore = (celsius: number) =>
  ({ by: 'core', temperature: quantity('temperature', celsius, '°C') }) as const;
const clock = (hours: number) => ({ by: 'clock', after: quantity('time', hours, 'h') }) as const;
const PROBED: readonly Stage[] = [
  { kind: 'bare', until: untilCore(70) },
  { kind: 'foil', until: untilCore(93) },
  { kind: 'rest', until: { by: 'table' } },
];
const CLOCKED: readonly Stage[] = [
  { kind: 'bare', until: clock(6) },
  { kind: 'foil', until: clock(2) },
];

const zones = (stages: readonly Stage[], members = 40) => {
  const cook = exampleCook('brisket-whole', stages, { mass: quantity('mass', 6, 'kg') });
  const forecast = forecastCook(cook, { members, seed: 4 });
  return { forecast: forecast.pieces[0]!, piece: zonesOf(cook, forecast, members)[0]! };
};

describe('flat and point', () => {
  const { forecast, piece } = zones(PROBED);
  const [flat, point] = piece.zones as [(typeof piece.zones)[number], (typeof piece.zones)[number]];

  test('share the mass of the whole', () => {
    expect(flat.massKg + point.massKg).toBeCloseTo(6, 9);
  });

  test('a probe in the flat ends the stages sooner than one in the point', () => {
    expect(flat.offHeatS.p50).toBeLessThan(point.offHeatS.p50);
    expect(flat.offHeatS.p10).toBeLessThan(point.offHeatS.p10);
  });

  test('when the whole comes off, the flat is hotter than the probe said', () => {
    expect(flat.coreC.p50).toBeGreaterThan(93);
    expect(flat.coreC.p50).toBeGreaterThan(point.coreC.p50);
    expect(flat.biteChance).toBeGreaterThanOrEqual(point.biteChance);
  });

  test('the point, thickest place of the whole, keeps its time within a tenth', () => {
    const wholeS = forecast.stages[1]!.endS!.p50;
    expect(Math.abs(point.offHeatS.p50 / wholeS - 1)).toBeLessThan(0.1);
  });

  test('where to put the probe is said only where a stage waits for one', () => {
    expect(piece.said.map(({ id }) => id)).toEqual(['zones.off-heat', 'zones.probe']);
    expect(zones(CLOCKED, 8).piece.said.map(({ id }) => id)).toEqual(['zones.off-heat']);
  });
});

test('no other cut has zones', () => {
  const cook = exampleCook('brisket-flat', CLOCKED);
  expect(zonesOf(cook, forecastCook(cook, { members: 2, seed: 1 }))).toEqual([]);
});
