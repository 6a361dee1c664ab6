import { findCut, isRack } from '@pitwright/engine';
import { isWaiting, type Piece, quantity, type Stage, type StageKind } from '@pitwright/model';

const byClock = (kind: StageKind, minutes: number): Stage => ({
  kind,
  until: { by: 'clock', after: quantity('time', minutes, 'min') },
});
/** In the kitchen oven, as warm as it goes: long enough for any table. */
const WARM: Stage = {
  kind: 'hold',
  until: { by: 'table' },
  in: 'oven',
  at: quantity('temperature', 66, '°C'),
};
const GLAZE_MIN = 15;
const REST_MIN = 20;
const SET_MIN = 15;

/**
 * The stages with the one that sensibly comes next: a wrap while the meat is not done; once it ends at its bite what is
 * brushed on, then a rest, then a warm hold until the table. Kinds, order and lengths: common practice, no source.
 */
export function withNextStage(piece: Piece): readonly Stage[] {
  const { stages, cut } = piece;
  const has = (kind: StageKind): boolean => stages.some((stage) => stage.kind === kind);
  const firstWait = stages.findIndex(({ kind }) => isWaiting(kind));
  const onHeat = firstWait < 0 ? stages : stages.slice(0, firstWait);
  const waits = firstWait < 0 ? [] : stages.slice(firstWait);
  const last = onHeat.at(-1);
  const isPoultry = findCut(cut)?.isPoultry === true;
  const isBrushed = isRack(cut) || isPoultry;
  const isWrapped = has('foil') || has('paper');
  // A bird ends by its core and is not wrapped; what is glazed was done before.
  const isDone =
    last && (last.until.by === 'bite' || last.kind === 'glazed' || (isPoultry && last.until.by === 'core'));

  if (!isDone && !isWrapped)
    return [...onHeat, { kind: 'foil', until: { by: 'bite', bite: piece.bite } }, ...waits];
  if (isBrushed && !has('glazed')) return [...onHeat, byClock('glazed', GLAZE_MIN), ...waits];
  if (waits.length === 0) return [...onHeat, isBrushed ? { kind: 'rest', until: { by: 'table' } } : WARM];
  if (has('hold') && !has('rest')) return [...onHeat, byClock('rest', REST_MIN), ...waits];
  if (has('rest') && !has('hold') && !has('chill'))
    return [
      ...onHeat,
      ...waits.map((stage) =>
        stage.until.by === 'table' ? { ...stage, ...byClock(stage.kind, REST_MIN) } : stage,
      ),
      WARM,
    ];
  // All of it is there: bare once more, to set the bark or the skin.
  return [...onHeat, byClock('bare', SET_MIN), ...waits];
}
