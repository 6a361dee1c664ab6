/** The softening dose that cells gather in a step: the mean of the rates at its begin and at its end. */
import type { PieceBody } from './body.ts';
import { COLUMN, COLUMNS, TABLE_LAST_ROW, TABLE_LOWEST_C, TABLE_STEP_K } from './tables.ts';

function doseRate(table: Float64Array, temperatureC: number): number {
  const place = Math.min(Math.max((temperatureC - TABLE_LOWEST_C) / TABLE_STEP_K, 0), TABLE_LAST_ROW);
  const row = place | 0;
  const at = row * COLUMNS + COLUMN.doseRate;
  return table[at]! + (place - row) * (table[at + COLUMNS]! - table[at]!);
}

/**
 * @param begunC temperatures at the begin; the state holds those of the end
 * @param lastDosed outermost cell whose dose is kept
 */
export function gatherDose(
  body: PieceBody,
  state: Float64Array,
  begunC: Float64Array,
  stepS: number,
  lastDosed: number,
): void {
  const { table, temperatureAt, doseAt } = body;
  for (let i = 0; i <= lastDosed; i++)
    state[doseAt + i] =
      state[doseAt + i]! +
      0.5 * stepS * (doseRate(table, begunC[i]!) + doseRate(table, state[temperatureAt + i]!));
}
