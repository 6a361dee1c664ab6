import { ZERO_CELSIUS_K } from '../../numeric/constants.ts';
import { HOUR_S, MINUTE_S, wallClockS } from '../clock.ts';
import { type DraftTask, draft, type TaskScene, taskId } from './draft.ts';
import { fixedDuration } from './durations.ts';

/** Above this air temperature cooked food may stand out for one hour, else two. */
const HOT_AIR_K = ZERO_CELSIUS_K + 32;

/** Longest time from serving until leftovers are in the fridge [s]. @source USDA FSIS; 1 h above 32 °C (90 °F) */
const leftoversWithinS = (airK: number | undefined): number =>
  airK !== undefined && airK > HOT_AIR_K ? HOUR_S : 2 * HOUR_S;

/** The table and what follows it. */
export function afterTasks(scene: TaskScene, offIds: readonly string[], firstSliceId?: string): DraftTask[] {
  const serve = draft({
    kind: 'serve',
    at: 'table',
    subject: 'table',
    duration: fixedDuration('serve'),
    ...(firstSliceId && { after: [{ id: firstSliceId, minLagS: 0 }] }),
    earliestS: scene.tableS.atS,
    latestS: scene.tableS.untilS,
    wishS: scene.tableS.atS,
    lateWeight: 30,
  });
  const withinS = leftoversWithinS(scene.cook.weather?.air?.si);
  return [
    serve,
    draft({
      kind: 'chill-leftovers',
      at: 'kitchen',
      subject: 'kitchen',
      duration: fixedDuration('chill-leftovers'),
      after: [{ id: serve.id, minLagS: 30 * MINUTE_S, maxLagS: withinS - 30 * MINUTE_S }],
      wishS: scene.tableS.atS + 50 * MINUTE_S,
    }),
    draft({
      kind: 'clean',
      at: 'kitchen',
      subject: 'kitchen',
      duration: fixedDuration('clean'),
      // Boards wait for the leftovers: those have two hours, boards have the day.
      after: [{ id: taskId('kitchen', 'chill-leftovers'), minLagS: 0, maxLagS: 2 * HOUR_S }],
      wishS: scene.tableS.atS + 75 * MINUTE_S,
    }),
    // Ash keeps live coals for half a day: it waits for the next morning.
    draft({
      kind: 'ash-out',
      at: 'pit',
      subject: 'fire',
      duration: fixedDuration('ash-out'),
      after: offIds.map((id) => ({ id, minLagS: 12 * HOUR_S })),
      earliestS: wallClockS(scene.tableS.atS, 1, '07:00', scene.cook.zone),
      sign: { id: 'sign.ash-cold' },
    }),
  ];
}
