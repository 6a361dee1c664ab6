import type { Cook, Formula, FormulaLine, FormulaVariant, VariantChange } from '../nouns.ts';

/** The variant that is made; undefined where the formula is made as written. */
export const chosenVariant = (formula: Formula): FormulaVariant | undefined =>
  formula.variant === undefined
    ? undefined
    : formula.variants?.find((variant) => variant.id === formula.variant);

/** Place of the line that a change names, from 0; −1 where there is none. */
export const changedPlace = (lines: readonly FormulaLine[], { line, which = 1 }: VariantChange): number => {
  let seen = 0;
  return lines.findIndex((one) => one.ingredient === line && ++seen === which);
};

function changedLine({ late, ...line }: FormulaLine, change: VariantChange): FormulaLine {
  const isLate = change.late ?? late ?? false;
  const { note: _, ...bare } = line;
  return {
    // A note tells of the thing that stood there.
    ...(change.ingredient === undefined ? line : { ...bare, ingredient: change.ingredient }),
    ...(change.amount && { amount: change.amount }),
    ...(isLate && { late: true }),
  };
}

/** Lines after the changes of a variant, in the order of the lines as written, added ones last. */
export function withChanges(
  lines: readonly FormulaLine[],
  changes: readonly VariantChange[],
): readonly FormulaLine[] {
  const slots: (FormulaLine | undefined)[] = [...lines];
  const added: FormulaLine[] = [];
  for (const change of changes) {
    const { ingredient, amount } = change;
    if (change.line === undefined) {
      if (ingredient !== undefined && amount)
        added.push({ ingredient, amount, ...(change.late && { late: true }) });
      continue;
    }
    const place = changedPlace(lines, change);
    const line = slots[place];
    if (line) slots[place] = change.out ? undefined : changedLine(line, change);
  }
  return [...slots.filter((line) => line !== undefined), ...added];
}

/** The changes of the chosen variant that find no line: the formula has moved on without them. */
export const lostChanges = (formula: Formula): readonly VariantChange[] =>
  (chosenVariant(formula)?.changes ?? []).filter(
    (change) => change.line !== undefined && changedPlace(formula.lines, change) === -1,
  );

/**
 * The formula as it is made: the lines of its chosen variant, and its name beside the formula's. Whatever weighs,
 * buys or cooks reads this; only who edits or writes files reads the formula as written.
 */
export function madeFormula(formula: Formula): Formula {
  if (formula.variants === undefined && formula.variant === undefined) return formula;
  const { variants: _, variant: __, ...own } = formula;
  const variant = chosenVariant(formula);
  if (!variant) return own;
  return {
    ...own,
    name: `${own.name}, ${variant.name}`,
    lines: withChanges(own.lines, variant.changes),
    ...(variant.evaporated && own.simmer && { simmer: { ...own.simmer, evaporated: variant.evaporated } }),
  };
}

/** The cook with every formula as it is made. */
export const madeCook = (cook: Cook): Cook =>
  cook.formulas.some((formula) => formula.variants !== undefined)
    ? { ...cook, formulas: cook.formulas.map(madeFormula) }
    : cook;
