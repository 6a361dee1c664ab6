/**
 * States that a run left behind: when its stages are changed, the next run sets out from the last of them that the change
 * does not touch, and its results are the same bits as those of a run from the beginning. For the steps of a stage do not
 * depend on what ends it, save the last, and no state is kept at an end.
 */
import type { MeatParameters } from './parameters.ts';
import type { StagePlan } from './stagePlan.ts';
import { Whereabouts } from './whereabouts.ts';

/** A state is kept after so many steps of a stage, and before each stage. */
export const KEPT_EVERY_STEPS = 8;
/** About 2 kB each. */
const MOST_ROWS = 64;

/** What a run depends on beside its piece and its stages. */
export interface RunTerms {
  readonly stretch: number;
  readonly wordDoses: readonly number[];
  readonly reachC?: number;
  readonly lastHeatStage?: number;
  readonly tailDoseH?: number;
}

interface Ran {
  readonly piece: MeatParameters;
  readonly stages: readonly StagePlan[];
  readonly terms: RunTerms;
}

export class Trail {
  readonly #rows: Float64Array[] = [];
  readonly #there = new Whereabouts();
  #count = 0;
  #ran: Ran | undefined;

  /**
   * Forgets what the coming run will not go through.
   * @returns the state that it goes through last, its whereabouts first; undefined: it must begin at the beginning
   */
  setOut(piece: MeatParameters, stages: readonly StagePlan[], terms: RunTerms): Float64Array | undefined {
    const ran = this.#ran;
    this.#ran = { piece, stages, terms };
    const isOther =
      !ran || ran.stages.length !== stages.length || !isSame(ran.terms, terms) || !isSame(ran.piece, piece);
    if (isOther) this.#count = 0;
    else {
      const changed = stages.findIndex((stage, s) => !isSame(stage, ran.stages[s]));
      if (changed >= 0) this.#forgetFrom(changed, ran.stages[changed]!, stages[changed]!, terms.stretch);
    }
    return this.#rows[this.#count - 1];
  }

  /** The next row to be written, of `length`; undefined when there is no more room. */
  next(length: number): Float64Array | undefined {
    if (this.#count >= MOST_ROWS) return undefined;
    const held = this.#rows[this.#count];
    const row = held?.length === length ? held : new Float64Array(length);
    this.#rows[this.#count++] = row;
    return row;
  }

  #forgetFrom(changed: number, was: StagePlan, is: StagePlan, stretch: number): void {
    const there = this.#there;
    const isAlikeButItsEnd = isSame({ ...was, trigger: is.trigger }, is);
    for (; this.#count > 0; this.#count--) {
      there.takeUp(this.#rows[this.#count - 1]!, 0);
      if (there.stage < changed) return;
      if (there.stage > changed) continue;
      if (!there.isInside || (isAlikeButItsEnd && there.wouldGoOn(is, stretch))) return;
    }
  }
}

/** The same by value: plain records and lists of figures. */
function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => isSame(a[name as keyof typeof a], b[name as keyof typeof b]))
  );
}
