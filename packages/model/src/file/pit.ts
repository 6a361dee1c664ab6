import { PIT_LIMITS } from '../limits.ts';
import { PIT_TYPES, type Pit } from '../nouns.ts';
import { byDefault, derived, type Fields, optional, required } from './form.ts';
import { slug } from './slug.ts';
import { id, measure, name, note, word, yesNo } from './values.ts';

const endDifference = measure('difference', PIT_LIMITS.end);

export const pitFields: Fields<Pit> = {
  name: required('name', name),
  id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'pit'))),
  type: required('type', word(PIT_TYPES)),
  fuel: optional('fuel', name),
  steel: optional('steel', measure('length', PIT_LIMITS.steel)),
  waterPan: optional('water-pan', yesNo),
  temperature: required('temperature', measure('temperature', PIT_LIMITS.temperature)),
  gauge: byDefault('gauge', word(['grate', 'lid', 'set-point']), 'grate'),
  driftPerHour: optional('drift-per-hour', measure('difference', PIT_LIMITS.driftPerHour)),
  hotEnd: optional('hot-end', endDifference),
  coolEnd: optional('cool-end', endDifference),
  grateArea: optional('grate-area', measure('area', PIT_LIMITS.grateArea)),
  note: optional('note', note),
};
