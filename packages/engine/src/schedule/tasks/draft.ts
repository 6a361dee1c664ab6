import type { Cook, Piece, Said, Stage } from '@pitwright/model';
import { ceilToFive, type EpochS, instantOf, MINUTE_S, type Span } from '../clock.ts';
import type { EquipmentNeed, Occupancy, Task, TaskKind, TaskLag, Workplace } from '../types.ts';
import { plannedS } from './durations.ts';

/** A task with how it would like to lie; the wish is no part of the public record. */
export interface DraftTask extends Task {
  /** Start it would like; missing: as its neighbours allow. */
  readonly wishS?: EpochS;
  /** Weight of five minutes before and after the wish. */
  readonly earlyWeight: number;
  readonly lateWeight: number;
}

export interface DraftPlan {
  readonly tasks: readonly DraftTask[];
  readonly occupancies: readonly Occupancy[];
}

/** What all builders of tasks may know. */
export interface TaskScene {
  readonly cook: Cook;
  readonly tableS: { readonly atS: EpochS; readonly untilS: EpochS };
  readonly horizon: Span;
  /** Local midnight that begins the day before the table. */
  readonly dayBeforeS: EpochS;
  /** Morning of that day: nobody works for this cook before it. */
  readonly opensS: EpochS;
  /** Evening of that day by which kitchen work is over. */
  readonly eveningS: EpochS;
  /** When everybody sleeps. */
  readonly asleep: readonly Span[];
  readonly firstOnS: EpochS;
}

/** Kitchen work of the day before is over by then, half an hour before the night. */
export const kitchenShutsS = (scene: TaskScene): EpochS =>
  Math.max(scene.horizon.fromS, scene.eveningS - 30 * MINUTE_S);

export interface TaskWish {
  readonly kind: TaskKind;
  readonly at: Workplace;
  readonly subject: string;
  readonly stage?: string;
  readonly round?: number;
  readonly pieces?: readonly Piece[];
  readonly formulaId?: string;
  readonly duration: Task['durationS'];
  readonly hands?: number;
  readonly equipment?: readonly EquipmentNeed[];
  readonly after?: readonly TaskLag[];
  readonly earliestS?: EpochS;
  readonly latestS?: EpochS;
  readonly wishS?: EpochS;
  readonly earlyWeight?: number;
  readonly lateWeight?: number;
  readonly sign?: Said;
}

/** `piece or formula + stage + kind`: the same in every plan of this cook. */
export const taskId = (subject: string, kind: TaskKind, stage?: string, round?: number): string =>
  [subject, stage, kind, round && round > 1 ? String(round) : undefined].filter(Boolean).join('/');

/**
 * The stages as the ids of their tasks name them: by kind, and from the second of a kind on by its place among them
 * (`foil`, `foil-2`), so that two foil stages of one piece are two walks, and neither is renamed by what stands between.
 */
export const stageNames = (stages: readonly Stage[]): string[] =>
  stages.map(({ kind }, k) => {
    const before = stages.slice(0, k).filter((stage) => stage.kind === kind).length;
    return before === 0 ? kind : `${kind}-${before + 1}`;
  });

export function draft(wish: TaskWish): DraftTask {
  return {
    id: taskId(wish.subject, wish.kind, wish.stage, wish.round),
    kind: wish.kind,
    at: wish.at,
    pieceIds: (wish.pieces ?? []).map((piece) => piece.id),
    ...(wish.formulaId && { formulaId: wish.formulaId }),
    ...(wish.round && { round: wish.round }),
    durationS: wish.duration,
    hands: wish.hands ?? 1,
    equipment: wish.equipment ?? [],
    after: wish.after ?? [],
    ...(wish.earliestS !== undefined && { earliestAt: instantOf(wish.earliestS) }),
    ...(wish.latestS !== undefined && { latestAt: instantOf(wish.latestS) }),
    ...(wish.sign && { sign: wish.sign }),
    ...(wish.wishS !== undefined && { wishS: wish.wishS }),
    earlyWeight: wish.earlyWeight ?? (wish.wishS === undefined ? 0 : 1),
    lateWeight: wish.lateWeight ?? (wish.wishS === undefined ? 0 : 1),
  };
}

/** Time kept free for it: whole minutes, whole five minutes above a quarter of an hour [s]. */
export const slotDurationS = (task: Pick<Task, 'durationS'>): number => {
  const wholeMinutes = Math.ceil(plannedS(task.durationS) / MINUTE_S - 1e-9) * MINUTE_S;
  return wholeMinutes > 15 * MINUTE_S ? ceilToFive(wholeMinutes) : Math.max(MINUTE_S, wholeMinutes);
};
