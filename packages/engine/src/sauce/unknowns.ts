/** What nobody knows of a formula: said beside the figures, never counted as zero. */
import type { BatchLine } from './batch.ts';

export type Aspect = 'ph' | 'sugars' | 'sugar-split' | 'water' | 'allergens' | 'body';

export interface Unknown {
  readonly ingredientId: string;
  readonly name: string;
  readonly aspect: Aspect;
  /** Share of the raw mass [1]. */
  readonly share: number;
}

const totalG = (lines: readonly BatchLine[]): number => lines.reduce((sum, line) => sum + line.massG, 0);

/** Fats have no pH and need none. */
const needsPh = (line: BatchLine): boolean =>
  line.ingredient.category !== 'fat' && line.ingredient.per100g.fatG < 80;

/** Share of the raw mass whose pH nobody knows. */
export const unknownPhShare = (lines: readonly BatchLine[]): number =>
  lines
    .filter((line) => line.ingredient.ph === undefined && needsPh(line))
    .reduce((sum, line) => sum + line.massG, 0) / totalG(lines);

/** Every figure that a line's row or label leaves out, in the order of the lines. */
export function unknownsOf(lines: readonly BatchLine[]): readonly Unknown[] {
  const total = totalG(lines);
  return lines.flatMap((line) => {
    const { ingredient, massG } = line;
    const c = ingredient.per100g;
    const aspects: Aspect[] = [];
    if (ingredient.ph === undefined && needsPh(line)) aspects.push('ph');
    if (c.sugarsG === undefined) aspects.push('sugars');
    else if (
      c.sugarsG > 1 &&
      c.sucroseG === undefined &&
      c.glucoseG === undefined &&
      c.fructoseG === undefined
    )
      aspects.push('sugar-split');
    if (ingredient.category === 'own' && ingredient.pulp === undefined) aspects.push('body');
    if (ingredient.allergensUnknown) aspects.push('allergens');
    return aspects.map((aspect) => ({
      ingredientId: ingredient.id,
      name: ingredient.name,
      aspect,
      share: massG / total,
    }));
  });
}
