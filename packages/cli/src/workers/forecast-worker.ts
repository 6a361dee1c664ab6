/** Answers jobs of members, one after the other, with one workspace for all of them. */
import { parentPort } from 'node:worker_threads';
import { ensembleRunner, type ForecastJob, type ForecastPart, forecastMembers } from '@pitwright/engine';

export type WorkerAnswer =
  | { readonly kind: 'part'; readonly part: ForecastPart }
  | { readonly kind: 'failed'; readonly jobId: string; readonly message: string };

const runner = ensembleRunner();

parentPort?.on('message', (job: ForecastJob) => {
  let answer: WorkerAnswer;
  try {
    answer = { kind: 'part', part: forecastMembers(job, runner) };
  } catch (error) {
    answer = {
      kind: 'failed',
      jobId: job.jobId,
      message: error instanceof Error ? error.message : String(error),
    };
  }
  parentPort?.postMessage(answer);
});
