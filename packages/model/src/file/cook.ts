import { Temporal } from 'temporal-polyfill';
import { isMap, type Node } from 'yaml';
import {
  type Cook,
  type Guests,
  type Hand,
  type Kitchen,
  type Pit,
  type Place,
  RULES,
  type Table,
  type Weather,
} from '../nouns.ts';
import type { Quantity } from '../units/quantity.ts';
import {
  byDefault,
  derived,
  type Field,
  type Form,
  type Locate,
  list,
  mapped,
  optional,
  record,
  required,
} from './form.ts';
import { formula } from './formula.ts';
import { checkLabels, label } from './label.ts';
import { localTime, zoneForm } from './local-time.ts';
import { piece } from './piece.ts';
import { pitFields } from './pit.ts';
import type { Reader } from './reader.ts';
import { checkReferences, toIds, toLetters } from './references.ts';
import { slug } from './slug.ts';
import { clock, id, measure, name, note, number, percent, scalar, word, yesNo } from './values.ts';

/** Heads of every file: what it is, the version of its form, and whether its data are invented. */
export interface Head<K extends string> {
  readonly kind: K;
  readonly form: 1;
}
const version: Form<1> = scalar(
  (text, node, reader) => (text === '1' ? 1 : reader.report(node, 'file.version', { text })),
  (one) => one,
  { const: 1 },
);

export const headFields = <K extends string, T>(kind: K) => ({
  kind: required<K, T>('kind', word([kind])),
  form: required<1, T>('version', version),
});
export const demoField = <T>(): Field<boolean, T> => derived('demo', yesNo, () => false);

const HALF_AN_HOUR: Quantity<'time'> = { kind: 'time', si: 1800, writtenIn: 'min' };

const table: Form<Table> = mapped(
  record<{ at: string; lasts: Quantity<'time'> }>({
    at: required('at', localTime),
    lasts: byDefault('window', measure('time', { min: 0, max: 12, unit: 'h' }), HALF_AN_HOUR),
  }),
  ({ at, lasts }, node, reader) => {
    if (at === undefined || lasts === undefined) return undefined;
    const seconds = Math.round(lasts.si);
    // Fractions of an hour come out a hair beside their second.
    if (!(Math.abs(seconds - lasts.si) < 1e-6)) return reader.report(node, 'file.window-seconds');
    const until = Temporal.Instant.from(at).add({ seconds }).toString();
    return { at, until, windowWrittenIn: lasts.writtenIn ?? 'min' };
  },
  ({ at, until, windowWrittenIn = 'min' }): { at: string; lasts: Quantity<'time'> } => {
    const si = Temporal.Instant.from(at).until(Temporal.Instant.from(until)).total('seconds');
    return { at, lasts: { kind: 'time', si, writtenIn: windowWrittenIn } };
  },
);

const place: Form<Place> = record<Place>({
  latitude: optional('latitude', number(-90, 90)),
  longitude: optional('longitude', number(-180, 180)),
  altitude: optional('altitude', measure('length', { min: -500, max: 5000, unit: 'm' })),
});

const guests: Form<Guests> = record<Guests>(
  {
    adults: required('adults', number(0, 5000, { whole: true })),
    children: byDefault('children', number(0, 5000, { whole: true }), 0),
    appetite: optional('appetite', word(['small', 'ordinary', 'big'])),
    otherDishes: optional('other-dishes', number(0, 50, { whole: true })),
    atRisk: optional('at-risk', yesNo),
    allergies: optional('allergies', list(name)),
  },
  {
    check: ({ adults, children }, locate, reader) => {
      if (adults === 0 && children === 0) reader.report(locate('adults'), 'file.no-guests');
    },
  },
);

const hand: Form<Hand> = record<Hand>({
  name: required('name', name),
  id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'hand'))),
  sleeps: optional('sleeps', record({ from: required('from', clock), to: required('to', clock) })),
  away: optional(
    'away',
    list(
      record<{ from: string; to: string }>(
        { from: required('from', localTime), to: required('to', localTime) },
        {
          check: ({ from, to }, locate, reader) => {
            if (from !== undefined && to !== undefined && !(from < to))
              reader.report(locate('to'), 'file.away-ends');
          },
        },
      ),
    ),
  ),
});

const kitchen: Form<Kitchen> = record<Kitchen>({
  burners: byDefault('burners', number(0, 20, { whole: true }), 1),
  ovens: byDefault('ovens', number(0, 20, { whole: true }), 0),
  fridgeShelves: optional('fridge-shelves', number(0, 50, { whole: true })),
  ovenTemperature: optional('oven-temperature', measure('temperature', { min: 40, max: 300, unit: '°C' })),
});

const weather: Form<Weather> = record<Weather>({
  air: optional('air', measure('temperature', { min: -50, max: 60, unit: '°C' })),
  relativeHumidity: optional('humidity', percent(0, 100)),
  wind: optional('wind', measure('speed', { min: 0, max: 60, unit: 'm/s' })),
  words: optional('words', name),
});

type WrittenCook = Head<'cook'> &
  Omit<Cook, 'rules' | 'rulesTold' | 'pinned'> & { readonly rules?: Cook['rules'] };

function checkCook(cook: Partial<WrittenCook>, locate: Locate, reader: Reader): void {
  checkReferences(cook, locate('pieces'), locate('formulas'), reader);
  checkLabels(cook.labels ?? [], locate('labels'), reader);
  const ids = new Set<string>();
  for (const each of cook.hands ?? []) {
    if (each.id !== undefined && ids.has(each.id))
      reader.report(locate('hands'), 'file.name-twice', { text: each.name });
    ids.add(each.id);
  }
  const pieces = locate('pieces') as Node & { items?: Node[] };
  for (const item of pieces.items ?? []) {
    const on = isMap(item) ? item.get('on', true) : undefined;
    const letter = isMap(item) ? item.get('letter') : undefined;
    const onAt = cook.pieces?.find((own) => own.letter === letter)?.onAt;
    if (on && onAt !== undefined && cook.table && !(onAt < cook.table.at))
      reader.report(on as Node, 'file.on-after-table', { letter: String(letter) });
  }
}

const writtenCook = record<WrittenCook>(
  {
    ...headFields<'cook', WrittenCook>('cook'),
    name: required('name', name),
    id: derived('id', id, ({ name: own }) => (own === undefined ? undefined : slug(own, 'cook'))),
    isDemo: demoField(),
    recipe: optional(
      'recipe',
      record<NonNullable<Cook['recipe']>>({
        id: required('id', id),
        version: required('version', number(1, 1e6, { whole: true })),
      }),
    ),
    rules: optional('rules', word(RULES)),
    note: optional('note', note),
    zone: required('zone', zoneForm),
    chanceAsked: byDefault('chance', percent(50, 99), 0.9),
    table: required('table', table),
    guests: required('guests', guests),
    place: optional('place', place),
    weather: optional('weather', weather),
    hands: byDefault('hands', list(hand), [{ id: 'you', name: 'You' }]),
    kitchen: byDefault('kitchen', kitchen, { burners: 1, ovens: 0 }),
    pit: required('pit', record<Pit>(pitFields)),
    pieces: required('pieces', list(piece)),
    labels: optional('labels', list(label)),
    formulas: derived('formulas', list(formula, { min: 0 }), () => []),
  },
  { check: checkCook },
);

/** One occasion, whole: with its pieces, its formulas and a copy of its pit. */
export const cookForm: Form<Cook> = mapped(
  writtenCook,
  ({ kind: _kind, form: _form, rules, ...rest }, _node, reader) =>
    reader.problems.length > 0
      ? undefined
      : toIds({ ...rest, rules: rules ?? 'home-us', rulesTold: rules !== undefined }),
  (cook: Cook): WrittenCook => {
    const { rules, rulesTold, pinned: _, ...rest } = toLetters(cook);
    return { kind: 'cook', form: 1, ...rest, ...(rulesTold ? { rules } : {}) };
  },
);
