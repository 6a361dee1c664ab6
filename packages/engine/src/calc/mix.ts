import { parseQuantity } from '@pitwright/model';
import { gramsOfVolume, ingredientOf } from '../food/catalogueInput.ts';
import { itemsIn } from './given.ts';
import { refuse } from './problem.ts';
import type { MixLine } from './spec.ts';

/**
 * A mix written as `ketchup 480 g | vinegar_cider_5 0.5 cup`: keys of the catalogue with a mass, or a volume turned
 * into mass by that row's density. A key may stand twice; amounts add. @throws CalcProblem naming the input
 */
export function mixIn(input: string, text: string): readonly MixLine[] {
  const grams = new Map<string, number>();
  for (const item of itemsIn(input, text)) {
    const blank = item.search(/\s/);
    if (blank < 0) refuse('calc.no-amount', { input, text: item });
    const id = item.slice(0, blank);
    const written = item.slice(blank).trim();
    ingredientOf(input, id);
    const mass = parseQuantity(written, 'mass');
    const volume = mass.ok ? undefined : parseQuantity(written, 'volume');
    let massG: number;
    if (mass.ok) massG = mass.quantity.si * 1000;
    else if (volume?.ok) massG = gramsOfVolume(input, id, volume.quantity.si);
    else return refuse('calc.no-amount', { input, text: item });
    grams.set(id, (grams.get(id) ?? 0) + massG);
  }
  return [...grams].map(([ingredient, massG]) => ({ ingredient, massG }));
}
