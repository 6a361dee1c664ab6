import type { Formula, Piece } from '@pitwright/model';
import { type EpochS, HOUR_S, MINUTE_S, wallClockS } from '../clock.ts';
import { familyOf } from '../rest-rules.ts';
import type { Occupancy, TaskLag } from '../types.ts';
import { type DraftPlan, type DraftTask, draft, kitchenShutsS, type TaskScene, taskId } from './draft.ts';
import { fixedDuration, jobDuration } from './durations.ts';
import { shelvesOf } from './footprint.ts';
import { BRINE_LAG_S, isFor } from './formulas.ts';

/**
 * Rub to meat-on: at least, at most, and what is wished.
 * @source common practice, no source: racks 1–16 h, shoulder and brisket 1–24 h, birds 1–24 h, roasts 1–24 h
 */
export const RUB_LAG_S: Readonly<Record<string, { readonly min: number; readonly max: number }>> = {
  rack: { min: HOUR_S, max: 16 * HOUR_S },
  large: { min: HOUR_S, max: 24 * HOUR_S },
  bird: { min: HOUR_S, max: 24 * HOUR_S },
  roast: { min: HOUR_S, max: 24 * HOUR_S },
};

export const buyId = taskId('shop', 'buy');

/** Shopping on the day before, in shop hours. */
export const buyTask = (scene: TaskScene): DraftTask => {
  const { zone } = scene.cook;
  return draft({
    kind: 'buy',
    at: 'shop',
    subject: 'shop',
    duration: fixedDuration('buy'),
    earliestS: wallClockS(scene.dayBeforeS, 0, '08:00', zone),
    latestS: wallClockS(scene.dayBeforeS, 0, '19:00', zone),
    wishS: wallClockS(scene.dayBeforeS, 0, '10:00', zone),
  });
};

/** A free morning is long enough for the rub when the first meat goes on this late. */
const MORNING_RUB_FROM = '10:00';
/** Rubbed in the morning: so long before the group goes on. */
const MORNING_RUB_S = 3 * HOUR_S;

/**
 * When a group of pieces is rubbed: on the day of a late start that same morning, else the afternoon before, and never
 * longer ahead than its rub may lie.
 */
function rubWishS(scene: TaskScene, family: string, groupOnS: EpochS, wishS: EpochS): EpochS {
  const { zone } = scene.cook;
  const longest = groupOnS - RUB_LAG_S[family]!.max + HOUR_S;
  const isSameDay = wallClockS(groupOnS, 0, '00:00', zone) === wallClockS(scene.firstOnS, 0, '00:00', zone);
  const isNextDay = groupOnS >= wallClockS(scene.dayBeforeS, 1, '00:00', zone);
  const hasMorning = scene.firstOnS >= wallClockS(scene.firstOnS, 0, MORNING_RUB_FROM, zone);
  return isSameDay && isNextDay && hasMorning ? groupOnS - MORNING_RUB_S : Math.max(wishS, longest);
}

/** Racks skinned and trimmed, all pieces rubbed, and where they wait in the fridge meanwhile. */
export function preparationTasks(
  scene: TaskScene,
  pieces: readonly { readonly piece: Piece; readonly onS: EpochS }[],
  formulas: readonly Formula[],
  wishS: number,
): DraftPlan {
  const tasks: DraftTask[] = [];
  const racks = pieces.map(({ piece }) => piece).filter((piece) => familyOf(piece.cut) === 'rack');
  if (racks.length)
    tasks.push(
      draft({
        kind: 'skin-and-trim',
        at: 'kitchen',
        subject: 'racks',
        pieces: racks,
        duration: jobDuration('skin-and-trim', racks),
        after: [{ id: buyId, minLagS: 0 }],
        latestS: kitchenShutsS(scene),
        wishS,
        sign: { id: 'sign.membrane-off' },
      }),
    );
  for (const family of new Set(pieces.map(({ piece }) => familyOf(piece.cut)))) {
    const members = pieces.filter(({ piece }) => familyOf(piece.cut) === family);
    const group = members.map(({ piece }) => piece);
    const rubs = formulas.filter((f) => f.kind === 'rub' && group.some((piece) => isFor(f, piece)));
    const brines = formulas.filter((f) => f.kind === 'brine' && group.some((piece) => isFor(f, piece)));
    const isRubbedAnyway = family === 'rack' || family === 'large';
    if (!rubs.length && !isRubbedAnyway && !formulas.some((f) => f.kind === 'rub')) continue;
    const after: TaskLag[] = rubs.map((rub) => ({ id: taskId(rub.id, 'mix-rub'), minLagS: 0 }));
    if (family === 'rack') after.push({ id: taskId('racks', 'skin-and-trim'), minLagS: 0 });
    else if (!brines.length) after.push({ id: buyId, minLagS: 0 });
    for (const brine of brines) after.push({ id: taskId(brine.id, 'brine'), ...BRINE_LAG_S });
    tasks.push(
      draft({
        kind: 'rub',
        at: 'kitchen',
        subject: family,
        pieces: group,
        ...(rubs[0] && { formulaId: rubs[0].id }),
        duration: jobDuration('rub', group),
        after,
        wishS: rubWishS(scene, family, Math.min(...members.map(({ onS }) => onS)), wishS),
        earlyWeight: 0.5,
        lateWeight: 0.5,
        sign: { id: 'sign.rub-even' },
      }),
    );
  }
  return { tasks, occupancies: pieces.map(({ piece }) => fridgeStay(piece)) };
}

/** From the shop until it comes out to go on. */
const fridgeStay = (piece: Piece): Occupancy => ({
  id: `${piece.id}/fridge`,
  need: { kind: 'fridge-shelf', amount: shelvesOf(piece) },
  pieceId: piece.id,
  fromTaskId: buyId,
  toTaskId: taskId(piece.id, 'out-of-fridge'),
});

/** Out of the fridge while the fire settles: never long enough to matter for safety. @source common practice, no source */
export const outOfFridge = (piece: Piece, onS: EpochS): DraftTask =>
  draft({
    kind: 'out-of-fridge',
    at: 'kitchen',
    subject: piece.id,
    pieces: [piece],
    duration: jobDuration('out-of-fridge', [piece]),
    wishS: onS - OUT_WISH_S,
    earlyWeight: 0.2,
    lateWeight: 0.2,
  });
const OUT_WISH_S = 20 * MINUTE_S;
export const OUT_LAG_S = { minLagS: 0, maxLagS: 40 * MINUTE_S };
