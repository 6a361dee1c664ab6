/** What a record cannot check alone: that a variant changes lines that are there, each in one way. */
import { isMap, isSeq, type Node } from 'yaml';
import { changedPlace } from '../formula/made.ts';
import type { Formula, FormulaVariant, VariantChange } from '../nouns.ts';
import type { Locate } from './form.ts';
import { nearest } from './nearest.ts';
import type { Reader } from './reader.ts';

const itemsOf = (node: Node | undefined): readonly Node[] =>
  node && isSeq(node) ? (node.items as Node[]) : [];

/** What is wrong with the shape of one change. */
function shapeProblem({ line, which, out, ingredient, amount, late }: VariantChange): string | undefined {
  const isChanged = ingredient !== undefined || amount !== undefined || late !== undefined;
  if (line === undefined) {
    if (out || which !== undefined) return 'file.variant-of-what';
    return ingredient === undefined || amount === undefined ? 'file.variant-adds' : undefined;
  }
  if (out) return isChanged ? 'file.variant-out-and-in' : undefined;
  return isChanged ? undefined : 'file.variant-nothing';
}

function checkChanges(
  variant: FormulaVariant,
  { lines = [], simmer }: Partial<Formula>,
  list: Node | undefined,
  reader: Reader,
): void {
  const nodes = itemsOf(list);
  const places = new Set<number>();
  for (const [index, change] of variant.changes.entries()) {
    const node = nodes[index] ?? list ?? 0;
    const wrong = shapeProblem(change);
    if (wrong) reader.report(node, wrong);
    if (change.late && !simmer) reader.report(node, 'file.late-unsimmered');
    if (wrong || change.line === undefined) continue;
    const place = changedPlace(lines, change);
    const known = [...new Set(lines.map((line) => line.ingredient))];
    const near = nearest(change.line, known);
    if (place === -1)
      reader.report(node, 'file.variant-no-line', {
        text: change.which === undefined ? change.line : `${change.line} (${change.which})`,
        known: known.join(', '),
        ...(near !== undefined && near !== change.line && { nearest: near }),
      });
    else if (places.has(place)) reader.report(node, 'file.variant-line-twice', { text: change.line });
    places.add(place);
  }
}

/** Whether there is a pot left to simmer, and lines that are stirred in have one to be stirred into. */
function checkLate({ lines = [], simmer }: Partial<Formula>, locate: Locate, reader: Reader): void {
  const late = lines.findIndex((line) => line.late);
  if (late === -1) return;
  if (!simmer) reader.report(itemsOf(locate('lines'))[late] ?? locate('lines'), 'file.late-unsimmered');
  else if (lines.every((line) => line.late)) reader.report(locate('lines'), 'file.all-late');
}

export function checkVariants(formula: Partial<Formula>, locate: Locate, reader: Reader): void {
  checkLate(formula, locate, reader);
  const variants = formula.variants ?? [];
  const nodes = itemsOf(locate('variants'));
  const ids = new Set<string>();
  for (const [index, variant] of variants.entries()) {
    const node = nodes[index];
    if (ids.has(variant.id)) reader.report(node ?? 0, 'file.name-twice', { text: variant.name });
    ids.add(variant.id);
    // Only where every item was read do its place and its node go together.
    const list = node && isMap(node) ? (node.get('changes', true) as Node | undefined) : undefined;
    if (variant.changes && itemsOf(list).length === variant.changes.length)
      checkChanges(variant, formula, list, reader);
  }
  const { variant } = formula;
  if (variant !== undefined && !ids.has(variant))
    reader.report(locate('variant'), 'file.no-such-variant', {
      text: variant,
      known: [...ids].join(', '),
    });
}
