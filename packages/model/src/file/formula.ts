import type { Formula, FormulaLine, Simmer } from '../nouns.ts';
import { derived, type Form, list, optional, record, required } from './form.ts';
import { slug } from './slug.ts';
import { amount, id, ingredient, letter, measure, name, note, word, yesNo } from './values.ts';

const line: Form<FormulaLine> = record<FormulaLine>({
  ingredient: required('ingredient', ingredient),
  amount: required('amount', amount),
  locked: optional('locked', yesNo),
  note: optional('note', note),
});

const simmer: Form<Simmer> = record<Simmer>({
  evaporated: optional('evaporated', measure('mass', { min: 0, max: 50, unit: 'kg' })),
  power: optional('power', measure('power', { min: 0.05, max: 30, unit: 'kW' })),
  source: optional('source', word(['gas', 'electric', 'induction'])),
  panDiameter: optional('pan-diameter', measure('length', { min: 5, max: 150, unit: 'cm' })),
  panHeight: optional('pan-height', measure('length', { min: 2, max: 150, unit: 'cm' })),
  panMass: optional('pan-mass', measure('mass', { min: 0.05, max: 50, unit: 'kg' })),
  lid: optional('lid', word(['open', 'ajar', 'tight'])),
});

/** A formula; `for` holds letters here, ids in memory (see references.ts). */
export const formula: Form<Formula> = record<Formula>({
  name: required('name', name),
  id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'formula'))),
  kind: required('kind', word(['sauce', 'rub', 'brine', 'spritz'])),
  for: optional('for', list(letter)),
  lines: required('lines', list(line)),
  simmer: optional('simmer', simmer),
  note: optional('note', note),
});
