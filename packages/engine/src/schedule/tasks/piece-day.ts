import {
  type Bite,
  type CutId,
  isWaiting,
  type Piece,
  type Range,
  type Said,
  type Stage,
} from '@pitwright/model';
import { barkTest } from '../../day/resolve.ts';
import { spritzOf } from '../../day/spritz.ts';
import type { PieceForecast } from '../../forecast/types.ts';
import { type EpochS, FIVE_MINUTES_S, HOUR_S, MINUTE_S, roundToFive } from '../clock.ts';
import { allReadyS, type Contender, rangeOf } from '../on-time.ts';
import { familyOf, heatStages } from '../rest-rules.ts';
import type { StartGives } from '../starts.ts';
import type { Occupancy, TaskKind, TaskLag } from '../types.ts';
import { type DraftTask, draft, slotDurationS, stageNames, type TaskScene, taskId } from './draft.ts';
import { jobDuration } from './durations.ts';
import { footprintM2, ovenShareOf } from './footprint.ts';
import type { BareSpan } from './rounds.ts';

export interface PieceDay {
  readonly tasks: readonly DraftTask[];
  readonly occupancies: readonly Occupancy[];
  readonly bare: readonly BareSpan[];
  readonly firstGlazeId?: string;
  readonly onId: string;
  readonly offId: string;
}

/** How far the planned clock of a sign may give, by family [s]; the sign itself decides on the day. */
const SIGN_GIVES_S: Readonly<Record<string, number>> = {
  rack: 20 * MINUTE_S,
  bird: 10 * MINUTE_S,
  large: 45 * MINUTE_S,
  roast: 20 * MINUTE_S,
};
/** A stage by the clock may run over by so much. */
const CLOCK_GIVES_S = 10 * MINUTE_S;
const BOX_FROM_S = HOUR_S;
/** A second coat is worth it when the glazed stage lasts this long. */
const SECOND_COAT_S = 20 * MINUTE_S;
/** Slicing may begin a while before the hour: it dries in minutes. */
const SLICE_EARLY_S = 30 * MINUTE_S;
/** Pulled meat keeps in its juice, but dries: never sooner than this. */
const PULL_EARLY_S = 60 * MINUTE_S;
/** Pulled meat keeps a while in its juice: it is done by so long before the hour, and no sooner than it must. */
const PULLED_BEFORE_S = 10 * MINUTE_S;
/** What is ready first is worth a look, but not at once after the last handling. */
const TEST_AFTER_CHANGE_S = 30 * MINUTE_S;

/** All the work on one piece from the moment it goes on until it is sliced. */
export function pieceDay(
  contender: Contender,
  forecast: PieceForecast,
  onS: EpochS,
  beforeMeat: readonly TaskLag[],
  gives: StartGives,
  scene: TaskScene,
): PieceDay {
  const { piece, rule } = contender;
  const family = familyOf(piece.cut);
  const stages = heatStages(piece);
  const names = stageNames(stages);
  const job = (kind: TaskKind) => ({
    kind,
    subject: piece.id,
    pieces: [piece],
    duration: jobDuration(kind, [piece]),
  });
  const isPinned = piece.onAt !== undefined;
  const on = draft({
    ...job('meat-on'),
    at: 'pit',
    after: [...beforeMeat, { id: taskId(piece.id, 'out-of-fridge'), minLagS: 0, maxLagS: 40 * MINUTE_S }],
    earliestS: isPinned ? onS : onS - gives.earlierS,
    latestS: isPinned ? onS : onS + gives.laterS,
    wishS: onS,
    earlyWeight: 6,
    lateWeight: 8,
  });
  const onLasts = slotDurationS(on);
  const tasks: DraftTask[] = [on];
  const bare: BareSpan[] = [];
  const sliceS = slotDurationS(draft({ ...job('slice'), at: 'kitchen' }));
  const { readyS, isLate } = plannedReadyS(contender, onS, scene, sliceS);
  let previous = { id: on.id, startS: 0 };
  let wasWrapped = false;
  let ovenFromId: string | undefined;
  let firstGlazeId: string | undefined;
  stages.forEach((stage, k) => {
    const startsS = k === 0 ? 0 : stageStartS(forecast, k, previous.startS, readyS);
    const endsS = k + 1 < stages.length ? stageStartS(forecast, k + 1, startsS, readyS) : readyS;
    if (k > 0) {
      const kind = changeKind(stage, stages[k - 1]!, wasWrapped, ovenFromId !== undefined);
      const change = draft({
        ...job(kind),
        stage: names[k]!,
        at: ovenFromId ? 'kitchen' : 'pit',
        duration: changeDuration(kind, stage, piece, wasWrapped),
        after: [
          changeLag(stages[k - 1]!, previous, forecast.stages[k]?.startS, startsS, onLasts, on.id, family),
        ],
        wishS: onS + startsS,
        sign: stageSign(piece, stages[k - 1]!, stage),
      });
      tasks.push(change);
      if (stage.kind === 'glazed') firstGlazeId ??= change.id;
      if (kind === 'to-oven') ovenFromId = change.id;
      previous = { id: change.id, startS: startsS };
      if (stage.kind === 'glazed' && endsS - startsS >= SECOND_COAT_S) {
        const between = roundToFive((endsS - startsS) / 2);
        tasks.push(
          draft({
            ...job('glaze'),
            stage: names[k]!,
            round: 2,
            at: ovenFromId ? 'kitchen' : 'pit',
            after: [
              {
                id: change.id,
                minLagS: Math.max(5 * MINUTE_S, between - 5 * MINUTE_S),
                maxLagS: between + 5 * MINUTE_S,
              },
            ],
            sign: { id: 'sign.coat-tacky' },
          }),
        );
      }
    }
    wasWrapped = stage.kind === 'foil' || stage.kind === 'paper';
    const spritz = spritzOf(scene.cook, piece, stage);
    if ((stage.kind === 'bare' || spritz) && !ovenFromId)
      bare.push({ piece, span: { fromS: onS + startsS, toS: onS + endsS }, ...(spritz && { spritz }) });
  });
  const ready = rangeOf(allReadyS(contender));
  const test = testTask(contender, ready, job('test-bite'), on, onLasts, ovenFromId !== undefined, previous);
  if (test) tasks.push(test);
  const off = draft({
    ...job('take-off'),
    at: ovenFromId ? 'kitchen' : 'pit',
    after: [
      aroundLag(on.id, readyS - onLasts, family === 'large' ? 20 * MINUTE_S : 10 * MINUTE_S),
      ...tasks
        .filter((task) => task !== on)
        .map((task) => ({
          id: task.id,
          minLagS: task.id === previous.id ? lastsAfterS(stages.at(-1), slotDurationS(task)) : 0,
        })),
    ],
    wishS: onS + readyS,
    sign: offSign(piece),
    earlyWeight: 2,
    lateWeight: 2,
  });
  const chill = chillTask(piece, forecast, off.id, job('chill'));
  const slice = draft({
    ...job('slice'),
    at: 'kitchen',
    after: [
      {
        id: off.id,
        minLagS: rule.restLeastS,
        maxLagS: Math.max(rule.restLeastS, rule.holdLongestS - sliceS),
      },
      ...(chill ? [{ id: chill.id, minLagS: 0 }] : []),
    ],
    earliestS: scene.tableS.atS - sliceS - (piece.bite === 'pulls-apart' ? PULL_EARLY_S : SLICE_EARLY_S),
    ...(!isLate && { latestS: scene.tableS.untilS - sliceS }),
    wishS: scene.tableS.atS - sliceS - (piece.bite === 'pulls-apart' ? PULLED_BEFORE_S : 0),
    earlyWeight: piece.bite === 'pulls-apart' ? 2 : 1,
    lateWeight: piece.forCamera ? 1 : 3,
  });
  tasks.push(off, ...(chill ? [chill] : []), slice);
  return {
    tasks,
    occupancies: occupancies(
      piece,
      on.id,
      off.id,
      slice.id,
      ovenFromId,
      chill?.id,
      rule.holdLongestS > BOX_FROM_S,
    ),
    bare,
    ...(firstGlazeId && { firstGlazeId }),
    onId: on.id,
    offId: off.id,
  };
}

/**
 * When it is planned to leave the heat [s from meat-on]: with the median of the bite where the bite ends its last
 * stage, else with the end of that stage; never so late that it could not be rested and cut by the end of the window,
 * unless hardly any member is that soon: then it is planned as it will be, late.
 */
function plannedReadyS(
  contender: Contender,
  onS: EpochS,
  scene: TaskScene,
  sliceS: number,
): { readonly readyS: number; readonly isLate: boolean } {
  const { rule } = contender;
  const tableS = scene.tableS.atS - rule.restLeastS - sliceS - onS;
  const latestS = scene.tableS.untilS - rule.restLeastS - sliceS - onS;
  const ready = rangeOf(allReadyS(contender));
  const median = ready.p50 < Infinity ? ready.p50 : (contender.heatEndS ?? tableS);
  const wanted = contender.waitsOnHeat
    ? Math.max(tableS, median)
    : contender.endsByBite
      ? median
      : (contender.heatEndS ?? median);
  const isLate = Math.min(ready.p10, wanted) > latestS;
  return {
    readyS: Math.max(FIVE_MINUTES_S, roundToFive(isLate ? wanted : Math.min(wanted, latestS))),
    isLate,
  };
}

/** Median start of a stage, kept between the stage before it and the ready time. */
const stageStartS = (forecast: PieceForecast, k: number, afterS: number, readyS: number): number => {
  const median = forecast.stages[k]?.startS.p50 ?? Infinity;
  return roundToFive(
    Math.min(Math.max(median < Infinity ? median : readyS, afterS), Math.max(readyS, afterS)),
  );
};

function changeKind(stage: Stage, before: Stage, wasWrapped: boolean, isInOven: boolean): TaskKind {
  if (stage.in === 'oven' && before.in !== 'oven' && !isInOven) return 'to-oven';
  if (stage.kind === 'foil' || stage.kind === 'paper') return 'wrap';
  if (stage.kind === 'glazed') return 'glaze';
  if (wasWrapped) return 'unwrap';
  // Over them, or away from them.
  return (stage.direct === undefined) === (before.direct === undefined) ? 'look' : 'to-coals';
}

/** Opening the foil and brushing the first coat are one job; so are wrapping and carrying to the oven. */
function changeDuration(kind: TaskKind, stage: Stage, piece: Piece, wasWrapped: boolean): Range {
  const own = jobDuration(kind, [piece]);
  const more =
    kind === 'glaze' && wasWrapped
      ? jobDuration('unwrap', [piece])
      : kind === 'to-oven' && (stage.kind === 'foil' || stage.kind === 'paper') && !wasWrapped
        ? jobDuration('wrap', [piece])
        : undefined;
  if (!more) return own;
  return { p10: own.p10 + more.p10, p50: own.p50 + more.p50, p90: own.p90 + more.p90, neverShare: 0 };
}

/** A stage that ends by the clock binds to its own beginning; one that ends by a sign gives around its median. */
function changeLag(
  ending: Stage,
  previous: { readonly id: string; readonly startS: number },
  start: Range | undefined,
  startsS: number,
  onLasts: number,
  onId: string,
  family: string,
): TaskLag {
  if (ending.until.by === 'clock') {
    const lasts = Math.max(0, roundToFive(ending.until.after.si) - (previous.id === onId ? onLasts : 0));
    return { id: previous.id, minLagS: lasts, maxLagS: lasts + CLOCK_GIVES_S };
  }
  const gives = SIGN_GIVES_S[family]!;
  const from = Math.max(start ? start.p10 : 0, startsS - gives);
  const to = Math.min(start && start.p90 < Infinity ? start.p90 : Infinity, startsS + gives);
  return {
    id: onId,
    minLagS: Math.max(0, Math.min(roundToFive(from), startsS) - onLasts),
    maxLagS: Math.max(0, Math.max(roundToFive(to), startsS) - onLasts),
  };
}

/** What is left of a last stage by the clock when the job that begins it is done. */
const lastsAfterS = (last: Stage | undefined, jobS: number): number =>
  last?.until.by === 'clock' ? Math.max(0, last.until.after.si - jobS) : 0;

const aroundLag = (id: string, lagS: number, givesS: number): TaskLag => ({
  id,
  minLagS: Math.max(0, lagS - givesS),
  maxLagS: Math.max(0, lagS + givesS),
});

/**
 * One test when the first tenth of the members is ready, where that is worth a walk and stands clear of the job before
 * it; the second is the taking off itself, at the median.
 */
function testTask(
  contender: Contender,
  ready: Range,
  job: Pick<Parameters<typeof draft>[0], 'kind' | 'subject' | 'pieces' | 'duration'>,
  on: DraftTask,
  onLasts: number,
  isInOven: boolean,
  change: { readonly id: string; readonly startS: number },
): DraftTask | undefined {
  const last = heatStages(contender.piece).at(-1);
  if (!(ready.p50 - ready.p10 >= 15 * MINUTE_S) || !(ready.p50 < Infinity)) return undefined;
  if (last && last.until.by !== 'bite' && last.until.by !== 'table') return undefined;
  const atS = Math.max(0, roundToFive(ready.p10) - onLasts);
  if (!(roundToFive(ready.p50) - change.startS >= 2 * TEST_AFTER_CHANGE_S)) return undefined;
  return draft({
    ...job,
    at: isInOven ? 'kitchen' : 'pit',
    after: [
      {
        id: on.id,
        minLagS: Math.max(0, atS - FIVE_MINUTES_S, change.startS + TEST_AFTER_CHANGE_S),
        maxLagS: Math.max(atS + 20 * MINUTE_S, change.startS + TEST_AFTER_CHANGE_S + 20 * MINUTE_S),
      },
    ],
    sign: biteSign(contender.piece, contender.piece.bite),
  });
}

/** Ribs on a slab bend; thick meat, short pieces and birds are tried with a pick. @source common practice, no source */
const BENT: ReadonlySet<CutId> = new Set<CutId>([
  'loin-back-ribs',
  'spareribs',
  'spareribs-breast-off',
  'st-louis-ribs',
  'beef-back-ribs',
  'lamb-breast',
]);
const biteSign = ({ cut }: Piece, bite: Bite): Said => ({
  id: `sign.${BENT.has(cut) ? 'bite' : 'probe'}-${bite}`,
});

/** What takes a piece off the heat: what its last stage there ends by, and its bite where that is the clock or the table. */
const offSign = (piece: Piece): Said => {
  const last = heatStages(piece).at(-1);
  return last && last.until.by !== 'clock' && last.until.by !== 'table'
    ? stageSign(piece, last)
    : biteSign(piece, piece.bite);
};

const stageSign = (piece: Piece, ending: Stage, next?: Stage): Said => {
  switch (ending.until.by) {
    case 'bark':
      return { id: `sign.bark-${barkTest(piece)}` };
    case 'core':
      return { id: 'sign.core', params: { temperature: ending.until.temperature } };
    case 'surface':
      return { id: 'sign.surface', params: { temperature: ending.until.temperature } };
    case 'loss':
      return { id: 'sign.loss', params: { share: ending.until.share } };
    case 'bite':
      return biteSign(piece, ending.until.bite);
    case 'clock':
      return {
        id: next?.kind === 'glazed' ? 'sign.clock-then-glaze' : 'sign.clock',
        params: { after: ending.until.after },
      };
    case 'table':
      return { id: 'sign.table' };
  }
};

/** Whether the kitchen oven keeps it warm for the table. */
export const waitsInOven = (piece: Piece): boolean =>
  piece.stages.some((stage) => isWaiting(stage.kind) && stage.in === 'oven');

/** It is put where it gets cold as soon as it may: after the rest that the file tells, and hardly later. */
const CHILL_GIVES_S = 15 * MINUTE_S;

function chillTask(
  piece: Piece,
  forecast: PieceForecast,
  offId: string,
  job: Pick<Parameters<typeof draft>[0], 'kind' | 'subject' | 'pieces' | 'duration'>,
): DraftTask | undefined {
  const k = piece.stages.findIndex(({ kind }) => kind === 'chill');
  if (k < 0) return undefined;
  const beganS = forecast.stages[heatStages(piece).length]?.startS.p50 ?? Infinity;
  const startS = forecast.stages[k]?.startS.p50 ?? Infinity;
  const restsS = startS < Infinity && beganS < Infinity ? Math.max(0, startS - beganS) : 0;
  return draft({
    ...job,
    stage: stageNames(piece.stages)[k]!,
    at: 'kitchen',
    after: [{ id: offId, minLagS: restsS, maxLagS: restsS + CHILL_GIVES_S }],
  });
}

function occupancies(
  piece: Piece,
  onId: string,
  offId: string,
  sliceId: string,
  ovenFromId: string | undefined,
  chillId: string | undefined,
  holdsInBox: boolean,
): Occupancy[] {
  const stay = (
    kind: Occupancy['need']['kind'],
    amount: number,
    fromTaskId: string,
    toTaskId: string,
  ): Occupancy => ({
    id: `${piece.id}/${kind}`,
    need: { kind, amount },
    pieceId: piece.id,
    fromTaskId,
    toTaskId,
  });
  return [
    stay('grate', footprintM2(piece), onId, ovenFromId ?? offId),
    ...(ovenFromId ? [stay('oven', ovenShareOf(piece), ovenFromId, offId)] : []),
    ...(waitsInOven(piece)
      ? [{ ...stay('oven', ovenShareOf(piece), offId, sliceId), id: `${piece.id}/oven-hold` }]
      : []),
    ...(chillId ? [stay('fridge-shelf', 1, chillId, sliceId)] : []),
    ...(holdsInBox && !waitsInOven(piece) && !chillId && familyOf(piece.cut) === 'large'
      ? [stay('box', 1, offId, sliceId)]
      : []),
  ];
}
