import type { HandLane, LaneJob, LanesData, LaneUse, RoomLane } from '@pitwright/draw';
import type { CookPlan, EquipmentKind, EquipmentUse } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import type { Printer } from '@pitwright/words';
import type { Words } from '../../words.tsx';
import { nightsOf, quietOf, sleepOf } from '../cook/fold.ts';
import { isByHand, type Job, jobsOf, numbersOf, secondsOf } from './jobs.ts';
import { setAt } from './move.ts';

const LEAD_S = 1800;
const TAIL_S = 4500;

export interface LanesInput {
  readonly cook: Cook;
  readonly plan: CookPlan;
  readonly openId: string | undefined;
  /** A job that a hand holds somewhere else at the moment. */
  readonly held: { readonly id: string; readonly atMs: number } | undefined;
  readonly nowS: number;
  readonly text: Words['text'];
  readonly print: Printer;
}

const lettersOf = (cook: Cook, ids: readonly string[]): string =>
  cook.pieces
    .filter((piece) => ids.includes(piece.id))
    .map((piece) => piece.letter)
    .join(' ');

/** A job in two words. */
export const jobName = ({ task }: Job, cook: Cook, text: Words['text']): string =>
  text('web.job', { kind: task.kind, letters: lettersOf(cook, task.pieceIds) });

/** First and last instant of the days [s]. */
export function spanOf(plan: CookPlan): { fromS: number; toS: number } {
  const first = jobsOf(plan)
    .filter(isByHand)
    .reduce((least, { placed }) => Math.min(least, secondsOf(placed.startAt)), secondsOf(plan.firstOnAt));
  return { fromS: first - LEAD_S, toS: secondsOf(plan.table.until) + TAIL_S };
}

export function lanesData(input: LanesInput): LanesData {
  const { cook, plan, text, nowS } = input;
  const { fromS, toS } = spanOf(plan);
  return {
    hands: handLanes(input, fromS, toS),
    rooms: roomLanes(input),
    tableS: secondsOf(plan.table.at),
    untilS: secondsOf(plan.table.until),
    fromS,
    ...(nowS > fromS && nowS < toS ? { nowS } : {}),
    nights: nightsOf(cook, fromS, toS),
    quiet: quietOf(cook, plan, fromS, toS),
    asleepWords: text('web.run.asleep'),
    fullWords: text('web.run.full'),
  };
}

function handLanes({ cook, plan, openId, held, text, print }: LanesInput, fromS: number, toS: number) {
  const numberOf = numbersOf(plan);
  const was = new Map(plan.moved.map((moved) => [moved.taskId, moved.fromAt]));
  return cook.hands.map((hand): HandLane => {
    const jobs = jobsOf(plan).filter(
      ({ placed }) => placed.handIds.includes(hand.id) && secondsOf(placed.startAt) < toS,
    );
    const workS = jobs.reduce(
      (sum, { placed }) => sum + secondsOf(placed.endAt) - secondsOf(placed.startAt),
      0,
    );
    return {
      name: hand.name,
      remark: text('web.run.hand.remark', { work: print.durationS(workS) }),
      asleep: sleepOf(hand, cook.zone, fromS, toS),
      jobs: jobs.map((job): LaneJob => {
        const { placed, task } = job;
        const startS = secondsOf(placed.startAt);
        const lastsS = secondsOf(placed.endAt) - startS;
        const isHeld = held?.id === placed.taskId;
        const movedFrom = was.get(placed.taskId);
        const wasS = isHeld ? startS : movedFrom ? secondsOf(movedFrom) : undefined;
        const atS = isHeld ? held.atMs / 1000 : startS;
        return {
          id: placed.taskId,
          fromS: atS,
          toS: atS + lastsS,
          words: jobName(job, cook, text),
          number: numberOf.get(placed.taskId)!,
          ...(placed.canStart
            ? { canFromS: secondsOf(placed.canStart.from), canToS: secondsOf(placed.canStart.to) }
            : {}),
          ...(wasS !== undefined && wasS > fromS ? { wasS } : {}),
          isPinned: setAt(cook, task) !== undefined,
          isOpen: placed.taskId === openId,
        };
      }),
    };
  });
}

const LOOKS = { grate: 'pit', burner: 'heat', oven: 'heat', 'fridge-shelf': 'cold' } as const;
const ROOMS = ['grate', 'burner', 'oven', 'fridge-shelf'] as const;

function roomLanes({ cook, plan, text }: LanesInput): RoomLane[] {
  return ROOMS.flatMap((kind): RoomLane[] => {
    const uses = plan.equipmentUse.filter((use) => use.kind === kind);
    const capacity = uses[0]?.capacity;
    if (capacity === undefined) return [];
    const lit = kind === 'grate' && plan.fireWatch;
    return [
      {
        ...namesOf(kind, capacity, text),
        look: LOOKS[kind],
        capacity,
        uses: named(uses.map((use) => laneUse(use, cook, plan, text))),
        ...(lit ? { lit: { fromS: secondsOf(lit.fromAt), toS: secondsOf(lit.toAt) } } : {}),
      },
    ];
  });
}

/** What follows at once under the same name is named once, by the last. */
const named = (uses: readonly LaneUse[]): LaneUse[] =>
  uses.map((use) =>
    uses.some((next) => next !== use && next.words === use.words && Math.abs(next.fromS - use.toS) < GAP_S)
      ? { ...use, words: '' }
      : use,
  );
const GAP_S = 900;

function namesOf(kind: EquipmentKind, capacity: number, text: Words['text']) {
  switch (kind) {
    case 'grate':
      return { name: text('web.run.pit'), remark: text('web.run.pit.remark') };
    case 'burner':
      return { name: text('web.run.burner'), remark: text('web.run.burner.remark', { capacity }) };
    case 'oven':
      return { name: text('web.run.oven'), remark: text('web.run.oven.remark', { capacity }) };
    default:
      return { name: text('web.run.fridge'), remark: text('web.run.fridge.remark', { capacity }) };
  }
}

function laneUse(use: EquipmentUse, cook: Cook, plan: CookPlan, text: Words['text']): LaneUse {
  const stay = plan.occupancies.find((one) => one.id === use.occupancyId);
  const task = plan.tasks.find((one) => one.id === use.taskId);
  const pieceId = stay?.pieceId ?? task?.pieceIds[0];
  const piece = cook.pieces.find((one) => one.id === pieceId);
  const formula = cook.formulas.find((one) => one.id === (stay?.formulaId ?? task?.formulaId));
  const isOwn = use.kind === 'grate' && piece;
  return {
    id: `${use.taskId ?? use.occupancyId}`,
    fromS: secondsOf(use.fromAt),
    toS: secondsOf(use.toAt),
    amount: use.amount,
    ...(isOwn ? { letter: piece.letter } : {}),
    words: piece
      ? use.kind === 'fridge-shelf'
        ? text('web.run.trays', { letter: piece.letter, count: piece.count })
        : use.kind === 'grate'
          ? (piece.name ?? '')
          : piece.letter
      : (formula?.name ?? ''),
  };
}
