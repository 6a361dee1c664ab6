import type { Cook } from '@pitwright/model';
import { formulaLines } from '../sauce/formulaLines.ts';

/** Sugars of the rubs that are for a piece, of their mass [1]; 0 without a rub or where a line is not known. */
export function rubSugarShare(cook: Cook, pieceId: string): number {
  let massG = 0;
  let sugarG = 0;
  for (const formula of cook.formulas) {
    if (formula.kind !== 'rub' || (formula.for && !formula.for.includes(pieceId))) continue;
    const resolved = formulaLines(formula, cook.labels);
    if (!resolved.ok) continue;
    for (const line of resolved.lines) {
      massG += line.massG;
      sugarG += (line.massG * (line.ingredient.per100g.sugarsG ?? 0)) / 100;
    }
  }
  return massG > 0 ? sugarG / massG : 0;
}
