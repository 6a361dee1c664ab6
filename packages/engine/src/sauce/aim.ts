/** The other way round: what one wants of a sauce, and the least change of its lines and its simmer that gives it. */
import type { Ingredient } from '../food/data/ingredients.ts';
import { addBatches, batchMassG, potAndLate } from './batch.ts';
import { evaporate } from './evaporation.ts';
import { jndAt, TASTES, type Taste } from './jnd.ts';
import { BRUSHED_C, lookAt } from './look.ts';
import { type RebalanceAnswer, type RebalanceLine, rebalance, wantedFrom } from './rebalance.ts';
import { waterUntil } from './target.ts';

export type AimedTaste = Exclude<Taste, 'thick'>;

export interface Aim {
  /** Noticeable steps more than it has, or less below zero; missing: as it is. */
  readonly steps: Readonly<Partial<Record<AimedTaste, number>>>;
  /** Look when brushed on at 60 °C, as a level (2.5: the middle of what coats a spoon); missing: as it is. */
  readonly brushedLevel?: number;
}

export interface AimFrom {
  readonly lines: readonly RebalanceLine[];
  readonly waterOffG: number;
  readonly mayAdd?: readonly Ingredient[];
  /** From a plate test. */
  readonly thicknessFactor?: number;
}

/**
 * The thickness comes from boiling down: the finished mass is the one at which the lines as they are look so. The
 * tastes come from the lines, at that mass.
 */
export function aimAt(
  { lines, waterOffG, mayAdd = [], thicknessFactor = 1 }: AimFrom,
  aim: Aim,
): RebalanceAnswer {
  const { wanted, finishedG } = wantedFrom(lines, waterOffG);
  const aimed = Object.fromEntries(
    TASTES.map((taste) => [
      taste,
      Math.max(
        0,
        wanted[taste] + (taste === 'thick' ? 0 : (aim.steps[taste] ?? 0)) * jndAt(taste, wanted[taste]),
      ),
    ]),
  ) as Record<Taste, number>;
  const level = aim.brushedLevel;
  if (level === undefined) return rebalance({ wanted: aimed, finishedG, lines, mayAdd });
  const { pot, late } = potAndLate(lines);
  const levelAt = (offG: number): number =>
    lookAt(addBatches(evaporate(pot, offG), late), BRUSHED_C, thicknessFactor).level;
  if (levelAt(0) > level) return { ok: false, problems: [{ id: 'sauce.aim-too-thick-raw' }] };
  const offG = waterUntil(pot, (b) => lookAt(addBatches(b, late), BRUSHED_C, thicknessFactor).level >= level);
  if (offG === undefined) return { ok: false, problems: [{ id: 'sauce.aim-never-so-thick' }] };
  const thickG = batchMassG(evaporate(pot, offG)) + batchMassG(late);
  return rebalance({
    wanted: { ...aimed, thick: (wanted.thick * finishedG) / thickG },
    finishedG: thickG,
    lines,
    mayAdd,
  });
}
