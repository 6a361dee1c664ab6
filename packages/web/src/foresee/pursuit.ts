import type { Cook } from '@pitwright/model';
import { ForesightFault } from './asked-worker.ts';
import { Foreteller } from './foreteller.ts';
import type { Foresight } from './messages.ts';

/** A first frame at once, a preview, then the range that is kept. The same seed: only the change is seen. */
export const FIRST_MEMBERS = 16;
export const PREVIEW_MEMBERS = 40;
export const FULL_MEMBERS = 200;

const WHILE_HELD = [FIRST_MEMBERS, PREVIEW_MEMBERS];
const ALL_STEPS = [...WHILE_HELD, FULL_MEMBERS];

interface Asked {
  readonly cook: Cook;
  /** Something is being dragged: then it stops at the preview. */
  readonly isHeld: boolean;
}

/**
 * Follows what is asked, refined in steps and at last made whole. A change in the middle of a step lets that step end
 * first, so that the bands keep following the hand; a whole plan that is overtaken is given up.
 */
export class Pursuit {
  readonly #foreteller = new Foreteller();
  readonly #onForesight: (foresight: Foresight) => void;
  readonly #onFault: (cook: Cook, fault: ForesightFault) => void;
  #asked: Asked | undefined;
  #last: Foresight | undefined;
  #isRunning = false;

  constructor(
    onForesight: (foresight: Foresight) => void,
    onFault: (cook: Cook, fault: ForesightFault) => void,
  ) {
    this.#onForesight = onForesight;
    this.#onFault = onFault;
  }

  ask(asked: Asked): void {
    if (this.#asked?.cook !== asked.cook || asked.isHeld) this.#foreteller.stopWhole();
    this.#asked = asked;
    if (!this.#isRunning) void this.#run();
  }

  close(): void {
    this.#asked = undefined;
    this.#foreteller.close();
  }

  async #run(): Promise<void> {
    this.#isRunning = true;
    let failed: Cook | undefined;
    for (;;) {
      const { cook, isHeld } = this.#asked ?? {};
      if (!cook || cook === failed) break;
      const ran = this.#last?.cook === cook ? this.#last : undefined;
      const members = (isHeld ? WHILE_HELD : ALL_STEPS).find((step) => step > (ran?.members ?? 0));
      if (members === undefined && (isHeld || !ran || ran.isWhole)) break;
      try {
        const seen =
          members === undefined ? await this.#whole(ran!) : await this.#foreteller.foresee(cook, members);
        if (!seen) continue;
        this.#last = seen;
        this.#onForesight(seen);
      } catch (fault) {
        if (!(fault instanceof ForesightFault)) throw fault;
        failed = cook;
        this.#onFault(cook, fault);
      }
    }
    this.#isRunning = false;
  }

  /** Tried twice; a plan that cannot be made whole stands as it was first laid out, and says so. */
  async #whole(ran: Foresight): Promise<Foresight | undefined> {
    for (let isAgain = false; ; isAgain = true) {
      try {
        return await this.#foreteller.whole(ran.cook, ran.forecast);
      } catch (fault) {
        if (!(fault instanceof ForesightFault)) throw fault;
        if (isAgain) return { ...ran, isWhole: true, isSettled: false };
        if (this.#asked?.cook !== ran.cook) return undefined;
      }
    }
  }
}
