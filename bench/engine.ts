/** The engine's own figures: one piece, a thousand members of it, a whole cook. Shown, never asserted. */
import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { ensembleRunner, forecastCook, forecastMembers, PieceTrails } from '@pitwright/engine';
import { type Cook, quantity, readCookFile } from '@pitwright/model';
import { ForecastPool } from '../packages/cli/src/workers/forecast-pool.ts';
import { findCut } from '../packages/engine/src/meat/cuts.ts';
import { bareStage, bodyOf, NO_WORDS } from '../packages/engine/src/meat/onePiece.testing.ts';
import { ENSEMBLE_SETTINGS, FINE_SETTINGS, PieceRunner } from '../packages/engine/src/meat/run.ts';
import { relativeSofteningRate } from '../packages/engine/src/tender/dose.ts';
import { type Figure, measured } from './measure.ts';

const HOURS = 14;

const meat = bodyOf(findCut('pork-shoulder')!, 5);

const FOURTEEN_HOURS = [bareStage({}, 0, { trigger: { by: 'clock', afterS: HOURS * 3600 } })];

function oneShoulder(runner: PieceRunner): void {
  runner.run(meat, FOURTEEN_HOURS, { stretch: 1, wordDoses: NO_WORDS });
}

function demo(): Cook {
  const path = new URL('../examples/regatta-dinner.pitwright.yaml', import.meta.url);
  const reading = readCookFile(readFileSync(path, 'utf8'));
  if (!reading.ok || reading.document.kind !== 'cook') throw new Error('the demo must be a cook');
  return reading.document.cook;
}

/** The demo's shoulder alone, bare for fourteen hours. */
function bareShoulder(cook: Cook): Cook {
  const piece = cook.pieces.find(({ cut }) => cut === 'pork-shoulder')!;
  return {
    ...cook,
    pieces: [
      { ...piece, stages: [{ kind: 'bare', until: { by: 'clock', after: quantity('time', HOURS, 'h') } }] },
    ],
  };
}

/** A hand that moves the end of the first stage of the first piece to and fro by five minutes. */
function movedEdge(cook: Cook): () => void {
  const runner = ensembleRunner();
  const trails = new PieceTrails();
  const piece = cook.pieces[0]!;
  let presses = 0;
  return () => {
    const after = quantity('time', 360 + 5 * (presses++ % 6), 'min');
    const stages = piece.stages.with(0, { ...piece.stages[0]!, until: { by: 'clock', after } });
    const moved = { ...cook, pieces: [{ ...piece, stages }] };
    forecastMembers(
      { jobId: 'moved', seed: 1, membersFrom: 0, membersTo: 16, cook: moved },
      runner,
      () => trails,
    );
  };
}

export async function engineFigures(): Promise<Figure[]> {
  const cook = demo();
  const shoulderCook = bareShoulder(cook);
  const coarse = new PieceRunner(ENSEMBLE_SETTINGS, relativeSofteningRate);
  const fine = new PieceRunner(FINE_SETTINGS, relativeSofteningRate);
  const workers = Math.min(2, availableParallelism());
  const one = new ForecastPool(1);
  const two = new ForecastPool(2);
  try {
    return [
      await measured('one 14-hour shoulder, as in ensembles', () => oneShoulder(coarse), undefined, 50),
      await measured('one 14-hour shoulder, as for its inside', () => oneShoulder(fine), undefined, 50),
      await measured(
        `1,000 members of it, ${workers} workers`,
        () => two.forecast(shoulderCook, { members: 1000, seed: 1 }),
        1500,
      ),
      await measured('demo, 200 members, this thread', () => {
        forecastCook(cook, { members: 200, seed: 1 });
      }),
      await measured('demo, 200 members, 1 worker', () => one.forecast(cook, { members: 200, seed: 1 })),
      await measured(
        'demo, 200 members, 2 workers',
        () => two.forecast(cook, { members: 200, seed: 1 }),
        1500,
      ),
      await measured('demo, 40 members (preview), this thread', () => {
        forecastCook(cook, { members: 40, seed: 1 });
      }),
      await measured(
        'one piece as new, 16 members (first frame), this thread',
        () => {
          forecastCook(cook, { members: 16, seed: 1, pieceIds: [cook.pieces[0]!.id] });
        },
        100,
      ),
      await measured(
        'its first edge moved, 16 members along their trails, this thread',
        movedEdge(cook),
        100,
      ),
    ];
  } finally {
    await Promise.all([one.close(), two.close()]);
  }
}
