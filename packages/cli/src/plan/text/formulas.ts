import type { Said } from '@pitwright/model';
import { type FormulaReport, noticesOfFormula, type PlanReport } from '@pitwright/paper';
import { type Printer, say, writtenQuantity } from '@pitwright/words';
import { type Column, heading, paragraph, row } from './layout.ts';
import { noticeText } from './notices.ts';

const LINES: readonly Column[] = [{ width: 40 }, { width: 10, align: 'right' }, { width: 16 }];

/** Minutes as a range, what is left, when to stop by the look of it. */
function simmerSaid({ simmerS, yieldKg, takeOffKg = yieldKg, yieldM3, jars, looks }: FormulaReport): Said[] {
  if (!simmerS || takeOffKg === undefined || yieldM3 === undefined || !looks) return [];
  const said: Said[] = [];
  if (Number.isFinite(simmerS.p90))
    said.push({
      id: 'plan.formula.simmer',
      params: {
        low: simmerS.p10,
        high: simmerS.p90,
        left: { kind: 'mass', si: takeOffKg },
        volume: { kind: 'volume', si: yieldM3 },
        jars: jars ?? 0,
      },
    });
  said.push({ id: 'plan.formula.looks', params: { pot: looks.pot, fridge: looks.fridge } });
  if (looks.thin !== looks.thick)
    said.push({ id: 'plan.formula.looks-doubt', params: { thin: looks.thin, thick: looks.thick } });
  return said;
}

function formulaText(one: FormulaReport, report: PlanReport, print: Printer): string[] {
  const { formula } = one;
  const tell = (said: Said): string => say(said, print);
  const letters = formula.for?.map(
    (id) => report.cook.pieces.find((piece) => piece.id === id || piece.letter === id)?.letter ?? id,
  );
  const weighed = (isLate: boolean): string[][] =>
    one.lines
      .filter((line) => line.isLate === isLate)
      .map((line) => {
        const written = writtenQuantity(line.amount);
        const mass = print.massKg(line.massKg);
        return [line.name, mass, written === mass ? '' : written];
      });
  const sum = (id: string, massKg: number): string[] => [tell({ id }), print.massKg(massKg), ''];
  const late = weighed(true);
  const table = [
    ...weighed(false),
    sum(one.yieldKg === undefined ? 'plan.formula.total' : 'plan.formula.in-the-pan', one.totalKg),
    ...(late.length > 0 ? [[tell({ id: 'plan.formula.stir-in' }), '', ''], ...late] : []),
    ...(one.yieldKg === undefined ? [] : [sum('plan.formula.after-simmer', one.yieldKg)]),
  ];
  const whom = letters
    ? tell({ id: 'plan.formula.for', params: { pieces: letters.join(', ') } })
    : tell({ id: 'plan.formula.for-all' });
  return [
    '',
    `${formula.name}, ${whom}`,
    ...table.flatMap((cells) => row(cells, LINES, 3)),
    ...simmerSaid(one).flatMap((said) => paragraph(tell(said), 3)),
    ...one.said.flatMap((said) => (said.level ? noticeText(said, print, 3) : paragraph(tell(said), 3))),
    ...(formula.note ? paragraph(formula.note, 3) : []),
    ...noticesOfFormula(report.notices, formula.id).flatMap((said) => noticeText(said, print, 3)),
  ];
}

/** Sauce, rub and spritz by mass; a sauce with what its simmer leaves. */
export const formulasText = (report: PlanReport, print: Printer): string[] =>
  report.formulas.length === 0
    ? []
    : [
        ...heading(say({ id: 'plan.section.formulas' }, print)),
        ...report.formulas.flatMap((one) => formulaText(one, report, print)),
      ];
