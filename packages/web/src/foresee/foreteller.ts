import type { Zone } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { Answer, Ask, Closer, Foresight, Inside } from './messages.ts';

type Waiting = { readonly resolve: (answer: Answer) => void };
type AskBody = Ask extends infer A ? (A extends Ask ? Omit<A, 'job'> : never) : never;

/** What a worker could not compute, with the thing said where there is one. */
export class ForesightFault extends Error {
  readonly answer: Extract<Answer, { kind: 'failed' }>;
  constructor(answer: Extract<Answer, { kind: 'failed' }>) {
    super(answer.message);
    this.answer = answer;
  }
}

/**
 * One worker with the engine in it. The page's own thread computes nothing. A worker is stopped, not waited for,
 * when what it computes is no longer asked: a new one starts in its place.
 */
export class Foreteller {
  #worker: Worker | undefined;
  #waiting = new Map<number, Waiting>();
  #lastJob = 0;

  foresee(cook: Cook, members: number, isWhole = true): Promise<Foresight> {
    return this.#ask({ kind: 'foresee', cook, members, isWhole }).then((answer) => {
      if (answer.kind !== 'foresight') throw new Error(`asked for a foresight, got ${answer.kind}`);
      // The worker sends a copy back; the cook asked about is known by identity.
      return { ...answer.foresight, cook };
    });
  }

  inside(cook: Cook, pieceId: string, zone?: Zone): Promise<Inside> {
    return this.#ask({ kind: 'inside', cook, pieceId, zone }).then((answer) => {
      if (answer.kind !== 'inside') throw new Error(`asked for an inside, got ${answer.kind}`);
      return answer.inside;
    });
  }

  closer(cook: Cook, pieceId: string): Promise<Closer> {
    return this.#ask({ kind: 'closer', cook, pieceId }).then((answer) => {
      if (answer.kind !== 'closer') throw new Error(`asked for a closer look, got ${answer.kind}`);
      return answer.closer;
    });
  }

  /** Gives up whatever is being computed. */
  stop(): void {
    if (this.#waiting.size === 0) return;
    this.close();
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#waiting.clear();
  }

  get isBusy(): boolean {
    return this.#waiting.size > 0;
  }

  #ask(body: AskBody): Promise<Answer> {
    const job = ++this.#lastJob;
    const worker = this.#start();
    return new Promise((resolve, reject) => {
      this.#waiting.set(job, {
        resolve: (answer) =>
          answer.kind === 'failed' ? reject(new ForesightFault(answer)) : resolve(answer),
      });
      worker.postMessage({ ...body, job });
    });
  }

  #start(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL('./foresee.worker.ts', import.meta.url), { type: 'module' });
    const settle = (answer: Answer) => {
      const waiting = this.#waiting.get(answer.job);
      this.#waiting.delete(answer.job);
      waiting?.resolve(answer);
    };
    worker.onmessage = (event: MessageEvent<Answer>) => settle(event.data);
    worker.onerror = (event) => {
      for (const job of [...this.#waiting.keys()]) settle({ kind: 'failed', job, message: event.message });
    };
    this.#worker = worker;
    return worker;
  }
}
