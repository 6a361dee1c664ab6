/**
 * Forecasts over several workers of this machine. A member is the same whatever the split, so the answer has the same
 * bits on one worker or many; small parts keep all workers busy to the end and tell how far it has come.
 */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { assembleForecast, type CookForecast, type ForecastJob, type ForecastPart } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { WorkerAnswer } from './forecast-worker.ts';

/** Members of one job. */
const PART_MEMBERS = 20;

export interface ForecastAsked {
  readonly members: number;
  readonly seed: number;
  readonly pieceIds?: readonly string[];
  /** Called after every part, with the share that is done. */
  readonly onProgress?: (doneShare: number) => void;
}

interface Waiting {
  readonly job: ForecastJob;
  readonly resolve: (part: ForecastPart) => void;
  readonly reject: (error: Error) => void;
}

export class ForecastPool {
  readonly #workers: readonly Worker[];
  readonly #idle: Worker[];
  readonly #busy = new Map<Worker, Waiting>();
  readonly #queue: Waiting[] = [];
  #jobs = 0;

  /** @param workers how many; missing: as many as the machine runs at once */
  constructor(workers: number = availableParallelism()) {
    if (!(workers >= 1)) throw new RangeError(`workers must be at least 1, got ${workers}`);
    this.#workers = Array.from({ length: workers }, () => {
      const worker = new Worker(new URL('boot.js', import.meta.url));
      worker.on('message', (answer: WorkerAnswer) => this.#answered(worker, answer));
      worker.on('error', (error) =>
        this.#failed(worker, error instanceof Error ? error : new Error(String(error))),
      );
      return worker;
    });
    this.#idle = [...this.#workers];
  }

  async forecast(cook: Cook, asked: ForecastAsked): Promise<CookForecast> {
    const { members, seed, pieceIds, onProgress } = asked;
    const jobs: ForecastJob[] = [];
    for (let from = 0; from < members; from += PART_MEMBERS)
      jobs.push({
        jobId: `job-${this.#jobs++}`,
        seed,
        membersFrom: from,
        membersTo: Math.min(members, from + PART_MEMBERS),
        cook,
        ...(pieceIds && { pieceIds }),
      });
    let done = 0;
    const parts = await Promise.all(
      jobs.map(async (job) => {
        const part = await this.#run(job);
        onProgress?.(++done / jobs.length);
        return part;
      }),
    );
    return assembleForecast(cook, seed, parts);
  }

  async close(): Promise<void> {
    await Promise.all(this.#workers.map((worker) => worker.terminate()));
  }

  #run(job: ForecastJob): Promise<ForecastPart> {
    return new Promise((resolve, reject) => {
      this.#queue.push({ job, resolve, reject });
      this.#next();
    });
  }

  #next(): void {
    while (this.#queue.length > 0 && this.#idle.length > 0) {
      const worker = this.#idle.pop()!;
      const waiting = this.#queue.shift()!;
      this.#busy.set(worker, waiting);
      worker.postMessage(waiting.job);
    }
  }

  #answered(worker: Worker, answer: WorkerAnswer): void {
    const waiting = this.#busy.get(worker);
    this.#busy.delete(worker);
    this.#idle.push(worker);
    if (answer.kind === 'part') waiting?.resolve(answer.part);
    else waiting?.reject(new Error(answer.message));
    this.#next();
  }

  /** A worker that broke down takes no further jobs. */
  #failed(worker: Worker, error: Error): void {
    this.#busy.get(worker)?.reject(error);
    this.#busy.delete(worker);
    const at = this.#idle.indexOf(worker);
    if (at >= 0) this.#idle.splice(at, 1);
    if (this.#idle.length === 0 && this.#busy.size === 0)
      for (const waiting of this.#queue.splice(0)) waiting.reject(error);
  }
}
