/** What a worker could not compute. */
export class ForesightFault extends Error {}

type Reply<Answer> = { readonly job: number } & ({ readonly answer: Answer } | { readonly fault: string });

/**
 * One worker that answers what it is asked, each ask with a number of its own. A worker is stopped, not waited for,
 * when what it computes is no longer wanted: a new one starts in its place.
 */
export class AskedWorker<Ask, Answer> {
  readonly #make: () => Worker;
  readonly #waiting = new Map<number, (reply: Reply<Answer> | undefined) => void>();
  #worker: Worker | undefined;
  #lastJob = 0;

  constructor(make: () => Worker) {
    this.#make = make;
  }

  /** @returns the answer; undefined where it was given up meanwhile. @throws ForesightFault */
  async ask(ask: Ask): Promise<Answer | undefined> {
    const job = ++this.#lastJob;
    const worker = this.#start();
    const reply = await new Promise<Reply<Answer> | undefined>((resolve) => {
      this.#waiting.set(job, resolve);
      worker.postMessage({ job, ask });
    });
    if (reply && 'fault' in reply) throw new ForesightFault(reply.fault);
    return reply?.answer;
  }

  /** Gives up whatever is being computed; a worker at rest keeps what it remembers. */
  stop(): void {
    if (this.#waiting.size > 0) this.close();
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    for (const resolve of this.#waiting.values()) resolve(undefined);
    this.#waiting.clear();
  }

  #start(): Worker {
    if (this.#worker) return this.#worker;
    const worker = this.#make();
    const settle = (reply: Reply<Answer>) => {
      const resolve = this.#waiting.get(reply.job);
      this.#waiting.delete(reply.job);
      resolve?.(reply);
    };
    worker.onmessage = (event: MessageEvent<Reply<Answer>>) => settle(event.data);
    const end = (fault: string) => {
      // A worker that could not be started, or fell over, answers nothing more: the next ask begins a new one.
      worker.terminate();
      if (this.#worker !== worker) return;
      this.#worker = undefined;
      for (const job of [...this.#waiting.keys()]) settle({ job, fault });
    };
    worker.onerror = (event) => end(event.message || 'the worker could not be started');
    worker.onmessageerror = () => end('an answer could not be read');
    this.#worker = worker;
    return worker;
  }
}

/** The other end, in the worker itself: one answer to each ask, or why there is none. */
export function answerAsks<Ask, Answer>(answer: (ask: Ask) => Answer | Promise<Answer>): void {
  self.onmessage = async ({ data }: MessageEvent<{ job: number; ask: Ask }>) => {
    const { job, ask } = data;
    try {
      self.postMessage({ job, answer: await answer(ask) } satisfies Reply<Answer>);
    } catch (error) {
      const fault = error instanceof Error ? error.message : String(error);
      self.postMessage({ job, fault } satisfies Reply<Answer>);
    }
  };
}
