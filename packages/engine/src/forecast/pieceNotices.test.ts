// What a cook should know before. Evidence: law; the stall at 107 °C: common practice, no source.
import { quantity, type Stage } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastCook } from './cookForecast.ts';
import { exampleCook } from './exampleCook.testing.ts';

const core = (celsius: number) =>
  ({ by: 'core', temperature: quantity('temperature', celsius, '°C') }) as const;
const noticesAt = (pitC: number, stages: readonly Stage[], gauge: 'grate' | 'set-point' = 'grate') => {
  const base = exampleCook('brisket-whole', stages, { mass: quantity('mass', 6, 'kg'), bite: 'firm' });
  const cook = { ...base, pit: { ...base.pit, gauge, temperature: quantity('temperature', pitC, '°C') } };
  return forecastCook(cook, { members: 60, seed: 5 }).pieces[0]!.notices;
};
const bare: Stage[] = [{ kind: 'bare', until: core(93) }];

test('a bare packer at 107 °C will stall, near 70 °C and for hours', () => {
  const stall = noticesAt(107, bare).find(({ id }) => id === 'forecast.stall')!;
  expect(stall.params!.lowC).toBeGreaterThan(62);
  expect(stall.params!.highC).toBeLessThan(80);
  expect(stall.params!.soonS).toBeGreaterThan(3600);
});

test('foil before it leaves no stall worth saying', () => {
  const early: Stage[] = [
    { kind: 'bare', until: core(60) },
    { kind: 'foil', until: core(93) },
  ];
  expect(noticesAt(135, early).map(({ id }) => id)).not.toContain('forecast.stall');
});

test('a share that never gets there is told with what ends it, and that does end it', () => {
  const cool = noticesAt(102, bare, 'set-point').find(({ id }) => id === 'forecast.never-bare')!;
  expect(cool.params!.share).toBeGreaterThan(0.025);
  const wrapped: Stage[] = [
    { kind: 'bare', until: core(66) },
    { kind: 'foil', until: core(93) },
  ];
  const left = noticesAt(102, wrapped, 'set-point').find(({ id }) => id.startsWith('forecast.never'));
  expect((left?.params?.share as number | undefined) ?? 0).toBeLessThan(cool.params!.share as number);
});
