import type { FormulaLine, VariantChange } from '../nouns.ts';

type Amount = FormulaLine['amount'];

const isSameAmount = (one: Amount, other: Amount): boolean =>
  one.kind === other.kind && one.si === other.si && one.writtenIn === other.writtenIn && one.sd === other.sd;

/** What makes `next` of `line`; undefined where nothing does. */
function changeOf(line: FormulaLine, which: number, next: FormulaLine): VariantChange | undefined {
  const change = {
    ...(next.ingredient !== line.ingredient && { ingredient: next.ingredient }),
    ...(!isSameAmount(line.amount, next.amount) && { amount: next.amount }),
    ...((line.late ?? false) !== (next.late ?? false) && { late: next.late ?? false }),
  };
  if (Object.keys(change).length === 0) return undefined;
  return { line: line.ingredient, ...(which > 1 && { which }), ...change };
}

/** Each line with how many lines of its ingredient have come, itself counted. */
const counted = (lines: readonly FormulaLine[]): { line: FormulaLine; which: number; key: string }[] => {
  const seen = new Map<string, number>();
  return lines.map((line) => {
    const which = (seen.get(line.ingredient) ?? 0) + 1;
    seen.set(line.ingredient, which);
    return { line, which, key: `${line.ingredient} ${which}` };
  });
};

/**
 * The changes that make `next` of `lines`, by ingredient: equal ones are the same line, and between two of those what
 * went and what came stand for each other in their order. `withChanges(lines, …)` gives the lines of `next` again,
 * added ones last.
 */
export function changesBetweenLines(
  lines: readonly FormulaLine[],
  next: readonly FormulaLine[],
): readonly VariantChange[] {
  const before = counted(lines);
  const after = counted(next);
  const beforeKeys = new Set(before.map(({ key }) => key));
  const afterOf = new Map(after.map((one) => [one.key, one]));
  const came = after.map((one) => (beforeKeys.has(one.key) ? undefined : one.line));
  const changes: VariantChange[] = [];
  let reached = 0;
  for (const { line, which, key } of before) {
    const same = afterOf.get(key);
    if (same) {
      reached = Math.max(reached, after.indexOf(same) + 1);
      const change = changeOf(line, which, same.line);
      if (change) changes.push(change);
      continue;
    }
    // What came stands at the same place as what went, up to the next line that both have.
    const inPlace = reached < came.length ? came[reached] : undefined;
    if (inPlace) {
      came[reached] = undefined;
      reached += 1;
      changes.push(changeOf(line, which, inPlace)!);
    } else changes.push({ line: line.ingredient, ...(which > 1 && { which }), out: true });
  }
  const added = came
    .filter((line) => line !== undefined)
    .map(
      ({ ingredient, amount, late }): VariantChange => ({ ingredient, amount, ...(late && { late: true }) }),
    );
  return [...changes, ...added];
}
