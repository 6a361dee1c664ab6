/** What is worth knowing of a piece beyond its times: the one measurement that would narrow them, and its muscles. */
import { type PieceSensitivity, type PieceZones, sensitivityOf, zonesOf } from '@pitwright/engine';
import type { Said } from '@pitwright/model';
import type { PlanReport } from '@pitwright/paper';

export interface Closer {
  readonly sensitivity: PieceSensitivity;
  readonly zones?: PieceZones;
}

/** By piece id. @param pieceIds of these alone; missing: of all */
export function closerOf(
  { cook, forecast }: PlanReport,
  pieceIds?: readonly string[],
): ReadonlyMap<string, Closer> {
  const asked = pieceIds ? { pieceIds } : {};
  const zones = zonesOf(cook, forecast, asked);
  return new Map(
    sensitivityOf(cook, forecast, asked).map((sensitivity) => {
      const own = zones.find((one) => one.pieceId === sensitivity.pieceId);
      return [sensitivity.pieceId, { sensitivity, ...(own && { zones: own }) }];
    }),
  );
}

/** Of its muscles, by the hour. */
export const zonesSaid = ({ zones }: Closer, onAt: string): readonly Said[] =>
  (zones?.said ?? []).map((said) => ({ ...said, params: { ...said.params, onAt } }));

/** What of it the plan prints. That no measurement is worth it stays unsaid there. */
export const closerSaid = (closer: Closer, onAt: string): readonly Said[] => [
  ...zonesSaid(closer, onAt),
  ...measuringSaid(closer.sensitivity),
];

const measuringSaid = ({ said }: PieceSensitivity): readonly Said[] =>
  said && said.id !== 'narrow.none' ? [said] : [];
