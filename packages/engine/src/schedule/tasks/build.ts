import type { Cook, Range, Said } from '@pitwright/model';
import type { CookForecast } from '../../forecast/types.ts';
import { type EpochS, epochS, HOUR_S, instantOf, MINUTE_S, type Span, wallClockS } from '../clock.ts';
import { allAbsent, allAsleep } from '../hands.ts';
import type { Contender } from '../on-time.ts';
import { familyOf } from '../rest-rules.ts';
import type { Starts } from '../starts.ts';
import type { Occupancy } from '../types.ts';
import { afterTasks } from './after.ts';
import { type DraftPlan, type DraftTask, draft, type TaskScene, taskId } from './draft.ts';
import { fixedDuration } from './durations.ts';
import { fireTasks } from './fire.ts';
import { BRINE_LAG_S, brineTasks, isFor, mixRub, mixSpritz, sauceTasks } from './formulas.ts';
import { type PieceDay, pieceDay, waitsInOven } from './piece-day.ts';
import { buyTask, OUT_LAG_S, outOfFridge, preparationTasks, RUB_LAG_S } from './preparation.ts';
import { roundTasks, unattendedSprays } from './rounds.ts';

/** Kitchen work of the day before begins here unless asked otherwise. @source common practice, no source */
const AFTERNOON = '15:00';
const MORNING = '07:00';
const BEDTIME = '23:00';

/** What the tasks need to know of the clock: horizon from the morning before the first fire to the day after the table. */
export function sceneOf(cook: Cook, firstOnS: EpochS): TaskScene {
  const tableS = { atS: epochS(cook.table.at), untilS: epochS(cook.table.until) };
  const tableMidnightS = wallClockS(tableS.atS, 0, '00:00', cook.zone);
  const dayBeforeTableS = wallClockS(tableMidnightS, -1, '00:00', cook.zone);
  const firstOnDayS = wallClockS(firstOnS, 0, '00:00', cook.zone);
  // Meat that goes on before noon is bought and rubbed the day before that.
  const beforeFirstS =
    firstOnS - firstOnDayS < 12 * HOUR_S ? wallClockS(firstOnDayS, -1, '00:00', cook.zone) : firstOnDayS;
  const dayBeforeS = Math.min(dayBeforeTableS, beforeFirstS);
  const horizon: Span = { fromS: dayBeforeS, toS: wallClockS(tableMidnightS, 1, '14:00', cook.zone) };
  const asleep = allAsleep(cook, horizon);
  const eveningS =
    asleep.find((span) => span.fromS > dayBeforeS + 12 * HOUR_S)?.fromS ??
    wallClockS(dayBeforeS, 0, BEDTIME, cook.zone);
  const opensS = wallClockS(dayBeforeS, 0, MORNING, cook.zone);
  return { cook, tableS, horizon, dayBeforeS, opensS, eveningS, asleep, firstOnS };
}

/** Every task of the cook, with order, lags and the equipment it holds, for chosen starts. */
export function buildTasks(
  scene: TaskScene,
  contenders: readonly Contender[],
  forecast: CookForecast,
  starts: Pick<Starts, 'onS' | 'keepsOrder' | 'gives'>,
  simmers: Readonly<Record<string, Range>> = {},
): DraftPlan & { readonly notices: readonly Said[] } {
  const { cook } = scene;
  const { onS, keepsOrder } = starts;
  const fire = fireTasks(cook.pit);
  const firstIndex = onS.indexOf(Math.min(...onS));
  const days: PieceDay[] = contenders.map((contender, p) =>
    pieceDay(
      contender,
      forecast.pieces.find((piece) => piece.pieceId === contender.piece.id)!,
      onS[p]!,
      [
        ...(p === firstIndex ? fire.beforeMeat : fire.beforeMeat.map(({ id, minLagS }) => ({ id, minLagS }))),
        ...(keepsOrder ? (contender.piece.after ?? []) : []).map((id) => ({
          id: taskId(id, 'take-off'),
          minLagS: 0,
        })),
      ],
      starts.gives,
      scene,
    ),
  );
  const wishS = wallClockS(scene.dayBeforeS, 0, AFTERNOON, cook.zone);
  const tasks: DraftTask[] = [buyTask(scene), ...fire.tasks, ...days.flatMap((day) => day.tasks)];
  const occupancies: Occupancy[] = days.flatMap((day) => day.occupancies);

  const bare = days.flatMap((day) => day.bare);
  const absent = allAbsent(cook, scene.horizon);
  const rounds = roundTasks(bare, absent);
  tasks.push(...rounds);

  for (const formula of cook.formulas) {
    const pieces = contenders.map((c) => c.piece).filter((piece) => isFor(formula, piece));
    if (formula.kind === 'sauce') {
      const glazes = days.filter(
        (day) => day.firstGlazeId && pieces.some((piece) => piece.id === pieceIdOf(day)),
      );
      const firstGlaze = earliestOf(
        tasks,
        glazes.map((day) => day.firstGlazeId!),
      );
      const sauce = sauceTasks(formula, scene, wishS, simmers[formula.id], firstGlaze?.id);
      tasks.push(...sauce.tasks);
      occupancies.push(...sauce.occupancies);
      if (firstGlaze)
        addLag(tasks, firstGlaze.id, {
          id: taskId(formula.id, 'warm-sauce'),
          minLagS: 0,
          maxLagS: 40 * MINUTE_S,
        });
    } else if (formula.kind === 'rub') tasks.push(mixRub(formula, scene, wishS));
    else if (formula.kind === 'spritz') {
      const first = rounds.find((round) => round.kind === 'spritz');
      tasks.push(mixSpritz(formula, first?.id, scene, wishS));
      if (first)
        addLag(tasks, first.id, { id: taskId(formula.id, 'mix-spritz'), minLagS: 0, maxLagS: 20 * HOUR_S });
    } else tasks.push(...brineTasks(formula, pieces, wishS));
  }
  const preparation = preparationTasks(
    scene,
    contenders.map(({ piece }, p) => ({ piece, onS: onS[p]! })),
    cook.formulas,
    wishS,
  );
  tasks.push(...preparation.tasks, ...contenders.map(({ piece }, p) => outOfFridge(piece, onS[p]!)));
  occupancies.push(...preparation.occupancies);
  for (const { piece } of contenders) bindPreparation(tasks, piece.id, familyOf(piece.cut));
  tasks.push(
    ...ovenTasks(tasks, new Set(contenders.flatMap((c) => (waitsInOven(c.piece) ? [c.piece.id] : [])))),
  );
  tasks.push(
    ...afterTasks(
      scene,
      days.map((day) => day.offId),
      firstSliceId(tasks),
    ),
  );
  return {
    tasks: tasks.map((task) => notBefore(task, scene.opensS)),
    occupancies,
    notices: unattendedSprays(bare, absent),
  };
}

/** Nobody makes sauce before the morning of the first day. */
const notBefore = (task: DraftTask, opensS: EpochS): DraftTask =>
  task.earliestAt === undefined || epochS(task.earliestAt) < opensS
    ? { ...task, earliestAt: instantOf(opensS) }
    : task;

/** The table waits for the first cut; the rest follows from the board. */
const firstSliceId = (tasks: readonly DraftTask[]): string | undefined =>
  tasks
    .filter((task) => task.kind === 'take-off')
    .sort((a, b) => a.wishS! - b.wishS!)[0]
    ?.id.replace(/take-off$/, 'slice');

const pieceIdOf = (day: PieceDay): string => day.onId.split('/')[0]!;

const earliestOf = (tasks: readonly DraftTask[], ids: readonly string[]): DraftTask | undefined =>
  tasks.filter((task) => ids.includes(task.id)).sort((a, b) => (a.wishS ?? 0) - (b.wishS ?? 0))[0];

function addLag(tasks: DraftTask[], id: string, lag: DraftTask['after'][number]): void {
  const k = tasks.findIndex((task) => task.id === id);
  tasks[k] = { ...tasks[k]!, after: [...tasks[k]!.after, lag] };
}

/** Rub before the fridge door opens for the fire; out of the fridge shortly before it goes on. */
function bindPreparation(tasks: DraftTask[], pieceId: string, family: string): void {
  const onId = taskId(pieceId, 'meat-on');
  const outId = taskId(pieceId, 'out-of-fridge');
  const on = tasks.findIndex((task) => task.id === onId);
  tasks[on] = {
    ...tasks[on]!,
    after: tasks[on]!.after.map((lag) => (lag.id === outId ? { ...lag, ...OUT_LAG_S } : lag)),
  };
  const rubId = taskId(family, 'rub');
  if (tasks.some((task) => task.id === rubId)) {
    const rule = RUB_LAG_S[family]!;
    addLag(tasks, onId, { id: rubId, minLagS: rule.min, maxLagS: rule.max });
    addLag(tasks, outId, { id: rubId, minLagS: 0 });
  }
  // What is not rubbed after its brine goes from it to the pit.
  else
    for (const brine of tasks.filter(({ kind, pieceIds }) => kind === 'brine' && pieceIds.includes(pieceId)))
      addLag(tasks, outId, { id: brine.id, ...BRINE_LAG_S });
  const buyId = taskId('shop', 'buy');
  addLag(tasks, outId, { id: buyId, minLagS: 0 });
}

/** The oven is lit before the first piece goes into it, to finish or to be kept warm. */
function ovenTasks(tasks: DraftTask[], keptWarm: ReadonlySet<string>): DraftTask[] {
  const first = tasks
    .filter(
      (task) => task.kind === 'to-oven' || (task.kind === 'take-off' && keptWarm.has(task.pieceIds[0]!)),
    )
    .sort((a, b) => (a.wishS ?? 0) - (b.wishS ?? 0))[0];
  if (!first) return [];
  const light = draft({
    kind: 'light-oven',
    at: 'kitchen',
    subject: 'oven',
    duration: fixedDuration('light-oven'),
  });
  addLag(tasks, first.id, { id: light.id, minLagS: 10 * MINUTE_S, maxLagS: 40 * MINUTE_S });
  return [light];
}
