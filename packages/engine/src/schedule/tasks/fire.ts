import type { Pit, PitType } from '@pitwright/model';
import { HOUR_S, MINUTE_S } from '../clock.ts';
import type { TaskLag } from '../types.ts';
import { type DraftTask, draft, taskId } from './draft.ts';
import { fixedDuration, minutes } from './durations.ts';

interface FireRule {
  /** Match to meat, from the end of lighting [s]. */
  readonly settleS: readonly [number, number];
  readonly hasCoalBed: boolean;
  /** Longest somebody may be out of reach; missing: it may be left. */
  readonly reachS?: number;
}

/**
 * @source common practice, no source: light 45–75 min before the meat, a coal bed of 20–30 min, a stick burner looked
 *   after every 40 min; charcoal pits hold longer, gas and electric mind themselves.
 */
const RULES: Readonly<Record<PitType, FireRule>> = {
  offset: { settleS: [35 * MINUTE_S, 60 * MINUTE_S], hasCoalBed: true, reachS: 40 * MINUTE_S },
  kettle: { settleS: [25 * MINUTE_S, 50 * MINUTE_S], hasCoalBed: false, reachS: 60 * MINUTE_S },
  drum: { settleS: [30 * MINUTE_S, 60 * MINUTE_S], hasCoalBed: false, reachS: 2 * HOUR_S },
  bullet: { settleS: [30 * MINUTE_S, 60 * MINUTE_S], hasCoalBed: false, reachS: 4 * HOUR_S },
  ceramic: { settleS: [35 * MINUTE_S, 75 * MINUTE_S], hasCoalBed: false, reachS: 6 * HOUR_S },
  pellet: { settleS: [10 * MINUTE_S, 45 * MINUTE_S], hasCoalBed: false, reachS: 8 * HOUR_S },
  cabinet: { settleS: [30 * MINUTE_S, 75 * MINUTE_S], hasCoalBed: false, reachS: 4 * HOUR_S },
  gas: { settleS: [10 * MINUTE_S, 30 * MINUTE_S], hasCoalBed: false },
  electric: { settleS: [15 * MINUTE_S, 40 * MINUTE_S], hasCoalBed: false },
  oven: { settleS: [10 * MINUTE_S, 40 * MINUTE_S], hasCoalBed: false },
  unknown: { settleS: [30 * MINUTE_S, 60 * MINUTE_S], hasCoalBed: false, reachS: 40 * MINUTE_S },
};

export const fireRuleOf = (pit: Pit): FireRule => RULES[pit.type];

export const lightId = taskId('fire', 'light-fire');

/** Fire lit, and the coal bed spread where a pit needs one; the lags lead to the first piece on. */
export function fireTasks(pit: Pit): { tasks: DraftTask[]; beforeMeat: TaskLag[] } {
  const rule = fireRuleOf(pit);
  const isWood = rule.reachS !== undefined;
  const light = draft({
    kind: 'light-fire',
    at: 'pit',
    subject: 'fire',
    duration: isWood ? fixedDuration('light-fire') : minutes(1, 2, 4),
    sign: { id: 'sign.pit-steady' },
  });
  const beforeMeat: TaskLag[] = [{ id: light.id, minLagS: rule.settleS[0], maxLagS: rule.settleS[1] }];
  if (!rule.hasCoalBed) return { tasks: [light], beforeMeat };
  const coal = draft({
    kind: 'coal-bed',
    at: 'pit',
    subject: 'fire',
    duration: fixedDuration('coal-bed'),
    after: [{ id: light.id, minLagS: 15 * MINUTE_S, maxLagS: 35 * MINUTE_S }],
    sign: { id: 'sign.coal-bed' },
  });
  beforeMeat.push({ id: coal.id, minLagS: 15 * MINUTE_S, maxLagS: 35 * MINUTE_S });
  return { tasks: [light, coal], beforeMeat };
}
