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

/** What of it the plan prints. That no measurement is worth it stays unsaid there. */
export const closerSaid = ({ sensitivity: { said }, zones }: Closer): readonly Said[] => [
  ...(zones?.said ?? []),
  ...(said && said.id !== 'narrow.none' ? [said] : []),
];
