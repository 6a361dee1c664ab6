import type { CookForecast, Zone } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';
import { AskedWorker } from './asked-worker.ts';
import type { Ask, Closer, Foresight, Inside, SteppingAnswer, WholeAnswer, WholeAsk } from './messages.ts';

/** The engine in its workers: one steps members and remembers them, one makes the whole plan of what was stepped. */
export class Foreteller {
  readonly #stepping = new AskedWorker<Ask, SteppingAnswer>(
    () => new Worker(new URL('./foresee.worker.ts', import.meta.url), { type: 'module' }),
  );
  readonly #wholes = new AskedWorker<WholeAsk, WholeAnswer>(
    () => new Worker(new URL('./whole.worker.ts', import.meta.url), { type: 'module' }),
  );

  /** The plan of so many members, its jobs laid down quickly. Each is undefined where it was given up. */
  async foresee(cook: Cook, members: number): Promise<Foresight | undefined> {
    const report = (await this.#stepping.ask({ kind: 'foresee', cook, members })) as PlanReport | undefined;
    // The worker sends a copy back; the cook asked about is known by identity.
    return report && { ...report, cook, members, isWhole: false, isSettled: false };
  }

  /** The plan as every face prints it: jobs settled by the solver, the other ways beside it. */
  async whole(cook: Cook, forecast: CookForecast): Promise<Foresight | undefined> {
    const made = await this.#wholes.ask({ cook, forecast }).catch((fault: unknown) => {
      // A solver that fell over once is not asked again.
      this.#wholes.close();
      throw fault;
    });
    if (!made) return undefined;
    const { report, isSettled } = made;
    return { ...report, cook, members: forecast.members, isWhole: true, isSettled };
  }

  async inside(cook: Cook, pieceId: string, zone?: Zone): Promise<Inside | undefined> {
    return (await this.#stepping.ask({ kind: 'inside', cook, pieceId, zone })) as Inside | undefined;
  }

  async closer(cook: Cook, pieceId: string): Promise<Closer | undefined> {
    return (await this.#stepping.ask({ kind: 'closer', cook, pieceId })) as Closer | undefined;
  }

  /** Gives up the stepping. */
  stop(): void {
    this.#stepping.stop();
  }

  /** Gives up a whole plan that is being made; what was stepped stays remembered. */
  stopWhole(): void {
    this.#wholes.stop();
  }

  close(): void {
    this.#stepping.close();
    this.#wholes.close();
  }
}
