import { type Cook, type Formula, madeFormula } from '@pitwright/model';
import { type AllergenLaw, allergensOf } from '../../sauce/allergens.ts';
import { findIngredient } from '../../sauce/formulaLines.ts';
import { degrees, type Notice, notice, seconds } from '../notice.ts';
import { COLD_HOLD_C, OUT_S } from '../rules/limits.ts';
import { celsiusOf } from '../ruleTemperature.ts';

const LABELS = 'US nine; Regulation (EU) 1169/2011, Annex II; mapping from common labels';
const HANDLING = 'USDA FSIS, Smoking Meat and Poultry';
/** Surface that a brush may touch again once it was this hot [°C]. Interpretation, not a rule. */
const CLEAN_SURFACE_C = celsiusOf(160);
const DAY_S = 86400;
const lawOf = (cook: Cook): AllergenLaw => (cook.rules === 'uk' ? 'eu' : 'us');

/** Names a guest's allergy and a list's word alike: `tree nuts`, `tree-nut`. */
const plain = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[^a-z]+/g, '-')
    .replace(/s$/, '');

/** What the formulas hold of what is to be declared; louder where a guest named it. */
function allergenNotices(cook: Cook, formula: Formula): Notice[] {
  const ids = formula.lines.map((line) => line.ingredient);
  const concerns = { formulaId: formula.id };
  const notices: Notice[] = [];
  const rows = ids.map((id) => findIngredient(id, cook.labels));
  // Of a label that nobody has read for them, too, nothing is known.
  const unread = ids.flatMap((id, i) =>
    rows[i]?.allergensUnknown === undefined && rows[i] ? [] : [rows[i]?.name ?? id],
  );
  if (unread.length > 0)
    notices.push(
      notice('safety.allergens-unknown', 'caution', LABELS, { ingredients: unread.join('|') }, concerns),
    );
  const held = allergensOf(rows.filter((row) => row !== undefined));
  const found = held[lawOf(cook)];
  if (found.length > 0)
    notices.push(notice('safety.allergens', 'information', LABELS, { allergens: found.join('|') }, concerns));
  // A guest's word is looked for in both lists, whichever law is shown.
  const named = new Set((cook.guests.allergies ?? []).map(plain));
  const either = new Set([...held.us, ...held.eu]);
  const met = [...either].filter((allergen) => named.has(plain(allergen))).sort();
  if (met.length > 0)
    notices.push(notice('safety.allergens-named', 'stop', LABELS, { allergens: met.join('|') }, concerns));
  return notices;
}

function honeyNotice(cook: Cook, formula: Formula): Notice[] {
  const hasHoney = formula.lines.some((line) => line.ingredient.startsWith('honey'));
  if (!hasHoney || cook.guests.children === 0) return [];
  return [notice('safety.honey', 'stop', 'INSPQ (Québec), honey', {}, { formulaId: formula.id })];
}

function keepingNotices(cook: Cook, formula: Formula): Notice[] {
  const concerns = { formulaId: formula.id };
  const cold = degrees(COLD_HOLD_C[cook.rules]);
  switch (formula.kind) {
    case 'sauce':
      // How many days it keeps is said by the sauce itself, from its sourness.
      return [
        notice(
          'safety.sauce-cold',
          'information',
          'USDA FSIS, Basics for Handling Food Safely',
          { cold, within: seconds(OUT_S) },
          concerns,
        ),
        notice('safety.jar', 'stop', '21 CFR 114; NCHFP', {}, concerns),
        notice(
          'safety.brush',
          'caution',
          `${HANDLING}; surface temperature: interpretation`,
          { surface: degrees(CLEAN_SURFACE_C) },
          concerns,
        ),
      ];
    case 'spritz':
      return [
        notice(
          'safety.spritz-bottle',
          'caution',
          `${HANDLING}; surface temperature: interpretation`,
          { surface: degrees(CLEAN_SURFACE_C), within: seconds(DAY_S) },
          concerns,
        ),
      ];
    case 'brine':
      return [notice('safety.marinade', 'stop', HANDLING, {}, concerns)];
    case 'rub':
      return [notice('safety.rub-hands', 'caution', HANDLING, {}, concerns)];
  }
}

/** What stands beside each formula of a plan. */
export const formulaNotices = (cook: Cook): Notice[] =>
  cook.formulas
    .map(madeFormula)
    .flatMap((formula) => [
      ...allergenNotices(cook, formula),
      ...honeyNotice(cook, formula),
      ...keepingNotices(cook, formula),
    ]);
