// A whole brisket as flat and point. Evidence: law; common practice (the thin flat comes to a temperature before the
// point, and is the muscle that dries out).
import { quantity, type Stage } from '@pitwright/model';
import { describe, expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';
import { pieceInside } from './inside.ts';
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
  return { forecast: forecast.pieces[0]!, piece: zonesOf(cook, forecast, { members })[0]! };
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
    expect(piece.said.slice(1).map(({ id }) => id)).toEqual(['zones.off-heat', 'zones.probe']);
    expect(zones(CLOCKED, 8).piece.said.map(({ id }) => id)).not.toContain('zones.probe');
  });
});

test('the muscle that decides is ready last, and its map is another than that of the whole', () => {
  const stages: readonly Stage[] = [{ kind: 'bare', until: { by: 'bite', bite: 'tender' } }];
  const cook = exampleCook('brisket-whole', stages, { mass: quantity('mass', 6, 'kg') });
  const forecast = forecastCook(cook, { members: 40, seed: 4 });
  const [whole] = zonesOf(cook, forecast);
  expect(whole!.decides).toBe('point');
  expect(whole!.said[0]!.id).toBe('zones.decides');
  const flat = pieceInside(cook, forecast, 'a', 'flat');
  const point = pieceInside(cook, forecast, 'a', 'point');
  expect(flat.halfThicknessM).toBeLessThan(point.halfThicknessM);
  // Both leave the heat with the whole.
  expect(flat.stages[0]!.endS).toBeCloseTo(point.stages[0]!.endS, 6);
  const at = flat.timesS.findIndex((atS) => atS >= 4 * 3600);
  expect(flat.temperaturesC[at]!.at(-1)!).toBeGreaterThan(point.temperaturesC[at]!.at(-1)!);
});

test('a bird has breast and thigh, and the thicker breast is not there first', () => {
  const stages: readonly Stage[] = [{ kind: 'bare', until: untilCore(74) }];
  const cook = exampleCook('chicken-whole', stages);
  const [bird] = zonesOf(cook, forecastCook(cook, { members: 24, seed: 2 }));
  const [breast, thigh] = bird!.zones;
  expect([breast!.zone, thigh!.zone]).toEqual(['breast', 'thigh']);
  expect(breast!.offHeatS.p50).toBeGreaterThan(thigh!.offHeatS.p50);
  expect(thigh!.coreC.p50).toBeGreaterThan(74);
});

test('no other cut has zones', () => {
  const cook = exampleCook('brisket-flat', CLOCKED);
  expect(zonesOf(cook, forecastCook(cook, { members: 2, seed: 1 }))).toEqual([]);
});
