import type { PastedRecipe } from '@pitwright/engine/sauce';
import { type Cook, chosenVariant } from '@pitwright/model';
import { useCallback, useEffect, useRef, useState } from 'react';
import type { Answer, Ask, Corrections, MeasureSystemId, Seen, Swap, Wish } from './messages.ts';

type AskBody = Ask extends infer A ? (A extends Ask ? Omit<A, 'job'> : never) : never;

/** The bench's own worker: the page's thread computes nothing. */
class BenchWorker {
  #worker: Worker | undefined;
  #waiting = new Map<number, (answer: Answer) => void>();
  #lastJob = 0;

  ask(body: AskBody): Promise<Answer> {
    const job = ++this.#lastJob;
    return new Promise((resolve) => {
      this.#waiting.set(job, resolve);
      this.#start().postMessage({ ...body, job });
    });
  }

  close(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#waiting.clear();
  }

  #start(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL('./bench.worker.ts', import.meta.url), { type: 'module' });
    const settle = (answer: Answer) => {
      this.#waiting.get(answer.job)?.(answer);
      this.#waiting.delete(answer.job);
    };
    worker.onmessage = (event: MessageEvent<Answer>) => settle(event.data);
    worker.onerror = (event) => {
      for (const job of [...this.#waiting.keys()]) settle({ kind: 'failed', job, message: event.message });
    };
    this.#worker = worker;
    return worker;
  }
}

export interface Bench {
  /** The newest there is of this formula; it may be of the formula as it was a moment ago. */
  readonly seen: Seen | undefined;
  /** Of this cook as it is, and of this swap. */
  readonly isFresh: boolean;
  /** Of these lines, though perhaps boiled down to another mass. */
  readonly hasSameLines: boolean;
  readonly hasFailed: boolean;
  readonly read: (text: string, system: MeasureSystemId | undefined) => Promise<PastedRecipe | undefined>;
}

/** What a formula becomes. One question is out at a time; the newest one waits. */
export function useBench(
  cook: Cook,
  formulaId: string | undefined,
  corrections: Corrections,
  swap: Swap | undefined,
  wish: Wish | undefined,
): Bench {
  const worker = useRef<BenchWorker>(undefined);
  const wanted = useRef<AskBody>(undefined);
  const isRunning = useRef(false);
  const [held, setHeld] = useState<{ seen?: Seen; of?: AskBody; hasFailed: boolean }>({ hasFailed: false });

  useEffect(
    () => () => {
      worker.current?.close();
      worker.current = undefined;
      isRunning.current = false;
    },
    [],
  );

  useEffect(() => {
    if (formulaId === undefined) return;
    wanted.current = {
      kind: 'see',
      cook,
      formulaId,
      corrections,
      ...(swap && { swap }),
      ...(wish && { wish }),
    };
    const run = async () => {
      if (isRunning.current) return;
      isRunning.current = true;
      worker.current ??= new BenchWorker();
      let done: AskBody | undefined;
      while (wanted.current && done !== wanted.current) {
        const now: AskBody = wanted.current;
        const answer = await worker.current.ask(now);
        done = now;
        if (answer.kind === 'seen') setHeld({ seen: answer.seen, of: now, hasFailed: false });
        else if (answer.kind === 'failed') {
          console.error(answer.message);
          setHeld({ of: now, hasFailed: true });
        }
      }
      isRunning.current = false;
    };
    void run();
  }, [cook, formulaId, corrections, swap, wish]);

  const { labels } = cook;
  const read = useCallback(
    async (text: string, system: MeasureSystemId | undefined) => {
      worker.current ??= new BenchWorker();
      const answer = await worker.current.ask({
        kind: 'read',
        text,
        ...(system && { system }),
        ...(labels && { labels }),
      });
      return answer.kind === 'recipe' ? answer.recipe : undefined;
    },
    [labels],
  );

  const seen = held.seen?.formulaId === formulaId ? held.seen : undefined;
  const asked = held.of?.kind === 'see' ? held.of : undefined;
  const formulaIn = (of: Cook | undefined) => of?.formulas.find((one) => one.id === formulaId);
  const [now, then] = [formulaIn(cook), formulaIn(asked?.cook)];
  const hasSameLines =
    now !== undefined &&
    then !== undefined &&
    then.lines === now.lines &&
    then.variant === now.variant &&
    chosenVariant(then)?.changes === chosenVariant(now)?.changes;
  const isFresh =
    hasSameLines && asked !== undefined && asked.cook === cook && asked.swap === swap && asked.wish === wish;
  return { seen, isFresh, hasSameLines, hasFailed: held.hasFailed, read };
}
