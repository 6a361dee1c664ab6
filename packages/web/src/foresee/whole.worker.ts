import { highsSolver, type SolveLp } from '@pitwright/engine';
import { gatherReport } from '@pitwright/paper';
import loadHighs from 'highs';
import solverAddress from 'highs/runtime?url';
import { answerAsks } from './asked-worker.ts';
import type { WholeAnswer, WholeAsk } from './messages.ts';

let loading: Promise<SolveLp | undefined> | undefined;

/** The solver, fetched once; undefined where it cannot be had, as without a network before the copy is kept. */
function solver(): Promise<SolveLp | undefined> {
  loading ??= loadHighs({ locateFile: () => solverAddress }).then(highsSolver, (fault: unknown) => {
    console.error(fault);
    loading = undefined;
    return undefined;
  });
  return loading;
}

answerAsks<WholeAsk, WholeAnswer>(async ({ cook, forecast }) => {
  const solveLp = await solver();
  return { report: gatherReport(cook, forecast, solveLp), isSettled: solveLp !== undefined };
});
