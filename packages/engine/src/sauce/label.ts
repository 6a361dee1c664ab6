/**
 * A person's own ingredient from its label: per 100 g or per serving, each figure with the span that rounding leaves.
 * What the label does not say is unknown, never zero.
 */
import type { Body, IngredientLabel, Quantity, Said } from '@pitwright/model';
import type { Ingredient } from '../food/data/ingredients.ts';
import { SALT_PER_SODIUM } from './batch.ts';

const LABEL_FIELDS = [
  'fatG',
  'carbohydrateG',
  'sugarsG',
  'fibreG',
  'proteinG',
  'sodiumMg',
  'energyKcal',
] as const;
export type LabelField = (typeof LABEL_FIELDS)[number];

/** The ingredients of one's own that a cook or a recipe carries. */
export type Labels = readonly IngredientLabel[];

/** Potency of the pulp by what a thing is like: water, ketchup, tomato paste, a dry ground spice. */
const PULP_OF_BODY: Readonly<Record<Body, number>> = { liquid: 0, sauce: 1, paste: 3.4, powder: 6 };

const gramsOf = (q: Quantity<'mass'>): number => q.si * 1000;

/** The printed figures, as many as the label tells. */
function figuresOf(label: IngredientLabel): Partial<Record<LabelField, number>> {
  const told = (field: LabelField, value: number | undefined) =>
    value === undefined ? {} : { [field]: value };
  const g = (q: Quantity<'mass'> | undefined) => (q === undefined ? undefined : gramsOf(q));
  return {
    ...told('fatG', g(label.fat)),
    ...told('carbohydrateG', g(label.carbohydrate)),
    ...told('sugarsG', g(label.sugars)),
    ...told('fibreG', g(label.fibre)),
    ...told('proteinG', g(label.protein)),
    ...told('sodiumMg', label.sodium && gramsOf(label.sodium) * 1000),
    ...told('energyKcal', label.kcal),
  };
}

export interface Span {
  readonly low: number;
  readonly high: number;
}

/** What a label may leave unsaid. */
export type LabelUnknown = LabelField | 'ph' | 'density' | 'sugar-split' | 'acids' | 'body' | 'allergens';

export interface OwnIngredient {
  readonly ingredient: Ingredient;
  /** Per 100 g, after rounding. */
  readonly spans: Readonly<Partial<Record<LabelField, Span>>>;
  readonly unknown: readonly LabelUnknown[];
}

export type LabelAnswer =
  | ({ readonly ok: true } & OwnIngredient)
  | { readonly ok: false; readonly problems: readonly Said[] };

/** Step that a figure is rounded to. @source 21 CFR 101.9(c) for US; EU guidance on tolerances (2012); from memory */
function roundingStep(law: IngredientLabel['law'], field: LabelField, value: number): number {
  if (law === 'us') {
    if (field === 'energyKcal') return value <= 50 ? 5 : 10;
    if (field === 'sodiumMg') return value <= 140 ? 5 : 10;
    if (field === 'fatG') return value < 5 ? 0.5 : 1;
    return 1;
  }
  if (field === 'energyKcal') return 1;
  if (field === 'sodiumMg') return value >= 400 ? 40 : 4;
  return value >= 10 ? 1 : 0.1;
}

/** Values that may be printed as nothing. */
const PRINTED_AS_ZERO: Readonly<Record<IngredientLabel['law'], Readonly<Record<LabelField, number>>>> = {
  us: { fatG: 0.5, carbohydrateG: 0.5, sugarsG: 0.5, fibreG: 0.5, proteinG: 0.5, sodiumMg: 5, energyKcal: 5 },
  eu: {
    fatG: 0.5,
    carbohydrateG: 0.5,
    sugarsG: 0.5,
    fibreG: 0.5,
    proteinG: 0.5,
    sodiumMg: 5,
    energyKcal: 0.5,
  },
};

/** What the printed figure may have been, per what it was printed for. */
export function labelSpan(law: IngredientLabel['law'], field: LabelField, printed: number): Span {
  if (printed === 0) return { low: 0, high: PRINTED_AS_ZERO[law][field] };
  const half = roundingStep(law, field, printed) / 2;
  return { low: Math.max(0, printed - half), high: printed + half };
}

function problemsOf(label: IngredientLabel): Said[] {
  const problems: Said[] = [];
  const { name } = label;
  const figures = figuresOf(label);
  const perG = gramsOf(label.per);
  if (!(perG > 0)) problems.push({ id: 'sauce.label-no-serving', params: { name } });
  const values = [...Object.values(figures), label.salt?.si, label.alcohol?.si].filter(
    (v) => v !== undefined,
  );
  if (values.some((value) => !(value >= 0))) problems.push({ id: 'sauce.label-negative', params: { name } });
  for (const field of ['fatG', 'carbohydrateG', 'proteinG'] as const)
    if (figures[field] === undefined)
      problems.push({ id: 'sauce.label-too-little', params: { name, field } });
  if (figures.sodiumMg === undefined && label.salt === undefined)
    problems.push({ id: 'sauce.label-too-little', params: { name, field: 'sodiumMg' } });
  if ((figures.sugarsG ?? 0) > (figures.carbohydrateG ?? Infinity) + 1)
    problems.push({ id: 'sauce.label-sugars-over', params: { name } });
  const sum = (figures.fatG ?? 0) + (figures.carbohydrateG ?? 0) + (figures.proteinG ?? 0);
  if (sum > perG * 1.03) problems.push({ id: 'sauce.label-over-whole', params: { name } });
  return problems;
}

/** The ingredient that a label describes; water is what its figures leave of 100 g. */
export function ingredientFromLabel(label: IngredientLabel): LabelAnswer {
  const problems = problemsOf(label);
  if (problems.length > 0) return { ok: false, problems };
  const figures = figuresOf(label);
  const to100 = 100 / gramsOf(label.per);
  const sodiumMg = figures.sodiumMg ?? ((label.salt?.si ?? 0) * 1e6) / SALT_PER_SODIUM;
  const printed: Partial<Record<LabelField, number>> = { ...figures, sodiumMg };
  const spans = Object.fromEntries(
    LABEL_FIELDS.filter((field) => printed[field] !== undefined).map((field) => {
      const { low, high } = labelSpan(label.law, field, printed[field]!);
      return [field, { low: low * to100, high: high * to100 }];
    }),
  );
  const per100 = (field: LabelField): number | undefined =>
    printed[field] === undefined ? undefined : printed[field]! * to100;
  const fibreG = per100('fibreG');
  // EU carbohydrate leaves the fibre out, US carbohydrate holds it.
  const carbohydrateG = per100('carbohydrateG')! + (label.law === 'eu' ? (fibreG ?? 0) : 0);
  const ashG = (SALT_PER_SODIUM * sodiumMg * to100) / 1000;
  const alcoholG = (label.alcohol ? gramsOf(label.alcohol) : 0) * to100;
  const densityGPerMl = label.perVolume && label.per.si / (label.perVolume.si * 1000);
  const waterG = Math.max(0, 100 - carbohydrateG - per100('fatG')! - per100('proteinG')! - ashG - alcoholG);
  const sugarsG = per100('sugarsG');
  const split =
    sugarsG === undefined
      ? {}
      : label.sugarKind === 'sucrose'
        ? { sucroseG: sugarsG, glucoseG: 0, fructoseG: 0 }
        : { sucroseG: 0, glucoseG: sugarsG / 2, fructoseG: sugarsG / 2 };
  const missing = LABEL_FIELDS.filter((field) => printed[field] === undefined);
  return {
    ok: true,
    ingredient: {
      id: label.ingredient,
      name: label.name,
      category: 'own',
      densityGPerMl: densityGPerMl ?? Number.NaN,
      densityNote: '',
      per100g: {
        waterG,
        proteinG: per100('proteinG')!,
        fatG: per100('fatG')!,
        carbohydrateG,
        ...(sugarsG !== undefined && { sugarsG }),
        ...split,
        fibreG: fibreG ?? 0,
        ashG,
        sodiumMg: sodiumMg * to100,
        alcoholG,
        acidsG: {},
        energyKcal:
          per100('energyKcal') ??
          4 * carbohydrateG + 9 * per100('fatG')! + 4 * per100('proteinG')! + 7 * alcoholG,
      },
      ...(label.ph !== undefined && { ph: label.ph }),
      ...(label.body && { pulp: PULP_OF_BODY[label.body] }),
      allergensUs: label.allergens ?? [],
      allergensEu: label.allergens ?? [],
      ...(label.allergens === undefined && { allergensUnknown: true as const }),
      source: 'label',
      evidence: { composition: 'verified', split: 'estimated', density: 'none', ph: 'none', acid: 'none' },
      remarks: [],
    },
    spans,
    unknown: [
      ...missing,
      ...(label.ph === undefined ? (['ph', 'acids'] as const) : (['acids'] as const)),
      ...(densityGPerMl === undefined ? (['density'] as const) : []),
      ...(sugarsG !== undefined && label.sugarKind === undefined ? (['sugar-split'] as const) : []),
      ...(label.body === undefined ? (['body'] as const) : []),
      ...(label.allergens === undefined ? (['allergens'] as const) : []),
    ],
  };
}

/** The ingredients that labels describe; a label that does not work out brings none. */
export const ownIngredients = (labels: Labels = []): readonly Ingredient[] =>
  labels.flatMap((label) => {
    const own = ingredientFromLabel(label);
    return own.ok ? [own.ingredient] : [];
  });
