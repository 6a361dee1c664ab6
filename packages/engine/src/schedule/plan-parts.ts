import type { Cook, Said } from '@pitwright/model';
import type { CookForecast } from '../forecast/types.ts';
import type { Contender } from './on-time.ts';
import type { Found, Problem } from './problem.ts';
import type { Starts } from './starts.ts';
import type { DraftPlan, TaskScene } from './tasks/draft.ts';
import type { Alternative, Conflict, MovedTask } from './types.ts';

/** All that a plan is composed of, once its jobs are placed. */
export interface PlanParts {
  readonly cook: Cook;
  readonly forecast: CookForecast;
  readonly contenders: readonly Contender[];
  readonly scene: TaskScene;
  readonly drafted: DraftPlan;
  readonly problem: Problem;
  readonly placed: Found;
  readonly starts: Starts;
  readonly conflicts?: readonly Conflict[];
  readonly wouldReach?: readonly Alternative[];
  readonly alternatives?: readonly Alternative[];
  readonly moved?: readonly MovedTask[];
  readonly notices?: readonly Said[];
}
