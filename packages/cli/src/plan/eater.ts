/** What the eater gets of a piece, as the plan puts it on the table. */
import { type CookPlan, type EaterForecast, eaterAt, eaterSaid, type PieceForecast } from '@pitwright/engine';
import type { Cook, Range } from '@pitwright/model';
import { type Printer, say } from '@pitwright/words';
import type { PlanJson } from './schema.ts';

type EaterJson = NonNullable<PlanJson['pieces'][number]['eater']>['offHeat'];

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);
const rangeJson = ({ p10, p50, p90, neverShare }: Range) => ({
  p10: finite(p10),
  p50: finite(p50),
  p90: finite(p90),
  neverShare,
});
/** Shares summed word by word may pass 1 by a rounding. */
const chancesJson = (chances: Readonly<Partial<Record<string, number>>>): Record<string, number> =>
  Object.fromEntries(Object.entries(chances).map(([word, share]) => [word, Math.min(1, share ?? 0)]));

const eaterJson = (eater: EaterForecast): EaterJson => ({
  bark: chancesJson(eater.bark),
  barkM: rangeJson(eater.barkM),
  colour: chancesJson(eater.colour),
  colourIndex: rangeJson(eater.colourIndex),
  juiciness: chancesJson(eater.juiciness),
  waterLeft: rangeJson(eater.waterLeft),
  lossKg: rangeJson(eater.lossKg),
  yieldShare: rangeJson(eater.yieldShare),
});

interface Planned {
  readonly cook: Cook;
  readonly plan: CookPlan;
}

function atTable({ cook, plan }: Planned, foreseen: PieceForecast): EaterForecast | undefined {
  const planned = plan.pieces.find((piece) => piece.pieceId === foreseen.pieceId);
  if (!planned) return undefined;
  const elapsedS = (Date.parse(plan.table.at) - Date.parse(planned.onAt)) / 1000;
  return eaterAt(cook, foreseen.columns, elapsedS);
}

/** Off the heat and at the serving hour; null for a piece without a stage on the heat. */
export function eatersJson(report: Planned, foreseen: PieceForecast): PlanJson['pieces'][number]['eater'] {
  const table = atTable(report, foreseen);
  return foreseen.eater && table ? { offHeat: eaterJson(foreseen.eater), table: eaterJson(table) } : null;
}

/** A stall to be expected, then what is on the table at the serving hour; empty where no try gets there. */
export function eaterText(report: Planned, foreseen: PieceForecast, print: Printer): string {
  const eater = atTable(report, foreseen);
  const gets = eater && eaterSaid(eater, foreseen.members);
  // A share that never gets there is said where the plan counts the misses.
  const stall = foreseen.notices.filter(({ id }) => id === 'forecast.stall');
  return [...stall, ...(gets ? [gets] : [])].map((said) => say(said, print)).join(' ');
}
