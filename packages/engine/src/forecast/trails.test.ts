// A moved edge in the ensemble: the members along their trails are those from the beginning. Evidence: law.
import { type Cook, quantity } from '@pitwright/model';
import { expect, test } from 'vitest';
import { forecastMembers } from './cookForecast.ts';
import { ensembleRunner } from './ensemble/run.ts';
import { PieceTrails } from './ensemble/trails.ts';
import { exampleCook } from './exampleCook.testing.ts';

const minutes = (value: number) => ({ by: 'clock' as const, after: quantity('time', value, 'min') });
const racks = (wrap: number, foil: number): Cook =>
  exampleCook(
    'loin-back-ribs',
    [
      { kind: 'bare', until: minutes(wrap) },
      { kind: 'foil', until: minutes(foil) },
      { kind: 'glazed', until: minutes(15) },
      { kind: 'rest', until: { by: 'table' } },
    ],
    { count: 2 },
  );

test('first frame, preview and undo along the trails of a hand that moves two edges', () => {
  const runner = ensembleRunner();
  const trails = new PieceTrails();
  for (const [wrap, foil] of [
    [150, 90],
    [140, 90],
    [160, 90],
    [160, 60],
    [150, 90],
  ] as const)
    for (const [membersFrom, membersTo] of [
      [0, 6],
      [6, 12],
    ] as const) {
      const job = { jobId: 'drag', seed: 1, membersFrom, membersTo, cook: racks(wrap, foil) };
      expect(forecastMembers(job, runner, () => trails)).toEqual(forecastMembers(job));
    }
});

test('another piece under the same trails is not taken for the one before', () => {
  const trails = new PieceTrails();
  const runner = ensembleRunner();
  const job = { jobId: 'a', seed: 1, membersFrom: 0, membersTo: 4, cook: racks(150, 90) };
  forecastMembers(job, runner, () => trails);
  const cook = exampleCook('st-louis-ribs', racks(150, 90).pieces[0]!.stages, { count: 2 });
  expect(forecastMembers({ ...job, cook }, runner, () => trails)).toEqual(forecastMembers({ ...job, cook }));
});
