import { type Cook, madeFormula, type Said } from '@pitwright/model';
import { type AllergenLaw, allergensOf } from '../sauce/allergens.ts';
import { findIngredient } from '../sauce/formulaLines.ts';

export interface AllergenLine {
  readonly allergen: string;
  /** Formulas that hold it. */
  readonly formulaIds: readonly string[];
  /** Whether a guest named it. */
  readonly isNamed: boolean;
}

/** Allergens on the table, formula by formula, by the law that the cook's rules follow. */
export function allergenTable(cook: Cook): {
  readonly lines: readonly AllergenLine[];
  readonly said: readonly Said[];
} {
  const law: AllergenLaw = cook.rules === 'uk' ? 'eu' : 'us';
  const holds = new Map<string, string[]>();
  const said: Said[] = [];
  for (const formula of cook.formulas) {
    const rows = madeFormula(formula).lines.map((line) => findIngredient(line.ingredient, cook.labels));
    const known = rows.filter((row) => row !== undefined);
    if (known.length < rows.length || known.some((row) => row.allergensUnknown))
      said.push({ id: 'guests.allergens-unknown', level: 'caution', params: { formula: formula.name } });
    for (const allergen of allergensOf(known)[law])
      holds.set(allergen, [...(holds.get(allergen) ?? []), formula.id]);
  }
  const named = (cook.guests.allergies ?? []).map((allergy) => allergy.toLowerCase());
  for (const allergy of named)
    if (!holds.has(allergy))
      // Nothing found is no promise: blends and labels hold what the catalogue does not know.
      said.push({ id: 'guests.allergen-not-found', level: 'caution', params: { allergen: allergy } });
  if (cook.guests.atRisk) said.push({ id: 'guests.at-risk', level: 'caution' });
  const all = new Set([...holds.keys(), ...named]);
  return {
    lines: [...all].sort().map((allergen) => ({
      allergen,
      formulaIds: holds.get(allergen) ?? [],
      isNamed: named.includes(allergen),
    })),
    said,
  };
}
