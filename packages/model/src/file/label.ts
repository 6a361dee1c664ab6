import type { Node } from 'yaml';
import { isSeq } from 'yaml';
import { BODIES, type IngredientLabel } from '../nouns.ts';
import { derived, type Form, list, optional, record, required } from './form.ts';
import type { Reader } from './reader.ts';
import { slug } from './slug.ts';
import { ingredient, measure, name, number, word } from './values.ts';

/** Key of an ingredient of one's own, from its name: no key of the catalogue begins so. */
export const ownKey = (ownName: string): string => `own_${slug(ownName, 'ingredient').replaceAll('-', '_')}`;

const part = measure('mass', { min: 0, max: 2000, unit: 'g' });

/** An ingredient of one's own by its label. Whether its figures agree is asked by the engine, with their rounding. */
export const label: Form<IngredientLabel> = record<IngredientLabel>({
  name: required('name', name),
  ingredient: derived('ingredient', ingredient, ({ name: own }) =>
    own === undefined ? undefined : ownKey(own),
  ),
  law: required('law', word(['us', 'eu'])),
  per: required('per', measure('mass', { min: 0.1, max: 2000, unit: 'g' })),
  perVolume: optional('per-volume', measure('volume', { min: 0.1, max: 2000, unit: 'mL' })),
  kcal: optional('kcal', number(0, 20_000)),
  fat: optional('fat', part),
  carbohydrate: optional('carbohydrate', part),
  sugars: optional('sugars', part),
  fibre: optional('fibre', part),
  protein: optional('protein', part),
  sodium: optional('sodium', part),
  salt: optional('salt', part),
  alcohol: optional('alcohol', part),
  ph: optional('ph', number(0, 14)),
  sugarKind: optional('sugar-kind', word(['sucrose', 'inverted'])),
  body: optional('body', word(BODIES)),
  allergens: optional('allergens', list(name, { min: 0 })),
});

/** Each key stands once. */
export function checkLabels(labels: readonly Partial<IngredientLabel>[], list: Node, reader: Reader): void {
  const seen = new Set<string>();
  for (const [index, { ingredient: key, name: own = '' }] of labels.entries()) {
    const node = isSeq(list) ? (list.items[index] as Node | undefined) : undefined;
    if (key !== undefined && seen.has(key)) reader.report(node ?? list, 'file.name-twice', { text: own });
    if (key !== undefined) seen.add(key);
  }
}
