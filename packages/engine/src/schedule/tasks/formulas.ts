import type { Formula, Piece, Range } from '@pitwright/model';
import { HOUR_S, MINUTE_S } from '../clock.ts';
import type { Occupancy } from '../types.ts';
import { type DraftPlan, type DraftTask, draft, kitchenShutsS, type TaskScene, taskId } from './draft.ts';
import { fixedDuration, minutes } from './durations.ts';
import { JAR_SHELVES } from './footprint.ts';

/** A simmer whose boil-off nobody has computed. @source common practice, no source */
const SIMMER_UNKNOWN = minutes(15, 25, 40);

export const isFor = (formula: Formula, piece: Piece): boolean =>
  !formula.for || formula.for.includes(piece.id) || formula.for.includes(piece.letter);

/**
 * Sauce of the day before: made, simmered, cooled in two stages, in jars in the fridge before night; warmed for the
 * first coat or for the table.
 * @param simmer  foreseen length of its simmer, where the sauce room has computed it
 * @param firstGlazeId  the job that first brushes it on, if any
 */
export function sauceTasks(
  formula: Formula,
  scene: TaskScene,
  wishS: number,
  simmer: Range | undefined,
  firstGlazeId: string | undefined,
): DraftPlan {
  const base = { at: 'kitchen' as const, subject: formula.id, formulaId: formula.id };
  const burner = [
    { kind: 'burner' as const, amount: 1 },
    { kind: 'pan' as const, amount: 1 },
  ];
  const make = draft({
    ...base,
    kind: 'make-sauce',
    duration: fixedDuration('make-sauce'),
    equipment: burner,
    earliestS: scene.horizon.fromS,
    wishS,
  });
  const simmers = formula.simmer !== undefined;
  const simmerTask = draft({
    ...base,
    kind: 'simmer-sauce',
    // Stirred in passing: other work in the same kitchen goes on beside it.
    hands: 0,
    duration: simmer ?? SIMMER_UNKNOWN,
    equipment: burner,
    after: [{ id: make.id, minLagS: 0, maxLagS: 0 }],
  });
  const cooked = simmers ? simmerTask : make;
  // 57 → 21 °C within 2 h and → 5 °C within 6 h in all: an ice bath at once, then small jars in the fridge.
  const cool = draft({
    ...base,
    kind: 'cool-sauce',
    hands: 0,
    duration: fixedDuration('cool-sauce'),
    after: [{ id: cooked.id, minLagS: 0, maxLagS: 15 * MINUTE_S }],
  });
  const jar = draft({
    ...base,
    kind: 'jar-sauce',
    duration: fixedDuration('jar-sauce'),
    after: [{ id: cool.id, minLagS: 0, maxLagS: 20 * MINUTE_S }],
    latestS: kitchenShutsS(scene),
    sign: { id: 'sign.sauce-cold' },
  });
  const warm = draft({
    ...base,
    kind: 'warm-sauce',
    duration: fixedDuration('warm-sauce'),
    equipment: burner,
    after: [{ id: jar.id, minLagS: 0 }],
    ...(!firstGlazeId && {
      earliestS: scene.tableS.atS - 50 * MINUTE_S,
      latestS: scene.tableS.atS - 10 * MINUTE_S,
      wishS: scene.tableS.atS - 25 * MINUTE_S,
    }),
  });
  return {
    tasks: [make, ...(simmers ? [simmerTask] : []), cool, jar, warm],
    occupancies: [
      {
        id: `${formula.id}/fridge`,
        need: { kind: 'fridge-shelf', amount: JAR_SHELVES },
        formulaId: formula.id,
        fromTaskId: jar.id,
        toTaskId: warm.id,
      } satisfies Occupancy,
    ],
  };
}

/** Rub mixed before it is needed. */
export const mixRub = (formula: Formula, scene: TaskScene, wishS: number): DraftTask =>
  draft({
    kind: 'mix-rub',
    at: 'kitchen',
    subject: formula.id,
    formulaId: formula.id,
    duration: fixedDuration('mix-rub'),
    latestS: kitchenShutsS(scene),
    wishS,
  });

/** Spritz mixed before the first round: with the other mixing of the day before, unless the day itself begins late. */
export const mixSpritz = (
  formula: Formula,
  firstSpritzId: string | undefined,
  scene: TaskScene,
  wishS: number,
): DraftTask =>
  draft({
    kind: 'mix-spritz',
    at: 'kitchen',
    subject: formula.id,
    formulaId: formula.id,
    duration: fixedDuration('mix-spritz'),
    ...(!firstSpritzId && { latestS: scene.firstOnS }),
    earliestS: scene.horizon.fromS,
    wishS: Math.max(wishS, Math.min(scene.firstOnS - HOUR_S, scene.eveningS - 6 * HOUR_S)),
    earlyWeight: 0.5,
    lateWeight: 0.5,
  });

/** How long pieces lie in a brine. @source common practice, no source */
export const BRINE_LAG_S = { minLagS: 4 * HOUR_S, maxLagS: 14 * HOUR_S };

/** Brine mixed, pieces put in it. */
export const brineTasks = (formula: Formula, pieces: readonly Piece[], wishS: number): DraftTask[] => {
  const base = { at: 'kitchen' as const, subject: formula.id, formulaId: formula.id };
  return [
    draft({ ...base, kind: 'mix-brine', duration: fixedDuration('mix-brine'), wishS }),
    draft({
      ...base,
      kind: 'brine',
      pieces,
      duration: minutes(5, 8, 12),
      after: [
        { id: taskId(formula.id, 'mix-brine'), minLagS: 0, maxLagS: 12 * HOUR_S },
        { id: taskId('shop', 'buy'), minLagS: 0 },
      ],
    }),
  ];
};
