import type { CookForecast } from '@pitwright/engine';
import type { Cook } from '@pitwright/model';
import { METRIC, say } from '@pitwright/words';
import { ForecastPool } from '../workers/forecast-pool.ts';

/** Work longer than this says how far it has come, and again after each such while [ms]. */
const QUIET_MS = 1000;

/** The forecast of a cook over the workers of this machine; long work shows its progress. */
export async function forecastWithProgress(
  cook: Cook,
  { members, seed }: { readonly members: number; readonly seed: number },
  tell: (line: string) => void,
): Promise<CookForecast> {
  const pool = new ForecastPool();
  let toldAt = Date.now();
  try {
    return await pool.forecast(cook, {
      members,
      seed,
      onProgress: (doneShare) => {
        if (doneShare >= 1 || Date.now() - toldAt < QUIET_MS) return;
        toldAt = Date.now();
        const done = Math.round(doneShare * members);
        tell(say({ id: 'plan.progress', params: { done, of: members } }, METRIC));
      },
    });
  } finally {
    await pool.close();
  }
}
