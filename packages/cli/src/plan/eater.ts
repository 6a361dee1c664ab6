/** What the eater gets of a piece, as the plan puts it on the table. */
import {
  type EaterForecast,
  eaterSaid,
  type FaceForecast,
  overCoalsSaid,
  type PieceForecast,
  saltSaid,
} from '@pitwright/engine';
import type { EaterReport, PlanReport } from '@pitwright/paper';
import { type Printer, say } from '@pitwright/words';
import { rangeJson } from './range-json.ts';
import type { PlanJson } from './schema.ts';

type EaterJson = NonNullable<PlanJson['pieces'][number]['eater']>['offHeat'];

/** Shares summed word by word may pass 1 by a rounding. */
const chancesJson = (chances: Readonly<Partial<Record<string, number>>>): Record<string, number> =>
  Object.fromEntries(Object.entries(chances).map(([word, share]) => [word, Math.min(1, share ?? 0)]));

const faceJson = (face: FaceForecast) => ({
  bark: chancesJson(face.bark),
  barkM: rangeJson(face.barkM),
  colour: chancesJson(face.colour),
  colourIndex: rangeJson(face.colourIndex),
});

const eaterJson = (eater: EaterForecast): EaterJson => ({
  ...faceJson(eater),
  overCoals: eater.overCoals ? { side: eater.overCoals.side, ...faceJson(eater.overCoals) } : null,
  juiciness: chancesJson(eater.juiciness),
  waterLeft: rangeJson(eater.waterLeft),
  lossKg: rangeJson(eater.lossKg),
  yieldShare: rangeJson(eater.yieldShare),
});

const eaterOf = (report: PlanReport, pieceId: string): EaterReport | undefined =>
  report.eaters.find((one) => one.pieceId === pieceId);

/** Off the heat and at the serving hour; null for a piece without a stage on the heat. */
export function eatersJson(report: PlanReport, foreseen: PieceForecast): PlanJson['pieces'][number]['eater'] {
  const { atTable, salt } = eaterOf(report, foreseen.pieceId) ?? {};
  if (!foreseen.eater || !atTable) return null;
  return {
    offHeat: eaterJson(foreseen.eater),
    table: eaterJson(atTable),
    salt: salt
      ? { words: chancesJson(salt.words), perKg: rangeJson(salt.perKg), parts: [...salt.parts] }
      : null,
  };
}

/** A stall to be expected, then what is on the table at the serving hour; empty where no try gets there. */
export function eaterText(report: PlanReport, foreseen: PieceForecast, print: Printer): string {
  const { atTable, salt } = eaterOf(report, foreseen.pieceId) ?? {};
  const gets = atTable && eaterSaid(atTable, foreseen.members);
  // A share that never gets there is said where the plan counts the misses.
  const stall = foreseen.notices.filter(({ id }) => id === 'forecast.stall');
  const darker = atTable && overCoalsSaid(atTable, foreseen.members);
  return [
    ...stall,
    ...(gets ? [gets] : []),
    ...(darker ? [darker] : []),
    ...(gets && salt ? [saltSaid(salt, foreseen.members)] : []),
  ]
    .map((said) => say(said, print))
    .join(' ');
}
