import { findCut } from '@pitwright/engine';
import {
  COALS,
  type Coals,
  type CutId,
  type DirectHeat,
  FIRE_SHIELDS,
  FIRE_SIDES,
  type FireShield,
  type FireSide,
  quantity,
  STAGE_LIMITS,
  type Stage,
} from '@pitwright/model';
import { Key } from '../../parts/key.tsx';
import { useWords } from '../../words.tsx';
import type { Tell } from './edit.ts';
import { Told } from './told.tsx';
import { WrittenFigure } from './written-figure.tsx';

/** When it is first laid over the coals: common practice, no source. */
const FIRST_DISTANCE = quantity('length', 20, 'cm');
const ACROSS = quantity('length', 30, 'cm');
const TURN = quantity('time', 5, 'min');

/** The sides that a cut has, the one that is laid to the coals first. */
function sidesOf(cutId: CutId): readonly [FireSide, FireSide] {
  const cut = findCut(cutId);
  if (cut?.isPoultry) return ['skin', 'bone'];
  if (cut?.tissue.endsWith('ribs')) return ['bone', 'meat'];
  if (cutId === 'pork-belly') return ['meat', 'skin'];
  return ['meat', cut?.hasBone ? 'bone' : 'fat'];
}

/** Over the coals, or away from them; which side lies to them, how far off, what stands between, how often it is turned. */
export function OverCoals({ cut, stage, tell }: { cut: CutId; stage: Stage; tell: Tell<Stage> }) {
  const { text } = useWords();
  const { direct } = stage;
  const sides = sidesOf(cut);
  if (!direct)
    return (
      <Key kind="plain" onClick={() => tell({ direct: { side: sides[0], distance: FIRST_DISTANCE } })}>
        {text('web.stage.coals-over')}
      </Key>
    );
  const change = (told: { readonly [K in keyof DirectHeat]?: DirectHeat[K] | undefined }) => {
    const next = Object.entries({ ...direct, ...told }).filter(([, value]) => value !== undefined);
    tell({ direct: Object.fromEntries(next) as unknown as DirectHeat });
  };
  return (
    <>
      <Told label={text('web.stage.coals-side')}>
        <select
          className="cell-pick"
          value={direct.side}
          onChange={(event) => change({ side: event.target.value as FireSide })}
        >
          {FIRE_SIDES.filter((side) => sides.includes(side) || side === direct.side).map((side) => (
            <option key={side} value={side}>
              {text(`web.side.${side}`)}
            </option>
          ))}
        </select>
      </Told>
      <WrittenFigure
        label={text('web.stage.coals-distance')}
        kind="length"
        value={direct.distance}
        limits={STAGE_LIMITS.distance}
        example={FIRST_DISTANCE}
        isNeeded
        onKeep={(distance) => distance && change({ distance })}
      />
      <WrittenFigure
        label={text('web.stage.coals-across')}
        kind="length"
        value={direct.across}
        limits={STAGE_LIMITS.across}
        example={ACROSS}
        onKeep={(across) => change({ across })}
      />
      <Told label={text('web.stage.coals-look')}>
        <select
          className="cell-pick"
          value={direct.coals ?? ''}
          onChange={(event) => change({ coals: (event.target.value || undefined) as Coals | undefined })}
        >
          <option value="">{text('web.coals.untold')}</option>
          {COALS.map((look) => (
            <option key={look} value={look}>
              {text(`web.coals.${look}`)}
            </option>
          ))}
        </select>
      </Told>
      <Told label={text('web.stage.coals-between')}>
        <select
          className="cell-pick"
          value={direct.between ?? ''}
          onChange={(event) =>
            change({ between: (event.target.value || undefined) as FireShield | undefined })
          }
        >
          <option value="">{text('web.between.nothing')}</option>
          {FIRE_SHIELDS.map((shield) => (
            <option key={shield} value={shield}>
              {text(`web.between.${shield}`)}
            </option>
          ))}
        </select>
      </Told>
      <WrittenFigure
        label={text('web.stage.coals-turn')}
        kind="time"
        value={direct.turn}
        limits={STAGE_LIMITS.turn}
        example={TURN}
        onKeep={(turn) => change({ turn })}
      />
      <Key kind="plain" onClick={() => tell({ direct: undefined })}>
        {text('web.stage.coals-away')}
      </Key>
    </>
  );
}

/** `over the coals at 20 cm, skin side to them` */
export function useCoalsWords(): (direct: DirectHeat) => string {
  const { text, print } = useWords();
  return ({ side, distance }) =>
    text('web.more.coals', { side: text(`web.side.${side}`), distance: print.quantity(distance) });
}
