import {
  assembleForecast,
  type CookForecast,
  ensembleRunner,
  type ForecastPart,
  forecastMembers,
} from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { METRIC, say } from '@pitwright/words';
import { ForecastPool } from '../workers/forecast-pool.ts';

/** Work longer than this says how far it has come, and again after each such while [ms]. */
const QUIET_MS = 1000;
/** Items times members that are done sooner on this thread than workers have started: the demo has 2,800. */
const WORTH_WORKERS = 6000;
const PART_MEMBERS = 20;

interface Asked {
  readonly members: number;
  readonly seed: number;
}

/**
 * The forecast of a cook, on this thread or, where it is long, over the workers of this machine; long work shows its
 * progress. A member is the same on either.
 */
export async function forecastWithProgress(
  cook: Cook,
  asked: Asked,
  tell: (line: string) => void,
): Promise<CookForecast> {
  let toldAt = Date.now();
  const onProgress = (doneShare: number): void => {
    if (doneShare >= 1 || Date.now() - toldAt < QUIET_MS) return;
    toldAt = Date.now();
    const done = Math.round(doneShare * asked.members);
    tell(say({ id: 'plan.progress', params: { done, of: asked.members } }, METRIC));
  };
  const items = cook.pieces.reduce((sum, piece) => sum + piece.count, 0);
  if (items * asked.members < WORTH_WORKERS) return onThisThread(cook, asked, onProgress);
  const pool = new ForecastPool();
  try {
    return await pool.forecast(cook, { ...asked, onProgress });
  } finally {
    await pool.close();
  }
}

function onThisThread(
  cook: Cook,
  { members, seed }: Asked,
  onProgress: (doneShare: number) => void,
): CookForecast {
  const runner = ensembleRunner();
  const parts: ForecastPart[] = [];
  for (let from = 0; from < members; from += PART_MEMBERS) {
    const to = Math.min(members, from + PART_MEMBERS);
    const job = { jobId: `part-${from}`, seed, membersFrom: from, membersTo: to, cook };
    parts.push(forecastMembers(job, runner));
    onProgress(to / members);
  }
  return assembleForecast(cook, seed, parts);
}
