import type { Formula, FormulaLine, FormulaVariant, Simmer, VariantChange } from '../nouns.ts';
import { derived, type Form, list, optional, record, required } from './form.ts';
import { slug } from './slug.ts';
import { amount, id, ingredient, letter, measure, name, note, number, word, yesNo } from './values.ts';
import { checkVariants } from './variants.ts';

const line: Form<FormulaLine> = record<FormulaLine>({
  ingredient: required('ingredient', ingredient),
  amount: required('amount', amount),
  late: optional('late', yesNo),
  locked: optional('locked', yesNo),
  note: optional('note', note),
});

const evaporated = measure('mass', { min: 0, max: 50, unit: 'kg' });

const simmer: Form<Simmer> = record<Simmer>({
  evaporated: optional('evaporated', evaporated),
  power: optional('power', measure('power', { min: 0.05, max: 30, unit: 'kW' })),
  source: optional('source', word(['gas', 'electric', 'induction'])),
  panDiameter: optional('pan-diameter', measure('length', { min: 5, max: 150, unit: 'cm' })),
  panHeight: optional('pan-height', measure('length', { min: 2, max: 150, unit: 'cm' })),
  panMass: optional('pan-mass', measure('mass', { min: 0.05, max: 50, unit: 'kg' })),
  lid: optional('lid', word(['open', 'ajar', 'tight'])),
});

const change: Form<VariantChange> = record<VariantChange>({
  line: optional('line', ingredient),
  which: optional('which', number(1, 50, { whole: true })),
  out: optional('out', yesNo),
  ingredient: optional('ingredient', ingredient),
  amount: optional('amount', amount),
  late: optional('late', yesNo),
});

const variant: Form<FormulaVariant> = record<FormulaVariant>({
  name: required('name', name),
  id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'variant'))),
  changes: derived('changes', list(change, { min: 0 }), () => []),
  evaporated: optional('evaporated', evaporated),
  note: optional('note', note),
});

/** A formula; `for` holds letters here, ids in memory (see references.ts). */
export const formula: Form<Formula> = record<Formula>(
  {
    name: required('name', name),
    id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'formula'))),
    kind: required('kind', word(['sauce', 'rub', 'brine', 'spritz'])),
    for: optional('for', list(letter)),
    lines: required('lines', list(line)),
    simmer: optional('simmer', simmer),
    variants: optional('variants', list(variant)),
    variant: optional('variant', id),
    note: optional('note', note),
  },
  { check: checkVariants },
);
