import { ingredientFromLabel, type LabelUnknown, type Span } from '@pitwright/engine/sauce';
import {
  type Body,
  type Cook,
  type IngredientLabel,
  madeFormula,
  ownKey,
  printCookQuantity,
  type Quantity,
  readCookQuantity,
  type Said,
} from '@pitwright/model';

/** Fields of a label in the order in which labels print them; a bare number is in the unit that labels use. */
export const LABEL_PARTS = [
  ['fat', 'g'],
  ['carbohydrate', 'g'],
  ['sugars', 'g'],
  ['fibre', 'g'],
  ['protein', 'g'],
  ['sodium', 'mg'],
  ['salt', 'g'],
  ['alcohol', 'g'],
] as const;
export type LabelPart = (typeof LABEL_PARTS)[number][0];

/** Whether the allergens were read from the label. */
export type AllergensRead = 'no' | 'none' | 'some';

/** A label as it is being written down; what is empty is not told. */
export interface LabelDraft {
  readonly name: string;
  readonly law: 'us' | 'eu';
  readonly per: string;
  readonly perVolume: string;
  readonly kcal: string;
  readonly parts: Readonly<Record<LabelPart, string>>;
  readonly ph: string;
  readonly sugarKind: '' | 'sucrose' | 'inverted';
  readonly body: '' | Body;
  readonly allergensRead: AllergensRead;
  readonly allergens: string;
}

const NO_PARTS = Object.fromEntries(LABEL_PARTS.map(([part]) => [part, ''])) as Record<LabelPart, string>;

export const emptyDraft = (law: 'us' | 'eu'): LabelDraft => ({
  name: '',
  law,
  per: law === 'eu' ? '100 g' : '',
  perVolume: '',
  kcal: '',
  parts: NO_PARTS,
  ph: '',
  sugarKind: '',
  body: '',
  allergensRead: 'no',
  allergens: '',
});

const written = (q: Quantity | undefined): string => (q ? printCookQuantity(q) : '');

/** A label that is kept, to be written anew. */
export const draftOf = (label: IngredientLabel): LabelDraft => ({
  name: label.name,
  law: label.law,
  per: written(label.per),
  perVolume: written(label.perVolume),
  kcal: label.kcal === undefined ? '' : String(label.kcal),
  parts: Object.fromEntries(LABEL_PARTS.map(([part]) => [part, written(label[part])])) as Record<
    LabelPart,
    string
  >,
  ph: label.ph === undefined ? '' : String(label.ph),
  sugarKind: label.sugarKind ?? '',
  body: label.body ?? '',
  allergensRead: label.allergens === undefined ? 'no' : label.allergens.length === 0 ? 'none' : 'some',
  allergens: (label.allergens ?? []).join(', '),
});

export type LabelField = LabelPart | 'name' | 'per' | 'perVolume' | 'kcal' | 'ph' | 'allergens';

export type LabelReading =
  | {
      readonly ok: true;
      readonly label: IngredientLabel;
      readonly unknown: readonly LabelUnknown[];
      readonly spans: Readonly<Partial<Record<string, Span>>>;
      readonly waterG: number;
    }
  /** By field; what concerns the whole stands under the name. */
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<LabelField, Said>>> };

const BARE_NUMBER = /^\d+(?:[.,]\d+)?$/;
const MOST_KCAL = 20_000;

const numberOf = (text: string): number =>
  BARE_NUMBER.test(text.trim()) ? Number(text.trim().replace(',', '.')) : Number.NaN;

/**
 * A label as it was copied down, or what is wrong with it, field by field.
 *
 * @param taken  keys and names of the others, which it must not have
 * @param key  its own key where it is kept already
 */
export function readDraft(draft: LabelDraft, taken: readonly IngredientLabel[], key?: string): LabelReading {
  const problems: Partial<Record<LabelField, Said>> = {};
  const read = <K extends 'mass' | 'volume'>(field: LabelField, text: string, kind: K, unit?: string) => {
    if (text.trim() === '') return undefined;
    const reading = readCookQuantity(BARE_NUMBER.test(text.trim()) && unit ? `${text} ${unit}` : text, kind);
    if (reading.ok) return reading.quantity;
    problems[field] = reading.problem;
    return undefined;
  };
  const name = draft.name.trim();
  const others = taken.filter((one) => one.ingredient !== key);
  const ingredient = key ?? ownKey(name);
  if (name === '') problems.name = { id: 'bench.own.no-name' };
  else if (others.some((one) => one.name === name || one.ingredient === ingredient))
    problems.name = { id: 'bench.own.name-twice', params: { name } };
  const per = read('per', draft.per, 'mass', 'g');
  if (!per && !problems.per) problems.per = { id: 'sauce.label-no-serving', params: { name } };
  const perVolume = read('perVolume', draft.perVolume, 'volume');
  if (perVolume && !(perVolume.si > 0)) problems.perVolume = { id: 'bench.own.volume-nothing' };
  const parts = Object.fromEntries(
    LABEL_PARTS.flatMap(([part, unit]) => {
      const quantity = read(part, draft.parts[part], 'mass', unit);
      return quantity ? [[part, quantity]] : [];
    }),
  ) as Partial<Record<LabelPart, Quantity<'mass'>>>;
  const number = (field: 'kcal' | 'ph', most: number, example: string): number | undefined => {
    if (draft[field].trim() === '') return undefined;
    const value = numberOf(draft[field]);
    if (value <= most) return value;
    problems[field] = { id: 'bench.problem.write', params: { example } };
    return undefined;
  };
  const kcal = number('kcal', MOST_KCAL, '120');
  const ph = number('ph', 14, '3.8');
  const named = draft.allergens
    .split(/[,;]/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
  if (draft.allergensRead === 'some' && named.length === 0)
    problems.allergens = { id: 'bench.own.which-allergens' };
  if (Object.keys(problems).length > 0 || !per) return { ok: false, problems };
  const label: IngredientLabel = {
    name,
    ingredient,
    law: draft.law,
    per,
    ...(perVolume && { perVolume }),
    ...(kcal !== undefined && { kcal }),
    ...parts,
    ...(ph !== undefined && { ph }),
    ...(draft.sugarKind !== '' && { sugarKind: draft.sugarKind }),
    ...(draft.body !== '' && { body: draft.body }),
    ...(draft.allergensRead !== 'no' && { allergens: draft.allergensRead === 'some' ? named : [] }),
  };
  const own = ingredientFromLabel(label);
  if (own.ok)
    return { ok: true, label, unknown: own.unknown, spans: own.spans, waterG: own.ingredient.per100g.waterG };
  for (const problem of own.problems) problems[fieldOf(problem, draft.law)] ??= problem;
  return { ok: false, problems };
}

/** The field that a problem of the whole label is told at. */
function fieldOf({ id, params }: Said, law: 'us' | 'eu'): LabelField {
  if (id === 'sauce.label-no-serving') return 'per';
  if (id === 'sauce.label-sugars-over') return 'sugars';
  if (id === 'sauce.label-over-whole') return 'per';
  if (id !== 'sauce.label-too-little') return 'name';
  switch (params?.field) {
    case 'fatG':
      return 'fat';
    case 'carbohydrateG':
      return 'carbohydrate';
    case 'proteinG':
      return 'protein';
    default:
      return law === 'us' ? 'sodium' : 'salt';
  }
}

/** The cook with this label, in place of the one of its key. */
export function withLabel(cook: Cook, label: IngredientLabel): Cook {
  const labels = cook.labels ?? [];
  const at = labels.findIndex((one) => one.ingredient === label.ingredient);
  return { ...cook, labels: at === -1 ? [...labels, label] : labels.with(at, label) };
}

export function withoutLabel(cook: Cook, key: string): Cook {
  const { labels = [], ...rest } = cook;
  const left = labels.filter((one) => one.ingredient !== key);
  return left.length > 0 ? { ...rest, labels: left } : rest;
}

/** Names of the formulas that have it in a line, as written or in one of their variants. */
export const usesOf = (cook: Cook, key: string): readonly string[] =>
  cook.formulas
    .filter((formula) =>
      [formula, ...(formula.variants ?? []).map(({ id }) => madeFormula({ ...formula, variant: id }))].some(
        ({ lines }) => lines.some((line) => line.ingredient === key),
      ),
    )
    .map(({ name }) => name);
