import { refuse } from '../calc/problem.ts';
import { ingredientById } from './data/ingredients.ts';

/** The catalogue row of this key. @throws CalcProblem: an unknown ingredient is never guessed */
export function ingredientOf(input: string, id: string) {
  return ingredientById(id) ?? refuse('calc.unknown-ingredient', { input, text: id });
}

/** Grams of this catalogue row in a volume. @throws CalcProblem where its density is not known */
export function gramsOfVolume(input: string, id: string, volumeM3: number): number {
  const density = ingredientOf(input, id).densityGPerMl;
  if (!(density > 0)) refuse('calc.no-density', { input, text: id });
  return volumeM3 * 1e6 * density;
}
