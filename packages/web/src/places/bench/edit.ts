import { kitchenG, type RebalanceAnswer, scaleFormula } from '@pitwright/engine/sauce';
import {
  type Cook,
  type Formula,
  type FormulaLine,
  fromSi,
  type Quantity,
  quantity,
  readCookQuantity,
  type Said,
} from '@pitwright/model';
import type { Swap } from './messages.ts';

export type Amount = FormulaLine['amount'];

/** Ounces could be a weight or a volume: asked, never guessed. */
const BARE_OUNCES = /^([^a-z]*[^a-z\s])\s*(?:oz|ounces?)\.?$/i;

export type AmountReading =
  | { readonly ok: true; readonly amount: Amount }
  | { readonly ok: false; readonly problem: Said };

/** An amount as a cook writes it: a mass or a volume, never less than nothing. */
export function readAmount(text: string): AmountReading {
  const ounces = BARE_OUNCES.exec(text.trim());
  if (ounces) return { ok: false, problem: { id: 'quantity.ounce', params: { number: ounces[1]! } } };
  const mass = readCookQuantity(text, 'mass');
  if (mass.ok) return { ok: true, amount: mass.quantity };
  const volume = readCookQuantity(text, 'volume');
  if (volume.ok) return { ok: true, amount: volume.quantity };
  const isUnit = (problem: Said) => problem.id.startsWith('quantity.unit-');
  const problem = [mass.problem, volume.problem].find((one) => !isUnit(one));
  return { ok: false, problem: problem ?? { id: 'quantity.amount-unit', params: { text: text.trim() } } };
}

/** Grams as a scale shows them. */
export const weighed = (massG: number): Quantity<'mass'> => quantity('mass', kitchenG(massG), 'g');

export const withFormula = (cook: Cook, formula: Formula): Cook => ({
  ...cook,
  formulas: cook.formulas.map((one) => (one.id === formula.id ? formula : one)),
});

export const setLines = (formula: Formula, lines: readonly FormulaLine[]): Formula => ({ ...formula, lines });

export const setLine = (formula: Formula, index: number, part: Partial<FormulaLine>): Formula =>
  setLines(formula, formula.lines.with(index, { ...formula.lines[index]!, ...part }));

/** With this piece where it was without, without it where it was with; undefined: all of them. */
export function forToggled(cook: Cook, formula: Formula, pieceId: string): readonly string[] | undefined {
  const ids = cook.pieces.map(({ id }) => id);
  const before = formula.for ?? ids;
  const next = ids.filter((id) => before.includes(id) !== (id === pieceId));
  return next.length === ids.length ? undefined : next;
}

/** Stirred in after the simmer, or in the pot from the start. */
export function setLate(formula: Formula, index: number, isLate: boolean): Formula {
  const { late: _, ...line } = formula.lines[index]!;
  return setLines(formula, formula.lines.with(index, isLate ? { ...line, late: true } : line));
}

export const withoutLine = (formula: Formula, index: number): Formula =>
  setLines(formula, formula.lines.toSpliced(index, 1));

/** How far it is boiled down. */
export const setWaterOff = (formula: Formula, waterOffG: number): Formula => ({
  ...formula,
  simmer: { ...formula.simmer, evaporated: quantity('mass', Math.round(waterOffG), 'g') },
});

const LEAST_SHARE = 0.005;
const LEAST_G = 0.05;

/** The swap with the least change that brings it back; what stays keeps how it was written. */
export function takeOver(
  formula: Formula,
  swap: Swap | undefined,
  answer: RebalanceAnswer & { ok: true },
): Formula {
  const rest = [...answer.shifts];
  const lines = formula.lines.flatMap((line, index): FormulaLine[] => {
    const ingredient = swap && index === swap.index ? swap.ingredient : line.ingredient;
    const place = rest.findIndex((shift) => shift.ingredient.id === ingredient && shift.beforeG > 0);
    const [shift] = place === -1 ? [] : rest.splice(place, 1);
    if (!shift) return [line];
    if (shift.afterG < LEAST_G) return [];
    const isMoved = Math.abs(shift.afterG - shift.beforeG) >= Math.max(LEAST_G, LEAST_SHARE * shift.beforeG);
    if (!isMoved && index !== swap?.index) return [line];
    const { note: _, ...bare } = line;
    return [
      {
        ...(index === swap?.index ? bare : line),
        ingredient,
        amount: weighed(isMoved ? shift.afterG : shift.beforeG),
      },
    ];
  });
  const added = rest
    .filter((shift) => shift.beforeG === 0 && shift.afterG >= LEAST_G)
    .map((shift): FormulaLine => ({ ingredient: shift.ingredient.id, amount: weighed(shift.afterG) }));
  const next = setLines(formula, [...lines, ...added]);
  return formula.simmer ? setWaterOff(next, answer.waterOffG) : next;
}

const SCALE_DIGITS = 3;

/** In the unit it was written in, to what a scale or a jug shows. */
function measurable(amount: Amount): Amount {
  const unit = amount.writtenIn && !amount.writtenIn.includes(' ') ? amount.writtenIn : undefined;
  const round = (value: number): number => Number(value.toPrecision(SCALE_DIGITS));
  return amount.kind === 'mass'
    ? quantity('mass', round(fromSi('mass', amount.si, unit ?? 'g')), unit ?? 'g')
    : quantity('volume', round(fromSi('volume', amount.si, unit ?? 'mL')), unit ?? 'mL');
}

/** So many times as much, its variants too, in amounts that can be measured. */
export function scaled(formula: Formula, factor: number): Formula {
  const next = scaleFormula(formula, factor);
  const { simmer, variants } = next;
  const onScales = <T extends { readonly evaporated?: Quantity<'mass'> }>(of: T): T => ({
    ...of,
    ...(of.evaporated && { evaporated: weighed(of.evaporated.si * 1000) }),
  });
  return {
    ...setLines(
      next,
      next.lines.map((line) => ({ ...line, amount: measurable(line.amount) })),
    ),
    ...(simmer && { simmer: onScales(simmer) }),
    ...(variants && {
      variants: variants.map((variant) => ({
        ...onScales(variant),
        changes: variant.changes.map((change) =>
          change.amount ? { ...change, amount: measurable(change.amount) } : change,
        ),
      })),
    }),
  };
}

/** A new formula, empty. */
export const emptyFormula = (id: string, name: string, kind: Formula['kind']): Formula => ({
  id,
  name,
  kind,
  lines: [],
  ...(kind === 'sauce' && { simmer: {} }),
});
